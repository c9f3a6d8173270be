import { type Asker, lineAsker, promptAsker } from "../plain/ask.ts";
import { type Lines, openLines } from "../plain/index.ts";
import type { Context } from "./context.ts";

/** Whoever asks the short questions round the interview, and the lines it reads where it reads lines. */
export interface Asking {
  readonly asker: Asker;
  /** To go on reading from, so that nothing typed ahead is lost; null where prompts are drawn. */
  readonly lines: Lines | null;
}

export async function openAsking(context: Context): Promise<Asking> {
  const { surroundings } = context;
  if (surroundings.face === "chat") {
    if (surroundings.isColourless) process.env.NO_COLOR = "1";
    return { asker: await promptAsker({ isAscii: surroundings.isAscii }), lines: null };
  }
  const lines = openLines(process.stdin);
  const asker = lineAsker({
    lines,
    output: process.stdout,
    isAscii: surroundings.isAscii,
    interrupted: context.interrupted,
  });
  return { asker, lines };
}
