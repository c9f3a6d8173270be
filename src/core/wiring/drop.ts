import { within } from "../numerics/index.ts";

/** What a two-wire run costs at a given current. */
export interface VoltageDrop {
  /** Out and back. */
  readonly loopOhm: number;
  readonly dropV: number;
  readonly lossW: number;
}

/**
 * Voltage lost in a two-conductor direct-current run, out and back.
 *
 * @param currentA  0 to 10 000
 * @param lengthM   one way, 0 to 10 000
 * @param ohmPerKm  of one conductor at its working temperature, 0 to 1000
 * @returns ohm, V and W of both conductors together
 * @throws RangeFault outside the ranges above
 * @source Ohm's law; the circular-mil form 2 K I D / CM is the same with K = 12.9 at 75 degrees C
 */
export function voltageDrop({
  currentA,
  lengthM,
  ohmPerKm,
}: {
  readonly currentA: number;
  readonly lengthM: number;
  readonly ohmPerKm: number;
}): VoltageDrop {
  within("currentA", currentA, 0, 10_000);
  within("lengthM", lengthM, 0, 10_000);
  within("ohmPerKm", ohmPerKm, 0, 1000);
  const loopOhm = (2 * lengthM * ohmPerKm) / 1000;
  return { loopOhm, dropV: currentA * loopOhm, lossW: currentA ** 2 * loopOhm };
}

/** How a load of constant power fares at the far end of a run. */
export type ConstantPowerDrop =
  | {
      readonly kind: "carried";
      readonly currentA: number;
      readonly loadV: number;
      readonly dropV: number;
      readonly lossW: number;
      readonly maxLoadW: number;
      /** Load over the most the run could carry; above about 0.6 the starting current may collapse it. */
      readonly strainFrac: number;
    }
  | { readonly kind: "collapses"; readonly maxLoadW: number };

/**
 * Voltage at a load that draws constant power (a converter, a PoE device): its current rises as its voltage falls.
 *
 * @param sourceV  0.1 to 10 000
 * @param loadW    0 to 100 000
 * @param loopOhm  out and back, 0.000001 to 10 000
 * @returns the stable, higher-voltage answer; or that there is none, because the load asks for more than V2/4R
 * @throws RangeFault outside the ranges above
 * @source worked from P = I (V - I R); the same relation gives the device powers of IEEE 802.3
 */
export function constantPowerDrop({
  sourceV,
  loadW,
  loopOhm,
}: {
  readonly sourceV: number;
  readonly loadW: number;
  readonly loopOhm: number;
}): ConstantPowerDrop {
  within("sourceV", sourceV, 0.1, 10_000);
  within("loadW", loadW, 0, 100_000);
  within("loopOhm", loopOhm, 1e-6, 10_000);
  const maxLoadW = sourceV ** 2 / (4 * loopOhm);
  const rest = sourceV ** 2 - 4 * loadW * loopOhm;
  if (rest < 0) return { kind: "collapses", maxLoadW };
  // The textbook root (V - sqrt) / 2R loses all digits for a small load; this is the same root turned over.
  const currentA = (2 * loadW) / (sourceV + Math.sqrt(rest));
  const dropV = currentA * loopOhm;
  return {
    kind: "carried",
    currentA,
    loadV: sourceV - dropV,
    dropV,
    lossW: currentA * dropV,
    maxLoadW,
    strainFrac: loadW / maxLoadW,
  };
}
