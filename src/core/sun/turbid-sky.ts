import { cosDeg } from "../astronomy/index.ts";
import { within } from "../numerics/index.ts";
import { relativeAirMassRatio } from "./irradiance.ts";
import { standardPressurePa } from "./position.ts";

/** Light under a cloudless sky. */
export interface ClearSky {
  readonly ghiWPerM2: number;
  /** Square to the sun. */
  readonly beamNormalWPerM2: number;
  /** On the level. */
  readonly diffuseWPerM2: number;
}

/**
 * Irradiance under a cloudless sky, by the haze of the air and the height of the place.
 *
 * @param sky.apparentZenithDeg             0 to 180, refraction included; all 0 from 90 on
 * @param sky.elevationM                    -500 to 9000
 * @param sky.linkeTurbidityRatio           1 to 10: how many clean dry atmospheres the air dims like. About 2 cold and
 *                                          clean, 3 temperate, 4 to 5 humid, 6 and more foul (common practice)
 * @param sky.extraterrestrialNormalWPerM2  1200 to 1500; 1364 when left out
 * @param sky.absoluteAirMassRatio          0.3 to 45; that of the zenith, corrected by the standard pressure of the
 *                                          elevation, when left out
 * @returns W/m2
 * @accuracy about 5 % where the turbidity is known
 * @throws RangeFault outside the ranges above
 * @source Ineichen and Perez 2002, Solar Energy 73, 151; the bound of the beam as in Perez et al. 2002, Solar Energy 73,
 *         307, without their enhancement (in the form of pvlib 0.16.1)
 */
export function turbidClearSky(sky: {
  readonly apparentZenithDeg: number;
  readonly elevationM: number;
  readonly linkeTurbidityRatio: number;
  readonly extraterrestrialNormalWPerM2?: number;
  readonly absoluteAirMassRatio?: number;
}): ClearSky {
  const zenithDeg = within("apparentZenithDeg", sky.apparentZenithDeg, 0, 180);
  const elevationM = within("elevationM", sky.elevationM, -500, 9000);
  const turbidity = within("linkeTurbidityRatio", sky.linkeTurbidityRatio, 1, 10);
  const normal = within("extraterrestrialNormalWPerM2", sky.extraterrestrialNormalWPerM2 ?? 1364, 1200, 1500);
  const given = sky.absoluteAirMassRatio;
  if (given !== undefined) within("absoluteAirMassRatio", given, 0.3, 45);
  if (zenithDeg >= 90) return { ghiWPerM2: 0, beamNormalWPerM2: 0, diffuseWPerM2: 0 };

  const airMass = given ?? (relativeAirMassRatio(zenithDeg) * standardPressurePa(elevationM)) / 101_325;
  const cosine = cosDeg(zenithDeg);
  const hazeRatio = Math.exp(-elevationM / 1250);
  const airRatio = Math.exp(-elevationM / 8000);
  const ghiWPerM2 =
    normal *
    cosine *
    (5.09e-5 * elevationM + 0.868) *
    Math.exp(-(3.92e-5 * elevationM + 0.0387) * airMass * (airRatio + hazeRatio * (turbidity - 1)));
  const dimmed = normal * (0.664 + 0.163 / airRatio) * Math.exp(-0.09 * airMass * (turbidity - 1));
  const leastDiffuseFrac = (0.1 - 0.2 * Math.exp(-turbidity)) / (0.1 + 0.882 / airRatio);
  const bound = (ghiWPerM2 * Math.max(0, 1 - leastDiffuseFrac)) / cosine;
  const beamNormalWPerM2 = Math.min(dimmed, bound);
  return { ghiWPerM2, beamNormalWPerM2, diffuseWPerM2: ghiWPerM2 - beamNormalWPerM2 * cosine };
}
