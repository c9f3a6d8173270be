import { wrapText } from "../plain/index.ts";
import type { Context } from "./context.ts";

/** The first thing a newcomer reads. A test holds the number of questions against the flow. */
export const welcomeLines = [
  "Mastwright works out a camera post that needs neither mains power nor a network cable: what to buy and how to build it.",
  'About 33 questions, 10 to 15 minutes. "Not sure" is an answer to every one.',
  "Saved after every answer. Works without internet.",
] as const;

const widestColumns = 76;

/** Says it, unless a process that this one goes on from has done so. */
export function welcome({ out, surroundings }: Context): void {
  if (surroundings.isWelcomed) return;
  const lines =
    surroundings.face === "chat"
      ? welcomeLines.flatMap((line) => wrapText(line, Math.min(widestColumns, surroundings.columns - 1)))
      : welcomeLines;
  out(`${lines.join("\n")}\n\n`);
}
