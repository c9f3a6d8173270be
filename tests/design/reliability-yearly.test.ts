// What the weather years say of the pair that is built, against identities that hold whatever the weather.
import { describe, expect, it } from "vitest";
import { capacityFrac } from "../../src/core/energy/index.ts";
import { type Device, designOf } from "../../src/design/index.ts";
import { CELL_CHEMISTRY } from "../../src/design/practice/battery.ts";
import { near, nearRatio } from "../helpers/near.ts";
import { at, camera, changed, given, radio, simulatedWorld, sites } from "./fixtures.ts";

/** Day and night alike, so that hours and energy go the same way. */
const steadyCamera: Device = { ...camera, nightExtraW: given(0) };
const lamp: Device = { ...radio, name: "Lamp", kind: "lamp", dayW: given(6), feed: "dc", priority: 1 };
const often = { consequence: given("nuisance" as const), visitDays: given(0) };
const design = designOf(
  at(sites.colorado, changed({ loads: { devices: [steadyCamera, radio, lamp] }, autonomy: often })),
  simulatedWorld,
);
const { yearly } = design.reliability!;

describe("the loss of load of each group", () => {
  it("is its dark hours over the 8760 of a year, where it draws the same at all hours (definition of the probability)", () => {
    expect(yearly.tiers).toHaveLength(2);
    for (const { darkHours, lossOfLoadFrac } of yearly.tiers) {
      expect(darkHours).toBeGreaterThan(0);
      nearRatio(lossOfLoadFrac, darkHours / 8760, { withinFrac: 1e-6 });
    }
  });
  it("is larger for what is shed first, and that of all lies between", () => {
    const [first, last] = yearly.tiers;
    expect(first!.devices).toContain("Lamp");
    expect(first!.lossOfLoadFrac).toBeGreaterThan(last!.lossOfLoadFrac);
    expect(yearly.lossOfLoadFrac).toBeLessThan(first!.lossOfLoadFrac);
    expect(yearly.lossOfLoadFrac).toBeGreaterThan(last!.lossOfLoadFrac);
  });
});

describe("the mark at which the loads go off", () => {
  it("lies between that of the coldest hour and that of warmth, and the charge of a spell that sheds the loads ends at it", () => {
    const { darkSpell } = yearly;
    const { chemistry, permittedDodFrac } = design.battery!;
    const markAt = (tempC: number) =>
      1 - permittedDodFrac * capacityFrac({ chemistry: CELL_CHEMISTRY[chemistry], tempC, hourRateH: 100 });
    expect(darkSpell.offBelowSocFrac).toBeLessThan(markAt(design.climate!.designColdTempC));
    expect(darkSpell.offBelowSocFrac).toBeGreaterThanOrEqual(1 - permittedDodFrac - 1e-9);
    expect(darkSpell.isOff).toBe(true);
    near(Math.min(...darkSpell.lowestSocFracByDay), darkSpell.offBelowSocFrac, { within: 0.06 });
  });
});
