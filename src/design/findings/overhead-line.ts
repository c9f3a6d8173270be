import { type Saying, sayingIn } from "../../core/units/index.ts";
import { atLeast, paced } from "../chain/words.ts";
import type { Mounting } from "../design.ts";
import { LOOKED_CLEAR_M } from "../stand-ins.ts";
import type { Rule } from "./rule.ts";

/** A mast that touches an overhead line kills whoever holds it: told first, and before anything is bought. */
export const overheadLine: Rule = ({ brief, mounting }) => {
  const looked = brief.mounting.overheadLine.value;
  const freeM = brief.mounting.freeGroundM.value;
  const hasRoom = freeM >= mounting.keepClearM;
  if (looked === "no" && hasRoom) return null;
  const said = sayingIn(brief.units);
  const clear = atLeast(said, mounting.keepClearM);
  const need = `this ${brief.mounting.support.value === "newMast" ? "mast" : "post"} needs ${clear} of free ground to any line (${lengthWords(mounting, said)} and ${said.either("3 m (10 ft)", "10 ft")} more)`;
  const about = {
    id: "mounting.overheadLine",
    numbers: { keepClearM: mounting.keepClearM, tubeLengthM: mounting.tubeLengthM, freeGroundM: freeM },
    topics: ["mounting.overhead", "mounting.wireDistance"],
  };
  if (looked === "yes" && hasRoom)
    return {
      ...about,
      severity: "caution",
      says: `An overhead line hangs ${said(freeM, "m", 1)} from the spot: ${need}, which is enough for lines up to 50 kV.`,
      change:
        "Ask the line's owner for its voltage and for leave to work there, and lay the mast out away from it.",
    };
  return {
    ...about,
    severity: "stop",
    says:
      looked === "yes"
        ? `An overhead line stands too near: whoever raises a mast or a ladder into it can be killed, and ${need}.`
        : looked === "no"
          ? `You have looked for overhead lines out to ${paced(said, freeM)}, and that is no longer far enough: whoever raises a mast or a ladder into a line can be killed, and ${need}.`
          : `Nobody has looked for overhead lines yet, and a mast or ladder that touches one kills: ${need}.`,
    change:
      looked === "yes"
        ? "Choose another spot, or ask the line's owner before any work."
        : `Stand on the spot, look up all round, and pace out ${clear}; answer the question about overhead wires again${mounting.keepClearM > LOOKED_CLEAR_M.noneFar ? ", with the distance of the nearest wire" : looked === "no" ? ", for the further distance" : " when no line is nearer"}.`,
  };
};

/** The whole length swings when it is raised, also what is buried in the end. */
function lengthWords({ tubeLengthM, mastHeightM, footing }: Mounting, said: Saying): string {
  return footing === null
    ? `its height of ${said(mastHeightM, "m", 1)}`
    : `its whole length of ${said(tubeLengthM, "m", { places: 1, safe: "up" })}, for the part that will be buried is raised with it,`;
}
