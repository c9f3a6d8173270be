/** How the picture gets home. Everything below `monthlyGB` is of the radio path and null, or empty, without one. */
import type { Obstacle, ProfilePoint, RadioClassId } from "../../core/link/index.ts";

export interface Link {
  readonly carrier: "cable" | "radio" | "cellular";
  readonly needMbps: number;
  readonly monthlyGB: number;
  readonly path: LinkPath | null;
  readonly clearance: LinkClearance | null;
  readonly loss: LinkLoss | null;
  readonly radio: RadioPath | null;
  readonly budget: LinkBudget | null;
  readonly availability: LinkAvailability | null;
  /** null where the post has the other end's radio to itself. */
  readonly sector: LinkSector | null;
  readonly aim: LinkAim | null;
  /** Ways and classes of radio that were looked at, best first. */
  readonly choices: readonly LinkChoice[];
}

/** What stands between, as understood. */
export interface NamedObstacle {
  readonly noun: string;
  readonly kind: Obstacle["kind"];
  readonly heightM: number;
  readonly fromNearM: number;
  readonly depthM: number;
}

/** Heights above the sea, or whatever else the ground was given in. */
export interface LinkSection {
  readonly nearAntennaM: number;
  readonly farAntennaM: number;
  readonly frequencyMHz: number;
  /** Of the effective earth radius to the real one. */
  readonly earthRadiusRatio: number;
  readonly profile: readonly ProfilePoint[];
  readonly obstacles: readonly Obstacle[];
}

export interface LinkPath {
  readonly distanceM: number;
  /** From true north at the post to the other end, and back; null where only the distance is known. */
  readonly bearingDeg: number | null;
  readonly backBearingDeg: number | null;
  /** Who says how the ground runs; "taken as level" where nobody did. */
  readonly groundSource: string;
  readonly obstacles: readonly NamedObstacle[];
  /** Why words or ground could not be used, one sentence; null where all was understood. */
  readonly unread: string | null;
  /** Antennas as the design has them, ground and obstacles above the sea, trees with their growth: for drawings. */
  readonly section: LinkSection;
}

export interface ClearanceByRule {
  readonly name: string;
  /** Height still missing at the worst spot; negative or 0 where the rule is kept. */
  readonly missingM: number;
}

export interface LinkClearance {
  /** Of the first Fresnel zone half way along. */
  readonly fresnelRadiusM: number;
  /** Line less the obstacle or the ground, at the worst spot. */
  readonly clearanceM: number;
  /** The same as a share of the first Fresnel radius there. */
  readonly clearanceFrac: number;
  /** What is nearest to the line in Fresnel radii, in words: "the trees 400 m from the post". */
  readonly governing: string;
  readonly governingKind: Obstacle["kind"];
  /** Nearest to the line when every tree is cut. */
  readonly besidesTrees: { readonly called: string; readonly clearanceM: number };
  readonly byRule: readonly ClearanceByRule[];
  /** Heights above their own ground at which 0.6 of the zone is free, one end alone raised; null when it is already. */
  readonly clearingNearHeightM: number | null;
  readonly clearingFarHeightM: number | null;
  /** The cheapest pair, by what a metre costs at each end; null when nothing needs to rise. */
  readonly cheapest: {
    readonly nearHeightM: number;
    readonly farHeightM: number;
    readonly raises: "near" | "far" | "both";
  } | null;
}

/** dB, loss positive. */
export interface LinkLoss {
  readonly freeSpaceDb: number;
  readonly gasDb: number;
  readonly diffractionDb: number;
  readonly vegetationDb: number;
  /** Part of the diffraction that a smooth curved earth asks beyond Bullington's edge. */
  readonly sphericalExtraDb: number;
  readonly totalDb: number;
  readonly method: string;
  /** Why it was charged so. */
  readonly reason: string;
  /** The same edges by another construction; null where there is only one. */
  readonly secondOpinionDb: number | null;
  /** How well it can be known, either way. */
  readonly toleranceDb: number;
  /** What stands between, as it stands today in leaf and without leaves, and grown; 0 where nothing does. */
  readonly betweenTodayDb: number;
  readonly betweenBareDb: number;
  readonly betweenGrownDb: number;
  /** What ground and buildings alone take, every tree cut. */
  readonly betweenWithoutTreesDb: number;
  /** More than that in the hardest rain, 53 minutes a year. */
  readonly rainDb: number;
}

export interface RadioPath {
  readonly radioClass: RadioClassId;
  readonly distanceM: number;
  readonly frequencyMHz: number;
  readonly region: string;
  readonly bandName: string;
  readonly maxEirpDbm: number;
  readonly needsRadarCheck: boolean;
  readonly silenceAfterPowerCutS: number;
  readonly nearHeightM: number;
  readonly farHeightM: number;
  readonly txPowerDbm: number;
  readonly antennaGainDbi: number;
  /** At the other end: another antenna where several posts share it. */
  readonly farAntennaGainDbi: number;
  readonly farTxPowerDbm: number;
  /** Of the weaker direction, in clear air, the allowance for aim and ageing taken off. */
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
  /** "ask": depends on a licence or on a country not known here. */
  readonly outdoorAllowed: true | "ask";
  readonly channelWidthMHz: number;
  readonly exposureDistanceM: number;
  readonly carriesPicture: boolean;
}

export interface LinkDirection {
  readonly from: string;
  readonly to: string;
  readonly txPowerDbm: number;
  readonly txGainDbi: number;
  readonly eirpDbm: number;
  readonly rxGainDbi: number;
  /** Both ends' feeds. */
  readonly feedLossDb: number;
  readonly rxLevelDbm: number;
  /** On the day it is built and aimed, in clear air: without the allowance for ageing. */
  readonly expectedDbm: number;
  /** The reading may lie so far from it either way before something is wrong. */
  readonly toleranceDb: number;
  /** Of the receiving end, at the rate chosen. */
  readonly sensitivityDbm: number;
  readonly marginDb: number;
  readonly modulation: string;
  readonly phyMbps: number;
  readonly availableMbps: number;
}

export interface LinkBudget {
  readonly nearToFar: LinkDirection;
  readonly farToNear: LinkDirection;
  readonly weaker: "nearToFar" | "farToNear";
  /** Path loss and allowance for aim and ageing, the same both ways. */
  readonly pathLossDb: number;
  readonly allowanceDb: number;
}

export interface LinkAvailability {
  /** Of the weaker direction, to the slowest rate that carries the picture. */
  readonly lostHPerYear: number;
  readonly rainHPerYear: number;
  readonly multipathHPerYear: number;
  /** The rain law ends at 0.001 % and 1 % of the year: beyond, only the side is known. */
  readonly certainty: "computed" | "at-most" | "at-least";
  readonly askedHPerYear: number;
}

export interface LinkSector {
  readonly posts: number;
  readonly airtimeFrac: number;
  readonly allowedFrac: number;
  readonly isEnough: boolean;
  /** Pairs of posts that do not hear each other. */
  readonly hiddenPairs: number;
  readonly spreadDeg: number;
}

export interface LinkAim {
  /** Above the horizontal, at the post and at the other end. */
  readonly tiltDeg: number;
  readonly backTiltDeg: number;
  readonly beamwidthDeg: number;
  /** Off the true aim either way at which 1 dB, and 3 dB, are lost. */
  readonly oneDbDeg: number;
  readonly threeDbDeg: number;
  readonly oneDbAcrossM: number;
  /** True less compass bearing at the post, east positive, mid-2027; null where no place is known or no compass can be trusted. */
  readonly declinationDeg: number | null;
}

export interface LinkChoice {
  readonly name: string;
  readonly suits: boolean | "ask";
  readonly reason: string;
  readonly isTaken: boolean;
}
