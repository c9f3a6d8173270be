import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { mean, RangeFault, sum } from "../../../src/core/numerics/index.ts";
import {
  hayDaviesPoa,
  incidenceDeg,
  modulePowerW,
  SOLAR_CONSTANT_W_PER_M2,
  spencerDeclinationDeg,
  spencerDistanceFactorRatio,
  sunDirection,
  weakLightRatio,
} from "../../../src/core/sun/index.ts";
import { planeYield, weatherYears } from "../../../src/core/weather/index.ts";
import { near, nearRatio } from "../../helpers/near.ts";
import { boston, santiago, tromso, zurich } from "./places.ts";

const albedoByMonth = Array.from({ length: 12 }, () => 0.2);
const weather = weatherYears({ ...boston, seed: 4, years: 2 });
const south = { weather, tiltDeg: 40, azimuthDeg: 180, albedoByMonth };
const open = planeYield(south);

describe("irradiance on the plane", () => {
  it("a flat plane under an open sky takes the level's light, hour by hour", () => {
    const flat = planeYield({ ...south, tiltDeg: 0 });
    const apart = flat.poaWPerM2.map((poa, hour) => Math.abs(poa - weather.ghiWPerM2[hour]!));
    expect(Math.max(...apart)).toBeLessThan(1e-6);
  });

  // the sun field's own transposition, held to pvlib there, at mid-hour; ours is the mean over the hour
  it("is Hay and Davies' hour by hour while the sun is well up", () => {
    let compared = 0;
    for (let hour = 0; hour < 8760; hour += 1) {
      const dayOfYear = Math.floor(hour / 24) + 1;
      const declinationDeg = spencerDeclinationDeg(dayOfYear);
      const sun = sunDirection({
        latitudeDeg: 42.4,
        declinationDeg,
        hourAngleDeg: 15 * ((hour % 24) - 11.5),
      });
      if (sun.zenithDeg > 72) continue;
      const ghiWPerM2 = weather.ghiWPerM2[hour]!;
      const diffuseWPerM2 = weather.diffuseWPerM2[hour]!;
      const { poaWPerM2 } = hayDaviesPoa({
        ghiWPerM2,
        diffuseWPerM2,
        beamNormalWPerM2: (ghiWPerM2 - diffuseWPerM2) / Math.cos((sun.zenithDeg * Math.PI) / 180),
        zenithDeg: sun.zenithDeg,
        incidenceDeg: incidenceDeg({ ...sun, sunAzimuthDeg: sun.azimuthDeg, tiltDeg: 40, azimuthDeg: 180 }),
        extraterrestrialNormalWPerM2: SOLAR_CONSTANT_W_PER_M2 * spencerDistanceFactorRatio(dayOfYear),
        tiltDeg: 40,
        albedo: 0.2,
      });
      nearRatio(open.poaWPerM2[hour]!, poaWPerM2, { withinFrac: 0.02 });
      compared += 1;
    }
    expect(compared).toBeGreaterThan(2500);
  });

  it("east and west share the day, in the south the north side is the bright one", () => {
    const total = (azimuthDeg: number, site = south) => sum(planeYield({ ...site, azimuthDeg }).poaWPerM2);
    nearRatio(total(90), total(270), { withinFrac: 1e-6 });
    expect(total(180)).toBeGreaterThan(1.3 * total(0));
    const andes = { ...south, weather: weatherYears({ ...santiago, seed: 4, years: 1 }) };
    expect(total(0, andes)).toBeGreaterThan(1.2 * total(180, andes));
  });

  it("under the midnight sun an upright panel to the north is bright at midnight", () => {
    // at 80 N the midnight sun of June stands 13 deg high in the north
    const arctic = weatherYears({ ...tromso, latitudeDeg: 80, seed: 2, years: 1 });
    const { poaWPerM2 } = planeYield({ ...south, weather: arctic, tiltDeg: 90, azimuthDeg: 0 });
    const midnights = Array.from({ length: 20 }, (_, i) => 24 * (162 + i));
    const ratios = midnights.map((hour) => poaWPerM2[hour]! / arctic.ghiWPerM2[hour]!);
    expect(Math.max(...ratios)).toBeGreaterThan(1.5);
    expect(Math.min(...ratios)).toBeLessThan(1.1);
    expect(poaWPerM2.subarray(350 * 24, 360 * 24).every((poa) => poa === 0)).toBe(true);
  });
});

describe("what stands round the panel", () => {
  const hill = [
    { azimuthDeg: 120, elevationDeg: 0 },
    { azimuthDeg: 120, elevationDeg: 30 },
    { azimuthDeg: 240, elevationDeg: 30 },
    { azimuthDeg: 240, elevationDeg: 0 },
  ];
  const shaded = planeYield({ ...south, horizon: hill });

  // at 42.4 N noon stands 24.2 deg high on 21 December and 71 deg on 21 June
  it("a hill of 30 deg in the south takes the beam of a winter noon and none of a summer noon", () => {
    const noon = (day: number) => 24 * day + 12;
    const winterDays = Array.from({ length: 20 }, (_, i) => noon(345 + i));
    const brightest = winterDays.reduce((a, b) => (open.poaWPerM2[a]! > open.poaWPerM2[b]! ? a : b));
    expect(shaded.poaWPerM2[brightest]).toBeLessThan(0.35 * open.poaWPerM2[brightest]!);
    const summer = noon(172);
    expect(shaded.poaWPerM2[summer]).toBeGreaterThan(0.85 * open.poaWPerM2[summer]!);
    expect(shaded.poaWPerM2[summer]).toBeLessThan(open.poaWPerM2[summer]!);
  });

  it("a level ring said as a ring or as a profile is the same", () => {
    const ring = planeYield({ ...south, horizonDeg: 12 });
    const profile = planeYield({ ...south, horizon: [{ azimuthDeg: 77, elevationDeg: 12 }] });
    const apart = ring.poaWPerM2.map((poa, hour) => Math.abs(profile.poaWPerM2[hour]! - poa));
    expect(Math.max(...apart)).toBeLessThan(0.01);
  });

  it("a higher ring never gives more light, in any hour", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 19 }),
        (low, more) => {
          const lower = planeYield({ ...south, horizonDeg: low });
          const higher = planeYield({ ...south, horizonDeg: low + (Number.isNaN(more) ? 1 : more) });
          return higher.poaWPerM2.every((poa, hour) => poa <= lower.poaWPerM2[hour]! + 1e-6);
        },
      ),
      { numRuns: 15 },
    );
  });
});

describe("the module", () => {
  it("power and current are those of the sun field for the light behind the glass", () => {
    for (let hour = 0; hour < 8760; hour += 7) {
      const cellTempC = open.cellTempC[hour]!;
      // the light behind the glass, back from the current: 0.0005 per kelvin
      const effectiveWPerM2 = (1000 * open.currentAPerRatedA[hour]!) / (1 + 0.0005 * (cellTempC - 25));
      const power = modulePowerW({
        ratedW: 1,
        poaWPerM2: effectiveWPerM2,
        cellTempC,
        powerTempCoefficientPerK: -0.004,
      });
      near(open.powerWPerRatedW[hour]!, power * weakLightRatio({ effectiveWPerM2 }), { within: 1e-4 });
      expect(effectiveWPerM2).toBeLessThanOrEqual(open.poaWPerM2[hour]! + 1e-9);
    }
  });

  // Sandia open rack, glass and polymer, 2 m/s: exp(-3.56 - 0.15) + 0.003 = 0.0275 K per W/m2, worked by hand
  it("cells stand 27.5 K above the air in full light, at the air's own temperature at night", () => {
    const bright = open.poaWPerM2.reduce((best, poa, hour) => (poa > open.poaWPerM2[best]! ? hour : best), 0);
    const riseK = open.cellTempC[bright]! - weather.ambientTempC[bright]!;
    near(riseK / open.poaWPerM2[bright]!, 0.02748, { within: 2e-5 });
    expect(open.cellTempC[0]).toBe(weather.ambientTempC[0]);
  });

  it("dirt takes its share of the light, wind cools, a steeper coefficient loses in heat", () => {
    const dirty = planeYield({ ...south, soilingLossFrac: 0.1, windMPerS: 2 });
    nearRatio(sum(dirty.currentAPerRatedA), 0.9 * sum(open.currentAPerRatedA), { withinFrac: 0.005 });
    const windy = planeYield({ ...south, windMPerS: 10 });
    expect(sum(windy.powerWPerRatedW)).toBeGreaterThan(sum(open.powerWPerRatedW));
    const noon = 24 * 190 + 12;
    const steep = planeYield({ ...south, powerTempCoefficientPerK: -0.005 });
    expect(steep.powerWPerRatedW[noon]).toBeLessThan(open.powerWPerRatedW[noon]!);
  });
});

describe("snow", () => {
  const long = weatherYears({ ...zurich, seed: 4, years: 30 });
  const snowCoveredFracByMonth = [0.4, 0.2, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1];
  const panel = { ...south, weather: long, snowCoveredFracByMonth };
  const snowy = planeYield({ ...panel, seed: 8 });
  const isCovered = (i: number): boolean =>
    snowy.powerWPerRatedW.subarray(i * 24, i * 24 + 24).every((power) => power === 0);
  const ofMonth = (first: number, days: number): readonly boolean[] =>
    Array.from({ length: 30 * days }, (_, i) => isCovered(Math.floor(i / days) * 365 + first + (i % days)));

  it("covers a month's share of days, as a whole and in spells", () => {
    const january = ofMonth(0, 31);
    near(mean(january.map(Number)), 0.4, { within: 0.08 });
    near(mean(ofMonth(31, 28).map(Number)), 0.2, { within: 0.08 });
    expect(ofMonth(59, 275).some(Boolean)).toBe(false);
    expect(ofMonth(334, 31).every(Boolean)).toBe(true);
    const begins = january.filter((covered, i) => covered && january[i - 1] !== true).length;
    const spellDays = january.filter(Boolean).length / begins;
    expect(spellDays).toBeGreaterThan(2.5);
    expect(spellDays).toBeLessThan(8);
  });

  it("the light on the plane stays, the seed decides which days", () => {
    const bare = planeYield({ ...south, weather: long });
    expect(sum(snowy.poaWPerM2)).toBe(sum(bare.poaWPerM2));
    expect(Array.from(planeYield({ ...panel, seed: 8 }).powerWPerRatedW)).toEqual(
      Array.from(snowy.powerWPerRatedW),
    );
    expect(sum(planeYield({ ...panel, seed: 9 }).powerWPerRatedW)).not.toBe(sum(snowy.powerWPerRatedW));
  });
});

it("any latitude, any plane: finite, never negative, never far beyond the rating", () => {
  const angle = (max: number) => fc.double({ min: 0, max, noNaN: true });
  fc.assert(
    fc.property(
      fc.oneof(fc.double({ min: -90, max: 90, noNaN: true }), fc.constantFrom(-90, -66.56, 0, 66.56, 90)),
      angle(90),
      angle(360),
      angle(80),
      fc.nat(),
      (latitudeDeg, tiltDeg, azimuthDeg, horizonDeg, seed) => {
        const anywhere = weatherYears({ ...zurich, latitudeDeg, seed, years: 1 });
        const found = planeYield({ ...south, weather: anywhere, tiltDeg, azimuthDeg, horizonDeg });
        return found.poaWPerM2.every(
          (poa, hour) =>
            poa >= 0 &&
            poa < 1600 &&
            found.powerWPerRatedW[hour]! >= 0 &&
            found.powerWPerRatedW[hour]! < 1.7 &&
            found.currentAPerRatedA[hour]! >= 0 &&
            Number.isFinite(found.cellTempC[hour]),
        );
      },
    ),
    { numRuns: 25 },
  );
});

it.each([
  ["a tilt beyond upright", { tiltDeg: 91 }],
  ["an azimuth of no compass", { azimuthDeg: 361 }],
  ["a white hole", { albedoByMonth: albedoByMonth.map(() => 1.1) }],
  ["eleven months of snow", { snowCoveredFracByMonth: albedoByMonth.slice(1) }],
  ["dirt that takes all", { soilingLossFrac: 1 }],
])("refuses %s", (_, wrong) => {
  expect(() => planeYield({ ...south, ...wrong })).toThrow(RangeFault);
});
