import { within } from "../numerics/index.ts";
import {
  ALPHA_HORIZONTAL,
  ALPHA_VERTICAL,
  LOG_K_HORIZONTAL,
  LOG_K_VERTICAL,
  type RainCurve,
} from "./rain-tables.ts";

/** Tilt of the electric field against the horizontal, degrees: what rainCoefficients calls polarisationTiltDeg. */
export const POLARISATION_TILT_DEG = { horizontal: 0, circular: 45, vertical: 90 } as const;

/**
 * The two numbers of the power law between rain rate and attenuation, gamma = k R^alpha.
 *
 * @param frequencyMHz         1000 to 1 000 000
 * @param polarisationTiltDeg  0 horizontal, 45 circular, 90 vertical; 0 to 180
 * @param elevationDeg         of the path, -90 to 90; 0 when absent
 * @returns k and alpha, for R in mm/h and gamma in dB/km
 * @throws RangeFault outside the ranges above
 * @source Recommendation ITU-R P.838-3, equations 2 to 5
 */
export function rainCoefficients(rain: {
  readonly frequencyMHz: number;
  readonly polarisationTiltDeg: number;
  readonly elevationDeg?: number;
}): { readonly k: number; readonly alpha: number } {
  const logF = Math.log10(within("frequencyMHz", rain.frequencyMHz, 1000, 1_000_000) / 1000);
  const tilt = (within("polarisationTiltDeg", rain.polarisationTiltDeg, 0, 180) * Math.PI) / 180;
  const elevation = (within("elevationDeg", rain.elevationDeg ?? 0, -90, 90) * Math.PI) / 180;
  const kH = 10 ** curveAt({ curve: LOG_K_HORIZONTAL, logF });
  const kV = 10 ** curveAt({ curve: LOG_K_VERTICAL, logF });
  const alphaH = curveAt({ curve: ALPHA_HORIZONTAL, logF });
  const alphaV = curveAt({ curve: ALPHA_VERTICAL, logF });
  const turn = Math.cos(elevation) ** 2 * Math.cos(2 * tilt);
  const k = (kH + kV + (kH - kV) * turn) / 2;
  const alpha = (kH * alphaH + kV * alphaV + (kH * alphaH - kV * alphaV) * turn) / (2 * k);
  return { k, alpha };
}

/**
 * Attenuation by rain on each kilometre that lies in it.
 *
 * @param frequencyMHz         1000 to 1 000 000
 * @param rainMmPerH           0 to 300
 * @param polarisationTiltDeg  0 to 180, see {@link POLARISATION_TILT_DEG}
 * @param elevationDeg         -90 to 90; 0 when absent
 * @returns dB/km
 * @throws RangeFault outside the ranges above
 * @source Recommendation ITU-R P.838-3, equation 1
 * @example rainDbPerKm({ frequencyMHz: 24_000, rainMmPerH: 42, polarisationTiltDeg: 90 })  // 5.0
 */
export function rainDbPerKm(rain: {
  readonly frequencyMHz: number;
  readonly rainMmPerH: number;
  readonly polarisationTiltDeg: number;
  readonly elevationDeg?: number;
}): number {
  const { k, alpha } = rainCoefficients(rain);
  return k * within("rainMmPerH", rain.rainMmPerH, 0, 300) ** alpha;
}

function curveAt({ curve, logF }: { readonly curve: RainCurve; readonly logF: number }): number {
  let value = curve.m * logF + curve.base;
  curve.a.forEach((a, j) => {
    value += a * Math.exp(-(((logF - curve.b[j]!) / curve.c[j]!) ** 2));
  });
  return value;
}
