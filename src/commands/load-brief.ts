import { existsSync, readFileSync, statSync } from "node:fs";
import { type BriefFile, type BriefReading, readBriefText } from "../store/index.ts";
import type { Context } from "./context.ts";
import { idOfName } from "./fresh-brief.ts";
import { savedNames } from "./saved-names.ts";

export type Found =
  | { readonly kind: "brief"; readonly file: BriefFile }
  | { readonly kind: "unusable"; readonly says: string };

const isThere = (path: string): boolean => existsSync(path) && !statSync(path).isDirectory();

function asFound(what: string, reading: BriefReading): Found {
  switch (reading.kind) {
    case "brief":
      return reading;
    case "newer":
      return {
        kind: "unusable",
        says: `${what} was made by a later Mastwright (its version ${reading.version}). Open it with that one.`,
      };
    case "damaged":
      return { kind: "unusable", says: `${what} cannot be used: ${reading.says}.` };
  }
}

/** A brief from wherever the command line says: "-" for standard input, a file, or the name of a saved one. */
export function foundBrief({ briefs }: Context, what: string): Found {
  try {
    if (what === "-") return asFound("What came in", readBriefText(readFileSync(0, "utf8")));
    if (isThere(what)) return asFound(what, readBriefText(readFileSync(what, "utf8")));
    const id = idOfName(what);
    // A saved brief is only looked at here: nothing is renamed, whatever is wrong with it.
    if (id !== null && !/[/\\]|\.json$/.test(what) && briefs.exists(id)) {
      return asFound(what, readBriefText(readFileSync(briefs.pathOf(id), "utf8")));
    }
  } catch (error) {
    return { kind: "unusable", says: `${what} cannot be read: ${(error as Error).message}.` };
  }
  return { kind: "unusable", says: `${what} is neither a file nor a saved brief. ${savedNames(briefs)}` };
}
