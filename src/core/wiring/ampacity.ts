import { within } from "../numerics/index.ts";
import { type Conductor, columnAmpacityA } from "./conductor.ts";
import { GROUPING_ROWS } from "./tables.ts";

/**
 * What is left of a conductor's ampacity in surroundings that are not 30 degrees C.
 *
 * The ambient temperature is rounded up to the top of its five-degree band, as the printed tables do, and cold below
 * 10 degrees C earns nothing more.
 *
 * @param insulationTempC  rating of the insulation, 60 to 90
 * @param ambientTempC     -60 to 100
 * @returns ratio; 0 where the surroundings alone bring the insulation to its limit
 * @accuracy equal to the printed factors when rounded to two decimals
 * @throws RangeFault outside the ranges above
 * @source the law behind NEC table 310.15(B)(1) and IEC 60364-5-52 table B.52.14
 */
export function ambientFactor({
  insulationTempC,
  ambientTempC,
}: {
  readonly insulationTempC: number;
  readonly ambientTempC: number;
}): number {
  within("insulationTempC", insulationTempC, 60, 90);
  within("ambientTempC", ambientTempC, -60, 100);
  const bandTopC = Math.max(10, Math.ceil(ambientTempC / 5) * 5);
  return Math.sqrt(Math.max(0, insulationTempC - bandTopC) / (insulationTempC - 30));
}

/**
 * What is left of the ampacity of conductors that heat each other in one raceway or cable.
 *
 * @param loadedConductors  current-carrying conductors together, 1 to 20
 * @returns ratio
 * @throws RangeFault outside the range above
 * @source NEC table 310.15(C)(1), from memory
 */
export function groupingFactor(loadedConductors: number): number {
  within("loadedConductors", loadedConductors, 1, 20);
  return GROUPING_ROWS.find(([upTo]) => loadedConductors <= upTo)![1];
}

/**
 * Current a conductor may carry continuously: the insulation's value corrected for ambient and neighbours, and never
 * more than the terminals it ends in may bear.
 *
 * @param insulationTempC   rating of the insulation, 60 to 90
 * @param terminalTempC     rating of the terminals, 60 to 90
 * @param ambientTempC      hottest surroundings of the wire, -60 to 100
 * @param loadedConductors  together in one raceway or cable, 1 to 20
 * @returns A
 * @throws RangeFault outside the ranges above
 * @source NEC 310.15 and 110.14(C), from memory
 */
export function ampacityA({
  conductor,
  insulationTempC,
  terminalTempC,
  ambientTempC,
  loadedConductors,
}: {
  readonly conductor: Conductor;
  readonly insulationTempC: number;
  readonly terminalTempC: number;
  readonly ambientTempC: number;
  readonly loadedConductors: number;
}): number {
  const correctedA =
    columnAmpacityA({ conductor, tempC: insulationTempC }) *
    ambientFactor({ insulationTempC, ambientTempC }) *
    groupingFactor(loadedConductors);
  return Math.min(correctedA, columnAmpacityA({ conductor, tempC: terminalTempC }));
}
