/**
 * The short questions round the interview: which brief, a name, a confirmation. Two ways to put them, one for a
 * terminal and one line by line; never in a process that also draws the chat screen, since the two cannot hand the
 * keyboard to each other.
 */
import type { Writable } from "node:stream";
import { asciiText } from "./ascii.ts";
import type { Lines } from "./lines.ts";

export interface AskedChoice<T> {
  readonly value: T;
  readonly label: string;
}

/** null from any of them: the builder left (Ctrl-C, or the input ended). */
export interface Asker {
  /** Enter alone takes the suggested one, where there is one. */
  choose<T>(ask: string, choices: readonly AskedChoice<T>[], suggested?: T): Promise<T | null>;
  /** `refuses` returns what is wrong with a text, or null. */
  text(
    ask: string,
    about: { readonly suggested: string; readonly refuses: (text: string) => string | null },
  ): Promise<string | null>;
  confirm(ask: string): Promise<boolean | null>;
}

/** Sets the questions with the prompts of @inquirer/prompts. */
export async function promptAsker(about: { readonly isAscii: boolean }): Promise<Asker> {
  const { confirm, input, select } = await import("@inquirer/prompts");
  const mark = about.isAscii ? "-" : "–";
  const theme = {
    prefix: { idle: mark, done: mark },
    style: {
      error: (text: string) => `Once more: ${text}`,
      defaultAnswer: (text: string) => `(Enter alone takes ${text})`,
    },
  };
  const orLeft = async <T>(asked: Promise<T>): Promise<T | null> => {
    try {
      return await asked;
    } catch (error) {
      if (error instanceof Error && (error.name === "ExitPromptError" || error.name === "AbortPromptError"))
        return null;
      throw error;
    }
  };
  return {
    choose: (ask, choices, suggested) =>
      orLeft(
        select({
          message: ask,
          choices: choices.map(({ value, label }) => ({ value, name: label })),
          ...(suggested === undefined ? {} : { default: suggested }),
          theme: {
            ...theme,
            icon: { cursor: about.isAscii ? "=" : "═" },
            style: { ...theme.style, keysHelpTip: () => "Up and Down move, Enter takes" },
          },
        }),
      ),
    text: (ask, { suggested, refuses }) =>
      orLeft(
        input({ message: ask, default: suggested, validate: (text) => refuses(text.trim()) ?? true, theme }),
      ),
    confirm: (ask) =>
      orLeft(
        confirm({
          message: ask,
          default: false,
          theme: {
            ...theme,
            style: { ...theme.style, defaultAnswer: () => "(type yes or no)" },
          },
        }),
      ),
  };
}

/** The choice meant by its number, or by words that stand in no other. */
function chosenBy<T>(line: string, choices: readonly AskedChoice<T>[]): AskedChoice<T> | undefined {
  if (/^\d+$/.test(line)) return choices[Number(line) - 1];
  const words = line.toLowerCase();
  const whole = choices.find(({ label }) => label.toLowerCase() === words);
  if (whole !== undefined) return whole;
  const holding = choices.filter(({ label }) => label.toLowerCase().includes(words));
  return holding.length === 1 ? holding[0] : undefined;
}

/** Sets the same questions line by line: numbered choices, nothing redrawn, no escape sequence. */
export function lineAsker(about: {
  readonly lines: Lines;
  readonly output: Writable;
  readonly isAscii: boolean;
  readonly interrupted: AbortSignal;
}): Asker {
  const write = (text: string): void => {
    about.output.write(about.isAscii ? asciiText(text) : text);
  };
  const askLine = async (prompt: string): Promise<string | null> => {
    write(prompt);
    const line = await about.lines.next(about.interrupted);
    if (line === null) write("\n");
    return line === null ? null : line.trim();
  };
  return {
    async choose(ask, choices, suggested) {
      write(`${ask}\n`);
      for (const [index, { label }] of choices.entries()) write(`${index + 1}. ${label}\n`);
      const usual = choices.findIndex(({ value }) => value === suggested);
      const prompt = usual < 0 ? "Number: " : `Number. Enter alone takes ${usual + 1}. `;
      for (;;) {
        const line = await askLine(prompt);
        if (line === null) return null;
        const chosen = line === "" ? choices[usual] : chosenBy(line, choices);
        if (chosen !== undefined) return chosen.value;
        write(`Type a number from 1 to ${choices.length}.\n`);
      }
    },
    async text(ask, { suggested, refuses }) {
      for (;;) {
        const line = await askLine(suggested === "" ? `${ask} ` : `${ask} Enter alone takes ${suggested}. `);
        if (line === null) return null;
        const text = line === "" ? suggested : line;
        const refusal = refuses(text);
        if (refusal === null) return text;
        write(`${refusal}\n`);
      }
    },
    async confirm(ask) {
      for (;;) {
        const line = await askLine(`${ask} Type yes or no: `);
        if (line === null) return null;
        if (/^y(es)?$/i.test(line)) return true;
        if (/^no?$/i.test(line)) return false;
      }
    },
  };
}
