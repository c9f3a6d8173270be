/**
 * Modulation and coding schemes of IEEE 802.11, and the receiver sensitivity that the standard demands of each.
 *
 * Sensitivities: the whole table of 20 to 160 MHz was read in a national regulation that reproduces it; the clause and
 * table numbers (802.11n clause 20.3.22.1, 802.11ac Table 22-25, 802.11ax Table 27-51) are from memory. They are the
 * WORST that a compliant radio may be: real radios are typically 5 to 12 dB better at the low rows and 3 to 8 dB at the
 * high ones (judgement). A data sheet's figures, where known, take their place.
 */

export type WifiStandard = "802.11n" | "802.11ac" | "802.11ax";
export type RadioStandard = WifiStandard | "802.11ad";
/** Channel widths in MHz; 802.11ad knows only 2160. */
export type ChannelWidthMHz = 20 | 40 | 80 | 160 | 2160;

export type ModulationRow = {
  /** Row of the table. 802.11n numbers streams into its index: index = 8 (streams - 1) + row. */
  readonly mcs: number;
  readonly name: string;
  readonly bitsPerSymbol: number;
  readonly codeRatio: number;
  /** Minimum sensitivity at 20 MHz; each doubling of the width asks 3 dB more. */
  readonly sensitivityDbm: number;
};

export const MODULATION_ROWS: readonly ModulationRow[] = [
  { mcs: 0, name: "BPSK 1/2", bitsPerSymbol: 1, codeRatio: 1 / 2, sensitivityDbm: -82 },
  { mcs: 1, name: "QPSK 1/2", bitsPerSymbol: 2, codeRatio: 1 / 2, sensitivityDbm: -79 },
  { mcs: 2, name: "QPSK 3/4", bitsPerSymbol: 2, codeRatio: 3 / 4, sensitivityDbm: -77 },
  { mcs: 3, name: "16-QAM 1/2", bitsPerSymbol: 4, codeRatio: 1 / 2, sensitivityDbm: -74 },
  { mcs: 4, name: "16-QAM 3/4", bitsPerSymbol: 4, codeRatio: 3 / 4, sensitivityDbm: -70 },
  { mcs: 5, name: "64-QAM 2/3", bitsPerSymbol: 6, codeRatio: 2 / 3, sensitivityDbm: -66 },
  { mcs: 6, name: "64-QAM 3/4", bitsPerSymbol: 6, codeRatio: 3 / 4, sensitivityDbm: -65 },
  { mcs: 7, name: "64-QAM 5/6", bitsPerSymbol: 6, codeRatio: 5 / 6, sensitivityDbm: -64 },
  { mcs: 8, name: "256-QAM 3/4", bitsPerSymbol: 8, codeRatio: 3 / 4, sensitivityDbm: -59 },
  { mcs: 9, name: "256-QAM 5/6", bitsPerSymbol: 8, codeRatio: 5 / 6, sensitivityDbm: -57 },
  { mcs: 10, name: "1024-QAM 3/4", bitsPerSymbol: 10, codeRatio: 3 / 4, sensitivityDbm: -54 },
  { mcs: 11, name: "1024-QAM 5/6", bitsPerSymbol: 10, codeRatio: 5 / 6, sensitivityDbm: -52 },
];

type WifiShape = {
  readonly rows: number;
  readonly widths: readonly ChannelWidthMHz[];
  /** Data subcarriers by width (from memory; reproduces the published rates). */
  readonly subcarriers: Readonly<Record<number, number>>;
  readonly symbolUs: number;
  /** Guard intervals, shortest first. */
  readonly guardNs: readonly number[];
};

/** Shape of each standard's signal: rows used, subcarriers, symbol without its guard interval (from memory). */
export const WIFI_SHAPES: Readonly<Record<WifiStandard, WifiShape>> = {
  "802.11n": {
    rows: 8,
    widths: [20, 40],
    subcarriers: { 20: 52, 40: 108 },
    symbolUs: 3.2,
    guardNs: [400, 800],
  },
  "802.11ac": {
    rows: 10,
    widths: [20, 40, 80, 160],
    subcarriers: { 20: 52, 40: 108, 80: 234, 160: 468 },
    symbolUs: 3.2,
    guardNs: [400, 800],
  },
  "802.11ax": {
    rows: 12,
    widths: [20, 40, 80, 160],
    subcarriers: { 20: 234, 40: 468, 80: 980, 160: 1960 },
    symbolUs: 12.8,
    guardNs: [800, 1600, 3200],
  },
};

/**
 * 802.11ac combinations, of one to four streams, that the standard leaves out (from memory; they are those whose coded
 * bits do not divide evenly among the encoders, which a test re-derives).
 */
export const VHT_EXCLUDED: readonly {
  readonly widthMHz: ChannelWidthMHz;
  readonly mcs: number;
  readonly streams: readonly number[];
}[] = [
  { widthMHz: 20, mcs: 9, streams: [1, 2, 4] },
  { widthMHz: 80, mcs: 6, streams: [3] },
  { widthMHz: 160, mcs: 9, streams: [3] },
];

/**
 * 802.11ad single carrier in its 2160 MHz channel. Rates as read in published tables; the sensitivities are from
 * memory. Row 5 (BPSK with 13/16 coding) needs 1 dB more than the faster row 6 (QPSK 1/2): the table does not rise evenly.
 */
export const SINGLE_CARRIER_ROWS: readonly {
  readonly mcs: number;
  readonly phyMbps: number;
  readonly sensitivityDbm: number;
}[] = [
  { mcs: 1, phyMbps: 385, sensitivityDbm: -68 },
  { mcs: 2, phyMbps: 770, sensitivityDbm: -66 },
  { mcs: 3, phyMbps: 962.5, sensitivityDbm: -65 },
  { mcs: 4, phyMbps: 1155, sensitivityDbm: -64 },
  { mcs: 5, phyMbps: 1251.25, sensitivityDbm: -62 },
  { mcs: 6, phyMbps: 1540, sensitivityDbm: -63 },
  { mcs: 7, phyMbps: 1925, sensitivityDbm: -62 },
  { mcs: 8, phyMbps: 2310, sensitivityDbm: -61 },
  { mcs: 9, phyMbps: 2502.5, sensitivityDbm: -59 },
  { mcs: 10, phyMbps: 3080, sensitivityDbm: -55 },
  { mcs: 11, phyMbps: 3850, sensitivityDbm: -54 },
  { mcs: 12, phyMbps: 4620, sensitivityDbm: -53 },
];
