import { exitCodes } from "./context.ts";
import type { Finding, Opened } from "./program.ts";

export interface Verdict {
  readonly code: 0 | 2 | 3 | 4;
  /** What is said about it on standard error. */
  readonly says: readonly string[];
}

/**
 * What a design from a file comes to, the gravest first: an answer that cannot be read, then a stop, then missing answers.
 * A stop that rests on a missing answer of its own is only our stand-in's, and gives way to it: what is wanted there is the
 * answer. Any other holds whatever else is missing, so that a script which always leaves something out still sees it.
 */
export function verdictOn(name: string, opened: Opened, findings: readonly Finding[]): Verdict {
  const stops = findings.filter(({ severity }) => severity === "stop");
  const says = [
    ...opened.refused.map(({ id, says: why }) => `${name}: ${id} was not understood: ${why}`),
    ...opened.missing.map(({ id, ask }) => `${name}: not answered: ${id} (${ask})`),
    ...stops.map((stop) => `${name}: Stop: ${stop.says}`),
  ];
  if (opened.refused.length > 0) return { code: exitCodes.unusable, says };
  const rests = ({ topics }: Finding): boolean =>
    opened.missing.some(({ id }) => topics.some((topic) => id === topic || id.startsWith(`${topic}.`)));
  if (stops.some((stop) => !rests(stop))) return { code: exitCodes.stop, says };
  return { code: opened.missing.length > 0 ? exitCodes.missing : exitCodes.done, says };
}
