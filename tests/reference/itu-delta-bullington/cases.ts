/**
 * Source: ITU-R study group 3, "Validation examples for the delta Bullington diffraction prediction method", as carried
 * digit for digit in two independent open test suites (of P.452). How: printed values of the Bullington part for the
 * actual profile. Effective Earth radius 8500 km; wavelength 0.3/f exactly; antennas above ground.
 *
 * The full profiles have 1663 and 349 points. Only the points listed govern the Bullington part (the maxima sit there).
 */
type Row = {
  readonly nearMastM: number;
  readonly farMastM: number;
  readonly frequencyMHz: number;
  readonly lossDb: number;
  /** Parts of the construction, printed for path 3 only. */
  readonly parts?: { readonly sees: boolean; readonly v: number; readonly edgeDb: number };
};

type Path = {
  readonly name: string;
  readonly profile: readonly { readonly distanceFromNearM: number; readonly groundM: number }[];
  readonly rows: readonly Row[];
};

export const PATHS: readonly Path[] = [
  {
    name: "path 1",
    profile: [
      { distanceFromNearM: 0, groundM: 800 },
      { distanceFromNearM: 48_100, groundM: 570 },
      { distanceFromNearM: 55_050, groundM: 548 },
      { distanceFromNearM: 83_079.93853, groundM: 302 },
    ],
    rows: [
      { nearMastM: 30, farMastM: 30, frequencyMHz: 1000, lossDb: 32.84284766 },
      { nearMastM: 50, farMastM: 10, frequencyMHz: 2500, lossDb: 37.229036 },
      { nearMastM: 20, farMastM: 20, frequencyMHz: 600, lossDb: 31.22595813 },
      { nearMastM: 40, farMastM: 50, frequencyMHz: 200, lossDb: 24.87792613 },
      { nearMastM: 70, farMastM: 5, frequencyMHz: 150, lossDb: 24.78223928 },
    ],
  },
  {
    name: "path 3",
    profile: [
      { distanceFromNearM: 0, groundM: 697 },
      { distanceFromNearM: 12_700, groundM: 639 },
      { distanceFromNearM: 17_396.88966, groundM: 569 },
    ],
    rows: [
      {
        nearMastM: 30,
        farMastM: 30,
        frequencyMHz: 1000,
        lossDb: 17.62040631,
        parts: { sees: false, v: 0.39468, edgeDb: 9.42391 },
      },
      {
        nearMastM: 50,
        farMastM: 10,
        frequencyMHz: 2500,
        lossDb: 25.1016907,
        parts: { sees: false, v: 1.26551, edgeDb: 15.5312 },
      },
      {
        nearMastM: 20,
        farMastM: 20,
        frequencyMHz: 600,
        lossDb: 20.25488733,
        parts: { sees: false, v: 0.64727, edgeDb: 11.4435 },
      },
      {
        nearMastM: 40,
        farMastM: 50,
        frequencyMHz: 200,
        lossDb: 10.1899085,
        parts: { sees: true, v: -0.16465, edgeDb: 4.62734 },
      },
      {
        nearMastM: 70,
        farMastM: 5,
        frequencyMHz: 150,
        lossDb: 16.27593106,
        parts: { sees: false, v: 0.28011, edgeDb: 8.45604 },
      },
    ],
  },
];
