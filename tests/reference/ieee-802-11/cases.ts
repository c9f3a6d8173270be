import type { ChannelWidthMHz } from "../../../src/core/link/index.ts";

/**
 * Source: minimum receiver sensitivity of IEEE 802.11n, ac and ax, at 20, 40, 80, 160 MHz, as read whole in a national
 * regulation that reproduces the table; the ends -82 and -48 dBm also in a second place. How: printed values.
 */
export const SENSITIVITIES_DBM: readonly (readonly [mcs: number, levels: readonly number[]])[] = [
  [0, [-82, -79, -76, -73]],
  [1, [-79, -76, -73, -70]],
  [2, [-77, -74, -71, -68]],
  [3, [-74, -71, -68, -65]],
  [4, [-70, -67, -64, -61]],
  [5, [-66, -63, -60, -57]],
  [6, [-65, -62, -59, -56]],
  [7, [-64, -61, -58, -55]],
  [8, [-59, -56, -53, -50]],
  [9, [-57, -54, -51, -48]],
  [10, [-54, -51, -48, -45]],
  [11, [-52, -49, -46, -43]],
];

/** SNR that the minima imply with a noise figure of 10 dB and 5 dB of implementation margin. How: worked by hand. */
export const IMPLIED_SNR_DB: readonly number[] = [4, 7, 9, 12, 16, 20, 21, 22, 27, 29, 32, 34];

export const WIDTHS: readonly ChannelWidthMHz[] = [20, 40, 80, 160];

/**
 * Source: one-stream rates in Mbit/s, [long, short] guard interval, of 802.11n and ac; the 20 MHz column is the published
 * 802.11n table, the rest from memory of the published 802.11ac one. How: printed values.
 */
export const RATES_MBPS: readonly (readonly [
  mcs: number,
  byWidth: readonly (readonly [number, number] | null)[],
])[] = [
  [
    0,
    [
      [6.5, 7.2],
      [13.5, 15],
      [29.3, 32.5],
    ],
  ],
  [
    1,
    [
      [13, 14.4],
      [27, 30],
      [58.5, 65],
    ],
  ],
  [
    2,
    [
      [19.5, 21.7],
      [40.5, 45],
      [87.8, 97.5],
    ],
  ],
  [
    3,
    [
      [26, 28.9],
      [54, 60],
      [117, 130],
    ],
  ],
  [
    4,
    [
      [39, 43.3],
      [81, 90],
      [175.5, 195],
    ],
  ],
  [
    5,
    [
      [52, 57.8],
      [108, 120],
      [234, 260],
    ],
  ],
  [
    6,
    [
      [58.5, 65],
      [121.5, 135],
      [263.3, 292.5],
    ],
  ],
  [
    7,
    [
      [65, 72.2],
      [135, 150],
      [292.5, 325],
    ],
  ],
  [
    8,
    [
      [78, 86.7],
      [162, 180],
      [351, 390],
    ],
  ],
  [9, [null, [180, 200], [390, 433.3]]],
];

/** Source: 802.11ad single-carrier rates as read in published tables; sensitivities from memory. How: printed values. */
export const SINGLE_CARRIER: readonly (readonly [mcs: number, mbps: number, sensitivityDbm: number])[] = [
  [1, 385, -68],
  [2, 770, -66],
  [3, 962.5, -65],
  [4, 1155, -64],
  [5, 1251.25, -62],
  [6, 1540, -63],
  [7, 1925, -62],
  [8, 2310, -61],
  [9, 2502.5, -59],
  [10, 3080, -55],
  [11, 3850, -54],
  [12, 4620, -53],
];
