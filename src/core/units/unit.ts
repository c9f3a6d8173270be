/** The kinds of quantity a builder may be asked for. A temperature and a difference of temperatures are two kinds. */
export type Dimension =
  | "length"
  | "area"
  | "angle"
  | "speed"
  | "power"
  | "energy"
  | "charge"
  | "voltage"
  | "current"
  | "frequency"
  | "gain"
  | "level"
  | "loss"
  | "bitrate"
  | "frameRate"
  | "duration"
  | "mass"
  | "pressure"
  | "temperature"
  | "temperatureDifference"
  | "temperatureCoefficient"
  | "irradiation"
  | "share"
  | "count";

/** One row of the unit table. */
export interface UnitRow {
  /** What is shown after a number; plain ASCII, unique in the whole table; empty for a bare count. */
  readonly symbol: string;
  readonly singular: string;
  readonly plural: string;
  /** value in the base unit = value in this unit x toBase + baseOffset; the base unit has 1 and 0. */
  readonly toBase: number;
  readonly baseOffset?: number;
  /** Further ways to type it, besides symbol and names; letter case is forgiven where only one unit can be meant. */
  readonly typed: readonly string[];
  /** True for what is paced out or held up at arm's length: good to about a fifth. */
  readonly isRough?: true;
  /** Who says that toBase is this number. */
  readonly source: string;
}

export interface Unit extends UnitRow {
  readonly dimension: Dimension;
}

export const DEFINITION = "definition of the unit";
export const SI = "BIPM SI Brochure, 9th edition (2019): SI units and prefixes; from memory";
export const SI_ACCEPTED =
  "BIPM SI Brochure, 9th edition (2019), table 8, non-SI units accepted for use with the SI; from memory";
export const SP811 = "NIST SP 811 (2008), appendix B.8, exact; from memory";
export const PRACTICE = "common practice, no source";
