import type { ChannelWidthMHz, RadioStandard } from "./modulation-tables.ts";

export type RadioClassId = "2.4 GHz" | "5 GHz" | "60 GHz";

/** A kind of radio with its antenna built in, as it can be bought from many makers. */
export type RadioClass = {
  readonly id: RadioClassId;
  readonly lowMHz: number;
  readonly highMHz: number;
  readonly standard: RadioStandard;
  readonly streams: number;
  readonly widthsMHz: readonly ChannelWidthMHz[];
  /** Gains of built-in antennas, smallest first: the first that does is the one to buy. */
  readonly gainsDbi: readonly number[];
  /** What its transmitter gives at most, into the antenna. */
  readonly maxTxPowerDbm: number;
  readonly portMbps: number;
  /** Centres of the channels where the standard fixes them. */
  readonly centresMHz?: readonly number[];
};

/**
 * Generic classes: gains and powers are the common run of radios with a built-in antenna, from memory, no source. Radios
 * of IEEE 802.11ad: centres of channels 1 to 4 as read in published tables; channel 4 loses about 10 dB/km less to oxygen
 * than channel 2. Rows of IEEE 802.11ay beyond a single 2160 MHz channel are not in the tables.
 */
export const RADIO_CLASSES: readonly RadioClass[] = [
  {
    id: "5 GHz",
    lowMHz: 5100,
    highMHz: 5900,
    standard: "802.11ac",
    streams: 2,
    widthsMHz: [20, 40, 80],
    gainsDbi: [13, 16, 19, 23, 27, 30],
    maxTxPowerDbm: 24,
    portMbps: 100,
  },
  {
    id: "60 GHz",
    lowMHz: 57_000,
    highMHz: 71_000,
    standard: "802.11ad",
    streams: 1,
    widthsMHz: [2160],
    gainsDbi: [20, 30, 34, 38, 42],
    maxTxPowerDbm: 10,
    portMbps: 1000,
    centresMHz: [58_320, 60_480, 62_640, 64_800],
  },
  {
    id: "2.4 GHz",
    lowMHz: 2400,
    highMHz: 2500,
    standard: "802.11n",
    streams: 2,
    widthsMHz: [20, 40],
    gainsDbi: [8, 11, 14, 18, 24],
    maxTxPowerDbm: 24,
    portMbps: 100,
  },
];
