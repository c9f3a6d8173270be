import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  availability,
  bestRate,
  exposureDistanceM,
  freeSpaceLossDb,
  fresnelRadiusM,
  gasDbPerKm,
  multipathExceededFrac,
  powerDensityWPerM2,
  rainDbPerKm,
  rainExceededDb,
  rainOutage,
} from "../../../src/core/link/index.ts";
import { near, nearRatio } from "../../helpers/near.ts";

const distance = fc.double({ min: 1, max: 1_000_000, noNaN: true });
const frequency = fc.double({ min: 30, max: 300_000, noNaN: true });
const stretch = fc.double({ min: 1.001, max: 3, noNaN: true });

describe("free space", () => {
  it("loses more with distance and with frequency", () => {
    fc.assert(
      fc.property(distance, frequency, stretch, (distanceM, frequencyMHz, by) => {
        const loss = freeSpaceLossDb({ distanceM, frequencyMHz });
        expect(loss).toBeGreaterThanOrEqual(0);
        if (distanceM * by <= 1_000_000) {
          expect(freeSpaceLossDb({ distanceM: distanceM * by, frequencyMHz })).toBeGreaterThanOrEqual(loss);
        }
        if (frequencyMHz * by <= 300_000) {
          expect(freeSpaceLossDb({ distanceM, frequencyMHz: frequencyMHz * by })).toBeGreaterThanOrEqual(
            loss,
          );
        }
      }),
    );
  });

  it("twice the distance is 6.02 dB", () => {
    const at = (distanceM: number) => freeSpaceLossDb({ distanceM, frequencyMHz: 5800 });
    near(at(2000) - at(1000), 20 * Math.log10(2), { within: 1e-9 });
  });

  it("refuses one step beyond each edge", () => {
    expect(() => freeSpaceLossDb({ distanceM: 0.9, frequencyMHz: 5800 })).toThrow("distanceM");
    expect(() => freeSpaceLossDb({ distanceM: 1000, frequencyMHz: 29 })).toThrow("frequencyMHz");
    expect(() => freeSpaceLossDb({ distanceM: Number.NaN, frequencyMHz: 5800 })).toThrow("distanceM");
  });
});

describe("Fresnel zone", () => {
  it("is the same from either end, widest in the middle", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 100_000, noNaN: true }),
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        frequency,
        (pathM, share, frequencyMHz) => {
          const fromNearM = pathM * share;
          const fromFarM = pathM - fromNearM;
          const radius = fresnelRadiusM({ fromNearM, fromFarM, frequencyMHz });
          nearRatio(fresnelRadiusM({ fromNearM: fromFarM, fromFarM: fromNearM, frequencyMHz }), radius, {
            withinFrac: 1e-9,
          });
          const middle = fresnelRadiusM({ fromNearM: pathM / 2, fromFarM: pathM / 2, frequencyMHz });
          expect(radius).toBeLessThanOrEqual(middle * (1 + 1e-9));
        },
      ),
    );
  });
});

const rainPath = fc.record({
  distanceM: fc.double({ min: 1, max: 60_000, noNaN: true }),
  frequencyMHz: fc.double({ min: 300, max: 100_000, noNaN: true }),
  rainMmPerH: fc.double({ min: 0, max: 300, noNaN: true }),
  polarisationTiltDeg: fc.double({ min: 0, max: 180, noNaN: true }),
});

describe("rain", () => {
  it("more rain never attenuates less, at any frequency", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1000, max: 1_000_000, noNaN: true }),
        fc.double({ min: 0, max: 100, noNaN: true }),
        stretch,
        (frequencyMHz, rainMmPerH, by) => {
          const given = { frequencyMHz, polarisationTiltDeg: 90 };
          expect(rainDbPerKm({ ...given, rainMmPerH: rainMmPerH * by })).toBeGreaterThanOrEqual(
            rainDbPerKm({ ...given, rainMmPerH }),
          );
        },
      ),
    );
  });

  it("rarer rain takes more, over the whole range of the law", () => {
    fc.assert(
      fc.property(rainPath, fc.double({ min: -5, max: -2, noNaN: true }), stretch, (path, exponent, by) => {
        const often = Math.max(1e-5, 10 ** exponent);
        const rarely = Math.max(1e-5, often / by);
        expect(rainExceededDb({ ...path, exceededFrac: rarely })).toBeGreaterThanOrEqual(
          rainExceededDb({ ...path, exceededFrac: often }) - 1e-12,
        );
      }),
    );
  });

  it("a margin equal to the rain of a fraction is out for just that fraction", () => {
    fc.assert(
      fc.property(rainPath, fc.double({ min: -4.99, max: -2.01, noNaN: true }), (path, exponent) => {
        const exceededFrac = 10 ** exponent;
        const marginDb = rainExceededDb({ ...path, exceededFrac });
        fc.pre(marginDb > 1e-6 && marginDb < 300);
        const outage = rainOutage({ ...path, marginDb });
        expect(outage.certainty).toBe("computed");
        nearRatio(outage.outageFrac, exceededFrac, { withinFrac: 1e-6 });
      }),
    );
  });

  it("no margin: always out; no rain: never; beyond the law: says which side", () => {
    const path = { distanceM: 1000, frequencyMHz: 60_480, rainMmPerH: 42, polarisationTiltDeg: 90 };
    expect(rainOutage({ ...path, marginDb: 0 })).toEqual({ outageFrac: 1, certainty: "computed" });
    expect(rainOutage({ ...path, rainMmPerH: 0, marginDb: 1 })).toEqual({
      outageFrac: 0,
      certainty: "computed",
    });
    expect(rainOutage({ ...path, marginDb: 60 })).toEqual({ outageFrac: 1e-5, certainty: "at-most" });
    expect(rainOutage({ ...path, marginDb: 0.5 })).toEqual({ outageFrac: 1e-2, certainty: "at-least" });
  });
});

describe("clear-air fading", () => {
  it("a deeper fade is never more frequent, and its time is a fraction", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -8, max: 0.7, noNaN: true }),
        fc.double({ min: 0, max: 95, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        (logOccurrence, fadeDb, more) => {
          const occurrenceFrac = 10 ** logOccurrence;
          const shallow = multipathExceededFrac({ occurrenceFrac, fadeDb });
          const deep = multipathExceededFrac({ occurrenceFrac, fadeDb: fadeDb + more });
          expect(shallow).toBeLessThanOrEqual(1);
          expect(deep).toBeGreaterThanOrEqual(0);
          expect(deep).toBeLessThanOrEqual(shallow * (1 + 1e-6) + 1e-15);
        },
      ),
    );
  });

  it("every curve starts at 100 (1 - 1/e) % for 0 dB", () => {
    for (const occurrenceFrac of [1e-4, 1e-2, 1]) {
      near(multipathExceededFrac({ occurrenceFrac, fadeDb: 0 }), 1 - 1 / Math.E, { within: 1e-9 });
    }
  });
});

const climate = {
  distanceM: 12_000,
  frequencyMHz: 5800,
  rainMmPerH: 42,
  polarisationTiltDeg: 90,
  nearAntennaM: 60,
  farAntennaM: 30,
  latitudeDeg: 51.5,
  gradientNPerKm: -200,
  roughnessM: 40,
};

describe("hours without a link", () => {
  it("more margin never means more of them, and no number leaves its range", () => {
    fc.assert(
      fc.property(
        rainPath,
        fc.double({ min: -50, max: 120, noNaN: true }),
        fc.double({ min: 0, max: 30, noNaN: true }),
        fc.double({ min: -90, max: 90, noNaN: true }),
        (path, marginDb, more, latitudeDeg) => {
          const link = { ...climate, ...path, latitudeDeg };
          const less = availability({ ...link, marginDb });
          const most = availability({ ...link, marginDb: marginDb + more });
          expect(less.outageFrac).toBeGreaterThanOrEqual(0);
          expect(less.outageFrac).toBeLessThanOrEqual(1);
          near(less.availabilityFrac + less.outageFrac, 1, { within: 1e-12 });
          near(less.outageHPerYear, less.outageFrac * 8760, { within: 1e-6 });
          expect(most.outageFrac).toBeLessThanOrEqual(less.outageFrac * (1 + 1e-6) + 1e-15);
        },
      ),
    );
  });

  it("adds the times of rain and multipath, not their decibels", () => {
    const found = availability({ ...climate, marginDb: 15 });
    near(found.outageFrac, found.rain.outageFrac + found.multipathOutageFrac, { within: 1e-15 });
    expect(found.multipathOutageFrac).toBeGreaterThan(0);
  });

  it("up to 5 km only rain counts", () => {
    expect(availability({ ...climate, distanceM: 5000, marginDb: 15 }).multipathOutageFrac).toBe(0);
    expect(availability({ ...climate, distanceM: 5001, marginDb: 15 }).multipathOutageFrac).toBeGreaterThan(
      0,
    );
  });

  it("without margin the link is always down", () => {
    expect(availability({ ...climate, marginDb: -1 })).toMatchObject({ outageFrac: 1, outageHPerYear: 8760 });
  });
});

describe("other laws", () => {
  it("gas: finite and positive over the whole range", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1000, max: 350_000, noNaN: true }),
        fc.double({ min: -60, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 60, noNaN: true }),
        (frequencyMHz, tempC, vapourGPerM3) => {
          const { oxygenDbPerKm, vapourDbPerKm } = gasDbPerKm({ frequencyMHz, tempC, vapourGPerM3 });
          expect(oxygenDbPerKm).toBeGreaterThan(0);
          expect(vapourDbPerKm).toBeGreaterThanOrEqual(0);
          expect(Number.isFinite(oxygenDbPerKm + vapourDbPerKm)).toBe(true);
        },
      ),
    );
  });

  it("a stronger signal never gets a slower rate", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("802.11n" as const, "802.11ac" as const, "802.11ax" as const),
        fc.constantFrom(20 as const, 40 as const),
        fc.integer({ min: 1, max: 4 }),
        fc.double({ min: -120, max: 0, noNaN: true }),
        fc.double({ min: 0, max: 30, noNaN: true }),
        (standard, widthMHz, streams, rxLevelDbm, more) => {
          const air = { standard, widthMHz, streams, fadeMarginDb: 10 };
          const weak = bestRate({ ...air, rxLevelDbm });
          const strong = bestRate({ ...air, rxLevelDbm: rxLevelDbm + more });
          expect(strong?.phyMbps ?? 0).toBeGreaterThanOrEqual(weak?.phyMbps ?? 0);
          if (weak) expect(weak.marginDb).toBeGreaterThanOrEqual(10);
        },
      ),
    );
  });

  it("at the exposure distance the density is the limit", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 90, noNaN: true }),
        fc.double({ min: 0.1, max: 1000, noNaN: true }),
        fc.double({ min: 1, max: 4, noNaN: true }),
        (eirpDbm, limitWPerM2, reflectionRatio) => {
          const distanceM = exposureDistanceM({ eirpDbm, limitWPerM2, reflectionRatio });
          fc.pre(distanceM >= 0.01);
          nearRatio(powerDensityWPerM2({ eirpDbm, distanceM, reflectionRatio }), limitWPerM2, {
            withinFrac: 1e-9,
          });
        },
      ),
    );
  });
});
