/**
 * Direct-current resistance and ampacity of stranded copper in American sizes.
 *
 * ohmPerKft75: uncoated stranded, and coated (tinned) stranded, at 75 degrees C.
 * @source NFPA 70 (NEC) chapter 9 table 8. 18 to 2 AWG read in one copy of the table and from memory; coated 18, 16
 *   and 3 AWG and everything from 1 AWG up from memory. Checked against ASTM B258 geometry in tests/reference.
 *
 * ampacityA60, 75, 90: copper, 30 degrees C ambient, at most three current-carrying conductors.
 * overcurrentLimitA: the largest fuse or breaker whatever the ampacity, 240.4(D).
 * @source NEC (2020/2023) table 310.16 and 240.4(D): 14 to 2 AWG read in two copies that agree; the rest from memory.
 *   18 and 16 AWG have no 60 and 75 degree values: the 240.4(D) limit stands in all three places.
 */
export const AWG_ROWS = [
  // gauge, stranded, coated, 60, 75, 90, limit
  [18, 7.95, 8.45, 7, 7, 7, 7],
  [16, 4.99, 5.29, 10, 10, 10, 10],
  [14, 3.14, 3.26, 15, 20, 25, 15],
  [12, 1.98, 2.05, 20, 25, 30, 20],
  [10, 1.24, 1.29, 30, 35, 40, 30],
  [8, 0.778, 0.809, 40, 50, 55, null],
  [6, 0.491, 0.51, 55, 65, 75, null],
  [4, 0.308, 0.321, 70, 85, 95, null],
  [3, 0.245, 0.254, 85, 100, 115, null],
  [2, 0.194, 0.201, 95, 115, 130, null],
  [1, 0.154, 0.16, 110, 130, 145, null],
  [0, 0.122, 0.127, 125, 150, 170, null],
  [-1, 0.0967, 0.101, 145, 175, 195, null],
  [-2, 0.0766, 0.0797, 165, 200, 225, null],
  [-3, 0.0608, 0.0626, 195, 230, 260, null],
] as const;

/**
 * Maximum resistance at 20 degrees C and ampacity of copper in metric sizes.
 *
 * @source IEC 60228 (2004/2023) tables 2 and 3: class 2 plain, class 5 plain, class 5 tinned, ohm per km. 0.5 to 16 mm2
 *   read in two unrelated copies that agree; 25 mm2 and up from memory.
 * @source IEC 60364-5-52 table B.52, two loaded conductors, installation method B1, 30 degrees C: 70 degree (PVC) and
 *   90 degree (XLPE) insulation, from 1.5 mm2 up; from memory. Below 1.5 mm2 the flexible-cord ratings 3, 6 and 10 A
 *   (from memory) stand in both places.
 */
export const MM2_ROWS = [
  // mm2, class 2, class 5, class 5 tinned, 70, 90
  [0.5, 36.0, 39.0, 40.1, 3, 3],
  [0.75, 24.5, 26.0, 26.7, 6, 6],
  [1, 18.1, 19.5, 20.0, 10, 10],
  [1.5, 12.1, 13.3, 13.7, 17.5, 23],
  [2.5, 7.41, 7.98, 8.21, 24, 31],
  [4, 4.61, 4.95, 5.09, 32, 42],
  [6, 3.08, 3.3, 3.39, 41, 54],
  [10, 1.83, 1.91, 1.95, 57, 75],
  [16, 1.15, 1.21, 1.24, 76, 100],
  [25, 0.727, 0.78, 0.795, 101, 133],
  [35, 0.524, 0.554, 0.565, 125, 164],
  [50, 0.387, 0.386, 0.393, 151, 198],
  [70, 0.268, 0.272, 0.277, 192, 253],
  [95, 0.193, 0.206, 0.21, 232, 306],
  [120, 0.153, 0.161, 0.164, 269, 354],
] as const;

/**
 * What is left of the ampacity when more than three loaded conductors share a raceway or cable: [up to, factor].
 *
 * @source NEC table 310.15(C)(1), from memory
 */
export const GROUPING_ROWS = [
  [3, 1],
  [6, 0.8],
  [9, 0.7],
  [20, 0.5],
] as const;

/**
 * Standard ratings of fuses and breakers in ampere.
 *
 * @source breaker, and class-t with the additional fuse sizes 1, 3, 6, 10 and 601: NEC 240.6(A)
 * @source blade: ISO 8820-3, from memory; gpv: cartridges to IEC 60269-6 in common sizes, from memory;
 *   strip: common sizes of bolt-down strip fuses, from memory
 */
const BREAKER_A = [
  15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450,
  500, 600, 700, 800, 1000, 1200, 1600, 2000, 2500, 3000, 4000, 5000, 6000,
] as const;

export const FUSE_ROWS = {
  breaker: { ratingsA: BREAKER_A, maxDcV: 60, interruptingA: 1500 },
  blade: {
    ratingsA: [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40],
    maxDcV: 32,
    interruptingA: 1000,
  },
  strip: {
    ratingsA: [30, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200, 225, 250, 300],
    maxDcV: 32,
    interruptingA: 2000,
  },
  "class-t": {
    ratingsA: [1, 3, 6, 10, ...BREAKER_A.filter((ratingA) => ratingA <= 1200), 601].sort((a, b) => a - b),
    maxDcV: 125,
    interruptingA: 20_000,
  },
  gpv: {
    ratingsA: [1, 2, 4, 6, 8, 10, 12, 15, 16, 20, 25, 30, 32],
    maxDcV: 1000,
    interruptingA: 10_000,
  },
} as const;

/**
 * Classes of power over Ethernet: class, type, pairs that carry power, watts at the source, watts at the device,
 * lowest and highest source voltage, lowest voltage at the device, loop resistance of the longest channel.
 *
 * @source IEEE 802.3-2018 clause 33 and 802.3bt-2018 clause 145, read in pages that quote them (source and device
 *   watts in two that agree); the 6.25 ohm of four pairs from memory (half of 12.5)
 */
export const POE_ROWS = [
  [1, 1, 2, 4.0, 3.84, 44, 57, 37, 20],
  [2, 1, 2, 7.0, 6.49, 44, 57, 37, 20],
  [3, 1, 2, 15.4, 12.95, 44, 57, 37, 20],
  [4, 2, 2, 30, 25.5, 50, 57, 42.5, 12.5],
  [5, 3, 4, 45, 40, 50, 57, 42.5, 6.25],
  [6, 3, 4, 60, 51, 50, 57, 42.5, 6.25],
  [7, 4, 4, 75, 62, 52, 57, 41.1, 6.25],
  [8, 4, 4, 90, 71.3, 52, 57, 41.1, 6.25],
] as const;

/**
 * Smallest copper equipment grounding conductor: [overcurrent device up to A, gauge].
 *
 * @source NEC table 250.122, read in two copies
 */
export const GROUNDING_ROWS = [
  [15, 14],
  [20, 12],
  [60, 10],
  [100, 8],
  [200, 6],
] as const;

/**
 * Location factor of the lightning collection area.
 *
 * @source IEC 62305-2 (2010) table A.1, read in one page that quotes it
 */
export const LIGHTNING_LOCATION_FACTORS = {
  "among-taller": 0.25,
  "among-equal-or-lower": 0.5,
  isolated: 1,
  hilltop: 2,
} as const;
