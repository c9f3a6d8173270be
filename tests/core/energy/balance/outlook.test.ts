import { describe, expect, it } from "vitest";
import { outlook } from "../../../../src/core/energy/index.ts";
import { RangeFault } from "../../../../src/core/numerics/index.ts";
import { near, nearRatio } from "../../../helpers/near.ts";
import { LOSSLESS } from "./weather.ts";

const dark = { arrayW: new Float64Array(24) };
const always = (watts: number): Float64Array => new Float64Array(24).fill(watts);

/** 12 V and 100 Ah without losses: 1200 Wh; 10 W and 10 W, the second shed at 0.5, both at 0.1. */
const now = {
  bank: {
    chemistry: "lead-agm" as const,
    nominalV: 12,
    ratedAh: 100,
    healthFrac: 1,
    tempC: 25,
    traits: LOSSLESS,
  },
  controller: { efficiencyFrac: 1, maxOutputA: 100, ownW: 0 },
  socFrac: 1,
  hourNow: 18,
  days: [dark, dark, dark, dark, dark],
  tiers: [
    {
      name: "link",
      priority: 1,
      wattsByHourOfDay: always(10),
      shedBelowSocFrac: 0.1,
      returnAboveSocFrac: 0.3,
    },
    {
      name: "camera",
      priority: 2,
      wattsByHourOfDay: always(10),
      shedBelowSocFrac: 0.5,
      returnAboveSocFrac: 0.7,
    },
  ],
};

describe("outlook, worked by hand", () => {
  it("without sun: 600 Wh at 20 W, then 480 Wh at 10 W", () => {
    const { tiers, socFracByHour, horizonH } = outlook(now);
    near(tiers[1]!.hoursUntilShed!, 30, { within: 1e-9 });
    near(tiers[0]!.hoursUntilShed!, 78, { within: 1e-9 });
    expect(tiers[0]!.hoursUntilBack).toBeNull();
    expect(tiers[1]!.hoursUntilBack).toBeNull();
    expect(horizonH).toBe(5 * 24 - 18);
    near(socFracByHour[30]!, 0.5, { within: 1e-9 });
    // nothing is lost to cold at 25 deg C, so the thresholds are as they were given
    near(tiers[0]!.backAtSocFrac, 0.3, { within: 1e-9 });
    near(tiers[1]!.backAtSocFrac, 0.7, { within: 1e-9 });
    expect(socFracByHour[0]).toBe(1);
  });
  it("says to the minute when it is shed and back", () => {
    // from 0.6 at 18 h: 120 Wh at 20 W, shed after 6 h at midnight; 10 W until 6 h: 540 Wh; then 100 W of sun: to 0.7 = 840
    // Wh at 90 W takes 3.333 h, to 9.333 h: 15.333 h from now
    const sunny = Float64Array.from({ length: 24 }, (_, hour) => (hour >= 6 && hour < 18 ? 100 : 0));
    const { tiers } = outlook({ ...now, socFrac: 0.6, days: [dark, { arrayW: sunny }] });
    near(tiers[1]!.hoursUntilShed!, 6, { within: 1e-9 });
    near(tiers[1]!.hoursUntilBack!, 12 + 300 / 90, { within: 1e-9 });
    expect(tiers[0]!.hoursUntilShed).toBeNull();
  });
  it("a tier that is off already is shed now, and stays off within its band", () => {
    const tiers = now.tiers.map((tier) => ({ ...tier, isShed: tier.name === "camera" }));
    const within = outlook({ ...now, socFrac: 0.6, tiers });
    expect(within.tiers[1]!.hoursUntilShed).toBe(0);
    expect(within.tiers[1]!.hoursUntilBack).toBeNull();
    near(outlook({ ...now, socFrac: 0.6 }).tiers[1]!.hoursUntilShed!, 6, { within: 1e-9 });
  });
  it("lays a day's energy between sunrise and sunset without losing any", () => {
    const off = now.tiers.map((tier) => ({ ...tier, wattsByHourOfDay: always(0) }));
    const day = { arrayWh: 500, sunriseH: 7.3, sunsetH: 16.8 };
    const { socFracByHour } = outlook({ ...now, socFrac: 0.2, hourNow: 0, days: [day], tiers: off });
    nearRatio(socFracByHour[24]!, 0.2 + 500 / 1200, { withinFrac: 1e-9 });
    near(socFracByHour[7]!, 0.2, { within: 1e-12 });
    near(socFracByHour[17]!, 0.2 + 500 / 1200, { within: 1e-9 });
  });
  it("does not hang on the order of the tiers, and refuses what is no hour or no day", () => {
    expect(outlook({ ...now, tiers: [...now.tiers].reverse() })).toEqual(outlook(now));
    expect(() => outlook({ ...now, hourNow: 24 })).toThrow(RangeFault);
    expect(() => outlook({ ...now, days: [] })).toThrow(RangeFault);
    expect(() => outlook({ ...now, days: [{ arrayW: new Float64Array(23) }] })).toThrow(RangeFault);
    expect(() => outlook({ ...now, socFrac: 1.01 })).toThrow(RangeFault);
  });
});
