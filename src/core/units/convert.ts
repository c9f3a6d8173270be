import { unitOf } from "./find.ts";

/**
 * A value in another unit of its own dimension.
 *
 * @param value  in `from`
 * @param from   symbol of the unit it is in
 * @param to     symbol of the unit wanted
 * @returns in `to`
 * @accuracy a few units in the sixteenth digit; factors are exact unless the table's row says otherwise
 * @throws Error where a symbol is unknown or the two are of different dimensions
 * @source each row of the table names its own
 * @example convert({ value: 30, from: "ft", to: "m" })  // 9.144
 */
export function convert(given: {
  readonly value: number;
  readonly from: string;
  readonly to: string;
}): number {
  const from = unitOf(given.from);
  const to = unitOf(given.to);
  if (from.dimension !== to.dimension) {
    throw new Error(`"${given.from}" is ${from.dimension}, "${given.to}" is ${to.dimension}`);
  }
  // The same unit gives the very same number: no trip through the base.
  if (from === to) return given.value;
  const inBase = given.value * from.toBase + (from.baseOffset ?? 0);
  return (inBase - (to.baseOffset ?? 0)) / to.toBase;
}
