import { sayingIn } from "../../core/units/index.ts";
import { atLeast } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

/** A mast that touches an overhead line kills whoever holds it: told first, and before anything is bought. */
export const overheadLine: Rule = ({ brief, mounting }) => {
  const looked = brief.mounting.overheadLine.value;
  if (looked === "no") return null;
  const clear = atLeast(sayingIn(brief.units), mounting.keepClearM);
  return {
    id: "mounting.overheadLine",
    severity: "stop",
    says:
      looked === "yes"
        ? `An overhead line stands too near: whoever raises a mast or a ladder into it can be killed, and this mast needs ${clear} of free ground to any line.`
        : `Nobody has looked for overhead lines yet, and a mast or ladder that touches one kills: this mast needs ${clear} of free ground to any line.`,
    change:
      looked === "yes"
        ? "Choose another spot, or ask the line's owner before any work."
        : `Stand on the spot, look up all round, and pace out ${clear}; answer again when no line is nearer.`,
    numbers: { keepClearM: mounting.keepClearM, tubeLengthM: mounting.tubeLengthM },
    topics: ["mounting.overhead"],
  };
};
