// Worked examples of Duffie and Beckman, Solar Engineering of Thermal Processes. Their azimuth is 0 = south,
// west positive: ours is 180 more. Where a source is a public repository that quotes the book, it is
// aqreed/solarpy, tests/test_radiation.py.
import { describe, expect, it } from "vitest";
import {
  cooperDeclinationDeg,
  equationOfTimeMin,
  extraterrestrialDailyKWhPerM2,
  extraterrestrialSpanKWhPerM2,
  incidenceDeg,
  MEAN_DAY_BY_MONTH,
  monthlyDiffuseFrac,
  spencerDeclinationDeg,
  sunDirection,
  sunsetHourAngleDeg,
} from "../../../src/core/sun/index.ts";
import { near } from "../../helpers/near.ts";

const MJ_PER_KWH = 3.6;

/** Sun over 43 N at a solar time, with the book's declination of the day. */
function sunAtSolarHour(dayOfYear: number, solarHour: number) {
  const declinationDeg = cooperDeclinationDeg(dayOfYear);
  return sunDirection({ latitudeDeg: 43, declinationDeg, hourAngleDeg: 15 * (solarHour - 12) });
}

describe("chapter 1, geometry", () => {
  it("1.5.1: equation of time on 3 February is -13.5 min", () => {
    near(equationOfTimeMin(34), -13.5, { within: 0.05 });
  });
  it("1.6.1: declination -14 on 13 February; incidence 35 deg at 10:30 on a plane of 45 deg, 15 deg west of south", () => {
    near(cooperDeclinationDeg(44), -14, { within: 0.1 });
    const sun = sunAtSolarHour(44, 10.5);
    const plane = {
      zenithDeg: sun.zenithDeg,
      sunAzimuthDeg: sun.azimuthDeg,
      tiltDeg: 45,
      azimuthDeg: 195,
    };
    near(incidenceDeg(plane), 35, { within: 0.25 });
  });
  it.each([
    { id: "1.6.2a", dayOfYear: 44, hour: 9.5, zenithDeg: 66.5, azimuthDeg: -40.0 },
    { id: "1.6.2b", dayOfYear: 182, hour: 18.5, zenithDeg: 79.6, azimuthDeg: 112.0 },
    { id: "1.6.3", dayOfYear: 75, hour: 16, zenithDeg: 70.3, azimuthDeg: 66.8 },
  ])("$id: zenith and azimuth", ({ dayOfYear, hour, zenithDeg, azimuthDeg }) => {
    const sun = sunAtSolarHour(dayOfYear, hour);
    near(sun.zenithDeg, zenithDeg, { within: 0.06 });
    // the book rounds the declination to -14 in 1.6.2a: 0.11 deg of azimuth
    near(sun.azimuthDeg - 180, azimuthDeg, { within: 0.12 });
  });
  it("1.6.3: declination -2.4 and sunset hour angle 87.8 on 16 March", () => {
    near(cooperDeclinationDeg(75), -2.4, { within: 0.05 });
    near(sunsetHourAngleDeg({ latitudeDeg: 43, declinationDeg: -2.4 }), 87.8, { within: 0.05 });
  });
  it("1.10.1: declination 9.4, sunset 98.9, H0 33.8 MJ/m2 on 15 April (from memory, reproduced from the equations)", () => {
    near(cooperDeclinationDeg(105), 9.4, { within: 0.05 });
    near(sunsetHourAngleDeg({ latitudeDeg: 43, declinationDeg: 9.4 }), 98.9, { within: 0.05 });
    const h0 = extraterrestrialDailyKWhPerM2({ dayOfYear: 105, latitudeDeg: 43 });
    near(h0 * MJ_PER_KWH, 33.8, { within: 0.05 });
  });
  it("1.10.2: I0 3.79 MJ/m2 from 10 to 11 h the same day (from memory, reproduced)", () => {
    const i0 = extraterrestrialSpanKWhPerM2({
      dayOfYear: 105,
      latitudeDeg: 43,
      startHourAngleDeg: -30,
      endHourAngleDeg: -15,
    });
    near(i0 * MJ_PER_KWH, 3.79, { within: 0.005 });
  });
});

describe("table 1.6.1: mean days and their declination", () => {
  // day of month as quoted in several public source files that cite Klein 1977; declination re-derived by
  // Cooper
  const dayOfMonth = [17, 16, 16, 15, 15, 11, 17, 16, 15, 15, 14, 10];
  const declinationDeg = [-20.9, -13, -2.4, 9.4, 18.8, 23.1, 21.2, 13.5, 2.2, -9.6, -18.9, -23];
  it("agrees in every month", () => {
    expect(MEAN_DAY_BY_MONTH).toHaveLength(12);
    MEAN_DAY_BY_MONTH.forEach(({ dayOfYear, firstDayOfYear }, month) => {
      expect(dayOfYear - firstDayOfYear + 1).toBe(dayOfMonth[month]);
      near(cooperDeclinationDeg(dayOfYear), declinationDeg[month]!, { within: 0.051 });
    });
  });
  it("the months fill the year without gap", () => {
    let next = 1;
    for (const { firstDayOfYear, days } of MEAN_DAY_BY_MONTH) {
      expect(firstDayOfYear).toBe(next);
      next += days;
    }
    expect(next).toBe(366);
  });
});

describe("table 1.10.1 style: H0 on mean days, MJ/m2", () => {
  // independent re-derivation with 1367 W/m2; agrees with the remembered table within 0.1 to 0.2
  const rows: readonly (readonly [number, readonly number[]])[] = [
    [60, [3.4, 8.5, 16.8, 27.5, 36.6, 41.0, 38.9, 31.0, 20.6, 10.9, 4.5, 2.3]],
    [45, [12.1, 17.6, 25.0, 33.2, 39.2, 41.8, 40.4, 35.5, 27.9, 19.8, 13.4, 10.7]],
    [40, [15.2, 20.5, 27.4, 34.6, 39.7, 41.8, 40.7, 36.5, 30.0, 22.5, 16.4, 13.8]],
    [20, [26.9, 30.7, 34.8, 37.9, 39.3, 39.5, 39.3, 38.3, 35.8, 31.8, 27.8, 25.8]],
    [0, [36.2, 37.5, 37.9, 36.8, 34.8, 33.5, 33.9, 35.7, 37.2, 37.4, 36.4, 35.7]],
    [-20, [41.8, 40.0, 36.5, 31.4, 26.6, 24.2, 25.1, 29.1, 34.2, 38.6, 41.1, 42.1]],
    [-35, [43.2, 38.9, 32.5, 24.9, 18.6, 15.8, 17.0, 22.0, 29.2, 36.5, 41.9, 44.2]],
  ];
  it.each(rows)("latitude %d", (latitudeDeg, expectedMj) => {
    expectedMj.forEach((expected, month) => {
      const { dayOfYear } = MEAN_DAY_BY_MONTH[month]!;
      near(extraterrestrialDailyKWhPerM2({ dayOfYear, latitudeDeg }) * MJ_PER_KWH, expected, {
        within: 0.051,
      });
    });
  });
});

describe("Cooper and Spencer, days of the year", () => {
  // computed independently from the printed series; Spencer's sine and E are those of cran/solaR, R/fSolD.R
  it.each([
    [1, -23.012, -23.059, -2.9],
    [80, -0.404, -0.066, -7.86],
    [172, 23.45, 23.452, -1.32],
    [266, -1.009, 0.249, 7.64],
    [355, -23.45, -23.42, 2.17],
  ])("day %d", (dayOfYear, cooperDeg, spencerDeg, equationMin) => {
    near(cooperDeclinationDeg(dayOfYear), cooperDeg, { within: 0.00051 });
    near(spencerDeclinationDeg(dayOfYear), spencerDeg, { within: 0.00051 });
    near(equationOfTimeMin(dayOfYear), equationMin, { within: 0.0051 });
  });
});

describe("monthly diffuse share against published pairs", () => {
  // Global and diffuse irradiation of typical years, Wh/m2 per day, from the .stat summaries of
  // ladybug-tools/ladybug and urbanopt, one place each. These years hold 11 to 15 % more diffuse light than
  // Erbs promises from their global, single months up to 26 % more: that is why the monthly method stands
  // above hourly sums in winter. The band states that shortfall.
  const sites = [
    {
      name: "Chicago O'Hare",
      latitudeDeg: 41.98,
      global: [1764, 2493, 3440, 4394, 5976, 6294, 6177, 5161, 4193, 2941, 1819, 1504],
      diffuse: [956, 1330, 1740, 2057, 2539, 2690, 2800, 2422, 1861, 1394, 1089, 799],
    },
    {
      name: "Tokyo-Hyakuri",
      latitudeDeg: 36.17,
      global: [2523, 3148, 3542, 4606, 4792, 4140, 4394, 4811, 3473, 2930, 2487, 2087],
      diffuse: [1127, 1378, 1895, 2310, 2686, 2688, 3220, 2674, 2362, 1696, 1160, 967],
    },
    {
      name: "Atlanta",
      latitudeDeg: 33.63,
      global: [2777, 3328, 4649, 5741, 6320, 6731, 6306, 5815, 4361, 3836, 2953, 2525],
      diffuse: [1181, 1249, 1860, 2300, 2827, 2936, 2889, 2773, 2018, 1277, 1267, 1089],
    },
  ];
  it.each(sites)("$name", ({ latitudeDeg, global, diffuse }) => {
    let ours = 0;
    let published = 0;
    global.forEach((globalWh, month) => {
      const { dayOfYear } = MEAN_DAY_BY_MONTH[month]!;
      const clearnessIndex = globalWh / 1000 / extraterrestrialDailyKWhPerM2({ dayOfYear, latitudeDeg });
      const sunsetDeg = sunsetHourAngleDeg({ latitudeDeg, declinationDeg: cooperDeclinationDeg(dayOfYear) });
      const oursWh = globalWh * monthlyDiffuseFrac({ clearnessIndex, sunsetHourAngleDeg: sunsetDeg });
      near(oursWh / diffuse[month]!, 0.95, { within: 0.25 });
      ours += oursWh;
      published += diffuse[month]!;
    });
    near(ours / published, 0.875, { within: 0.025 });
  });
});
