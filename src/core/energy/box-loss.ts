import { within } from "../numerics/index.ts";

/**
 * Heat that leaves a closed cube with insulated walls for each kelvin between inside and outside: walls, edges and corners.
 *
 * Grows with the volume to the power of 2/3 while the wall is thin against the box. The air's films on both faces are left out,
 * which is the cautious side; a box of 1 : 1.5 : 2 has 4 % more surface than a cube.
 *
 * @param box.insideM3            0 to 10 000; 0 gives 0
 * @param box.wallM               of insulation, 0.005 to 0.3
 * @param box.conductivityWPerMK  of insulation, 0.01 to 2: foam about 0.035
 * @returns W/K
 * @accuracy the shape factors hold while the inside is wider than a fifth of the wall
 * @throws RangeFault outside the ranges above
 * @source conduction shape factors: area / thickness of a wall, 0.54 of the length of an edge, 0.15 of the thickness of a corner;
 *         Holman, Heat Transfer, section 3-4 (from memory)
 */
export function insulatedBoxLossWPerK(box: {
  readonly insideM3: number;
  readonly wallM: number;
  readonly conductivityWPerMK: number;
}): number {
  const sideM = Math.cbrt(within("insideM3", box.insideM3, 0, 10_000));
  const wallM = within("wallM", box.wallM, 0.005, 0.3);
  const conductivity = within("conductivityWPerMK", box.conductivityWPerMK, 0.01, 2);
  if (sideM === 0) return 0;
  const shapeM = (6 * sideM ** 2) / wallM + 12 * 0.54 * sideM + 8 * 0.15 * wallM;
  return conductivity * shapeM;
}
