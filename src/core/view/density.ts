import { within } from "../numerics/index.ts";
import { DENSITY_CLASSES, type DensityClass, type DensityEdition } from "./tables.ts";

/**
 * The highest class that a pixel density reaches in one edition of the standard.
 *
 * @param pxPerM   0 to 100 000
 * @param edition  year of IEC 62676-4
 * @returns undefined below the lowest class
 * @throws RangeFault when pxPerM lies outside the range above
 * @source IEC 62676-4, see the rows of tables.ts
 */
export function densityClass(target: {
  readonly pxPerM: number;
  readonly edition: DensityEdition;
}): DensityClass | undefined {
  const pxPerM = within("pxPerM", target.pxPerM, 0, 100_000);
  return DENSITY_CLASSES.filter((row) => row.edition === target.edition && row.pxPerM <= pxPerM).at(-1);
}

/**
 * The classes of one edition, rising by density.
 *
 * @source IEC 62676-4, see the rows of tables.ts
 */
export function densityClasses(edition: DensityEdition): readonly DensityClass[] {
  return DENSITY_CLASSES.filter((row) => row.edition === edition);
}
