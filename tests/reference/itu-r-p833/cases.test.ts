import { describe, it } from "vitest";
import { woodGammaDbPerM, woodLossDb, woodMaxDb } from "../../../src/core/link/index.ts";
import { near, nearRatio } from "../../helpers/near.ts";

/**
 * Source: Recommendation ITU-R P.833, gamma and Am of mixed woodland near Saint Petersburg, as quoted in open
 * measurement code. How: losses at 10, 20, 50 and 100 m worked from the printed equation.
 */
const WOODS = [
  [105.9, 0.04, 9.4, [0.392, 0.767, 1.802, 3.258]],
  [466.475, 0.12, 18.0, [1.161, 2.247, 5.102, 8.758]],
  [949.0, 0.17, 26.5, [1.647, 3.191, 7.272, 12.548]],
  [1852.2, 0.3, 29.0, [2.85, 5.42, 11.711, 18.693]],
  [2117.5, 0.34, 34.1, [3.236, 6.165, 13.387, 21.518]],
] as const;

describe("an antenna inside a wood", () => {
  it.each(WOODS)("%d MHz", (_frequencyMHz, gammaDbPerM, maxDb, losses) => {
    [10, 20, 50, 100].forEach((depthM, i) => {
      near(woodLossDb({ depthM, gammaDbPerM, maxDb }), losses[i]!, { within: 5.1e-4 });
    });
  });

  it.each(WOODS)(
    "the fitted maximum is within 3.5 dB of the table at %d MHz",
    (frequencyMHz, _gamma, maxDb) => {
      near(woodMaxDb(frequencyMHz), maxDb, { within: 3.5 });
    },
  );

  /** How: worked from Am = 1.37 f^0.42 (from memory). */
  it.each([
    [105.9, 9.7],
    [466.475, 18.1],
    [949.0, 24.4],
    [1852.2, 32.3],
    [2117.5, 34.2],
  ])("the fit at %d MHz is %d dB", (frequencyMHz, maxDb) => {
    near(woodMaxDb(frequencyMHz), maxDb, { within: 0.051 });
  });
});

/** Source: P.833 figure 2 digitised as three points. How: worked by log-log interpolation. */
describe("specific attenuation, vertical", () => {
  it.each([
    [30, 0.02],
    [100, 0.044],
    [470, 0.122],
    [950, 0.193],
    [1000, 0.2],
    [2400, 0.48],
    [5800, 1.16],
    [10_000, 2.0],
    [24_000, 4.8],
    [30_000, 6],
  ])("%d MHz: %d dB/m", (frequencyMHz, gammaDbPerM) => {
    nearRatio(woodGammaDbPerM(frequencyMHz), gammaDbPerM, { withinFrac: 0.012 });
  });
});
