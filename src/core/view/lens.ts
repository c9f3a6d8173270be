import { within } from "../numerics/index.ts";
import { fieldOfViewDeg, sceneWidthM } from "./field.ts";
import { COMMON_WIDTHS_PX } from "./tables.ts";

export type LensChoice = {
  readonly focalLengthMm: number;
  /** What the picture spans at the distance. */
  readonly sceneWidthM: number;
  readonly fieldOfViewDeg: number;
  readonly pxPerM: number;
  /** The picture spans at least the wanted width. */
  readonly coversScene: boolean;
  readonly meetsDensity: boolean;
  /** Pixels across that would give the wanted density with this lens, on a sensor of the same width. */
  readonly neededWidthPx: number;
  /** The smallest width cameras are sold with that suffices; undefined when none does: come closer, or use two. */
  readonly soldWidthPx: number | undefined;
};

export type LensPick = LensChoice & {
  /** Every lens on offer, widest view first. */
  readonly choices: readonly LensChoice[];
};

/**
 * The lens for a scene: the longest that still spans it, for that puts most pixels on it; where none spans it, the
 * shortest.
 *
 * @param sceneWidthM     wanted, 0.1 to 1000
 * @param distanceM       to the scene, 0.1 to 1000
 * @param sensorWidthMm   1 to 40
 * @param widthPx         pixels across the sensor, 100 to 20 000
 * @param focalLengthsMm  on offer, at least one, each 1 to 200
 * @param wantedPxPerM    1 to 10 000
 * @returns the pick, with what it gives and what it lacks
 * @accuracy a lens without distortion; a wide lens spans more at the edges and puts fewer pixels there
 * @throws RangeFault outside the ranges above
 * @source geometry of the pinhole, see field.ts; the choice is ours
 */
export function pickLens(want: {
  readonly sceneWidthM: number;
  readonly distanceM: number;
  readonly sensorWidthMm: number;
  readonly widthPx: number;
  readonly focalLengthsMm: readonly number[];
  readonly wantedPxPerM: number;
}): LensPick {
  const wantedWidthM = within("sceneWidthM", want.sceneWidthM, 0.1, 1000);
  const widthPx = within("widthPx", want.widthPx, 100, 20_000);
  const wantedPxPerM = within("wantedPxPerM", want.wantedPxPerM, 1, 10_000);
  within("focalLengthsMm.length", want.focalLengthsMm.length, 1, 1000);
  within("distanceM", want.distanceM, 0.1, 1000);
  const choices = want.focalLengthsMm
    .toSorted((a, b) => a - b)
    .map((focalLengthMm): LensChoice => {
      const view = { sensorWidthMm: want.sensorWidthMm, focalLengthMm, distanceM: want.distanceM };
      const spanM = sceneWidthM(view);
      const neededWidthPx = Math.ceil(wantedPxPerM * spanM - 1e-9);
      return {
        focalLengthMm,
        sceneWidthM: spanM,
        fieldOfViewDeg: fieldOfViewDeg(view),
        pxPerM: widthPx / spanM,
        coversScene: spanM >= wantedWidthM,
        meetsDensity: widthPx >= neededWidthPx,
        neededWidthPx,
        soldWidthPx: COMMON_WIDTHS_PX.find((sold) => sold >= neededWidthPx),
      };
    });
  const pick = choices.findLast((choice) => choice.coversScene) ?? choices[0]!;
  return { ...pick, choices };
}
