import { within } from "../numerics/index.ts";
import { GROUNDING_ROWS, LIGHTNING_LOCATION_FACTORS } from "./tables.ts";

/**
 * Resistance to earth of one driven rod.
 *
 * @param soilOhmM    resistivity: about 30 wet clay, 100 loam, 300 moist sand, 1000 dry sand or gravel; 1 to 10 000
 * @param lengthM     driven length, 0.5 to 10
 * @param diameterMm  5 to 50
 * @returns ohm
 * @accuracy exact for even soil, which there never is: measure
 * @throws RangeFault outside the ranges above
 * @source IEEE 142, Dwight's formula for one rod
 */
export function rodOhm({
  soilOhmM,
  lengthM,
  diameterMm,
}: {
  readonly soilOhmM: number;
  readonly lengthM: number;
  readonly diameterMm: number;
}): number {
  within("soilOhmM", soilOhmM, 1, 10_000);
  within("lengthM", lengthM, 0.5, 10);
  within("diameterMm", diameterMm, 5, 50);
  const radiusM = diameterMm / 2000;
  return (soilOhmM / (2 * Math.PI * lengthM)) * (Math.log((4 * lengthM) / radiusM) - 1);
}

/** How a mast stands among its surroundings. */
export type LightningLocation = keyof typeof LIGHTNING_LOCATION_FACTORS;

/**
 * Expected direct lightning flashes to a mast in a year. Far more damage comes in along cables than this way.
 *
 * @param heightM             of the mast's top, 0.5 to 60
 * @param flashesPerKm2Year   ground flash density, 0 to 100
 * @returns flashes per year
 * @throws RangeFault outside the ranges above
 * @source IEC 62305-2 annex A: collection area 9 pi H2 of a thin mast (from memory), location factor table A.1
 */
export function lightningFlashesPerYear({
  heightM,
  flashesPerKm2Year,
  location,
}: {
  readonly heightM: number;
  readonly flashesPerKm2Year: number;
  readonly location: LightningLocation;
}): number {
  within("heightM", heightM, 0.5, 60);
  within("flashesPerKm2Year", flashesPerKm2Year, 0, 100);
  const collectionM2 = 9 * Math.PI * heightM ** 2;
  return flashesPerKm2Year * collectionM2 * LIGHTNING_LOCATION_FACTORS[location] * 1e-6;
}

/**
 * Gauge of the smallest copper conductor that bonds metal parts of a circuit to earth.
 *
 * @param fuseA  overcurrent device ahead of the circuit, 0 to 200
 * @returns American wire gauge number; never needs to be thicker than the circuit's own wires
 * @throws RangeFault outside the range above
 * @source NEC table 250.122
 */
export function groundingGauge(fuseA: number): number {
  within("fuseA", fuseA, 0, 200);
  return GROUNDING_ROWS.find(([upToA]) => fuseA <= upToA)![1];
}
