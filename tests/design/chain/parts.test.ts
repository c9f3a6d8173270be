import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Brief } from "../../../src/design/brief.ts";
import { designOf } from "../../../src/design/index.ts";
import { near } from "../../helpers/near.ts";
import { anyBrief } from "../arbitrary.ts";
import { at, changed, given, sites, syntheticWorld, typicalBrief } from "../fixtures.ts";

const design = (brief: Brief) => designOf(brief, syntheticWorld);
const line = (brief: Brief, id: string) => design(brief).parts.lines.find((part) => part.id === id);

describe("what to buy", () => {
  it("panels at 0.8 to 1.3 USD per W: 2 x 120 W, 192 to 312", () => {
    const panel = line(typicalBrief, "panel")!;
    expect(panel.quantity).toBe(2);
    near(panel.lowPrice, 192, { within: 0.01 });
    near(panel.highPrice, 312, { within: 0.01 });
  });
  it("blocks of lead at 1.8 to 3 USD per Ah: 8 x 100 Ah, 1440 to 2400", () => {
    const battery = line(typicalBrief, "battery")!;
    near(battery.lowPrice, 1440, { within: 0.01 });
    near(battery.highPrice, 2400, { within: 0.01 });
  });
  it("what is owned costs nothing, and only what is missing is bought", () => {
    const owner = changed({ parts: { panel: given({ ratedW: 120, openCircuitV: 23, count: 1 }) } });
    const owned = line(owner, "panel")!;
    const more = line(owner, "panel.more")!;
    expect([owned.isOwned, owned.quantity, owned.highPrice]).toEqual([true, 1, 0]);
    expect([more.isOwned, more.quantity]).toEqual([false, design(owner).array!.panels - 1]);
  });
  it("a controller that does not suit is not counted as owned", () => {
    const figures = { kind: "mppt" as const, maxInputV: 150, maxChargeA: 60, chargesLifepo4: false };
    const owns = (maxInputV: number) => changed({ parts: { controller: given({ ...figures, maxInputV }) } });
    expect(line(owns(150), "controller")!.isOwned).toBe(true);
    expect(line(owns(40), "controller")!.isOwned).toBe(false);
  });
  it("the specification of the switch covers the bank's whole swing", () => {
    expect(line(typicalBrief, "switch")!.specification.join()).toContain("22 to 31 V");
  });
  it("has ids of its own for every line", () => {
    fc.assert(
      fc.property(anyBrief, (brief) => {
        const ids = design(brief).parts.lines.map(({ id }) => id);
        expect(new Set(ids).size).toBe(ids.length);
      }),
      { numRuns: 30 },
    );
  });
});

describe("money", () => {
  it("is the sum of the lines and 15 % for what is forgotten", () => {
    const { parts, money } = design(typicalBrief);
    const low = parts.lines.reduce((total, part) => total + part.lowPrice, 0);
    near(money.lowTotal, low * 1.15, { within: 0.01 });
    expect(money.highTotal).toBeGreaterThan(money.lowTotal);
  });
  it("in euros by the stated rate, in dollars where no rate is known", () => {
    const euros = design({ ...typicalBrief, currency: "EUR" }).money;
    expect(euros.currency).toBe("EUR");
    near(euros.lowParts, 0.9 * design(typicalBrief).money.lowParts, { within: 0.5 });
    expect(design({ ...typicalBrief, currency: "XXX" }).money.currency).toBe("USD");
  });
  it("without a place prices what can be priced", () => {
    const ids = design(at(null)).parts.lines.map(({ id }) => id);
    expect(ids).toContain("camera.1");
    expect(ids).toContain("mast");
    expect(ids).not.toContain("battery");
  });
  it("more days of autonomy never cost less", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 30 }), (askedDays) => {
        const cost = (days: number) =>
          design(
            changed(
              {
                autonomy: { consequence: given("days"), askedDays: given(days) },
                power: { bankV: given(24) },
              },
              at(sites.north40),
            ),
          ).parts.lines.find(({ id }) => id === "battery")!.lowPrice;
        expect(cost(askedDays + 5)).toBeGreaterThanOrEqual(cost(askedDays));
      }),
      { numRuns: 15 },
    );
  });
});
