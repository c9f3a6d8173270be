// Laws of the solar field: no outside value, only what must hold everywhere.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { RangeFault } from "../../../src/core/numerics/index.ts";
import {
  beamTiltRatio,
  bestTilt,
  cooperDeclinationDeg,
  dailyDiffuseFrac,
  daylightHours,
  diffuseHourFrac,
  extraterrestrialDailyKWhPerM2,
  extraterrestrialSpanKWhPerM2,
  globalHourFrac,
  hourlyDiffuseFrac,
  incidenceDeg,
  MEAN_DAY_BY_MONTH,
  monthlyDiffuseFrac,
  monthlyPoa,
  skyViewFrac,
  sunDirection,
  sunPosition,
  sunsetHourAngleDeg,
  sunTimes,
} from "../../../src/core/sun/index.ts";
import { near } from "../../helpers/near.ts";

/**
 * Evenly over the values: fast-check's own double is even over bit patterns, nearly all of them close to 0.
 */
const between = (min: number, max: number) =>
  fc.integer({ min: 0, max: 1_000_000 }).map((i) => min + ((max - min) * i) / 1_000_000);

const latitudeDeg = between(-90, 90);
const tiltDeg = between(0, 90);
const azimuthDeg = between(0, 360);
const horizonDeg = between(0, 80);
const dayOfYear = fc.integer({ min: 1, max: 366 });
const byMonth = (min: number, max: number) =>
  fc.array(fc.double({ min, max, noNaN: true }), { minLength: 12, maxLength: 12 });
const flatAlbedo = Array.from({ length: 12 }, () => 0.2);

describe("monthlyPoa", () => {
  it("is finite and not negative at any latitude, tilt, azimuth, horizon and weather", () => {
    fc.assert(
      fc.property(
        latitudeDeg,
        tiltDeg,
        azimuthDeg,
        horizonDeg,
        byMonth(0, 12),
        byMonth(0, 1),
        (lat, tilt, azimuth, horizon, ghi, albedo) => {
          const got = monthlyPoa({
            ghiDailyKWhPerM2ByMonth: ghi,
            latitudeDeg: lat,
            tiltDeg: tilt,
            azimuthDeg: azimuth,
            albedoByMonth: albedo,
            horizonDeg: horizon,
          });
          for (const list of Object.values(got)) {
            expect(list).toHaveLength(12);
            for (const value of list) {
              expect(Number.isFinite(value)).toBe(true);
              expect(value).toBeGreaterThanOrEqual(0);
            }
          }
        },
      ),
      { numRuns: 200 },
    );
  });

  it("lying flat it gives back what falls on the level", () => {
    fc.assert(
      fc.property(latitudeDeg, azimuthDeg, byMonth(0, 9), (lat, azimuth, ghi) => {
        const { poaDailyKWhPerM2ByMonth } = monthlyPoa({
          ghiDailyKWhPerM2ByMonth: ghi,
          latitudeDeg: lat,
          tiltDeg: 0,
          azimuthDeg: azimuth,
          albedoByMonth: flatAlbedo,
        });
        poaDailyKWhPerM2ByMonth.forEach((poa, month) => {
          near(poa, ghi[month]!, { within: 1e-9 });
        });
      }),
      { numRuns: 100 },
    );
  });

  it("east and west of the meridian are alike", () => {
    fc.assert(
      fc.property(latitudeDeg, tiltDeg, azimuthDeg, horizonDeg, (lat, tilt, azimuth, horizon) => {
        const site = {
          ghiDailyKWhPerM2ByMonth: Array.from({ length: 12 }, () => 3),
          latitudeDeg: lat,
          tiltDeg: tilt,
          albedoByMonth: flatAlbedo,
          horizonDeg: horizon,
        };
        const one = monthlyPoa({ ...site, azimuthDeg: azimuth }).poaDailyKWhPerM2ByMonth;
        const other = monthlyPoa({ ...site, azimuthDeg: 360 - azimuth }).poaDailyKWhPerM2ByMonth;
        one.forEach((poa, month) => {
          near(poa, other[month]!, { within: 1e-9 });
        });
      }),
      { numRuns: 100 },
    );
  });

  it("a higher horizon never gives more", () => {
    fc.assert(
      fc.property(latitudeDeg, tiltDeg, azimuthDeg, horizonDeg, horizonDeg, (lat, tilt, azimuth, h1, h2) => {
        const site = {
          ghiDailyKWhPerM2ByMonth: Array.from({ length: 12 }, () => 3),
          latitudeDeg: lat,
          tiltDeg: tilt,
          azimuthDeg: azimuth,
          albedoByMonth: flatAlbedo,
        };
        const low = monthlyPoa({ ...site, horizonDeg: Math.min(h1, h2) }).poaDailyKWhPerM2ByMonth;
        const high = monthlyPoa({ ...site, horizonDeg: Math.max(h1, h2) }).poaDailyKWhPerM2ByMonth;
        high.forEach((poa, month) => {
          expect(poa).toBeLessThanOrEqual(low[month]! + 1e-6);
        });
      }),
      { numRuns: 100 },
    );
  });

  it("the sky wholly open and the horizon just above it differ by nothing", () => {
    const site = {
      ghiDailyKWhPerM2ByMonth: [1, 2, 3, 4, 5, 6, 6, 5, 4, 3, 2, 1],
      latitudeDeg: 50,
      tiltDeg: 60,
      azimuthDeg: 130,
      albedoByMonth: flatAlbedo,
    };
    const open = monthlyPoa(site).poaDailyKWhPerM2ByMonth;
    const barely = monthlyPoa({ ...site, horizonDeg: 0.001 }).poaDailyKWhPerM2ByMonth;
    open.forEach((poa, month) => {
      near(barely[month]!, poa, { within: 0.001 });
    });
  });

  it("mirrored hemispheres give mirrored months, but for the ellipse of the orbit", () => {
    // half a year apart the declination is reversed and the sun is up to 3.4 % nearer or farther in distance
    // squared. With the same clearness on both sides the irradiation on the panel must follow the
    // extraterrestrial alone
    fc.assert(
      fc.property(between(5, 45), tiltDeg, (lat, tilt) => {
        const half = (sign: 1 | -1) => {
          const mean = (month: number) => MEAN_DAY_BY_MONTH[month]!.dayOfYear;
          const ghi = Array.from(
            { length: 12 },
            (_, month) =>
              0.5 * extraterrestrialDailyKWhPerM2({ dayOfYear: mean(month), latitudeDeg: sign * lat }),
          );
          const { poaDailyKWhPerM2ByMonth, extraterrestrialDailyKWhPerM2ByMonth } = monthlyPoa({
            ghiDailyKWhPerM2ByMonth: ghi,
            latitudeDeg: sign * lat,
            tiltDeg: tilt,
            azimuthDeg: sign > 0 ? 180 : 0,
            albedoByMonth: flatAlbedo,
          });
          return poaDailyKWhPerM2ByMonth.map(
            (poa, month) => poa / extraterrestrialDailyKWhPerM2ByMonth[month]!,
          );
        };
        const north = half(1);
        const south = half(-1);
        north.forEach((ratio, month) => {
          // mean days of months half a year apart differ by up to 2 deg of declination, much in winter and
          // far north
          near(south[(month + 6) % 12]! / ratio, 1, { within: 0.2 });
        });
        const year = (ratios: readonly number[]) => ratios.reduce((total, ratio) => total + ratio, 0);
        near(year(south) / year(north), 1, { within: 0.04 });
      }),
      { numRuns: 60 },
    );
  });

  it("polar night gives 0", () => {
    const { poaDailyKWhPerM2ByMonth, clearnessIndexByMonth } = monthlyPoa({
      ghiDailyKWhPerM2ByMonth: [0, 0.26, 1.54, 3.45, 4.6, 4.55, 4.38, 2.78, 1.25, 0.5, 0.03, 0],
      latitudeDeg: 71.29,
      tiltDeg: 80,
      azimuthDeg: 180,
      albedoByMonth: flatAlbedo,
    });
    expect(poaDailyKWhPerM2ByMonth[0]).toBe(0);
    expect(poaDailyKWhPerM2ByMonth[11]).toBe(0);
    expect(clearnessIndexByMonth[11]).toBe(0);
    expect(poaDailyKWhPerM2ByMonth[5]).toBeGreaterThan(2);
  });

  it("at the edges of its ranges it answers, one step beyond it throws", () => {
    const site = {
      ghiDailyKWhPerM2ByMonth: flatAlbedo,
      latitudeDeg: 90,
      tiltDeg: 90,
      azimuthDeg: 360,
      albedoByMonth: flatAlbedo,
      horizonDeg: 80,
    };
    expect(() => monthlyPoa(site)).not.toThrow();
    expect(() => monthlyPoa({ ...site, latitudeDeg: -90 })).not.toThrow();
    for (const beyond of [
      { latitudeDeg: 90.1 },
      { tiltDeg: 91 },
      { azimuthDeg: -1 },
      { azimuthDeg: 361 },
      { horizonDeg: 81 },
      { ghiDailyKWhPerM2ByMonth: [1] },
      { ghiDailyKWhPerM2ByMonth: [...flatAlbedo.slice(1), Number.NaN] },
      { albedoByMonth: [...flatAlbedo.slice(1), 1.1] },
    ]) {
      expect(() => monthlyPoa({ ...site, ...beyond })).toThrow(RangeFault);
    }
  });
});

describe("beamTiltRatio", () => {
  it("agrees with Klein's closed form toward the equator, both hemispheres (Duffie and Beckman eqs. 2.19.3)", () => {
    const rad = Math.PI / 180;
    const hold = (cosine: number) => Math.acos(Math.min(1, Math.max(-1, cosine)));
    const klein = (lat: number, tilt: number, declination: number): number => {
      // mirrored into the northern hemisphere
      const phi = Math.abs(lat) * rad;
      const delta = (lat < 0 ? -declination : declination) * rad;
      const beta = tilt * rad;
      const sunset = hold(-Math.tan(phi) * Math.tan(delta));
      const onPanel = Math.min(sunset, hold(-Math.tan(phi - beta) * Math.tan(delta)));
      const top =
        Math.cos(phi - beta) * Math.cos(delta) * Math.sin(onPanel) +
        onPanel * Math.sin(phi - beta) * Math.sin(delta);
      const level =
        Math.cos(phi) * Math.cos(delta) * Math.sin(sunset) + sunset * Math.sin(phi) * Math.sin(delta);
      return top / level;
    };
    fc.assert(
      fc.property(between(-65, 65), tiltDeg, between(-23.4, 23.4), (lat, tilt, declination) => {
        const got = beamTiltRatio({
          latitudeDeg: lat,
          declinationDeg: declination,
          tiltDeg: tilt,
          azimuthDeg: lat < 0 ? 0 : 180,
        });
        const expected = klein(lat, tilt, declination);
        near(got, expected, { within: 1e-9 + 1e-9 * expected });
      }),
    );
  });

  it("is the same seen in the mirror of the equator", () => {
    fc.assert(
      fc.property(
        latitudeDeg,
        tiltDeg,
        azimuthDeg,
        horizonDeg,
        between(-23.4, 23.4),
        (lat, tilt, azimuth, horizon, declination) => {
          const plane = { tiltDeg: tilt, horizonDeg: horizon };
          const one = beamTiltRatio({
            ...plane,
            latitudeDeg: lat,
            declinationDeg: declination,
            azimuthDeg: azimuth,
          });
          const mirrored = beamTiltRatio({
            ...plane,
            latitudeDeg: -lat,
            declinationDeg: -declination,
            azimuthDeg: azimuth <= 180 ? 180 - azimuth : 540 - azimuth,
          });
          near(mirrored, one, { within: 1e-6 * (1 + one) });
        },
      ),
    );
  });

  it("agrees with adding up the day minute by minute, any direction, with a horizon", () => {
    fc.assert(
      fc.property(
        between(-89, 89),
        tiltDeg,
        azimuthDeg,
        between(0, 40),
        between(-23.4, 23.4),
        (lat, tilt, azimuth, horizon, declinationDeg) => {
          let level = 0;
          let tilted = 0;
          for (let hourAngleDeg = -179.875; hourAngleDeg < 180; hourAngleDeg += 0.25) {
            const sun = sunDirection({ latitudeDeg: lat, declinationDeg, hourAngleDeg });
            if (sun.zenithDeg >= 90) continue;
            level += Math.cos((sun.zenithDeg * Math.PI) / 180);
            if (90 - sun.zenithDeg < horizon) continue;
            const plane = { tiltDeg: tilt, azimuthDeg: azimuth };
            const incidence = incidenceDeg({
              zenithDeg: sun.zenithDeg,
              sunAzimuthDeg: sun.azimuthDeg,
              ...plane,
            });
            tilted += Math.max(0, Math.cos((incidence * Math.PI) / 180));
          }
          fc.pre(level > 20);
          const got = beamTiltRatio({
            latitudeDeg: lat,
            declinationDeg,
            tiltDeg: tilt,
            azimuthDeg: azimuth,
            horizonDeg: horizon,
          });
          // a minute's step at the rim of the horizon is worth up to one sample of two
          near(got, tilted / level, { within: 2.5 / level });
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe("skyViewFrac", () => {
  it("is (1 + cos tilt) / 2 under a free sky and cos squared of the horizon lying flat", () => {
    fc.assert(
      fc.property(tiltDeg, horizonDeg, (tilt, horizon) => {
        near(skyViewFrac({ tiltDeg: tilt, horizonDeg: 0 }), (1 + Math.cos((tilt * Math.PI) / 180)) / 2, {
          within: 1e-12,
        });
        near(skyViewFrac({ tiltDeg: 0, horizonDeg: horizon }), Math.cos((horizon * Math.PI) / 180) ** 2, {
          within: 1e-4,
        });
      }),
    );
  });
  it("an upright plane sees half of the sky above a ring: (1 - (h + sin h cos h) 2/pi) / 2", () => {
    // worked by hand: integral of cos e cos e de da cos a over e above h and a quarter turn either side
    for (const horizon of [5, 20, 45, 70]) {
      const h = (horizon * Math.PI) / 180;
      const expected = 0.5 - (h + Math.sin(h) * Math.cos(h)) / Math.PI;
      near(skyViewFrac({ tiltDeg: 90, horizonDeg: horizon }), expected, { within: 1e-4 });
    }
  });
});

describe("bestTilt", () => {
  const ghi = [1.81, 2.77, 3.92, 4.66, 5.44, 6.28, 6.56, 5.67, 4.51, 2.96, 2.0, 1.56];
  const constant = Array.from({ length: 12 }, () => 100);
  const site = {
    ghiDailyKWhPerM2ByMonth: ghi,
    latitudeDeg: 42.075,
    albedoByMonth: flatAlbedo,
    dailyWhByMonth: constant,
  };

  it("no whole tilt within the bounds has a better worst month", () => {
    const best = bestTilt(site);
    for (let tilt = 10; tilt <= 80; tilt += 1) {
      const poa = monthlyPoa({ ...site, tiltDeg: tilt, azimuthDeg: 180 }).poaDailyKWhPerM2ByMonth;
      expect(Math.min(...poa) / 100).toBeLessThanOrEqual(best.worstRatioKWhPerM2PerWh + 1e-12);
    }
    expect(best.worstMonth).toBe(11);
    expect(best.azimuthDeg).toBe(180);
    expect(best.latitudeTilt.tiltDeg).toBe(42);
    expect(best.latitudeTilt.worstRatioKWhPerM2PerWh).toBeLessThan(best.worstRatioKWhPerM2PerWh);
  });

  it("constant load in the south: June rules, facing north, as steep as in the north", () => {
    const north = bestTilt(site);
    const south = bestTilt({
      ...site,
      latitudeDeg: -42.075,
      ghiDailyKWhPerM2ByMonth: [...ghi.slice(6), ...ghi.slice(0, 6)],
    });
    expect(south.azimuthDeg).toBe(0);
    expect(south.worstMonth).toBe(5);
    near(south.tiltDeg, north.tiltDeg, { within: 2 });
  });

  it("a load in summer alone wants a flat panel, in winter alone a steep one", () => {
    const summer = bestTilt({ ...site, dailyWhByMonth: [0, 0, 0, 0, 0, 100, 100, 0, 0, 0, 0, 0] });
    const winter = bestTilt({ ...site, dailyWhByMonth: [100, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 100] });
    expect(summer.tiltDeg).toBe(10);
    expect(winter.tiltDeg).toBeGreaterThan(60);
  });

  it("dark months do not set the tilt and are named", () => {
    const arctic = bestTilt({
      ...site,
      latitudeDeg: 71.29,
      ghiDailyKWhPerM2ByMonth: [0, 0.26, 1.54, 3.45, 4.6, 4.55, 4.38, 2.78, 1.25, 0.5, 0.03, 0],
    });
    expect(arctic.darkMonths).toEqual([0, 10, 11]);
    expect(arctic.worstRatioKWhPerM2PerWh).toBeGreaterThan(0);
  });

  it("refuses a year without demand", () => {
    expect(() => bestTilt({ ...site, dailyWhByMonth: Array.from({ length: 12 }, () => 0) })).toThrow(
      RangeFault,
    );
  });

  it("is the same for any unit of demand", () => {
    const big = bestTilt({ ...site, dailyWhByMonth: constant.map((wh) => wh * 37) });
    expect(big.tiltDeg).toBe(bestTilt(site).tiltDeg);
  });
});

describe("outside the atmosphere", () => {
  it("is never negative, and the hours add to the day", () => {
    fc.assert(
      fc.property(latitudeDeg, dayOfYear, (lat, day) => {
        const whole = extraterrestrialDailyKWhPerM2({ dayOfYear: day, latitudeDeg: lat });
        expect(whole).toBeGreaterThanOrEqual(0);
        // the pole in its summer: 24 h x 1.367 kW/m2 x 1.033 x sin 23.45 deg = 13.49
        expect(whole).toBeLessThan(13.5);
        let added = 0;
        for (let start = -180; start < 180; start += 15) {
          added += extraterrestrialSpanKWhPerM2({
            dayOfYear: day,
            latitudeDeg: lat,
            startHourAngleDeg: start,
            endHourAngleDeg: start + 15,
          });
        }
        near(added, whole, { within: 1e-9 });
      }),
    );
  });
  it("daylight north and south fill 24 h", () => {
    fc.assert(
      fc.property(latitudeDeg, dayOfYear, (lat, day) => {
        const north = daylightHours({ dayOfYear: day, latitudeDeg: lat });
        const south = daylightHours({ dayOfYear: day, latitudeDeg: -lat });
        near(north + south, 24, { within: 1e-6 });
      }),
    );
  });
});

describe("shares", () => {
  const index = between(0, 1.2);
  const sunset = between(0, 180);
  it("diffuse shares lie in 0..1, and fall as the month clears", () => {
    fc.assert(
      fc.property(index, index, sunset, (k1, k2, sunsetHourAngleDeg) => {
        const clearer = Math.max(k1, k2);
        const duller = Math.min(k1, k2);
        for (const frac of [
          dailyDiffuseFrac({ clearnessIndex: k1, sunsetHourAngleDeg }),
          hourlyDiffuseFrac(k1),
          monthlyDiffuseFrac({ clearnessIndex: k1, sunsetHourAngleDeg }),
        ]) {
          expect(frac).toBeGreaterThanOrEqual(0);
          expect(frac).toBeLessThanOrEqual(1);
        }
        expect(monthlyDiffuseFrac({ clearnessIndex: clearer, sunsetHourAngleDeg })).toBeLessThanOrEqual(
          monthlyDiffuseFrac({ clearnessIndex: duller, sunsetHourAngleDeg }) + 1e-12,
        );
      }),
    );
  });
  it("below a clearness of 0.3 the winter share stays within 0.03 of Page's 1 - 1.13 K", () => {
    for (const k of [0, 0.05, 0.1, 0.15, 0.2, 0.25, 0.3]) {
      near(monthlyDiffuseFrac({ clearnessIndex: k, sunsetHourAngleDeg: 65 }), 1 - 1.13 * k, { within: 0.03 });
    }
  });
  it("the hours of a day add to 1 within 0.03", () => {
    for (const lat of [-55, -30, 0, 20, 45, 55]) {
      for (const day of [17, 105, 198, 288, 344]) {
        const sunsetHourAngleDeg = sunsetHourAngleDeg_(lat, day);
        let global = 0;
        let diffuse = 0;
        // quarter hours, so that the pieces at sunrise and sunset count
        for (let hourAngleDeg = -178.125; hourAngleDeg < 180; hourAngleDeg += 3.75) {
          global += globalHourFrac({ hourAngleDeg, sunsetHourAngleDeg }) / 4;
          diffuse += diffuseHourFrac({ hourAngleDeg, sunsetHourAngleDeg }) / 4;
        }
        near(global, 1, { within: 0.03 });
        near(diffuse, 1, { within: 0.01 });
      }
    }
  });
  function sunsetHourAngleDeg_(lat: number, day: number): number {
    return sunsetHourAngleDeg({ latitudeDeg: lat, declinationDeg: cooperDeclinationDeg(day) });
  }
});

describe("position and times", () => {
  const utcMs = fc.integer({ min: -631_152_000, max: 4_102_444_800 }).map((s) => s * 1000);
  // sunrise may lie a day before the instant asked for
  const innerUtcMs = fc.integer({ min: -631_000_000, max: 4_102_300_000 }).map((s) => s * 1000);
  const longitudeDeg = between(-180, 180);
  it("is always a direction", () => {
    fc.assert(
      fc.property(utcMs, latitudeDeg, longitudeDeg, (ms, lat, lon) => {
        const sun = sunPosition({ utcMs: ms, latitudeDeg: lat, longitudeDeg: lon });
        expect(sun.zenithDeg).toBeGreaterThanOrEqual(-1e-9);
        expect(sun.zenithDeg).toBeLessThanOrEqual(180);
        expect(sun.azimuthDeg).toBeGreaterThanOrEqual(0);
        expect(sun.azimuthDeg).toBeLessThanOrEqual(360);
        expect(sun.zenithDeg).toBeLessThanOrEqual(sun.trueZenithDeg + 1e-9);
        expect(Math.abs(sun.hourAngleDeg)).toBeLessThanOrEqual(180);
      }),
    );
  });
  it("stands on the horizon at sunrise and sunset, and on the meridian between", () => {
    fc.assert(
      fc.property(innerUtcMs, between(-60, 60), longitudeDeg, (ms, lat, lon) => {
        const times = sunTimes({ utcMs: ms, latitudeDeg: lat, longitudeDeg: lon });
        expect(times.kind).toBe("rises-and-sets");
        expect(Math.abs(times.transitUtcMs - ms)).toBeLessThanOrEqual(12.5 * 3_600_000);
        const at = (instant: number) => sunPosition({ utcMs: instant, latitudeDeg: lat, longitudeDeg: lon });
        near(90 - at(times.sunriseUtcMs!).trueZenithDeg, -0.8333, { within: 0.01 });
        near(90 - at(times.sunsetUtcMs!).trueZenithDeg, -0.8333, { within: 0.01 });
        near(at(times.transitUtcMs).hourAngleDeg, 0, { within: 0.01 });
      }),
    );
  });
  it("says polar day and polar night", () => {
    const june = { utcMs: Date.UTC(2024, 5, 21, 12), longitudeDeg: 20 };
    expect(sunTimes({ ...june, latitudeDeg: 75 })).toMatchObject({ kind: "polar-day", sunriseUtcMs: null });
    expect(sunTimes({ ...june, latitudeDeg: -75 })).toMatchObject({ kind: "polar-night", sunsetUtcMs: null });
  });
});
