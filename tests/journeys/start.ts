import { type ChildProcessWithoutNullStreams, spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { onTestFinished } from "vitest";
import { programs } from "./build.ts";
import { openTerminal, type Terminal } from "./terminal.ts";

export type ProgramName = keyof typeof programs;

/** A folder of its own for briefs, settings and written lists; gone when the test is over. */
export function freshHome(): string {
  const folder = mkdtempSync(join(tmpdir(), "mastwright-journey-"));
  // a program that was left may still be writing
  onTestFinished(() => rmSync(folder, { recursive: true, force: true, maxRetries: 15, retryDelay: 100 }));
  return folder;
}

/** An environment as a person's shell has it: no CI, a UTF-8 locale, a terminal with colour. */
export function shellEnv(home: string, more: Readonly<Record<string, string>> = {}): Record<string, string> {
  return {
    PATH: process.env.PATH ?? "",
    HOME: home,
    MASTWRIGHT_HOME: home,
    LANG: "en_GB.UTF-8",
    TERM: "xterm-256color",
    ...more,
  };
}

export function inTerminal(about: {
  readonly program: ProgramName;
  readonly args: readonly string[];
  readonly home: string;
  readonly env?: Readonly<Record<string, string>>;
  readonly columns?: number;
  readonly rows?: number;
}): Terminal {
  const terminal = openTerminal({
    file: process.execPath,
    args: [programs[about.program].file, ...about.args],
    env: shellEnv(about.home, about.env),
    cwd: about.home,
    ...(about.columns === undefined ? {} : { columns: about.columns }),
    ...(about.rows === undefined ? {} : { rows: about.rows }),
  });
  onTestFinished(() => terminal.close());
  return terminal;
}

export interface Piped {
  readonly code: number | null;
  readonly out: string;
  readonly talk: string;
}

/** Runs the program with pipes instead of a terminal, all its input at once. */
export function piped(about: {
  readonly program: ProgramName;
  readonly args: readonly string[];
  readonly home: string;
  readonly input?: string;
  readonly env?: Readonly<Record<string, string>>;
}): Promise<Piped> {
  const child: ChildProcessWithoutNullStreams = spawn(
    process.execPath,
    [programs[about.program].file, ...about.args],
    { env: shellEnv(about.home, about.env), cwd: about.home },
  );
  let out = "";
  let talk = "";
  child.stdout.setEncoding("utf8").on("data", (text: string) => {
    out += text;
  });
  child.stderr.setEncoding("utf8").on("data", (text: string) => {
    talk += text;
  });
  // It may end before it has read everything: then the rest goes nowhere, which is no fault.
  child.stdin.on("error", () => {});
  child.stdin.end(about.input ?? "");
  return new Promise((resolve) => child.on("close", (code) => resolve({ code, out, talk })));
}
