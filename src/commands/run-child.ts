import { spawn } from "node:child_process";
import { constants } from "node:os";
import { exitCodes } from "./context.ts";
import { welcomedMark } from "./surroundings.ts";

/**
 * Runs this program again with the same terminal, and ends as it ends. Ctrl-C reaches the child as a key while it holds
 * the keyboard, and as a signal before and after: this process then only waits.
 */
export async function runChild(args: readonly string[]): Promise<number> {
  process.stdin.pause();
  const child = spawn(process.execPath, [...process.execArgv, process.argv[1]!, ...args], {
    stdio: "inherit",
    env: { ...process.env, [welcomedMark]: "1" },
  });
  process.removeAllListeners("SIGINT");
  process.on("SIGINT", () => {});
  for (const signal of ["SIGTERM", "SIGHUP"] as const) {
    process.removeAllListeners(signal);
    process.on(signal, () => child.kill(signal));
  }
  return new Promise((resolve, reject) => {
    child.on("error", reject);
    child.on("exit", (code, signal) => {
      // A child that was killed could not put the terminal back; raw mode on and off restores what Node found.
      if (signal !== null && process.stdin.isTTY) {
        process.stdin.setRawMode(true);
        process.stdin.setRawMode(false);
        process.stdout.write("\x1b[?2004l\x1b[?25h");
      }
      resolve(code ?? (signal === null ? exitCodes.ourBug : 128 + constants.signals[signal]));
    });
  });
}
