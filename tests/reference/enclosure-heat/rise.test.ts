import { describe, it } from "vitest";
import { boxRise, coolingAreaM2 } from "../../../src/core/mast/index.ts";
import { near } from "../../helpers/near.ts";

// VDE 0660-500 practice; the area formulas as two unrelated manuals print them. The figures are regression values worked
// from the formula, not evidence: 0.5 x 0.4 x 0.2 m painted steel box on a mast, 15 W, 1000 W/m2 on 0.2 m2.
describe("a small box on a mast", () => {
  const box = { heightM: 0.5, widthM: 0.4, depthM: 0.2, place: "on-wall-or-mast" } as const;
  const heat = { lossW: 15, wallWPerM2K: 5.5, sunWPerM2: 1000, sunlitAreaM2: 0.2 };
  it("cools through 0.572 m2", () => near(coolingAreaM2(box), 0.572, { within: 0.0005 }));
  it("is 4.8 K warmer by its equipment, 19 K more by sun on white paint, 57 K on black", () => {
    const white = boxRise({ ...box, ...heat, solarAbsorptance: 0.3 });
    near(white.equipmentRiseK, 4.8, { within: 0.05 });
    near(white.sunRiseK, 19, { within: 0.5 });
    near(boxRise({ ...box, ...heat, solarAbsorptance: 0.9 }).sunRiseK, 57, { within: 0.5 });
  });
  it("has more surface when it stands free (1.8 H (W + D) + 1.4 W D)", () =>
    near(coolingAreaM2({ ...box, place: "free-standing" }), 0.652, { within: 0.0005 }));
});
