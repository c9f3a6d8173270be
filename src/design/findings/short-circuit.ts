import { fixed } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

/** A fuse that cannot break the fault bursts. */
export const shortCircuit: Rule = ({ battery, wiring }) => {
  if (!battery || !wiring || wiring.shortCircuitA <= wiring.mainFuseInterruptA) return null;
  return {
    id: "wiring.shortCircuit",
    severity: "caution",
    says: `A short at this bank could draw about ${fixed(wiring.shortCircuitA / 1000, 0)} kA, more than the ${fixed(wiring.mainFuseInterruptA / 1000, 0)} kA that a ${wiring.mainFuseKind} commonly breaks: a single fuse might burst.`,
    change:
      "Give every string of blocks its own fuse so that no fuse meets the whole bank, and have an electrician choose the main one by the maker's figures; a higher bank voltage also helps.",
    numbers: { shortCircuitA: wiring.shortCircuitA, interruptA: wiring.mainFuseInterruptA },
    topics: ["power.bankVolts", "autonomy.consequence"],
  };
};
