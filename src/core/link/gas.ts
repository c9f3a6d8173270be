import { within } from "../numerics/index.ts";
import { OXYGEN_LINES, WATER_LINES } from "./gas-tables.ts";

export type Air = {
  /** 1000 to 350 000. */
  readonly frequencyMHz: number;
  /** Pressure of the DRY air, 300 to 1100 hPa; 1013.25 when absent. */
  readonly dryPressureHPa?: number;
  /** -60 to 60; 15 when absent. */
  readonly tempC?: number;
  /** 0 to 60 g/m3; 7.5 when absent. */
  readonly vapourGPerM3?: number;
};

/**
 * Attenuation by oxygen and water vapour on each kilometre near the ground.
 *
 * @param air  see {@link Air}; pressure is that of the dry part, as the standard's own examples take it
 * @returns dB/km by oxygen (with the dry continuum) and by water vapour
 * @accuracy the line-by-line sum of the standard, taken as exact
 * @throws RangeFault outside the ranges of {@link Air}
 * @source Recommendation ITU-R P.676-13 annex 1
 * @example gasDbPerKm({ frequencyMHz: 60_480 })  // oxygen 14.96, vapour 0.16
 */
export function gasDbPerKm(air: Air): { readonly oxygenDbPerKm: number; readonly vapourDbPerKm: number } {
  const f = within("frequencyMHz", air.frequencyMHz, 1000, 350_000) / 1000;
  const dryHPa = within("dryPressureHPa", air.dryPressureHPa ?? 1013.25, 300, 1100);
  const kelvin = within("tempC", air.tempC ?? 15, -60, 60) + 273.15;
  const vapourHPa = (within("vapourGPerM3", air.vapourGPerM3 ?? 7.5, 0, 60) * kelvin) / 216.7;
  const state = { f, dryHPa, vapourHPa, theta: 300 / kelvin };
  return {
    oxygenDbPerKm: 0.182 * f * (oxygenSum(state) + dryContinuum(state)),
    vapourDbPerKm: 0.182 * f * waterSum(state),
  };
}

/**
 * Loss by gases over a whole path near the ground.
 *
 * @param distanceM  1 to 200 000
 * @returns dB
 * @throws RangeFault outside the ranges above and of {@link Air}
 * @source Recommendation ITU-R P.676-13 annex 1; constant air along the path
 */
export function gasLossDb(path: Air & { readonly distanceM: number }): number {
  const { oxygenDbPerKm, vapourDbPerKm } = gasDbPerKm(path);
  return ((oxygenDbPerKm + vapourDbPerKm) * within("distanceM", path.distanceM, 1, 200_000)) / 1000;
}

type AirState = {
  readonly f: number;
  readonly dryHPa: number;
  readonly vapourHPa: number;
  readonly theta: number;
};

function oxygenSum({ f, dryHPa: p, vapourHPa: e, theta }: AirState): number {
  let total = 0;
  for (const [line, a1, a2, a3, a4, a5, a6] of OXYGEN_LINES) {
    const strength = a1 * 1e-7 * p * theta ** 3 * Math.exp(a2 * (1 - theta));
    const collision = a3 * 1e-4 * (p * theta ** (0.8 - a4) + 1.1 * e * theta);
    const width = Math.sqrt(collision ** 2 + 2.25e-6);
    const overlap = (a5 + a6 * theta) * 1e-4 * (p + e) * theta ** 0.8;
    total += strength * lineShape({ f, line, width, overlap });
  }
  return total;
}

function waterSum({ f, dryHPa: p, vapourHPa: e, theta }: AirState): number {
  let total = 0;
  for (const [line, b1, b2, b3, b4, b5, b6] of WATER_LINES) {
    const strength = b1 * 0.1 * e * theta ** 3.5 * Math.exp(b2 * (1 - theta));
    const collision = b3 * 1e-4 * (p * theta ** b4 + b5 * e * theta ** b6);
    const width = 0.535 * collision + Math.sqrt(0.217 * collision ** 2 + (2.1316e-12 * line ** 2) / theta);
    total += strength * lineShape({ f, line, width, overlap: 0 });
  }
  return total;
}

function lineShape(at: {
  readonly f: number;
  readonly line: number;
  readonly width: number;
  readonly overlap: number;
}): number {
  const { f, line, width, overlap } = at;
  const below = line - f;
  const above = line + f;
  return (
    (f / line) *
    ((width - overlap * below) / (below ** 2 + width ** 2) +
      (width - overlap * above) / (above ** 2 + width ** 2))
  );
}

function dryContinuum({ f, dryHPa: p, vapourHPa: e, theta }: AirState): number {
  const width = 5.6e-4 * (p + e) * theta ** 0.8;
  return (
    f *
    p *
    theta ** 2 *
    (6.14e-5 / (width * (1 + (f / width) ** 2)) + (1.4e-12 * p * theta ** 1.5) / (1 + 1.9e-5 * f ** 1.5))
  );
}
