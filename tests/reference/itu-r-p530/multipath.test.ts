import { describe, expect, it } from "vitest";
import {
  averageTerrainLossDb,
  barnettVigantsFrac,
  multipathExceededFrac,
  multipathOccurrenceByMapFrac,
  multipathOccurrenceFrac,
  multipathOccurrenceQuickFrac,
  yearFromWorstMonthFrac,
} from "../../../src/core/link/index.ts";
import { nearRatio } from "../../helpers/near.ts";

const path = { distanceM: 20_000, frequencyMHz: 5800, nearAntennaM: 60, farAntennaM: 30 };

/** Source: Recommendation ITU-R P.530-17 clause 2.3.1. How: worked by hand from the printed equations. */
describe("multipath occurrence, older method", () => {
  it("gradient -200, roughness 50 m: 0.838 719 % at 0 dB", () => {
    const p0 = multipathOccurrenceFrac({ ...path, gradientNPerKm: -200, roughnessM: 50 });
    nearRatio(p0, 0.00838719, { withinFrac: 1e-6 });
  });

  it("quick form: 1.106 36 % at 0 dB", () => {
    const p0 = multipathOccurrenceQuickFrac({ ...path, gradientNPerKm: -200 });
    nearRatio(p0, 0.0110636, { withinFrac: 1e-5 });
  });

  /**
   * Source: ITU-Rpy 0.4.0 (P.530-17), multipath_loss_for_A, with the gradient and roughness of its own grids as inputs
   * here. How: library with version.
   */
  it.each([
    [60, 30, 20, 5.8, 30, -121.84208000000008, 39.944000000000074, 0.0005613548239813758],
    [700, 640, 12, 11, 25, -191.80523911111112, 257.3191999999993, 5.1984619813007914e-5],
    [20, 15, 30, 6, 25, -142.49905738666837, 1.5134399999999992, 0.03638908882047999],
    [90, 40, 8, 7.5, 20, -174.78293493333345, 232.07364000000015, 6.75001742195142e-5],
  ])(
    "%d m to %d m, %d km, %d GHz, %d dB",
    (nearM, farM, km, gigahertz, fadeDb, gradient, roughness, percent) => {
      const p0 = multipathOccurrenceFrac({
        distanceM: km * 1000,
        frequencyMHz: gigahertz * 1000,
        nearAntennaM: nearM,
        farAntennaM: farM,
        gradientNPerKm: gradient,
        roughnessM: roughness,
      });
      nearRatio(p0 * 10 ** (-fadeDb / 10) * 100, percent, { withinFrac: 1e-9 });
    },
  );
});

/** Source: Recommendation ITU-R P.530-18 clause 2.3.1, map values of Taipei. How: worked by hand from the equations. */
describe("multipath occurrence, present method", () => {
  it("logK -5.24, dN75 11.6, ground 10 m: 1.064 94 % at 0 dB", () => {
    const p0 = multipathOccurrenceByMapFrac({ ...path, logK: -5.24, dN75NPerKm: 11.6, terrainM: 10 });
    nearRatio(p0, 0.0106494, { withinFrac: 1e-5 });
  });

  /** How: independent re-derivation in Python: v = 0.414 045 is held at its limit 0.261 310; 76 800.95 %. */
  it("low antennas under a strong duct are held by the limit of the duct term", () => {
    const low = { ...path, nearAntennaM: 15, farAntennaM: 12 };
    const p0 = multipathOccurrenceByMapFrac({ ...low, logK: -5.24, dN75NPerKm: 30, terrainM: 10 });
    nearRatio(p0, 768.009524100466, { withinFrac: 1e-9 });
  });
});

/** Source: Recommendation ITU-R P.530 clause 2.3.1: "can be set to zero for shorter paths". */
describe("paths up to 5 km", () => {
  it("have no multipath outage by any of the three forms", () => {
    const short = { ...path, distanceM: 5000, gradientNPerKm: -200, roughnessM: 50 };
    expect(multipathOccurrenceFrac(short)).toBe(0);
    expect(multipathOccurrenceQuickFrac(short)).toBe(0);
    expect(multipathOccurrenceByMapFrac({ ...short, logK: -5.24, dN75NPerKm: 11.6, terrainM: 10 })).toBe(0);
    expect(multipathExceededFrac({ occurrenceFrac: 0, fadeDb: 0 })).toBe(0);
  });
});

/** Source: Recommendation ITU-R P.530 clause 2.3.2 (its figure 3). How: worked from the printed equations. In per cent. */
describe("all fade depths, 0, 5, 10, 15, 20, 25, 30 dB", () => {
  it.each([
    [0.01, [63.21, 0.1196, 0.004129, 0.000497, 0.000106, 3.16e-5, 1e-5]],
    [0.1, [63.21, 0.3624, 0.02329, 0.003964, 0.001011, 3.16e-4, 1e-4]],
    [1, [63.21, 1.0824, 0.12882, 0.0309, 0.009376, 0.003162, 0.001]],
    [10, [63.21, 3.1933, 0.70504, 0.2383, 0.08598, 0.03076, 0.01]],
    [100, [63.21, 9.2366, 3.8174, 1.8299, 0.7884, 0.2997, 0.1]],
  ])("p0 = %d %%", (p0Percent, row) => {
    row.forEach((percent, i) => {
      // three digits are printed
      const found = multipathExceededFrac({ occurrenceFrac: p0Percent / 100, fadeDb: 5 * i }) * 100;
      nearRatio(found, percent, { withinFrac: 0.005 });
    });
  });
});

/** Source: Recommendation ITU-R P.530 clause 2.3.4. How: worked by hand from the printed equation. */
describe("average year", () => {
  it("at 51.5 N over 20 km with 1.5 mrad the year has 8.37 dB less than the worst month", () => {
    // 10.5 - 5.6 log10(1.1 - |cos 103|^0.7) - 2.7 log10 20 + 1.7 log10 2.5
    // cos 103 = -0.224 951; ^0.7 = 0.351 923; log10(0.748 077) = -0.126 054; 10.5 + 0.7059 - 3.5128 + 0.6765 = 8.3696
    const year = yearFromWorstMonthFrac({ ...path, worstMonthFrac: 0.001, latitudeDeg: 51.5 });
    nearRatio(year, 0.001 * 10 ** -0.83696, { withinFrac: 0.0005 });
  });

  it("the difference never exceeds 10.8 dB, though two open codes make it never less", () => {
    const steep = {
      nearAntennaM: 2000,
      farAntennaM: 0,
      distanceM: 6000,
      worstMonthFrac: 0.001,
      latitudeDeg: 0,
    };
    expect(yearFromWorstMonthFrac(steep)).toBeGreaterThanOrEqual(0.001 * 10 ** -1.08 - 1e-12);
    const flat = yearFromWorstMonthFrac({ ...path, worstMonthFrac: 0.001, latitudeDeg: 51.5 });
    expect(flat).toBeGreaterThan(0.001 * 10 ** -1.08);
  });
});

describe("cross-checks", () => {
  /** Source: Barnett and Vigants as read in two radio manuals. How: worked by hand. */
  it("average ground, temperate, 5.8 GHz, 10 km, 20 dB: 8.7e-6", () => {
    const found = barnettVigantsFrac({
      terrainRatio: 1,
      climateRatio: 0.25,
      distanceM: 10_000,
      frequencyMHz: 5800,
      fadeDb: 20,
    });
    nearRatio(found, 8.7e-6, { withinFrac: 1e-9 });
  });

  /** Source: a well-known textbook's example, from memory: 40 km, A 1, B 0.5, 1.8 GHz, R 0.9999 asks 25.39 dB. */
  it("a margin of 25.39 dB gives the textbook's example its 0.0001", () => {
    const found = barnettVigantsFrac({
      terrainRatio: 1,
      climateRatio: 0.5,
      distanceM: 40_000,
      frequencyMHz: 1800,
      fadeDb: 25.39,
    });
    nearRatio(found, 1e-4, { withinFrac: 0.002 });
  });

  /** Source: Recommendation ITU-R P.530 clause 2.2.1, Ad = -20 h/F1 + 10. How: worked by hand. */
  it("average terrain standing half a zone into the path costs 20 dB", () => {
    expect(averageTerrainLossDb(-0.5)).toBe(20);
  });
});
