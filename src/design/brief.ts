/**
 * What a design is computed from: engineering names and plain numbers, each with its origin. The map from question
 * ids to these names is flows/brief-from-answers.ts, and nothing else.
 *
 * Every field is always present: where the builder has not answered yet, it holds the question's own stand-in with
 * origin "assumed" and isAnswered false, so that nothing here needs a second default.
 */

import type { ProfilePoint } from "../core/link/index.ts";
import type { HorizonProfile } from "../core/sun/index.ts";
import type { UnitSystem } from "../core/units/index.ts";

export type Origin = "measured" | "datasheet" | "estimate" | "assumed";

export const topicIds = [
  "place",
  "view",
  "loads",
  "hours",
  "autonomy",
  "power",
  "mounting",
  "link",
  "parts",
  "money",
] as const;
export type TopicId = (typeof topicIds)[number];

/**
 * One answered (or assumed) value. For a quantity `value` is the cautious end of what the builder said, and
 * low, high are both ends.
 */
export interface Given<T> {
  readonly value: T;
  readonly origin: Origin;
  readonly isAnswered: boolean;
  readonly low?: number;
  readonly high?: number;
}

export interface Site {
  readonly label: string;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  /** null where neither the builder nor the gazetteer knows it; the climate's ground map then stands in. */
  readonly elevationM: number | null;
  /** ISO 3166-1 alpha-2, or null where only coordinates were given and no place is near. */
  readonly countryCode: string | null;
}

export interface Spot {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
}

/** Ground under the radio path that the builder brought: typed, pasted, or from a file. */
export interface OwnGround {
  /** From the post outwards, beginning at 0 m. */
  readonly profile: readonly ProfilePoint[];
  /** Who says so: "typed by the builder", a file's name. */
  readonly source: string;
}

/** Sun figures that the builder brought: typed, or from a file. */
export interface OwnSun {
  readonly ghiDailyKWhPerM2ByMonth: readonly number[];
  /** null where the source has none. */
  readonly meanTempCByMonth: readonly number[] | null;
  /**
   * Twelve times sixteen equally likely daily irradiations over the month's mean, dullest first; null where the source
   * has no days.
   */
  readonly dailyQuantilesByMonth: readonly (readonly number[])[] | null;
  /** Correlation of neighbouring days as normal scores, 0 to 0.95; null where the source has no days. */
  readonly lag1ByMonth: readonly number[] | null;
  /** The source's own hours; null where it has none. */
  readonly hours: KeptHours | null;
  /** Who says so: "typed by the builder", a file's name and layout. */
  readonly source: string;
}

/** A typical year's hours as a brief keeps them. */
export interface KeptHours {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly utcOffsetH: number;
  /** By packHours of core/weather. */
  readonly packed: string;
}

/** Which of two sun sources the sizes are worked from. */
export type TrustedSun = "lower" | "own" | "map";

/** What must be told apart in the picture, weakest first. */
export type Purpose = "notice" | "follow" | "recognise" | "identify";
export type CameraKind = "fixed" | "turning";
export type Night = "none" | "infrared" | "ambient";
export type Smoothness = "occasional" | "normal" | "smooth";

export interface Scene {
  readonly kind: Given<CameraKind>;
  readonly purpose: Given<Purpose>;
  readonly distanceM: Given<number>;
  readonly widthM: Given<number>;
}

export type DeviceKind =
  | "camera"
  | "radio"
  | "cellular router"
  | "recorder"
  | "lamp"
  | "sensor"
  | "heater"
  | "fan"
  | "other device";

/** When a device runs, day and night or by thermostat. Clock minutes are local clock time after midnight; `to` may lie before `from` (over midnight). */
export type Schedule =
  | { readonly kind: "always" }
  | { readonly kind: "daylight"; readonly marginH: number }
  | { readonly kind: "clock"; readonly fromMin: number; readonly toMin: number }
  /** By a thermostat: a heater. */
  | { readonly kind: "cold"; readonly belowC: number }
  /** By a thermostat: a fan. */
  | { readonly kind: "heat"; readonly aboveC: number };

export interface Device {
  readonly name: string;
  readonly kind: DeviceKind;
  readonly dayW: Given<number>;
  /** Extra power in the dark (infrared light); 0 for most. */
  readonly nightExtraW: Given<number>;
  readonly feed: "poe" | "dc";
  /** Only of a device that the builder named: whether it runs on the one supply of 12 V. */
  readonly takes12V?: Given<boolean>;
  readonly schedule: Schedule;
  /** The lowest number sheds first when the battery falls. */
  readonly priority: number;
}

export type Chemistry = "agm" | "lifepo4";
export type ControllerKind = "mppt" | "pwm";
export type Sizing = "recommended" | "handbook" | "simulation";
export type Consequence = "nuisance" | "worry" | "disaster" | "days" | "darkHours";
export type Support = "newMast" | "existingPole" | "wall" | "roof";
export type SoilClass = "rock" | "gravel" | "sand" | "clay" | "soft";
export type Carrier = "cable" | "radio" | "cellular" | "none";
export type Sight = "clear" | "trees" | "buildings" | "ground" | "unknown";

export interface OwnedBattery {
  readonly chemistry: Chemistry;
  readonly blockV: number;
  readonly blockAh: number;
  readonly blocks: number;
}
export interface OwnedPanel {
  readonly ratedW: number;
  readonly openCircuitV: number;
  readonly count: number;
}
export interface OwnedController {
  readonly kind: ControllerKind;
  readonly maxInputV: number;
  readonly maxChargeA: number;
  readonly chargesLifepo4: boolean;
}
export interface OwnedRadio {
  readonly feed: "802.3" | "passive24" | "passive48" | "dc";
  readonly minInputV: number;
  readonly maxInputV: number;
}

export interface Brief {
  readonly name: string;
  /** ISO 4217. */
  readonly currency: string;
  /** In which everything is told; figures themselves are metric. */
  readonly units: UnitSystem;
  /** Topics in which a question still lacks an answer: what rests on them is provisional. */
  readonly openTopics: readonly TopicId[];
  readonly place: {
    readonly site: Given<Site | null>;
    /** The builder's own sun figures; null where there are none. */
    readonly ownSun: Given<OwnSun | null>;
    readonly trustedSun: Given<TrustedSun>;
    /** What stands round the panel. */
    readonly horizon: Given<HorizonProfile>;
    readonly soilingFrac: Given<number>;
    /** Weeks a year in which snow lies on the panel; 0 where it is not asked. */
    readonly snowWeeks: Given<number>;
  };
  readonly view: {
    readonly scenes: readonly Scene[];
    readonly night: Given<Night>;
    readonly smoothness: Given<Smoothness>;
    readonly recordsSound: Given<boolean>;
    readonly keepDays: Given<number>;
  };
  readonly loads: { readonly devices: readonly Device[] };
  readonly hours: {
    readonly runsInMonth: Given<readonly boolean[]>;
  };
  readonly autonomy: {
    readonly consequence: Given<Consequence>;
    /** Only where consequence is "days". */
    readonly askedDays: Given<number>;
    /** Only where consequence is "darkHours": hours a year it may be dark. */
    readonly askedDarkHours: Given<number>;
    /** How soon somebody can come by, days. */
    readonly visitDays: Given<number>;
  };
  readonly power: {
    readonly chemistry: Given<Chemistry | "choose">;
    /** Of a lithium battery's own heater; 0 without one. */
    readonly batteryHeaterW: Given<number>;
    readonly heaviestBlockKg: Given<number>;
    readonly bankV: Given<12 | 24 | 48 | "choose">;
    readonly controller: Given<ControllerKind>;
    readonly marginFrac: Given<number>;
    readonly largestPanelW: Given<number>;
    readonly isTiltChanged: Given<boolean>;
    /** Which of the two sizings the lists follow. */
    readonly sizing: Given<Sizing>;
  };
  readonly mounting: {
    /** Distance cleared of overhead lines: yes, no, or nobody has looked. */
    readonly overheadLine: Given<"no" | "yes" | "notLooked">;
    /** Level distance from the spot within which there is surely no overhead wire: as far as was looked, or the nearest one's. */
    readonly freeGroundM: Given<number>;
    readonly support: Given<Support>;
    /** Outwards from a wall, clockwise from true north; null where nobody has looked, or where it is no wall. */
    readonly wallAzimuthDeg: Given<number | null>;
    readonly cameraHeightM: Given<number>;
    /** Outside diameter of a pole that stands already, mm; 0 where there is none. */
    readonly poleDiameterMm: Given<number>;
    /** Top of that pole above ground; 0 where there is none. */
    readonly poleHeightM: Given<number>;
    /** 3-second gust to design for. */
    readonly gustMPerS: Given<number>;
    readonly soil: Given<SoilClass>;
    readonly frostDepthM: Given<number>;
  };
  readonly link: {
    readonly carrier: Given<Carrier>;
    readonly distanceM: Given<number>;
    /** Coordinates of the other end, where the distance was given by them; null: only the distance is known. */
    readonly far: Given<Spot | null>;
    readonly sight: Given<Sight>;
    /** What stands between, in the builder's own words; empty where nothing was named. */
    readonly between: Given<string>;
    /** null: taken as level between the ends. */
    readonly ground: Given<OwnGround | null>;
    readonly farHeightM: Given<number>;
    readonly otherPosts: Given<number>;
  };
  readonly parts: {
    readonly battery: Given<OwnedBattery> | null;
    readonly panel: Given<OwnedPanel> | null;
    readonly controller: Given<OwnedController> | null;
    readonly radio: Given<OwnedRadio> | null;
  };
  readonly money: {
    /** 0 where there is no ceiling. */
    readonly ceiling: Given<number>;
    readonly contingencyFrac: Given<number>;
  };
}
