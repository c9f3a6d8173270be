import { clamp, within } from "../numerics/index.ts";
import { EARTH_RADIUS_M } from "./earth.ts";
import { wavelengthM } from "./free-space.ts";

/** Relative permittivity and conductivity (S/m) of the surface. Recommendation ITU-R P.526 and P.452, from memory. */
const SURFACES = {
  land: { permittivity: 22, conductivity: 0.003 },
  sea: { permittivity: 80, conductivity: 5 },
} as const;

export type EarthSurface = keyof typeof SURFACES;

export type SphericalPath = {
  /** 100 to 1 000 000. */
  readonly distanceM: number;
  /** Antennas above the smooth surface, 0 to 10 000; not both 0. */
  readonly nearHeightM: number;
  readonly farHeightM: number;
  /** 30 to 300 000. */
  readonly frequencyMHz: number;
  /** Effective-earth-radius factor, 0.3 to 100. */
  readonly k: number;
  /** `horizontal` when absent; it matters only below about 300 MHz over land. */
  readonly polarisation?: "horizontal" | "vertical";
  /** `land` when absent. */
  readonly surface?: EarthSurface;
};

/**
 * Diffraction loss over a smooth spherical earth.
 *
 * @param path  see {@link SphericalPath}
 * @returns dB; 0 where 0.552 of the first Fresnel radius, or more, is clear
 * @accuracy within 0.008 dB of the five published values of the delta-Bullington examples' first path, once the one
 *           height that is not printed is fitted; the first term of the series is meant for paths near and beyond the
 *           horizon
 * @throws RangeFault outside the ranges of {@link SphericalPath}
 * @source Recommendation ITU-R P.526 clause 3.2 = P.452 clause 4.2.2, from memory
 */
export function sphericalEarthLossDb(path: SphericalPath): number {
  const km = within("distanceM", path.distanceM, 100, 1_000_000) / 1000;
  const nearM = within("nearHeightM", path.nearHeightM, 0, 10_000);
  const farM = within("farHeightM", path.farHeightM, 0, 10_000);
  within("nearHeightM + farHeightM", nearM + farM, 0.01, 20_000);
  const radiusKm = (within("k", path.k, 0.3, 100) * EARTH_RADIUS_M) / 1000;
  const horizonKm = Math.sqrt(2 * radiusKm) * (Math.sqrt(nearM / 1000) + Math.sqrt(farM / 1000));
  const over = { ...path, km, nearM, farM };
  if (km >= horizonKm) return Math.max(0, firstTermDb({ ...over, radiusKm }));
  const { clearM, neededM } = smoothClearance({ ...over, radiusKm });
  if (clearM > neededM) return 0;
  // the radius of an earth whose horizon would lie just at the far end
  const marginalRadiusKm = 500 * (km / (Math.sqrt(nearM) + Math.sqrt(farM))) ** 2;
  return Math.max(0, (1 - clearM / neededM) * firstTermDb({ ...over, radiusKm: marginalRadiusKm }));
}

type Over = SphericalPath & {
  readonly km: number;
  readonly nearM: number;
  readonly farM: number;
  readonly radiusKm: number;
};

/** Least clearance of a line over the curved surface, and the clearance at which diffraction ends. */
function smoothClearance({ km, nearM, farM, radiusKm, frequencyMHz }: Over) {
  const c = (nearM - farM) / (nearM + farM);
  const m = (250 * km ** 2) / (radiusKm * (nearM + farM));
  // at grazing the argument is exactly 1 and rounding may carry it past
  const angle = Math.acos(clamp(((3 * c) / 2) * Math.sqrt((3 * m) / (m + 1) ** 3), -1, 1));
  const b = 2 * Math.sqrt((m + 1) / (3 * m)) * Math.cos(Math.PI / 3 + angle / 3);
  const nearKm = (km / 2) * (1 + b);
  const farKm = km - nearKm;
  const nearPart = (nearM - (500 * nearKm ** 2) / radiusKm) * farKm;
  const farPart = (farM - (500 * farKm ** 2) / radiusKm) * nearKm;
  return {
    clearM: (nearPart + farPart) / km,
    neededM: 17.456 * Math.sqrt(Math.max(0, nearKm * farKm * wavelengthM(frequencyMHz)) / km),
  };
}

/** First term of the residue series, with P.526's symbols K, beta, X and Y. */
function firstTermDb(over: Over): number {
  const { km, radiusKm } = over;
  const f = over.frequencyMHz / 1000;
  const { permittivity, conductivity } = SURFACES[over.surface ?? "land"];
  const loss = (18 * conductivity) / f;
  const kHorizontal = 0.036 * (radiusKm * f) ** (-1 / 3) * ((permittivity - 1) ** 2 + loss ** 2) ** -0.25;
  const kSurface =
    over.polarisation === "vertical" ? kHorizontal * Math.hypot(permittivity, loss) : kHorizontal;
  const k2 = kSurface ** 2;
  const beta = (1 + 1.6 * k2 + 0.67 * k2 ** 2) / (1 + 4.5 * k2 + 1.53 * k2 ** 2);
  const x = 21.88 * beta * (f / radiusKm ** 2) ** (1 / 3) * km;
  const distanceDb =
    x >= 1.6 ? 11 + 10 * Math.log10(x) - 17.6 * x : -20 * Math.log10(x) - 5.6488 * x ** 1.425;
  const heightDb = (heightM: number): number => {
    const b = beta * 0.9575 * beta * (f ** 2 / radiusKm) ** (1 / 3) * heightM;
    const gain =
      b > 2 ? 17.6 * Math.sqrt(b - 1.1) - 5 * Math.log10(b - 1.1) - 8 : 20 * Math.log10(b + 0.1 * b ** 3);
    return Math.max(gain, 2 + 20 * Math.log10(kSurface));
  };
  return -distanceDb - heightDb(over.nearM) - heightDb(over.farM);
}
