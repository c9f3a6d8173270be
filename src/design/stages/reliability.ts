/** What many weather years say of the post: dark hours, charge through the year, and which pairs of panels and battery would do. */
import type { ByMonth } from "./note.ts";
import type { ChosenPair, SizedBy } from "./power.ts";

/** One pair of array and bank, and what it delivers. */
export interface PairOutcome extends ChosenPair {
  readonly panels: number;
  readonly panelW: number;
  readonly installedW: number;
  readonly blocks: number;
  readonly blockAh: number;
  readonly bankAh: number;
  readonly bankKg: number;
  /** Of all panels: what the wind sees. */
  readonly areaM2: number;
  /** Of panels and blocks alone, in the brief's currency. */
  readonly lowCost: number;
  readonly highCost: number;
  /** Hours a year in which the picture is dark, mean of all years, in the careful case. */
  readonly darkHours: number;
}

/** Charge of the bank through the darkest spell of all the years. */
export interface DarkSpell {
  /** Month in which it begins, 0 = January. */
  readonly month: number;
  /** Lowest state of charge of each of its days, of the capacity that the bank then has. */
  readonly lowestSocFracByDay: readonly number[];
  /** At this the most important loads go off, in the cold of the spell's lowest hour. */
  readonly offBelowSocFrac: number;
  /** They are off then. */
  readonly isOff: boolean;
}

/** What the chosen pair does in the one year of the builder's own file. */
export interface OwnYearOutcome {
  /** Whose hours they are. */
  readonly source: string;
  readonly darkHours: number;
  readonly lowestSocFrac: number;
}

/** How the loads fare that are shed together. */
export interface TierYearly {
  readonly devices: string;
  readonly darkHours: number;
  /** Loss-of-load probability: share of the energy it asks for that is not given. */
  readonly lossOfLoadFrac: number;
}

/** What the chosen pair does, in full. */
export interface Yearly {
  /** Mean hours a year in which the picture is dark: demand as answered, sun as the source says, bank at the end of its life. */
  readonly darkHours: number;
  /** In the worst year of ten. */
  readonly worstTenthDarkHours: number;
  readonly darkHoursByMonth: ByMonth;
  /** null where the builder brought no hours. */
  readonly ownYear: OwnYearOutcome | null;
  /** In the careful case. */
  readonly carefulDarkHours: number;
  /** With a sun duller by its whole uncertainty. */
  readonly dullSunDarkHours: number;
  /** Share of the asked energy that is not given, of everything together. */
  readonly lossOfLoadFrac: number;
  /** Each tier of loads, those shed first first. */
  readonly tiers: readonly TierYearly[];
  readonly lowestSocFracByMonth: ByMonth;
  readonly medianSocFracByMonth: ByMonth;
  readonly darkSpell: DarkSpell;
  /** Of what the panels could give, what no load and no battery could take. */
  readonly wastedFrac: number;
  /** Whole discharges of the rated capacity a year. */
  readonly fullCyclesPerYear: number;
  readonly batteryYears: number;
  readonly batteryYearsReason: string;
  /** Days from the first loads back on until nearly full (0.95), mean of the spells; null where there was no such spell. */
  readonly refillDays: number | null;
  /** Hours a year in which the acid could freeze; 0 for lithium. */
  readonly frostHours: number;
}

export interface Reliability {
  readonly years: number;
  /** Dark hours a year that were asked for; null where days were. */
  readonly askedDarkHours: number | null;
  /** Demand of the careful case over the demand as answered. */
  readonly carefulRatio: number;
  /** Its sun over the sun as the source says, 1 at most: duller where the margin does not cover how far it may be off. */
  readonly carefulSunRatio: number;
  /** The careful case in words, the old battery left out: "your margin used up and the sun 16 % duller". */
  readonly carefulMeans: string;
  /** The handbook's pair. */
  readonly handbook: PairOutcome;
  /** Dark hours a year of that pair with a new bank, demand and sun as answered, where its bank bridges dark months; else null. */
  readonly handbookNewDarkHours: number | null;
  /**
   * The least bank for each array that reaches what was asked, or is no darker than the handbook's where days were asked; the
   * one to prefer first, then by cost; empty where nothing does.
   */
  readonly pairs: readonly PairOutcome[];
  readonly chosenMethod: SizedBy;
  readonly because: string;
  readonly chosen: PairOutcome;
  /** The chosen pair reaches what was asked, or nothing was asked in hours. */
  readonly isReached: boolean;
  readonly yearly: Yearly;
}
