// No outside values: what must hold of any search, against trying everything.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  bestPlane,
  bestTilt,
  type HorizonProfile,
  horizonFrom,
  monthlyPoa,
  type PlaneWish,
  tiltPair,
} from "../../../src/core/sun/index.ts";
import { near } from "../../helpers/near.ts";

const flat = (value: number): readonly number[] => Array.from({ length: 12 }, () => value);

/** A temperate or tropical year: more in the half year of high sun. */
function ghiAt(latitudeDeg: number): readonly number[] {
  const swing = Math.min(2.6, Math.abs(latitudeDeg) / 18);
  return flat(3.4).map(
    (middle, month) =>
      middle - Math.sign(latitudeDeg || 1) * swing * Math.cos(((month + 0.5) * Math.PI) / 6 + 0.17),
  );
}

function wish(
  latitudeDeg: number,
  given: { readonly dailyWh?: readonly number[]; readonly horizon?: HorizonProfile } = {},
): PlaneWish {
  return {
    latitudeDeg,
    ghiDailyKWhPerM2ByMonth: ghiAt(latitudeDeg),
    albedoByMonth: flat(0.2),
    dailyWhByMonth: given.dailyWh ?? flat(500),
    horizon: given.horizon ?? [],
  };
}

const HILL_EAST = horizonFrom({
  obstacles: [{ fromAzimuthDeg: 80, toAzimuthDeg: 175, elevationDeg: 30 }],
});

const latitudeDeg = fc.integer({ min: -58, max: 58 });
const dailyWh = fc.array(fc.integer({ min: 100, max: 900 }), { minLength: 12, maxLength: 12 });
const horizon = fc
  .array(
    fc.record({
      fromAzimuthDeg: fc.integer({ min: 0, max: 360 }),
      toAzimuthDeg: fc.integer({ min: 0, max: 360 }),
      elevationDeg: fc.integer({ min: 0, max: 40 }),
    }),
    { maxLength: 3 },
  )
  .map((obstacles) => horizonFrom({ obstacles }));

describe("bestPlane", () => {
  it("with an open horizon and an even demand faces the equator, as bestTilt", () => {
    for (const latitude of [-45, -20, 15, 35, 52]) {
      const site = wish(latitude);
      const got = bestPlane(site);
      expect(got.azimuthDeg).toBe(latitude < 0 ? 0 : 180);
      expect(got.tiltDeg).toBe(bestTilt(site).tiltDeg);
      expect(got.equatorLossFrac).toBe(0);
    }
  });

  it("turns away from a hill, and mirrored from a mirrored one", () => {
    const mirrored = horizonFrom({
      obstacles: [{ fromAzimuthDeg: 185, toAzimuthDeg: 280, elevationDeg: 30 }],
    });
    const east = bestPlane(wish(40, { horizon: HILL_EAST }));
    const west = bestPlane(wish(40, { horizon: mirrored }));
    expect(east.azimuthDeg).toBeGreaterThan(190);
    expect(east.equatorLossFrac).toBeGreaterThan(0.03);
    expect(west.azimuthDeg).toBe(360 - east.azimuthDeg);
    expect(west.tiltDeg).toBe(east.tiltDeg);
  });

  it("near the equator faces the pole when the demand is that of the month with the poleward sun", () => {
    const june = flat(100).map((least, month) => (month === 5 ? 900 : least));
    const got = bestPlane(wish(3, { dailyWh: june }));
    expect(got.azimuthDeg === 0).toBe(true);
    expect(got.equatorLossFrac).toBeGreaterThan(0.02);
  });

  it("its worst month is never worse than facing the equator, nor more than 0.5 % below trying every plane", () => {
    fc.assert(
      fc.property(latitudeDeg, dailyWh, horizon, (latitude, wh, profile) => {
        const site = wish(latitude, { dailyWh: wh, horizon: profile });
        const got = bestPlane(site);
        expect(got.worstRatioKWhPerM2PerWh).toBeGreaterThanOrEqual(
          got.equatorFacing.worstRatioKWhPerM2PerWh * (1 - 1e-6),
        );
        let best = 0;
        for (let azimuth = 0; azimuth < 360; azimuth += 15) {
          for (let tilt = 10; tilt <= 80; tilt += 10) {
            const { poaDailyKWhPerM2ByMonth } = monthlyPoa({ ...site, tiltDeg: tilt, azimuthDeg: azimuth });
            best = Math.max(best, Math.min(...poaDailyKWhPerM2ByMonth.map((poa, i) => poa / wh[i]!)));
          }
        }
        expect(got.worstRatioKWhPerM2PerWh).toBeGreaterThanOrEqual(best * 0.995);
      }),
      { numRuns: 6, seed: 7 },
    );
  });

  it("beyond the polar circle it answers too", () => {
    const got = bestPlane(wish(69, { horizon: HILL_EAST }));
    expect(got.worstRatioKWhPerM2PerWh).toBeGreaterThan(0);
    expect(got.tiltDeg).toBeGreaterThanOrEqual(10);
  });
});

describe("tiltPair", () => {
  it("splits the twelve months into two seasons and is never worse than one tilt", () => {
    fc.assert(
      fc.property(latitudeDeg, dailyWh, horizon, (latitude, wh, profile) => {
        const site = wish(latitude, { dailyWh: wh, horizon: profile });
        const got = tiltPair(site);
        expect([...got.winter.months, ...got.summer.months].sort((a, b) => a - b)).toEqual([
          ...flat(0).keys(),
        ]);
        expect(Math.min(got.winter.months.length, got.summer.months.length)).toBeGreaterThanOrEqual(3);
        expect(got.winter.tiltDeg).toBeGreaterThanOrEqual(got.summer.tiltDeg);
        // 0.1 % is given away for the year's harvest
        expect(got.worstRatioKWhPerM2PerWh).toBeGreaterThanOrEqual(
          got.oneTilt.worstRatioKWhPerM2PerWh * 0.999,
        );
        const poaAt = (tiltDeg: number) =>
          monthlyPoa({ ...site, tiltDeg, azimuthDeg: got.azimuthDeg }).poaDailyKWhPerM2ByMonth;
        for (const season of [got.winter, got.summer]) {
          for (const month of season.months) {
            near(got.poaDailyKWhPerM2ByMonth[month]!, poaAt(season.tiltDeg)[month]!, { within: 1e-9 });
          }
        }
      }),
      { numRuns: 40, seed: 7 },
    );
  });

  it("even demand at 40 N: steep in the winter half, flat in the summer half; the worst month gains nothing", () => {
    const got = tiltPair(wish(40));
    expect(got.winter.months).toEqual(expect.arrayContaining([10, 11, 0, 1]));
    expect(got.summer.months).toEqual(expect.arrayContaining([4, 5, 6, 7]));
    expect(got.winter.tiltDeg - got.summer.tiltDeg).toBeGreaterThan(15);
    expect(got.oneTiltLossFrac).toBeLessThan(0.001);
    expect(got.yearGainFrac).toBeGreaterThan(0.02);
  });

  it("where winter and summer both press on the one tilt the pair relieves both", () => {
    // a demand in step with what a plane of 35 deg catches leaves no month to spare there; but for those round the
    // equinoxes, whose own best tilt that is
    const poa = monthlyPoa({ ...wish(40), tiltDeg: 35, azimuthDeg: 180 }).poaDailyKWhPerM2ByMonth;
    const got = tiltPair(
      wish(40, {
        dailyWh: poa.map((kWhPerM2, month) => ([1, 2, 3, 8, 9, 10].includes(month) ? 50 : 100) * kWhPerM2),
      }),
    );
    near(got.oneTilt.tiltDeg, 35, { within: 1 });
    near(got.oneTilt.worstRatioKWhPerM2PerWh, 0.01, { within: 1e-5 });
    expect(got.winter.tiltDeg).toBeGreaterThan(37);
    expect(got.summer.tiltDeg).toBeLessThan(33);
    expect(got.oneTiltLossFrac).toBeGreaterThan(0.01);
    near(got.oneTilt.worstRatioKWhPerM2PerWh, got.worstRatioKWhPerM2PerWh * (1 - got.oneTiltLossFrac), {
      within: 1e-12,
    });
  });

  it("where 2 % are accepted the steeper tilt is no steeper than those of its season's worst month are worth, and not below the single one", () => {
    fc.assert(
      fc.property(latitudeDeg, dailyWh, (latitude, wh) => {
        const site = { ...wish(latitude, { dailyWh: wh }), acceptedLossFrac: 0.02 };
        const { winter, summer, oneTilt, azimuthDeg } = tiltPair(site);
        const worstAt = (tiltDeg: number): number => {
          const poa = monthlyPoa({ ...site, tiltDeg, azimuthDeg }).poaDailyKWhPerM2ByMonth;
          return Math.min(
            ...winter.months.map((month) => (wh[month]! > 0 ? poa[month]! / wh[month]! : Infinity)),
          );
        };
        const best = Math.max(...Array.from({ length: 71 }, (_, i) => worstAt(10 + i)));
        if (!Number.isFinite(best) || winter.tiltDeg <= Math.max(oneTilt.tiltDeg, summer.tiltDeg)) return;
        expect(worstAt(winter.tiltDeg)).toBeGreaterThanOrEqual(0.98 * best - 1e-9);
        expect(worstAt(winter.tiltDeg - 1)).toBeLessThan(0.98 * best + 1e-9);
      }),
      { numRuns: 20, seed: 8 },
    );
  });

  it("half a year apart the hemispheres are alike", () => {
    const north = tiltPair(wish(35));
    const south = tiltPair(wish(-35));
    expect(south.azimuthDeg).toBe(0);
    // not the very months: the sun is nearest in January
    expect(south.summer.months).toEqual(expect.arrayContaining([10, 11, 0, 1]));
    near(south.winter.tiltDeg, north.winter.tiltDeg, { within: 4 });
  });

  it("a season without demand keeps the other's tilt", () => {
    const summerOnly = flat(0).map((_, month) => (month >= 5 && month <= 7 ? 500 : 0));
    const got = tiltPair(wish(45, { dailyWh: summerOnly }));
    expect(got.winter.tiltDeg - got.summer.tiltDeg).toBeLessThan(20);
    expect([5, 6, 7]).toContain(got.worstMonth);
  });
});

describe("the latitude rule", () => {
  it("loses what its worst month lacks", () => {
    const site = wish(52);
    const { latitudeTilt, latitudeLossFrac, worstRatioKWhPerM2PerWh } = bestTilt(site);
    expect(latitudeTilt.tiltDeg).toBe(52);
    near(latitudeTilt.worstRatioKWhPerM2PerWh, worstRatioKWhPerM2PerWh * (1 - latitudeLossFrac), {
      within: 1e-12,
    });
    expect(latitudeLossFrac).toBeGreaterThan(0);
  });
});

describe("a loss that is accepted", () => {
  const acceptedLossFrac = 0.02;
  const zurichLike = {
    latitudeDeg: 47.4,
    ghiDailyKWhPerM2ByMonth: [1, 1.8, 3, 4.1, 4.9, 5.4, 5.6, 4.8, 3.5, 2, 1.1, 0.8],
    albedoByMonth: Array(12).fill(0.2),
    horizon: [],
    dailyWhByMonth: Array(12).fill(400),
  };
  it("lays the pane back, and costs the worst month no more than that", () => {
    const steep = bestTilt(zurichLike);
    const gentle = bestTilt({ ...zurichLike, acceptedLossFrac });
    expect(gentle.tiltDeg).toBeLessThan(steep.tiltDeg - 5);
    const ratio = gentle.worstRatioKWhPerM2PerWh / steep.worstRatioKWhPerM2PerWh;
    expect(ratio).toBeGreaterThanOrEqual(1 - acceptedLossFrac);
    // one degree flatter would cost more: what is accepted is used
    const flatter = bestTilt({ ...zurichLike, maxTiltDeg: gentle.tiltDeg - 1 });
    expect(flatter.worstRatioKWhPerM2PerWh / steep.worstRatioKWhPerM2PerWh).toBeLessThan(
      1 - acceptedLossFrac,
    );
  });
  it("never lays it flatter than the least, and is no reason to turn it", () => {
    const held = bestTilt({ ...zurichLike, acceptedLossFrac: 0.1, minTiltDeg: 60 });
    expect(held.tiltDeg).toBe(60);
    const turned = bestPlane({ ...zurichLike, acceptedLossFrac });
    expect(turned.azimuthDeg).toBe(180);
    expect(turned.equatorLossFrac).toBe(0);
    expect(turned.tiltDeg).toBe(bestTilt({ ...zurichLike, acceptedLossFrac }).tiltDeg);
  });
});
