import { sayingIn } from "../../core/units/index.ts";
import { CLAMP_MM } from "../practice/mounting.ts";
import type { Rule } from "./rule.ts";

/** What stands already was built for something else. */
export const support: Rule = ({ brief, mounting }) => {
  const on = brief.mounting.support.value;
  if (on === "newMast") return null;
  const isPole = on === "existingPole";
  const said = sayingIn(brief.units);
  const up = { safe: "up" } as const;
  // what hangs on a building bends nothing at the ground
  const force = `${said(mounting.gustForceN, "N", up)} in the strongest gust (design load, 0.6 of it: ${said(mounting.totalForceN, "N", up)}${isPole ? ` and ${said(mounting.groundMomentNm, "Nm", up)} at the ground` : ""})`;
  const poleMm = brief.mounting.poleDiameterMm.value;
  const isOdd = on === "existingPole" && (poleMm < CLAMP_MM.narrowest || poleMm > CLAMP_MM.widest);
  const clamps = isOdd
    ? ` Usual clamps span ${said.bare(CLAMP_MM.narrowest, "mm")} to ${said(CLAMP_MM.widest, "mm")}, and this pole is ${said(poleMm, "mm")}.`
    : "";
  return {
    id: "mounting.support",
    severity: "caution",
    says: `${on === "existingPole" ? "The pole that stands already" : on === "wall" ? "The wall" : "The roof"} must bear ${force} on top of its own load; nothing here can say whether it does.${clamps}`,
    change:
      on === "existingPole"
        ? "Ask the pole's owner in writing, have its strength confirmed, and never use a pole that carries power lines."
        : on === "wall"
          ? "Fix brackets into sound masonry or framing with anchors rated for the pull, never into cladding; ask when in doubt."
          : "Fix to rafters, keep the roof tight, and let somebody trained for work at height do it.",
    numbers: {
      gustForceN: mounting.gustForceN,
      totalForceN: mounting.totalForceN,
      ...(isPole ? { groundMomentNm: mounting.groundMomentNm } : {}),
      poleDiameterMm: poleMm,
    },
    topics: ["mounting.support", "mounting.poleDiameter"],
  };
};
