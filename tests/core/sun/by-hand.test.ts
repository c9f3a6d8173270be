// Small cases worked by hand from the printed equations, where no outside value was at hand.
import { describe, expect, it } from "vitest";
import { RangeFault } from "../../../src/core/numerics/index.ts";
import {
  collaresPereiraRablDiffuseFrac,
  dailyDiffuseFrac,
  diffuseHourFrac,
  extraterrestrialDailyKWhPerM2,
  globalHourFrac,
  MEAN_DAY_BY_MONTH,
  monthlyHeatLossFrac,
  monthlyPoa,
  relativeAirMassRatio,
  spencerDeclinationDeg,
  sunPosition,
} from "../../../src/core/sun/index.ts";
import { near, nearRatio } from "../../helpers/near.ts";

describe("hour over day at the equinox (sunset 90 deg), noon", () => {
  const noon = { hourAngleDeg: 0, sunsetHourAngleDeg: 90 };
  it("diffuse pi/24 = 0.1309", () => {
    near(diffuseHourFrac(noon), 0.1309, { within: 0.00005 });
  });
  it("global x (0.6598 + 0.42255) = 0.1417", () => {
    near(globalHourFrac(noon), 0.14168, { within: 0.00002 });
  });
  it("nothing before sunrise", () => {
    expect(globalHourFrac({ hourAngleDeg: -95, sunsetHourAngleDeg: 90 })).toBe(0);
  });
});

describe("diffuse share of a day", () => {
  it("Collares-Pereira and Rabl at 0.5: 1.188 - 1.136 + 2.36825 - 2.733125 + 0.9155 = 0.6026", () => {
    near(collaresPereiraRablDiffuseFrac(0.5), 0.602625, { within: 1e-9 });
    expect(collaresPereiraRablDiffuseFrac(0.1)).toBe(0.99);
    near(collaresPereiraRablDiffuseFrac(0.78), 0.2108, { within: 1e-9 });
    expect(collaresPereiraRablDiffuseFrac(0.9)).toBe(0.2);
  });
  it("Erbs at 0.5: winter 1 - 0.13635 + 0.612375 - 1.493925 + 0.58674 = 0.5689, else 1 + 0.1416 - 0.6389 + 0.1056 = 0.6083", () => {
    near(dailyDiffuseFrac({ clearnessIndex: 0.5, sunsetHourAngleDeg: 70 }), 0.56884, { within: 0.00005 });
    near(dailyDiffuseFrac({ clearnessIndex: 0.5, sunsetHourAngleDeg: 100 }), 0.608275, { within: 0.00005 });
    expect(dailyDiffuseFrac({ clearnessIndex: 0.8, sunsetHourAngleDeg: 70 })).toBe(0.143);
    expect(dailyDiffuseFrac({ clearnessIndex: 0.8, sunsetHourAngleDeg: 100 })).toBe(0.175);
  });
});

describe("heat loss of a month", () => {
  const month = { clearnessIndex: 0.5, noctC: 45, powerTempCoefficientPerK: -0.004 };
  it("20 deg C: (219 + 416) 25/800 = 19.84 K warmer, 14.84 K above 25, 5.94 %", () => {
    near(monthlyHeatLossFrac({ ...month, meanTempC: 20 }), 0.059375, { within: 1e-9 });
  });
  it("a cold month gains", () => {
    expect(monthlyHeatLossFrac({ ...month, meanTempC: -20 })).toBeLessThan(0);
  });
});

describe("monthly method where it leaves the handbook", () => {
  const place = {
    ghiDailyKWhPerM2ByMonth: Array.from({ length: 12 }, () => 0.5),
    albedoByMonth: Array.from({ length: 12 }, () => 0.5),
    azimuthDeg: 180,
  };
  it("all diffuse (85 N in December), upright, ring of 45 deg: sky 0.5 - (pi/4 + 1/2)/pi, ground 0.5 cos2 45 / 2", () => {
    const { poaDailyKWhPerM2ByMonth, diffuseFracByMonth } = monthlyPoa({
      ...place,
      latitudeDeg: 85,
      tiltDeg: 90,
      horizonDeg: 45,
    });
    expect(diffuseFracByMonth[11]).toBe(1);
    const skyFrac = 0.5 - (Math.PI / 4 + 0.5) / Math.PI;
    near(poaDailyKWhPerM2ByMonth[11]!, 0.5 * (skyFrac + 0.5 * 0.5 * 0.5), { within: 1e-4 });
  });
  it("beyond 60 deg the month is the mean of its days: 67 N sees the sun in December though its mean day does not", () => {
    const { extraterrestrialDailyKWhPerM2ByMonth } = monthlyPoa({ ...place, latitudeDeg: 67, tiltDeg: 60 });
    for (const month of [0, 1, 9, 10, 11]) {
      const { firstDayOfYear, days } = MEAN_DAY_BY_MONTH[month]!;
      let total = 0;
      for (let i = 0; i < days; i += 1) {
        const dayOfYear = firstDayOfYear + i;
        const declinationDeg = spencerDeclinationDeg(dayOfYear);
        total += extraterrestrialDailyKWhPerM2({ dayOfYear, latitudeDeg: 67, declinationDeg });
      }
      // the handbook's and Spencer's distance to the sun differ by up to 0.4 %
      nearRatio(extraterrestrialDailyKWhPerM2ByMonth[month]!, total / days, { withinFrac: 0.004 });
    }
    // the mean day of December itself lies in polar night
    expect(extraterrestrialDailyKWhPerM2ByMonth[11]!).toBeGreaterThan(0.001);
  });
});

describe("ranges", () => {
  it("throws one step beyond", () => {
    expect(() => relativeAirMassRatio(90.1)).toThrow(RangeFault);
    const place = { latitudeDeg: 0, longitudeDeg: 0 };
    expect(() => sunPosition({ ...place, utcMs: -631_152_000_001 })).toThrow(RangeFault);
    expect(() => sunPosition({ ...place, utcMs: 4_102_444_800_001 })).toThrow(RangeFault);
    expect(() => sunPosition({ ...place, utcMs: Number.NaN })).toThrow(RangeFault);
    expect(() => sunPosition({ ...place, utcMs: 0, longitudeDeg: 181 })).toThrow(RangeFault);
  });
});
