/**
 * How long a bank carries a load without sun, hour by hour, against figures that others printed, and against the handbook's
 * own formulas elsewhere in this field.
 *
 * @source repeater: Telecom Australia method (Mack 1979) in Wenham et al., Applied Photovoltaics 7.4: 24 V, 100 W mean (4.17 A),
 *         15 days of storage (printed); 4.17 A x 24 h x 15 = 1500 Ah (arithmetic)
 * @source relay: a Wi-Fi relay measured in the field (2008), mesh-networks.org section 3-2: 0.24 A at 12 V, 65 Ah (printed); its
 *         11.3 days to empty and 5.6 to half are arithmetic on those
 */
import { describe, expect, it } from "vitest";
import { outlook, recoveryDays } from "../../../src/core/energy/index.ts";
import { LOSSLESS } from "../../core/energy/balance/weather.ts";
import { near } from "../../helpers/near.ts";

const post = (given: {
  readonly nominalV: number;
  readonly ratedAh: number;
  readonly watts: number;
  readonly shedBelowSocFrac: number;
  readonly sunW?: number;
  readonly socFrac?: number;
}) =>
  outlook({
    bank: {
      chemistry: "lead-vented",
      nominalV: given.nominalV,
      ratedAh: given.ratedAh,
      healthFrac: 1,
      tempC: 25,
      traits: LOSSLESS,
    },
    controller: { efficiencyFrac: 1, maxOutputA: 1000, ownW: 0 },
    socFrac: given.socFrac ?? 1,
    hourNow: 0,
    days: Array.from({ length: 20 }, () => ({ arrayW: new Float64Array(24).fill(given.sunW ?? 0) })),
    tiers: [
      {
        name: "all",
        priority: 1,
        wattsByHourOfDay: new Float64Array(24).fill(given.watts),
        shedBelowSocFrac: given.shedBelowSocFrac,
        returnAboveSocFrac: given.shedBelowSocFrac + 0.1,
      },
    ],
  });

describe("days without sun", () => {
  it("1500 Ah carry a repeater of 100 W at 24 V for 15 days", () => {
    const [all] = post({ nominalV: 24, ratedAh: 1500, watts: 100, shedBelowSocFrac: 0 }).tiers;
    near(all!.hoursUntilShed! / 24, 15, { within: 1e-6 });
  });
  it("65 Ah carry a relay of 0.24 A for 11.3 days to empty and 5.6 to half", () => {
    const relay = { nominalV: 12, ratedAh: 65, watts: 2.88 };
    const [toEmpty] = post({ ...relay, shedBelowSocFrac: 0 }).tiers;
    near(toEmpty!.hoursUntilShed! / 24, 11.3, { within: 0.05 });
    const [toHalf] = post({ ...relay, shedBelowSocFrac: 0.5 }).tiers;
    near(toHalf!.hoursUntilShed! / 24, 5.6, { within: 0.05 });
  });
});

describe("refilling", () => {
  it("takes the days of used / ((CA - 1) x load)", () => {
    // 10 W and 15 W of steady sun; 480 of 1200 Wh are missing
    const plant = { usedWh: 480, dailyLoadWh: 240, arrayToLoadRatio: 1.5 };
    const { socFracByHour } = post({
      nominalV: 12,
      ratedAh: 100,
      watts: 10,
      shedBelowSocFrac: 0.1,
      sunW: 15,
      socFrac: 0.6,
    });
    const hours = socFracByHour.findIndex((socFrac) => socFrac > 1 - 1e-9);
    expect(hours / 24).toBe(recoveryDays(plant));
  });
});
