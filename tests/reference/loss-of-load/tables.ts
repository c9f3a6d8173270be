/**
 * Days of usable battery for a loss of load of 5 %, 1 % and nothing in a typical year, lossless, by the array's output in the
 * worst month over the load.
 *
 * @source an independent lossless run in Python with pvlib on typical years (TMY3; New Delhi: the weather file of the building
 *         test ASHRAE 140), even sky, albedo 0.2, latitude + 15 degrees, year run twice and the second scored. Not published;
 *         Phoenix and Renton are repeated by make_vectors.py. The horizontal light is summed from the same files.
 */
export const TYPICAL_DAYS = {
  arrayRatios: [1, 1.1, 1.3, 1.5, 2],
  lossFracs: [0.05, 0.01, 0],
  byPlace: {
    Phoenix: [
      [0.68, 0.6, 0.55, 0.53, 0.51],
      [1.67, 1.46, 1.2, 1.04, 0.78],
      [3.21, 2.27, 2.02, 1.84, 1.58],
    ],
    Boston: [
      [1.14, 1, 0.79, 0.64, 0.55],
      [2.24, 1.97, 1.65, 1.43, 1.04],
      [3.87, 3.2, 2.86, 2.58, 1.9],
    ],
    Miami: [
      [0.77, 0.63, 0.54, 0.52, 0.5],
      [1.79, 1.22, 0.93, 0.74, 0.58],
      [3.64, 2.18, 1.51, 1.28, 1.03],
    ],
    Renton: [
      [1.19, 1.03, 0.79, 0.66, 0.57],
      [4.13, 3.61, 3, 2.58, 1.69],
      [6.89, 6.4, 5.58, 5.09, 3.88],
    ],
    "New Delhi": [
      [0.59, 0.56, 0.53, 0.52, 0.5],
      [1.35, 1.08, 0.8, 0.62, 0.57],
      [3.97, 2.59, 1.61, 1.21, 1.07],
    ],
  },
} as const;

export type PlaceName = keyof typeof TYPICAL_DAYS.byPlace;

/** Where they are, and the mean daily horizontal light of those years. */
export const STATIONS: Readonly<
  Record<
    PlaceName,
    {
      readonly latitudeDeg: number;
      readonly longitudeDeg: number;
      readonly ghiDailyKWhPerM2ByMonth: readonly number[];
    }
  >
> = {
  Phoenix: {
    latitudeDeg: 33.45,
    longitudeDeg: -111.98,
    ghiDailyKWhPerM2ByMonth: [3.29, 4.16, 5.34, 7.09, 7.84, 8.32, 7.62, 7.13, 6.34, 4.82, 3.77, 3.07],
  },
  Boston: {
    latitudeDeg: 42.37,
    longitudeDeg: -71.02,
    ghiDailyKWhPerM2ByMonth: [1.79, 2.78, 3.61, 4.51, 5.57, 5.76, 6.07, 5.35, 4.26, 2.98, 2.01, 1.53],
  },
  Miami: {
    latitudeDeg: 25.82,
    longitudeDeg: -80.3,
    ghiDailyKWhPerM2ByMonth: [3.48, 4.24, 5.16, 5.92, 5.81, 5.54, 6.01, 5.49, 4.88, 4.32, 3.55, 3.22],
  },
  Renton: {
    latitudeDeg: 47.48,
    longitudeDeg: -122.22,
    ghiDailyKWhPerM2ByMonth: [1.08, 2.2, 2.54, 4.88, 5.75, 5.88, 6.34, 5.55, 3.26, 2.01, 1.03, 0.71],
  },
  "New Delhi": {
    latitudeDeg: 28.57,
    longitudeDeg: 77.1,
    ghiDailyKWhPerM2ByMonth: [3.65, 4.75, 5.97, 6.76, 7.37, 6.48, 5.05, 5.03, 5.28, 5.22, 4.32, 3.51],
  },
};
