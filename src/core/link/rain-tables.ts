/**
 * Coefficients of Recommendation ITU-R P.838-3 (2005), tables 1 to 4, as they stand in two independent open
 * implementations. Each curve is a sum of bells a exp(-((log f - b)/c)^2) and a straight line m log f + base in the
 * decimal logarithm of the frequency in GHz.
 */
export type RainCurve = {
  readonly a: readonly number[];
  readonly b: readonly number[];
  readonly c: readonly number[];
  readonly m: number;
  readonly base: number;
};

export const LOG_K_HORIZONTAL: RainCurve = {
  a: [-5.3398, -0.35351, -0.23789, -0.94158],
  b: [-0.10008, 1.2697, 0.86036, 0.64552],
  c: [1.13098, 0.454, 0.15354, 0.16817],
  m: -0.18961,
  base: 0.71147,
};

export const LOG_K_VERTICAL: RainCurve = {
  a: [-3.80595, -3.44965, -0.39902, 0.50167],
  b: [0.56934, -0.22911, 0.73042, 1.07319],
  c: [0.81061, 0.51059, 0.11899, 0.27195],
  m: -0.16398,
  base: 0.63297,
};

export const ALPHA_HORIZONTAL: RainCurve = {
  a: [-0.14318, 0.29591, 0.32177, -5.3761, 16.1721],
  b: [1.82442, 0.77564, 0.63773, -0.9623, -3.2998],
  c: [-0.55187, 0.19822, 0.13164, 1.47828, 3.4399],
  m: 0.67849,
  base: -1.95537,
};

export const ALPHA_VERTICAL: RainCurve = {
  a: [-0.07771, 0.56727, -0.20238, -48.2991, 48.5833],
  b: [2.3384, 0.95545, 1.1452, 0.791669, 0.791459],
  c: [-0.76284, 0.54039, 0.26809, 0.116226, 0.116479],
  m: -0.053739,
  base: 0.83433,
};
