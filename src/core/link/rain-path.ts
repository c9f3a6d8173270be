import { within } from "../numerics/index.ts";
import { rainCoefficients, rainDbPerKm } from "./rain.ts";

export type RainPath = {
  /** 1 to 60 000. */
  readonly distanceM: number;
  /** 300 to 100 000; below about 5 GHz rain costs nothing that matters, and below 1000 it is taken as nothing. */
  readonly frequencyMHz: number;
  /** Rate exceeded during 0.01 % of a year, 0 to 300. */
  readonly rainMmPerH: number;
  /** 0 to 180: 0 horizontal, 45 circular, 90 vertical. */
  readonly polarisationTiltDeg: number;
};

/** The law holds between these fractions of a year: 0.001 % and 1 %. */
const LEAST_FRAC = 1e-5;
const MOST_FRAC = 1e-2;

/** Less than this is no rain: the tiniest rates would only make tiny numbers. */
const DRY_MM_PER_H = 1e-3;

/**
 * Rain attenuation exceeded during 0.01 % of an average year (53 minutes).
 *
 * @param path  see {@link RainPath}
 * @returns dB. On a path under a few kilometres the factor on its length exceeds 1; that is meant
 * @accuracy no independent worked example of a terrestrial path was found; the method's own scatter is about 30 %
 * @throws RangeFault outside the ranges of {@link RainPath}
 * @source Recommendation ITU-R P.530-17/-18 clause 2.4.1, as in two regulator-written codes
 * @example rainPathLossDb({ distanceM: 1000, frequencyMHz: 60_480, rainMmPerH: 42, polarisationTiltDeg: 90 })  // 19.6
 */
export function rainPathLossDb(path: RainPath): number {
  const km = within("distanceM", path.distanceM, 1, 60_000) / 1000;
  const rainMmPerH = within("rainMmPerH", path.rainMmPerH, 0, 300);
  if (rainMmPerH < DRY_MM_PER_H || within("frequencyMHz", path.frequencyMHz, 300, 100_000) < 1000) return 0;
  return rainDbPerKm(path) * km * rainDistanceRatio({ ...path, rainMmPerH });
}

/**
 * Effective over real length of a path in rain that falls unevenly.
 *
 * @param path  see {@link RainPath}; at least 0.001 mm/h and 1000 MHz
 * @returns ratio, at most 2.5
 * @throws RangeFault outside the ranges of {@link RainPath}
 * @source Recommendation ITU-R P.530-17/-18 clause 2.4.1, distance factor r
 */
export function rainDistanceRatio(path: RainPath): number {
  const km = within("distanceM", path.distanceM, 1, 60_000) / 1000;
  const gigahertz = within("frequencyMHz", path.frequencyMHz, 1000, 100_000) / 1000;
  const rainMmPerH = within("rainMmPerH", path.rainMmPerH, DRY_MM_PER_H, 300);
  const { alpha } = rainCoefficients(path);
  const shrink =
    0.477 * km ** 0.633 * rainMmPerH ** (0.073 * alpha) * gigahertz ** 0.123 -
    10.579 * (1 - Math.exp(-0.024 * km));
  return shrink <= 0.4 ? 2.5 : 1 / shrink;
}

/** How attenuation at other fractions of the year stands to that at 0.01 %: C1 p^-(C2 + C3 log p), p in per cent. */
function percentageLaw(frequencyMHz: number) {
  const gigahertz = frequencyMHz / 1000;
  // the exponent 0.8 belongs inside the logarithm; one open implementation has it outside
  const c0 = gigahertz >= 10 ? 0.12 + 0.4 * Math.log10((gigahertz / 10) ** 0.8) : 0.12;
  return {
    c1: 0.07 ** c0 * 0.12 ** (1 - c0),
    c2: 0.855 * c0 + 0.546 * (1 - c0),
    c3: 0.139 * c0 + 0.043 * (1 - c0),
  };
}

/**
 * Rain attenuation exceeded during another fraction of an average year.
 *
 * @param exceededFrac  0.000 01 to 0.01 (0.001 % to 1 %)
 * @returns dB; at 0.0001 it returns 0.998 of {@link rainPathLossDb}, as the printed law does
 * @throws RangeFault outside the ranges above and of {@link RainPath}
 * @source Recommendation ITU-R P.530-17/-18 clause 2.4.1
 */
export function rainExceededDb(path: RainPath & { readonly exceededFrac: number }): number {
  const logPercent = Math.log10(within("exceededFrac", path.exceededFrac, LEAST_FRAC, MOST_FRAC) * 100);
  const { c1, c2, c3 } = percentageLaw(path.frequencyMHz);
  return rainPathLossDb(path) * c1 * 10 ** (-logPercent * (c2 + c3 * logPercent));
}

export type RainOutage = {
  /** Fraction of an average year during which rain takes more than the margin. */
  readonly outageFrac: number;
  /** The method ends at 0.001 % and 1 %: beyond them only the side is known. */
  readonly certainty: "computed" | "at-most" | "at-least";
};

/**
 * How much of a year rain takes more than a margin.
 *
 * @param marginDb  -300 to 300
 * @returns outageFrac: 1 where there is no margin at all, 0 where it never rains
 * @throws RangeFault outside the ranges above and of {@link RainPath}
 * @source the law of Recommendation ITU-R P.530-17/-18 clause 2.4.1 solved for the percentage
 */
export function rainOutage(path: RainPath & { readonly marginDb: number }): RainOutage {
  const marginDb = within("marginDb", path.marginDb, -300, 300);
  if (marginDb <= 0) return { outageFrac: 1, certainty: "computed" };
  const basisDb = rainPathLossDb(path);
  if (basisDb === 0) return { outageFrac: 0, certainty: "computed" };
  if (marginDb >= rainExceededDb({ ...path, exceededFrac: LEAST_FRAC })) {
    return { outageFrac: LEAST_FRAC, certainty: "at-most" };
  }
  if (marginDb < rainExceededDb({ ...path, exceededFrac: MOST_FRAC })) {
    return { outageFrac: MOST_FRAC, certainty: "at-least" };
  }
  const { c1, c2, c3 } = percentageLaw(path.frequencyMHz);
  // c3 x^2 + c2 x + log10(margin / (c1 basis)) = 0 for x = log10 p; the rising root lies outside the law's range
  const rest = Math.log10(marginDb / (c1 * basisDb));
  const x = (-c2 + Math.sqrt(c2 ** 2 - 4 * c3 * rest)) / (2 * c3);
  return { outageFrac: 10 ** x / 100, certainty: "computed" };
}

/**
 * Rain attenuation at one frequency from a measured one at another, same path and probability.
 *
 * @param knownDb            measured, 0.001 to 100
 * @param knownFrequencyMHz  7000 to 50 000
 * @param frequencyMHz       7000 to 50 000
 * @returns dB
 * @throws RangeFault outside the ranges above
 * @source Recommendation ITU-R P.530-17/-18 clause 2.4.3
 */
export function rainScaledDb(rain: {
  readonly knownDb: number;
  readonly knownFrequencyMHz: number;
  readonly frequencyMHz: number;
}): number {
  const phi = (gigahertz: number) => gigahertz ** 2 / (1 + 1e-4 * gigahertz ** 2);
  const phi1 = phi(within("knownFrequencyMHz", rain.knownFrequencyMHz, 7000, 50_000) / 1000);
  const phi2 = phi(within("frequencyMHz", rain.frequencyMHz, 7000, 50_000) / 1000);
  const knownDb = within("knownDb", rain.knownDb, 0.001, 100);
  const h = 1.12e-3 * Math.sqrt(phi2 / phi1) * (phi1 * knownDb) ** 0.55;
  return knownDb * (phi2 / phi1) ** (1 - h);
}
