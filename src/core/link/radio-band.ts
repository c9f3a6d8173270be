import type { RadioRegion } from "./regions.ts";

/** The sentence that goes wherever a radio-power figure is shown. */
export const CHECK_RULES = "Check your own country's rules before switching on.";

/**
 * How a rule limits power.
 *
 * - `eirp`: so much radiated power whatever the antenna
 * - `conducted`: so much power into the antenna; above `freeGainDbi` of gain it falls 1 dB for each `dbiPerReductionDb`
 *   of further gain (1: radiated power stays put; 3: it grows; undefined: no reduction at all)
 * - `by-gain`: radiated power that a very narrow beam may raise: topDbm at topGainDbi, less slopeDbPerDbi for each dBi
 *   below it, never below floorDbm
 */
export type PowerLimit =
  | { readonly form: "eirp"; readonly eirpDbm: number }
  | {
      readonly form: "conducted";
      readonly conductedDbm: number;
      readonly freeGainDbi: number;
      readonly dbiPerReductionDb: number | undefined;
    }
  | {
      readonly form: "by-gain";
      readonly floorDbm: number;
      readonly topDbm: number;
      readonly topGainDbi: number;
      readonly slopeDbPerDbi: number;
    };

export type RadioBand = {
  /** Ours, unique and never reused. */
  readonly id: string;
  readonly region: RadioRegion;
  readonly lowMHz: number;
  readonly highMHz: number;
  readonly limit: PowerLimit;
  /** Radiated power per MHz of channel. */
  readonly eirpDbmPerMHz?: number;
  /** Power into the antenna per MHz of channel. */
  readonly conductedDbmPerMHz?: number;
  /** Ceiling on the power into the antenna, where the rule names one beside the radiated power. */
  readonly maxConductedDbm?: number;
  /** Least antenna gain with which the limit may be used. */
  readonly minGainDbi?: number;
  /** A radio without transmit power control must stay this far below the limit. */
  readonly withoutPowerControlDb?: number;
  /** A radio without transmit power control must not radiate more than this. */
  readonly withoutPowerControlEirpDbm?: number;
  /** Must listen for radar and leave the channel. */
  readonly dfs: boolean;
  /** After every power cut the radio listens this long before it may send: the link is dark meanwhile. */
  readonly silenceAfterPowerCutS: 0 | 60 | 600;
  /** On a fixed post out of doors. `ask`: depends on the country, a licence or a registration. */
  readonly outdoorAllowed: true | false | "ask";
  readonly notes: string;
  readonly source: string;
  /** When the figure was read or remembered, year and month. */
  readonly asOf: string;
  readonly caution: typeof CHECK_RULES;
};

/** A row as the tables hold it: the caution, the same for all, is added where it leaves the tables. */
export type RadioBandRow = Omit<RadioBand, "caution">;
