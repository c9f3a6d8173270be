/**
 * Runs the conversation on a terminal. Invariants:
 *
 * 1. The terminal's own buffer is used: no alternate screen; what was said is printed once and never touched again.
 * 2. Whatever ends the conversation, the terminal is left cooked, its cursor shown, pasting as before.
 * 3. Everything that happens (a key, a resize, an interrupt) goes through `show`; React holds no state.
 */
import type { ReadStream, WriteStream } from "node:tty";
import { render } from "ink";
import type { Event, Said, State } from "../interview/index.ts";
import { asciiText, type Dialogue, type LeaveCode, turn } from "../plain/index.ts";
import { Chat, type Passage } from "./chat.tsx";
import { flushKeys, type Key, noKeysYet, readKeys } from "./keys.ts";
import { liveRows } from "./live.ts";
import { drawingRoom, type Sheet, saidRows } from "./page.ts";
import { completed, edited, emptyTyping, submitted } from "./typing.ts";

export interface ChatRun {
  readonly dialogue: Dialogue;
  readonly state: State;
  readonly stdin: ReadStream;
  readonly stdout: WriteStream;
  readonly isAscii: boolean;
  /** The post so far as lines of text no wider than `columns`; null while nothing of it is known. */
  readonly drawPost: (state: State, columns: number) => readonly string[] | null;
  /** Names that a place being typed may become, the likeliest first; an empty text only makes ready for it. */
  readonly suggestedPlaces: (text: string, atMost: number) => readonly string[];
  /** Aborted when somebody interrupts from outside (a signal). */
  readonly interrupted: AbortSignal;
}

/** A lone Escape is the key when nothing has followed it for this long. */
const escapeWaitMs = 40;
const optionsPerPage = 5;
const mostSuggested = 3;
/** Long enough for the first question to be drawn. */
const readyAfterMs = 50;

/**
 * The same stream, but endlessly tall: where Ink believes its live area fills the window it clears the terminal and the
 * builder's scrollback with it. The live area is kept lower than the window here, also while the window shrinks.
 */
function withoutClearing(stdout: WriteStream): WriteStream {
  return new Proxy(stdout, {
    get(stream, property) {
      if (property === "rows") return 100_000;
      const value: unknown = Reflect.get(stream, property, stream);
      return typeof value === "function" ? value.bind(stream) : value;
    },
  });
}

export async function runChat(run: ChatRun): Promise<{ readonly state: State; readonly code: LeaveCode }> {
  const { dialogue, stdin, stdout } = run;
  let state = run.state;
  let passages: readonly Passage[] = [];
  let typing = emptyTyping;
  let optionsTop = 0;
  let reading = noKeysYet;
  let escapeTimer: NodeJS.Timeout | undefined;
  let readying: NodeJS.Timeout | undefined;
  let hasLeft = false;

  const sheet = (): Sheet => ({
    columns: stdout.columns || 80,
    rows: stdout.rows || 24,
    isAscii: run.isAscii,
  });
  const suggested = (): readonly string[] => {
    const text = typing.before + typing.after;
    if (text === "" || dialogue.view(state).suggests !== "places") return [];
    const names = run.suggestedPlaces(text, mostSuggested);
    return run.isAscii ? names.map(asciiText) : names;
  };
  const screen = () => {
    const live = hasLeft ? null : liveRows(sheet(), dialogue.view(state), typing, optionsTop, suggested());
    optionsTop = live?.optionsTop ?? 0;
    return <Chat passages={passages} live={live} />;
  };
  const keep = (said: Said): void => {
    const page = sheet();
    const room = said.kind === "topicClosed" ? drawingRoom(page) : 0;
    const drawing = room === 0 ? null : run.drawPost(state, room);
    passages = [...passages, { id: passages.length, rows: saidRows(page, said, drawing) }];
  };

  stdin.setEncoding("utf8");
  stdin.setRawMode(true);
  stdout.write("\x1b[?2004h");
  const app = render(<Chat passages={[]} live={null} />, {
    stdin,
    stdout: withoutClearing(stdout),
    exitOnCtrlC: false,
    patchConsole: false,
    maxFps: 60,
  });

  let leave: (code: LeaveCode) => void = () => {};
  let fail: (error: unknown) => void = () => {};
  const left = new Promise<LeaveCode>((resolve, reject) => {
    leave = resolve;
    fail = reject;
  });

  const happen = (event: Event): void => {
    if (hasLeft) return;
    const result = turn(dialogue, state, event);
    state = result.state;
    optionsTop = 0;
    for (const said of result.said) keep(said);
    if (result.left !== null) {
      hasLeft = true;
      leave(result.left);
    }
  };
  const press = (key: Key): void => {
    if (key.name === "enter") {
      const [line, next] = submitted(typing);
      typing = next;
      happen({ type: "line", text: line });
    } else if (key.name === "interrupt") happen({ type: "interrupt" });
    else if (key.name === "endOfInput") {
      if (typing.before + typing.after === "") happen({ type: "end" });
      else typing = edited(typing, { name: "delete" });
    } else if (key.name === "pageUp") optionsTop = Math.max(0, optionsTop - optionsPerPage);
    else if (key.name === "pageDown") optionsTop += optionsPerPage;
    else if (key.name === "tab") {
      const [first] = suggested();
      typing = first === undefined ? edited(typing, key) : completed(typing, first);
    } else typing = edited(typing, key);
  };
  /** Does something and shows what came of it; an error of ours ends the conversation and is the caller's. */
  const show = (something: () => void): void => {
    try {
      something();
      app.rerender(screen());
    } catch (error) {
      hasLeft = true;
      app.rerender(screen());
      fail(error);
    }
  };

  const onData = (chunk: string): void => {
    clearTimeout(escapeTimer);
    show(() => {
      const [next, keys] = readKeys(reading, chunk);
      reading = next;
      for (const key of keys) press(key);
    });
    if (reading.pending !== "") escapeTimer = setTimeout(onQuiet, escapeWaitMs);
  };
  const onQuiet = (): void => {
    show(() => {
      const [next, keys] = flushKeys(reading);
      reading = next;
      for (const key of keys) press(key);
    });
  };
  const onResize = (): void => show(() => {});
  const onEnd = (): void => show(() => happen({ type: "end" }));
  const onInterrupt = (): void => show(() => happen({ type: "interrupt" }));

  stdin.on("data", onData);
  stdin.on("end", onEnd);
  stdout.on("resize", onResize);
  run.interrupted.addEventListener("abort", onInterrupt, { once: true });
  try {
    show(() => happen({ type: "start" }));
    // Now, while the question is read: the first look-up would otherwise hold up the letter that calls for it.
    if (dialogue.view(state).suggests === "places")
      readying = setTimeout(() => show(() => void run.suggestedPlaces("", mostSuggested)), readyAfterMs);
    const code = await left;
    return { state, code };
  } finally {
    clearTimeout(escapeTimer);
    clearTimeout(readying);
    stdin.off("data", onData);
    stdin.off("end", onEnd);
    stdout.off("resize", onResize);
    run.interrupted.removeEventListener("abort", onInterrupt);
    app.unmount();
    await app.waitUntilExit();
    stdout.write("\x1b[?2004l");
    stdin.setRawMode(false);
    stdin.pause();
  }
}
