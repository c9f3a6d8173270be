/** Less than this is rounding: of tilts that differ by no more the flattest is taken. */
const EQUAL_FRAC = 1e-9;

/** Steps of the search for a tilt, each a third of the one before. */
const FIRST_STEP_DEG = 9;
const NEXT_STEPS_DEG = [3, 1];

/**
 * The whole tilt of the largest worth, the flattest of equals.
 *
 * A month's irradiation rises with the tilt to one top and falls beyond it, and the least of several such curves has
 * one top too; so a coarse sweep finds the hill and two finer ones its top (17 looks instead of 71). Where the coarse
 * sweep shows a valley every tilt is tried.
 */
export function flattestBestDeg(search: {
  /** Whole degrees. */
  readonly minDeg: number;
  readonly maxDeg: number;
  /** 0 or more. */
  readonly worth: (tiltDeg: number) => number;
}): number {
  const { minDeg, maxDeg, worth } = search;
  const better = (tiltDeg: number, bestDeg: number): boolean => {
    const least = worth(bestDeg) * (tiltDeg > bestDeg ? 1 + EQUAL_FRAC : 1 - EQUAL_FRAC);
    return tiltDeg > bestDeg ? worth(tiltDeg) > least : worth(tiltDeg) >= least;
  };
  const coarse: number[] = [];
  for (let tiltDeg = minDeg; tiltDeg < maxDeg; tiltDeg += FIRST_STEP_DEG) coarse.push(tiltDeg);
  coarse.push(maxDeg);
  if (!hasOneTop(coarse.map(worth))) {
    let best = minDeg;
    for (let tiltDeg = minDeg + 1; tiltDeg <= maxDeg; tiltDeg += 1) if (better(tiltDeg, best)) best = tiltDeg;
    return best;
  }
  let best = coarse.reduce((sofar, tiltDeg) => (better(tiltDeg, sofar) ? tiltDeg : sofar));
  for (const stepDeg of NEXT_STEPS_DEG) {
    const middleDeg = best;
    for (const steps of [-2, -1, 1, 2]) {
      const tiltDeg = middleDeg + steps * stepDeg;
      if (tiltDeg >= minDeg && tiltDeg <= maxDeg && better(tiltDeg, best)) best = tiltDeg;
    }
  }
  return best;
}

/** Whether a row of values never rises again once it has fallen. */
function hasOneTop(values: readonly number[]): boolean {
  let hasFallen = false;
  return values.every((value, i) => {
    const before = values[i - 1] ?? value;
    if (value > before * (1 + EQUAL_FRAC)) return !hasFallen;
    if (value < before * (1 - EQUAL_FRAC)) hasFallen = true;
    return true;
  });
}
