/** What the camera shows, and how the picture gets home. */
import type { Purpose } from "../brief.ts";

export interface Link {
  readonly carrier: "cable" | "radio" | "cellular";
  readonly needMbps: number;
  readonly monthlyGB: number;
  /** null for cable and cellular. */
  readonly radio: RadioPath | null;
}

export interface RadioPath {
  readonly distanceM: number;
  readonly frequencyMHz: number;
  readonly region: string;
  readonly bandName: string;
  readonly maxEirpDbm: number;
  readonly needsRadarCheck: boolean;
  readonly silenceAfterPowerCutS: number;
  readonly nearHeightM: number;
  readonly farHeightM: number;
  readonly fresnelRadiusM: number;
  readonly clearanceM: number;
  /** Clearance at the worst point as a share of the first Fresnel radius. */
  readonly clearanceFrac: number;
  /** Post's radio height that clears 0.6 of the first zone; null when it clears already. */
  readonly clearingNearHeightM: number | null;
  readonly clearingFarHeightM: number | null;
  readonly freeSpaceLossDb: number;
  readonly diffractionLossDb: number;
  readonly vegetationLossDb: number;
  readonly rainLossDb: number;
  readonly txPowerDbm: number;
  readonly antennaGainDbi: number;
  readonly rxLevelDbm: number;
  readonly modulation: string;
  readonly phyMbps: number;
  readonly availableMbps: number;
  readonly sensitivityDbm: number;
  readonly fadeMarginDb: number;
  readonly wantedFadeMarginDb: number;
  /** Of the far end's air time, by this post and the others that share it; above 0.5 there is no room for bursts. */
  readonly airtimeFrac: number;
  /** The band's own words, and who says so. */
  readonly bandNotes: string;
  readonly bandSource: string;
  /** false: no fixed post may use it; "ask": depends on a licence or on a country not known here. */
  readonly outdoorAllowed: boolean | "ask";
  readonly channelWidthMHz: number;
  readonly exposureDistanceM: number;
  readonly carriesPicture: boolean;
}

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
}
