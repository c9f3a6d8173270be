import { spawn } from "@lydell/node-pty";
import headless from "@xterm/headless";

/** A program running in a real pseudo-terminal, with a screen that can be read as a person would. */
export interface Terminal {
  /** What stands on the screen now, one string a row, blanks at the end cut. */
  screen(): readonly string[];
  /** The screen and everything scrolled off above it. */
  everything(): string;
  /** Every byte the program has sent. */
  sent(): string;
  readonly pid: number;
  /** Sends keys as one chunk. */
  send(keys: string): void;
  /** Waits until the text stands in what `everything` returns at least so many times. */
  waitFor(text: string, about?: { readonly times?: number }): Promise<void>;
  /** Waits until the program has sent nothing for a moment: for what has no text of its own to wait for. */
  settled(): Promise<void>;
  resize(columns: number, rows: number): void;
  signal(name: string): void;
  /** Waits for the program's end: its exit code. */
  end(): Promise<number>;
  cursor(): { readonly x: number; readonly y: number };
  /** Ends the program if it still runs. */
  close(): void;
}

const patienceMs = 15_000;

export function openTerminal(about: {
  readonly file: string;
  readonly args: readonly string[];
  readonly env: Readonly<Record<string, string>>;
  readonly cwd: string;
  readonly columns?: number;
  readonly rows?: number;
}): Terminal {
  const columns = about.columns ?? 80;
  const rows = about.rows ?? 24;
  const screen = new headless.Terminal({ cols: columns, rows, scrollback: 5000, allowProposedApi: true });
  const child = spawn(about.file, [...about.args], {
    cols: columns,
    rows,
    cwd: about.cwd,
    env: { ...about.env },
  });
  let sent = "";
  let unread = 0;
  child.onData((data) => {
    sent += data;
    unread++;
    screen.write(data, () => {
      unread--;
    });
  });
  screen.onData((reply) => child.write(reply));
  const exited = new Promise<number>((resolve) => {
    child.onExit(({ exitCode, signal }) => resolve(signal ? 128 + signal : exitCode));
  });

  /** Every row of the buffer, or every line with those put together again that the terminal itself has wrapped. */
  const rowsOf = (isUnwrapped: boolean): readonly string[] => {
    const buffer = screen.buffer.active;
    const lines: string[] = [];
    for (let row = 0; row < buffer.length; row++) {
      const line = buffer.getLine(row);
      const text = line?.translateToString(true) ?? "";
      if (isUnwrapped && line?.isWrapped && lines.length > 0) lines[lines.length - 1] += text;
      else lines.push(text);
    }
    return lines;
  };
  const everything = (): string => rowsOf(true).join("\n");
  const until = async (isTrue: () => boolean, what: () => string): Promise<void> => {
    const deadline = Date.now() + patienceMs;
    while (!isTrue()) {
      if (Date.now() > deadline) throw new Error(`${what()}\n--- the terminal shows:\n${everything()}`);
      await new Promise((resolve) => setTimeout(resolve, 15));
    }
  };
  return {
    screen: () => rowsOf(false).slice(screen.buffer.active.baseY),
    everything,
    sent: () => sent,
    pid: child.pid,
    send: (keys) => child.write(keys),
    waitFor: (text, { times = 1 } = {}) =>
      until(
        () => unread === 0 && everything().split(text).length > times,
        () => `waited in vain for ${JSON.stringify(text)}${times > 1 ? ` ${times} times` : ""}`,
      ),
    async settled() {
      const quietMs = 150;
      let length = -1;
      let since = Date.now();
      await until(
        () => {
          if (sent.length !== length || unread > 0) {
            length = sent.length;
            since = Date.now();
          }
          return Date.now() - since > quietMs;
        },
        () => "the program does not come to rest",
      );
    },
    resize: (toColumns, toRows) => {
      screen.resize(toColumns, toRows);
      child.resize(toColumns, toRows);
    },
    signal: (name) => child.kill(name),
    async end() {
      let code: number | undefined;
      void exited.then((value) => {
        code = value;
      });
      await until(
        () => code !== undefined && unread === 0,
        () => "the program did not end",
      );
      return code!;
    },
    close() {
      try {
        child.kill("SIGKILL");
      } catch {
        // It has ended already.
      }
      screen.dispose();
    },
    cursor: () => ({ x: screen.buffer.active.cursorX, y: screen.buffer.active.cursorY }),
  };
}
