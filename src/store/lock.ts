import { closeSync, openSync, readFileSync, statSync, unlinkSync, writeSync } from "node:fs";
import { uptime } from "node:os";

/** A brief is open in one process at a time. */
export type Lock =
  | { readonly kind: "held"; release(): void }
  | { readonly kind: "taken"; readonly byPid: number | null }
  /** The folder cannot be written, so nobody else can hold it either. */
  | { readonly kind: "none" };

/** A lock file that nobody has finished writing for this long belongs to nobody. */
const unwrittenMs = 10_000;

function holderOf(path: string): number | null {
  try {
    const pid = Number(JSON.parse(readFileSync(path, "utf8")).pid);
    return Number.isInteger(pid) && pid > 0 ? pid : null;
  } catch {
    return null;
  }
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // EPERM: it runs, but under another user.
    return (error as NodeJS.ErrnoException).code === "EPERM";
  }
}

/** A lock whose process has ended, or that was written before the machine last started. */
function isStale(path: string): boolean {
  let writtenMs: number;
  try {
    writtenMs = statSync(path).mtimeMs;
  } catch {
    return true;
  }
  const nowMs = Date.now();
  const pid = holderOf(path);
  if (pid === null) return nowMs - writtenMs > unwrittenMs;
  return !isRunning(pid) || writtenMs < nowMs - uptime() * 1000;
}

/** Takes the lock at `path`, clearing away a stale one. */
export function takeLock(path: string, isSecondTry = false): Lock {
  try {
    const file = openSync(path, "wx", 0o600);
    writeSync(file, JSON.stringify({ pid: process.pid }));
    closeSync(file);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== "EEXIST") return { kind: "none" };
    if (isSecondTry || !isStale(path)) return { kind: "taken", byPid: holderOf(path) };
    try {
      unlinkSync(path);
    } catch {
      // Somebody else cleared it away first: the second try finds out who has it now.
    }
    return takeLock(path, true);
  }
  return {
    kind: "held",
    release() {
      try {
        if (holderOf(path) === process.pid) unlinkSync(path);
      } catch {
        // Gone already: there is nothing left to release.
      }
    },
  };
}
