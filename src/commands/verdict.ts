import { exitCodes } from "./context.ts";
import type { Finding, Opened } from "./program.ts";

export interface Verdict {
  readonly code: 0 | 2 | 3 | 4;
  /** What is said about it on standard error. */
  readonly says: readonly string[];
}

/**
 * What a design from a file comes to: an answer that cannot be read weighs more than missing ones, and those more than a
 * stop, since it may rest on them.
 */
export function verdictOn(name: string, opened: Opened, findings: readonly Finding[]): Verdict {
  const stops = findings.filter(({ severity }) => severity === "stop");
  const says = [
    ...opened.refused.map(({ id, says: why }) => `${name}: ${id} was not understood: ${why}`),
    ...opened.missing.map(({ id, ask }) => `${name}: not answered: ${id} (${ask})`),
    ...stops.map((stop) => `${name}: Stop: ${stop.says}`),
  ];
  if (opened.refused.length > 0) return { code: exitCodes.unusable, says };
  if (opened.missing.length > 0) return { code: exitCodes.missing, says };
  return { code: stops.length > 0 ? exitCodes.stop : exitCodes.done, says };
}
