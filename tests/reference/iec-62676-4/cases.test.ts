import { describe, expect, it } from "vitest";
import {
  COMMON_SENSORS,
  densityClass,
  densityClasses,
  distanceForDensityM,
  fieldOfViewDeg,
  pixelDensityPxPerM,
  sceneWidthM,
} from "../../../src/core/view/index.ts";
import { near } from "../../helpers/near.ts";

/**
 * Source: IEC/EN 62676-4:2014: 12.5 and 125 px/m with 80 and 8 mm per pixel as read in a national guide; 25, 62.5, 250 in
 * a white paper; inspect from memory. How: printed values.
 */
describe("classes of the edition of 2014", () => {
  it.each([
    ["monitor", 12.5, 80],
    ["detect", 25, 40],
    ["observe", 62.5, 16],
    ["recognise", 125, 8],
    ["identify", 250, 4],
    ["inspect", 1000, 1],
  ])("%s from %d px/m, %d mm a pixel", (name, pxPerM, mmPerPx) => {
    expect(densityClass({ pxPerM, edition: "2014" })!.name).toBe(name);
    expect(densityClass({ pxPerM: pxPerM - 0.01, edition: "2014" })?.name).not.toBe(name);
    near(1000 / pxPerM, mmPerPx, { within: 1e-9 });
  });
});

/** Source: IEC 62676-4:2025, names read in two places, numbers from a description of the draft and from memory. */
describe("classes of the edition of 2025", () => {
  it.each([
    ["overview", 20],
    ["outline", 40],
    ["discern", 80],
    ["perceive", 125],
    ["characterise", 250],
    ["validate", 500],
    ["scrutinise", 1500],
  ])("%s from %d px/m", (name, pxPerM) => {
    expect(densityClass({ pxPerM, edition: "2025" })!.name).toBe(name);
    expect(densityClass({ pxPerM: pxPerM - 0.01, edition: "2025" })?.name).not.toBe(name);
  });

  it("keeps the editions apart, and says so of every row", () => {
    expect(densityClasses("2014")).toHaveLength(6);
    expect(densityClasses("2025")).toHaveLength(7);
    for (const edition of ["2014", "2025"] as const) {
      for (const row of densityClasses(edition)) expect(row.source).toContain(edition);
    }
  });
});

const FOCAL_MM = [2.8, 4, 6, 8, 12];

/** Source: geometry of the pinhole, no lens distortion. How: worked by hand; [degrees, metres at 10 m]. */
describe("angle of view and width of the scene at 10 m", () => {
  it.each([
    [
      5.76,
      [
        [91.61, 20.57],
        [71.51, 14.4],
        [51.28, 9.6],
        [39.6, 7.2],
        [26.99, 4.8],
      ],
    ],
    [
      5.568,
      [
        [89.67, 19.89],
        [69.68, 13.92],
        [49.78, 9.28],
        [38.38, 6.96],
        [26.12, 4.64],
      ],
    ],
    [
      4.8,
      [
        [81.2, 17.14],
        [61.93, 12.0],
        [43.6, 8.0],
        [33.4, 6.0],
        [22.62, 4.0],
      ],
    ],
    [
      7.68,
      [
        [107.8, 27.43],
        [87.66, 19.2],
        [65.24, 12.8],
        [51.28, 9.6],
        [35.49, 6.4],
      ],
    ],
  ])("sensor %d mm wide", (sensorWidthMm, row) => {
    FOCAL_MM.forEach((focalLengthMm, i) => {
      const [angleDeg, widthM] = row[i]!;
      near(fieldOfViewDeg({ sensorWidthMm, focalLengthMm }), angleDeg!, { within: 0.0051 });
      near(sceneWidthM({ sensorWidthMm, focalLengthMm, distanceM: 10 }), widthM!, { within: 0.0051 });
    });
  });
});

/** How: worked by hand from N F/(w p); metres at 25, 62.5, 125 and 250 px/m. */
const DISTANCES = [
  [
    "1080p, 1/2.8",
    1920,
    5.568,
    0.0051,
    [
      [38.62, 15.45, 7.72, 3.86],
      [55.17, 22.07, 11.03, 5.52],
      [82.76, 33.1, 16.55, 8.28],
      [110.34, 44.14, 22.07, 11.03],
      [165.52, 66.21, 33.1, 16.55],
    ],
  ],
  [
    "1080p, 1/2.7",
    1920,
    5.76,
    0.0051,
    [
      [37.33, 14.93, 7.47, 3.73],
      [53.33, 21.33, 10.67, 5.33],
      [80, 32, 16, 8],
      [106.67, 42.67, 21.33, 10.67],
      [160, 64, 32, 16],
    ],
  ],
  [
    "5 MP, 1/2.8",
    2592,
    5.184,
    0.051,
    [
      [56, 22.4, 11.2, 5.6],
      [80, 32, 16, 8],
      [120, 48, 24, 12],
      [160, 64, 32, 16],
      [240, 96, 48, 24],
    ],
  ],
  [
    "4K, 1/1.8",
    3840,
    7.68,
    0.051,
    [
      [56, 22.4, 11.2, 5.6],
      [80, 32, 16, 8],
      [120, 48, 24, 12],
      [160, 64, 32, 16],
      [240, 96, 48, 24],
    ],
  ],
  [
    "720p, 1/3",
    1280,
    4.8,
    0.0051,
    [
      [29.87, 11.95, 5.97, 2.99],
      [42.67, 17.07, 8.53, 4.27],
      [64, 25.6, 12.8, 6.4],
      [85.33, 34.13, 17.07, 8.53],
      [128, 51.2, 25.6, 12.8],
    ],
  ],
] as const;

describe("distance that keeps a pixel density", () => {
  it.each(DISTANCES)("%s", (_name, widthPx, sensorWidthMm, within, byLens) => {
    FOCAL_MM.forEach((focalLengthMm, i) => {
      [25, 62.5, 125, 250].forEach((wantedPxPerM, j) => {
        const view = { widthPx, sensorWidthMm, focalLengthMm };
        const distanceM = distanceForDensityM({ ...view, wantedPxPerM });
        near(distanceM, byLens[i]![j]!, { within });
        near(pixelDensityPxPerM({ ...view, distanceM }), wantedPxPerM, { within: 1e-9 });
      });
    });
  });

  it.each([
    [20, 68.97],
    [40, 34.48],
    [80, 17.24],
    [125, 11.03],
    [250, 5.52],
    [500, 2.76],
    [1500, 0.92],
  ])("edition 2025, 1080p, 1/2.8, 4 mm: %d px/m up to %d m", (wantedPxPerM, distanceM) => {
    const view = { widthPx: 1920, sensorWidthMm: 5.568, focalLengthMm: 4 };
    near(distanceForDensityM({ ...view, wantedPxPerM }), distanceM, { within: 0.0051 });
  });
});

/** Source: pixel pitches from memory. How: worked by hand, pitch times pixels. */
describe("the inch type is not a width", () => {
  it.each([
    [1920, "1/2.8", 5.568, 3.132],
    [1920, "1/2.7", 5.76, 3.24],
    [2592, "1/2.8", 5.184, 3.888],
    [3840, "1/1.8", 7.68, 4.32],
    [1280, "1/3", 4.8, 2.7],
  ])("%d px of type %s are %d mm by %d mm", (widthPx, type, widthMm, heightMm) => {
    const found = COMMON_SENSORS.find((row) => row.widthPx === widthPx && row.type === type)!;
    near(found.widthMm, widthMm, { within: 1e-9 });
    near(found.heightMm, heightMm, { within: 1e-9 });
  });
});
