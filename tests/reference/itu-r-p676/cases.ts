/**
 * Source: ITU-R working document CG-3M-3J-13, validation examples ("ValEx") revision 5.1, sheet P.676-13, as carried in
 * open test suites. How: printed values. DRY-air pressure 1013.25 hPa, 288.15 K, water vapour 7.5 g/m3; oxygen includes
 * the dry continuum.
 */
export const VALIDATION = [
  { gigahertz: 1, oxygenDbPerKm: 0.00538866, vapourDbPerKm: 0.0000509, totalDbPerKm: 0.00543956 },
  { gigahertz: 2, oxygenDbPerKm: 0.00671604, vapourDbPerKm: 0.000204381, totalDbPerKm: 0.00692042 },
  { gigahertz: 3, oxygenDbPerKm: 0.00707596, vapourDbPerKm: 0.000462793, totalDbPerKm: 0.00753875 },
  { gigahertz: 5, oxygenDbPerKm: 0.00740043, vapourDbPerKm: 0.00131346, totalDbPerKm: 0.00871389 },
  { gigahertz: 6, oxygenDbPerKm: 0.00753721, vapourDbPerKm: 0.00192157, totalDbPerKm: 0.00945878 },
  { gigahertz: 10, oxygenDbPerKm: 0.00822442, vapourDbPerKm: 0.00597413, totalDbPerKm: 0.0141985 },
  { gigahertz: 11, oxygenDbPerKm: 0.00844871, vapourDbPerKm: 0.00756981, totalDbPerKm: 0.0160185 },
  { gigahertz: 18, oxygenDbPerKm: 0.0108491, vapourDbPerKm: 0.0466639, totalDbPerKm: 0.0575129 },
  { gigahertz: 20, oxygenDbPerKm: 0.0118836, vapourDbPerKm: 0.0970473, totalDbPerKm: 0.108931 },
  { gigahertz: 22, oxygenDbPerKm: 0.0131302, vapourDbPerKm: 0.174207, totalDbPerKm: 0.187337 },
  { gigahertz: 23, oxygenDbPerKm: 0.0138473, vapourDbPerKm: 0.180442, totalDbPerKm: 0.194289 },
  { gigahertz: 25, oxygenDbPerKm: 0.0155049, vapourDbPerKm: 0.13073, totalDbPerKm: 0.146235 },
  { gigahertz: 28, oxygenDbPerKm: 0.0186964, vapourDbPerKm: 0.0830596, totalDbPerKm: 0.101756 },
  { gigahertz: 30, oxygenDbPerKm: 0.0214497, vapourDbPerKm: 0.0723749, totalDbPerKm: 0.0938245 },
  { gigahertz: 40, oxygenDbPerKm: 0.0521168, vapourDbPerKm: 0.078969, totalDbPerKm: 0.131086 },
  { gigahertz: 52, oxygenDbPerKm: 0.61843, vapourDbPerKm: 0.119049, totalDbPerKm: 0.737479 },
  { gigahertz: 54, oxygenDbPerKm: 2.21154, vapourDbPerKm: 0.127362, totalDbPerKm: 2.3389 },
  { gigahertz: 55, oxygenDbPerKm: 4.19328, vapourDbPerKm: 0.131674, totalDbPerKm: 4.32496 },
  { gigahertz: 56, oxygenDbPerKm: 7.05504, vapourDbPerKm: 0.136092, totalDbPerKm: 7.19114 },
  { gigahertz: 57, oxygenDbPerKm: 10.0652, vapourDbPerKm: 0.140614, totalDbPerKm: 10.2059 },
  { gigahertz: 59, oxygenDbPerKm: 13.6353, vapourDbPerKm: 0.149984, totalDbPerKm: 13.7853 },
  { gigahertz: 60, oxygenDbPerKm: 14.6235, vapourDbPerKm: 0.154842, totalDbPerKm: 14.7783 },
  { gigahertz: 61, oxygenDbPerKm: 15.0072, vapourDbPerKm: 0.159827, totalDbPerKm: 15.167 },
  { gigahertz: 63, oxygenDbPerKm: 10.8311, vapourDbPerKm: 0.170255, totalDbPerKm: 11.0013 },
  { gigahertz: 64, oxygenDbPerKm: 6.84459, vapourDbPerKm: 0.175765, totalDbPerKm: 7.02035 },
  { gigahertz: 66, oxygenDbPerKm: 1.96662, vapourDbPerKm: 0.187578, totalDbPerKm: 2.1542 },
  { gigahertz: 67, oxygenDbPerKm: 1.03339, vapourDbPerKm: 0.193727, totalDbPerKm: 1.22712 },
  { gigahertz: 70, oxygenDbPerKm: 0.304105, vapourDbPerKm: 0.209888, totalDbPerKm: 0.513993 },
  { gigahertz: 75, oxygenDbPerKm: 0.124485, vapourDbPerKm: 0.238069, totalDbPerKm: 0.362554 },
  { gigahertz: 90, oxygenDbPerKm: 0.0388697, vapourDbPerKm: 0.341973, totalDbPerKm: 0.380843 },
] as const;
