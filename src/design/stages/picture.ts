/** What the camera shows; how the picture gets home is beside it in link.ts. */
import type { Purpose } from "../brief.ts";

export type * from "./link.ts";

export interface SceneView {
  readonly name: string;
  readonly purpose: Purpose;
  readonly wantedPxPerM: number;
  readonly focalLengthMm: number;
  readonly pixelsAcross: number;
  readonly pixelsDown: number;
  /** What the picture spans at the distance. */
  readonly sceneWidthM: number;
  readonly fieldOfViewDeg: number;
  /** The picture spans the asked width (a turning camera turns to it). */
  readonly isWideEnough: boolean;
  readonly pxPerM: number;
  readonly isEnough: boolean;
  readonly bitrateMbps: number;
}
export interface View {
  readonly scenes: readonly SceneView[];
  readonly totalMbps: number;
  readonly storageGB: number;
  /** All streams over the longest day on which the cameras run, spread over its 24 hours. */
  readonly meanMbps: number;
}
