import { describe, expect, it } from "vitest";
import {
  aimTiltDeg,
  beamwidthFromGainDeg,
  dishBeamwidthDeg,
  dishGainDbi,
  elevationBeamwidthDeg,
  farFieldM,
  misalignmentLossDb,
  permittedLeanDeg,
  polarisationLossDb,
} from "../../../src/core/link/index.ts";
import { near } from "../../helpers/near.ts";

/** Source: aperture formula and 70 lambda/D, from memory. How: worked by hand, efficiency 0.55; [dBi, degrees]. */
const DISHES: readonly (readonly [number, readonly (readonly [number, number | null])[]])[] = [
  [
    0.2,
    [
      [11.44, null],
      [19.1, 18.1],
      [31.48, 4.35],
      [39.46, 1.73],
    ],
  ],
  [
    0.3,
    [
      [14.96, null],
      [22.62, 12.1],
      [35.0, 2.9],
      [42.98, 1.16],
    ],
  ],
  [
    0.4,
    [
      [17.46, 21.9],
      [25.12, 9.05],
      [37.5, 2.17],
      [45.48, 0.87],
    ],
  ],
  [
    0.6,
    [
      [20.98, 14.6],
      [28.64, 6.03],
      [41.02, 1.45],
      [49.01, 0.58],
    ],
  ],
  [
    0.9,
    [
      [24.5, 9.7],
      [32.16, 4.02],
      [44.54, 0.97],
      [52.53, 0.39],
    ],
  ],
];

describe("a dish", () => {
  it.each(DISHES)("%d m at 2.4, 5.8, 24.125 and 60.48 GHz", (diameterM, row) => {
    [2400, 5800, 24_125, 60_480].forEach((frequencyMHz, i) => {
      const [gainDbi, widthDeg] = row[i]!;
      near(dishGainDbi({ diameterM, frequencyMHz }), gainDbi, { within: 0.0051 });
      if (widthDeg !== null) {
        near(dishBeamwidthDeg({ diameterM, frequencyMHz }), widthDeg, {
          within: widthDeg < 9.5 ? 0.0051 : 0.051,
        });
      }
    });
  });

  /** Source: Recommendation ITU-R F.699 shortcut 7.7 + 20 log10(D/lambda), from memory; its efficiency is 0.597. */
  it("agrees with the shortcut of F.699", () => {
    const shortcut = 7.7 + 20 * Math.log10(0.6 / (299.792458 / 5800));
    near(dishGainDbi({ diameterM: 0.6, frequencyMHz: 5800, efficiencyFrac: 0.597 }), shortcut, {
      within: 0.01,
    });
  });

  it("0.3 m at 60.48 GHz loses 1 dB at 0.33 degrees", () => {
    const beamwidthDeg = dishBeamwidthDeg({ diameterM: 0.3, frequencyMHz: 60_480 });
    near(permittedLeanDeg({ lossDb: 1, beamwidthDeg }), 0.33, { within: 0.006 });
  });

  it("a beam is never wider than 180 degrees", () => {
    expect(dishBeamwidthDeg({ diameterM: 0.05, frequencyMHz: 300 })).toBe(180);
  });

  it("far field of 0.6 m at 5.8 GHz begins at 13.9 m", () => {
    near(farFieldM({ diameterM: 0.6, frequencyMHz: 5800 }), 13.93, { within: 0.005 });
  });

  it("a round beam of its gain is as wide as the dish's to 15 %", () => {
    const dish = { diameterM: 0.6, frequencyMHz: 5800 };
    const ratio = beamwidthFromGainDeg(dishGainDbi(dish)) / dishBeamwidthDeg(dish);
    near(ratio, 1, { within: 0.15 });
  });
});

/** Source: main lobe of Recommendations ITU-R F.699 and F.1336, 12 (theta/theta3)^2, from memory. How: worked by hand. */
describe("looking past the other end", () => {
  it.each([
    [0.1, 0.12],
    [0.2, 0.48],
    [0.25, 0.75],
    [0.5, 3.0],
    [0.75, 6.75],
    [1, 12],
  ])("%d of the full width costs %d dB", (share, lossDb) => {
    near(misalignmentLossDb({ offAxisDeg: 6 * share, beamwidthDeg: 6 }), lossDb, { within: 1e-9 });
  });

  it("1 dB at 0.2887 of the full width", () => {
    near(permittedLeanDeg({ lossDb: 1, beamwidthDeg: 1 }), 0.2887, { within: 0.00005 });
  });
});

/** Source: definition, -20 log10 cos. How: worked by hand. */
describe("polarisations turned against each other", () => {
  it.each([
    [10, 0.133],
    [15, 0.301],
    [30, 1.249],
    [45, 3.01],
    [60, 6.021],
    [80, 15.21],
  ])("%d degrees cost %d dB", (twistDeg, lossDb) => {
    near(polarisationLossDb(twistDeg), lossDb, { within: twistDeg === 80 ? 0.0051 : 0.00051 });
  });

  it("crossed antennas leak: 20 dB at most", () => {
    expect(polarisationLossDb(90)).toBe(20);
  });
});

/** Source: Recommendation ITU-R F.1336, from memory. How: worked by hand from its formulas. */
describe("beam in elevation", () => {
  it.each([
    [8, 17.05],
    [10, 10.76],
    [12, 6.79],
    [13, 5.39],
  ])("all round, %d dBi: %d degrees", (gainDbi, widthDeg) => {
    near(elevationBeamwidthDeg({ gainDbi }), widthDeg, { within: 0.0051 });
  });

  it.each([
    [16, 90, 8.65],
    [17, 90, 6.87],
    [19, 60, 6.5],
    [20, 45, 6.89],
  ])("%d dBi over %d degrees: %d degrees", (gainDbi, sectorWidthDeg, widthDeg) => {
    near(elevationBeamwidthDeg({ gainDbi, sectorWidthDeg }), widthDeg, { within: 0.0051 });
  });
});

/** How: worked by hand from the geometry: rise over run less d/(2 k R). */
describe("tilt of the antenna", () => {
  it("3 m looking at 20 m over 1 km: 0.974 degrees less 0.003", () => {
    near(aimTiltDeg({ distanceM: 1000, nearHeightM: 3, farHeightM: 20, k: 4 / 3 }), 0.9706, {
      within: 0.0005,
    });
  });

  it("level antennas 20 km apart look down by 0.0675 degrees", () => {
    near(aimTiltDeg({ distanceM: 20_000, nearHeightM: 30, farHeightM: 30, k: 4 / 3 }), -0.06745, {
      within: 0.0001,
    });
  });
});
