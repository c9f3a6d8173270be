/** What hangs on a mast, at which height, and what people can lift. */
import type { Soil, TubeFamily } from "../../core/mast/index.ts";
import type { SoilClass } from "../brief.ts";

/** Open country stands in while nobody has said how sheltered the place is. @source ASCE 7-16, exposure C */
export const EXPOSURE = "C" as const;

/** Lower edge of a panel on a mast: above heads, animals and snow. @source judgement */
export const PANEL_LOWER_EDGE_M = 2;

/** Middle of a box on a mast: to be reached from the ground. @source judgement */
export const BOX_HEIGHT_M = 1.2;

/** Middle of a box that stands on the ground. @source judgement */
export const BOX_ON_GROUND_M = 0.3;

/** A larger array than this goes on a frame of its own. @source judgement: what one bracket and one mast by hand bear */
export const LARGEST_ARRAY_ON_MAST_M2 = 2;

/** Middle of the panels on a ground frame, and the way from there to the mast. @source judgement */
export const GROUND_FRAME_HEIGHT_M = 1;
export const GROUND_FRAME_AWAY_M = 5;

/** A bank heavier than this stands on the ground beside the mast. @source judgement */
export const HEAVIEST_BANK_ON_MAST_KG = 30;

/** Faces that catch wind and weights on the mast. @source from memory of usual data sheets */
export const CAMERA_ON_MAST = { faceM2: 0.02, weightKg: 1.2 } as const;
export const RADIO_ON_MAST = { faceM2: 0.09, weightKg: 1.5 } as const;
export const BRACKETS_KG = 6;
export const BOX_ON_MAST = { heightM: 0.5, widthM: 0.4, depthM: 0.25, weightKg: 8 } as const;

/** Inside volume: the bank with room for hands and air, and the electronics. @source from memory: 10 litres per kWh of block */
export const BLOCK_L_PER_KWH = 10;
export const BANK_ROOM_RATIO = 2;
export const ELECTRONICS_L = 25;

/** The mast in metric or in American pipe. */
export function tubeFamily(countryCode: string | null): TubeFamily {
  return isAmericanTrade(countryCode) ? "schedule-40" : "metric";
}

/** Countries that buy pipe by the inch and wire by gauge. @source common practice, no source */
export function isAmericanTrade(countryCode: string | null): boolean {
  return countryCode !== null && ["US", "CA", "PR", "GU", "VI", "AS", "MP"].includes(countryCode);
}

/** Footing diameters to try. @source common practice, no source: what a hand auger or a spade digs */
export const FOOTING_DIAMETERS_M = [0.3, 0.4, 0.5, 0.6] as const;

/** The narrowest hole that need not be deeper than this is taken. @source judgement: the reach of a hand auger with a bar */
export const COMFORTABLE_DEPTH_M = 2;

/** Topsoil that carries nothing. @source common practice, no source: 6 to 12 in */
export const LOOSE_TOP_M = 0.2;

/** Soft ground has no presumptive strength: the weakest that has one shows the size, and an engineer decides. */
export const SOIL_OF_CLASS: Readonly<Record<SoilClass, Soil>> = {
  rock: "rock",
  gravel: "gravel",
  sand: "sand",
  clay: "clay",
  soft: "clay",
};

/** How blocks, bags and panels are lifted: close to the body from near the ground to waist height. @source judgement */
export const LIFTING = {
  compact: { horizontalM: 0.3, startHeightM: 0.2, travelM: 0.7 },
  wide: { horizontalM: 0.45, startHeightM: 0.2, travelM: 1 },
} as const;

/** Diameters that usual pole clamps span. @source from memory */
export const CLAMP_MM = { narrowest: 30, widest: 130 } as const;
