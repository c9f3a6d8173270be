import { sayingIn } from "../../core/units/index.ts";
import { fixed } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

export const wireSize: Rule = ({ brief, wiring }) => {
  const run = wiring?.runs.find(({ isEnough }) => !isEnough);
  if (!run) return null;
  const said = sayingIn(brief.units);
  return {
    id: "wiring.size",
    severity: "stop",
    says: `${run.name}: ${fixed(run.currentA, 0)} A over ${said(run.lengthM, "m", 1)} at ${fixed(run.systemV, 0)} V; not even the thickest wire here (${said.either(`${fixed(run.areaMm2, 0)} mm2`, run.awg)}) does, it fails on ${run.decidedBy}.`,
    change: "Take a higher bank voltage, or make the load smaller.",
    numbers: {
      run: run.name,
      currentA: run.currentA,
      lengthM: run.lengthM,
      dropFrac: run.dropFrac,
      maxDropFrac: run.maxDropFrac,
    },
    topics: ["power.bankVolts", "loads.camera"],
  };
};
