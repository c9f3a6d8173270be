import { within } from "../numerics/index.ts";

/** Up to here clear-air multipath may be set to zero: Recommendation ITU-R P.530 clause 2.3.1. */
const SHORT_PATH_M = 5000;

/** Beyond this the method was never tested; higher frequencies are treated as this one. */
const HIGHEST_GHZ = 45;

export type MultipathPath = {
  /** 1 to 200 000. */
  readonly distanceM: number;
  /** 300 to 100 000; the method's own range is 15/d(km) GHz to 45 GHz, above which 45 GHz is taken. */
  readonly frequencyMHz: number;
  /** Antennas above sea level, -500 to 9000. */
  readonly nearAntennaM: number;
  readonly farAntennaM: number;
};

/**
 * Part of the average worst month in which deep clear-air fading would exceed 0 dB if deep fading held down there: p0 of
 * the older method, from the refractivity gradient and the roughness of the ground.
 *
 * @param gradientNPerKm  refractivity gradient of the lowest 65 m not exceeded 1 % of the year, -1000 to 200
 * @param roughnessM      standard deviation of terrain heights within 110 km by 110 km, 0 to 3000
 * @returns fraction, may exceed 1 on long paths (it is a parameter, not a time); 0 up to 5 km
 * @throws RangeFault outside the ranges above and of {@link MultipathPath}
 * @source Recommendation ITU-R P.530-17 clause 2.3.1, as in an open library; P.453 for the gradient
 */
export function multipathOccurrenceFrac(
  path: MultipathPath & { readonly gradientNPerKm: number; readonly roughnessM: number },
): number {
  const gradient = within("gradientNPerKm", path.gradientNPerKm, -1000, 200);
  const roughnessM = within("roughnessM", path.roughnessM, 0, 3000);
  const shape = checkedShape(path);
  if (shape.isShort) return 0;
  const { km, gigahertz, inclination, lowestM } = shape;
  const geoclimatic = 10 ** (-4.4 - 0.0027 * gradient) * (10 + roughnessM) ** -0.46;
  const percent =
    geoclimatic * km ** 3.4 * (1 + inclination) ** -1.03 * gigahertz ** 0.8 * 10 ** (-0.00076 * lowestM);
  return percent / 100;
}

/**
 * The same parameter by the quick form for planning, without the roughness.
 *
 * @throws RangeFault outside the ranges of {@link multipathOccurrenceFrac}
 * @source Recommendation ITU-R P.530-17 clause 2.3.1, quick planning form, from memory
 */
export function multipathOccurrenceQuickFrac(
  path: MultipathPath & { readonly gradientNPerKm: number },
): number {
  const gradient = within("gradientNPerKm", path.gradientNPerKm, -1000, 200);
  const shape = checkedShape(path);
  if (shape.isShort) return 0;
  const { km, gigahertz, inclination, lowestM } = shape;
  const geoclimatic = 10 ** (-4.6 - 0.0027 * gradient);
  const percent =
    geoclimatic * km ** 3.1 * (1 + inclination) ** -1.29 * gigahertz ** 0.8 * 10 ** (-0.00089 * lowestM);
  return percent / 100;
}

/**
 * The same parameter by the present method, for who has the values of its maps.
 *
 * @param logK        decimal logarithm of the geoclimatic factor from the standard's map, -10 to 0
 * @param dN75NPerKm  from the standard's map, 0 to 200
 * @param terrainM    mean height of the ground under the path, trees left out, -500 to 9000
 * @returns fraction, see {@link multipathOccurrenceFrac}; 0 up to 5 km
 * @throws RangeFault outside the ranges above and of {@link MultipathPath}
 * @source Recommendation ITU-R P.530-18 clause 2.3.1, as in two regulator-written codes
 */
export function multipathOccurrenceByMapFrac(
  path: MultipathPath & { readonly logK: number; readonly dN75NPerKm: number; readonly terrainM: number },
): number {
  const logK = within("logK", path.logK, -10, 0);
  const dN75 = within("dN75NPerKm", path.dN75NPerKm, 0, 200);
  const terrainM = within("terrainM", path.terrainM, -500, 9000);
  const shape = checkedShape(path);
  if (shape.isShort) return 0;
  const { km, gigahertz, inclination, lowestM } = shape;
  const aboveGroundM = (path.nearAntennaM + path.farAntennaM) / 2 - km ** 2 / 102 - terrainM;
  const ductLimit = (dN75 * km ** 1.5 * Math.sqrt(gigahertz)) / 24_730;
  const duct = Math.min((dN75 / 50) ** 1.8 * Math.exp(-aboveGroundM / (2.5 * Math.sqrt(km))), ductLimit);
  const exponent =
    -0.376 * Math.tanh((aboveGroundM - 147) / 125) -
    0.334 * inclination ** 0.39 -
    0.00027 * lowestM +
    17.85 * duct;
  return (10 ** logK * km ** 3.51 * (gigahertz ** 2 + 13) ** 0.447 * 10 ** exponent) / 100;
}

/**
 * Part of the average worst month in which clear-air fading exceeds a depth, shallow or deep.
 *
 * @param occurrenceFrac  p0, 0 to 1000, see {@link multipathOccurrenceFrac}
 * @param fadeDb          0 to 100
 * @returns fraction 0 to 1
 * @throws RangeFault outside the ranges above
 * @source Recommendation ITU-R P.530 clause 2.3.2, all fade depths; every curve begins at 63 % for 0 dB
 */
export function multipathExceededFrac(fade: {
  readonly occurrenceFrac: number;
  readonly fadeDb: number;
}): number {
  const p0 = within("occurrenceFrac", fade.occurrenceFrac, 0, 1000) * 100;
  const fadeDb = within("fadeDb", fade.fadeDb, 0, 100);
  if (p0 === 0) return 0;
  const meetDb = 25 + 1.2 * Math.log10(p0);
  // so little fading that the shallow part's meeting point lies at or below 1 dB: only the deep law is left
  if (fadeDb >= meetDb || meetDb < 1) return Math.min(1, (p0 * 10 ** (-fadeDb / 10)) / 100);
  const pMeet = p0 * 10 ** (-meetDb / 10);
  const qMeet = (-20 * Math.log10(-Math.log1p(-pMeet / 100))) / meetDb;
  const shallow = (db: number) => (1 + 0.3 * 10 ** (-db / 20)) * 10 ** (-0.016 * db);
  const bend = (db: number) => 4.3 * (10 ** (-db / 20) + db / 800);
  const q = (qMeet - 2) / shallow(meetDb) - bend(meetDb);
  const qAt = 2 + shallow(fadeDb) * (q + bend(fadeDb));
  return -Math.expm1(-(10 ** ((-qAt * fadeDb) / 20)));
}

/**
 * Part of the average year from the part of the average worst month.
 *
 * @param worstMonthFrac  0 to 1
 * @param latitudeDeg     -90 to 90
 * @param distanceM       1 to 200 000
 * @param nearAntennaM    above sea level, -500 to 9000
 * @param farAntennaM     above sea level, -500 to 9000
 * @returns fraction, 0 to 1
 * @throws RangeFault outside the ranges above
 * @source Recommendation ITU-R P.530 clause 2.3.4; its bound of 10.8 dB on the difference is taken as an UPPER bound, as
 *         remembered. Two open codes take it as a lower one, which makes every link 10.8 dB better
 */
export function yearFromWorstMonthFrac(path: {
  readonly worstMonthFrac: number;
  readonly latitudeDeg: number;
  readonly distanceM: number;
  readonly nearAntennaM: number;
  readonly farAntennaM: number;
}): number {
  const worst = within("worstMonthFrac", path.worstMonthFrac, 0, 1);
  const latitude = within("latitudeDeg", path.latitudeDeg, -90, 90);
  const km = within("distanceM", path.distanceM, 1, 200_000) / 1000;
  const nearM = within("nearAntennaM", path.nearAntennaM, -500, 9000);
  const farM = within("farAntennaM", path.farAntennaM, -500, 9000);
  const inclination = Math.abs(farM - nearM) / km;
  const swing = Math.abs(Math.cos((2 * latitude * Math.PI) / 180)) ** 0.7;
  const season = Math.abs(latitude) <= 45 ? 1.1 + swing : 1.1 - swing;
  const differenceDb = Math.min(
    10.8,
    10.5 - 5.6 * Math.log10(season) - 2.7 * Math.log10(km) + 1.7 * Math.log10(1 + inclination),
  );
  // the year cannot hold more fading than twelve of its worst months
  return Math.min(worst, worst * 10 ** (-differenceDb / 10));
}

/**
 * Outage by the classic method of North America, for comparison.
 *
 * @param terrainRatio  4 very smooth or over water, 1 average, 0.25 mountains
 * @param climateRatio  0.5 hot and humid, 0.25 temperate, 0.125 very dry
 * @param distanceM     1000 to 200 000
 * @param frequencyMHz  1000 to 45 000
 * @param fadeDb        0 to 100
 * @returns fraction of the year
 * @throws RangeFault outside the ranges above
 * @source Barnett and Vigants, as read in two radio manuals: a b 6e-7 f d^3 10^(-F/10)
 */
export function barnettVigantsFrac(path: {
  readonly terrainRatio: number;
  readonly climateRatio: number;
  readonly distanceM: number;
  readonly frequencyMHz: number;
  readonly fadeDb: number;
}): number {
  const gigahertz = within("frequencyMHz", path.frequencyMHz, 1000, 45_000) / 1000;
  const km = within("distanceM", path.distanceM, 1000, 200_000) / 1000;
  return Math.min(
    1,
    within("terrainRatio", path.terrainRatio, 0.01, 10) *
      within("climateRatio", path.climateRatio, 0.01, 10) *
      6e-7 *
      gigahertz *
      km ** 3 *
      10 ** (-within("fadeDb", path.fadeDb, 0, 100) / 10),
  );
}

function checkedShape(path: MultipathPath) {
  const distanceM = within("distanceM", path.distanceM, 1, 200_000);
  const nearM = within("nearAntennaM", path.nearAntennaM, -500, 9000);
  const farM = within("farAntennaM", path.farAntennaM, -500, 9000);
  const km = distanceM / 1000;
  return {
    km,
    isShort: distanceM <= SHORT_PATH_M,
    gigahertz: Math.min(HIGHEST_GHZ, within("frequencyMHz", path.frequencyMHz, 300, 100_000) / 1000),
    /** mrad, which is m/km. */
    inclination: Math.abs(farM - nearM) / km,
    lowestM: Math.min(nearM, farM),
  };
}
