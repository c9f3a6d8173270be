// NASA Surface meteorology and Solar Energy, 22-year means for 42.075 N 1.821 E, as quoted in a public
// repository (paucoma/MH-Moli, doc/lib/pv_energy.rst): horizontal, 42 deg toward the equator, and the best
// tilt of each month. Theirs is a satellite product with its own method, so the bands are those of two
// methods: 5 % a month, 1 % a year, 4 deg of tilt.
import { expect, it } from "vitest";
import { MEAN_DAY_BY_MONTH, monthlyPoa } from "../../../src/core/sun/index.ts";
import { near, nearRatio } from "../../helpers/near.ts";

const site = {
  ghiDailyKWhPerM2ByMonth: [1.81, 2.77, 3.92, 4.66, 5.44, 6.28, 6.56, 5.67, 4.51, 2.96, 2.0, 1.56],
  latitudeDeg: 42.075,
  azimuthDeg: 180,
  albedoByMonth: Array.from({ length: 12 }, () => 0.2),
};
const published42 = [3.2, 4.07, 4.84, 4.78, 4.99, 5.46, 5.83, 5.59, 5.21, 4.1, 3.35, 2.95];
const publishedBestTiltDeg = [64, 55, 42, 24, 12, 4, 10, 20, 36, 51, 61, 66];

function yearMean(byMonth: readonly number[]): number {
  return byMonth.reduce((total, value, month) => total + value * MEAN_DAY_BY_MONTH[month]!.days, 0) / 365;
}

it("agrees with the published irradiation at 42 deg", () => {
  const { poaDailyKWhPerM2ByMonth } = monthlyPoa({ ...site, tiltDeg: 42 });
  expect(poaDailyKWhPerM2ByMonth).toHaveLength(12);
  poaDailyKWhPerM2ByMonth.forEach((poa, month) => {
    nearRatio(poa, published42[month]!, { withinFrac: 0.05 });
  });
  nearRatio(yearMean(poaDailyKWhPerM2ByMonth), 4.53, { withinFrac: 0.01 });
});

it("agrees with the published best tilt of each month and of the year", () => {
  const bestOf = (value: (byMonth: readonly number[]) => number): number => {
    let best = { tiltDeg: 0, value: 0 };
    for (let tiltDeg = 0; tiltDeg <= 90; tiltDeg += 1) {
      const found = value(monthlyPoa({ ...site, tiltDeg }).poaDailyKWhPerM2ByMonth);
      if (found > best.value) best = { tiltDeg, value: found };
    }
    return best.tiltDeg;
  };
  publishedBestTiltDeg.forEach((published, month) => {
    // July is the odd one: the isotropic sky finds 4 deg where 10 is published; between them the yield
    // differs by 0.3 %
    near(
      bestOf((byMonth) => byMonth[month]!),
      published,
      { within: month === 6 ? 6 : 4 },
    );
  });
  near(bestOf(yearMean), 37, { within: 4 });
});
