/**
 * The hour-by-hour balance against the same arithmetic written as one bare loop over typed arrays, in the same run: ratios, not
 * times, are to be compared. The bare loop has the same losses, limits, band, tally by month, daily extremes and closure, but
 * sheds in whole hours and knows one chemistry, one controller and no heater.
 */
import { bench, describe } from "vitest";
import {
  BANK_TRAITS,
  capacityFrac,
  equalReliabilityPairs,
  simulateBalance,
} from "../../src/core/energy/index.ts";
import { typicalPlant } from "../core/energy/balance/weather.ts";

const YEARS = 30;
const post = typicalPlant({ seed: 3, years: YEARS });
const sun = post.pv.outputRatio;
const { tempC } = post.bank;
const traits = BANK_TRAITS["lead-agm"];

const rows = 1301;
const capacity = Float64Array.from({ length: rows }, (_, row) =>
  capacityFrac({ chemistry: "lead-agm", tempC: Math.min(60, Math.max(-40, row / 10 - 60)) }),
);
const selfLoss = Float64Array.from(
  { length: rows },
  (_, row) => (traits.selfDischargePerMonthFrac / 730) * 2 ** ((row / 10 - 85) / 10),
);
const frozenBelow = new Float64Array(rows).fill(-1);
const ageing = Float64Array.from({ length: rows }, (_, row) => Math.max(0, 2 ** ((row / 10 - 85) / 10) - 1));
const linkW = new Float64Array(8760).fill(8);
const cameraW = new Float64Array(8760).fill(12);

function bareYear(
  state: Float64Array,
  tally: Float64Array,
  ratedW: number,
  ratedAh: number,
  year: number,
): void {
  const store = (24 * ratedAh * 0.9) / 0.95;
  const rate = 0.2 * ratedAh * 24 * 0.89;
  const taper = Math.exp(-0.5);
  let missing = state[0]!;
  let isLinkOn = state[1]! === 1;
  let isCameraOn = state[2]! === 1;
  let available = 0;
  let bus = 0;
  let storedSum = 0;
  let drawnSum = 0;
  let selfSum = 0;
  let frozen = 0;
  let aged = 0;
  let worst = 0;
  let hour = 0;
  for (let day = 0; day < 365; day++) {
    const month = (day * 0.0328) | 0;
    let low = 1;
    let high = 0;
    let sum = 0;
    for (const end = hour + 24; hour < end; hour++) {
      const row = ((tempC[year * 8760 + hour]! + 60) * 10 + 0.5) | 0;
      const full = store * capacity[row]!;
      const before = missing;
      const lost = (store - missing) * selfLoss[row]!;
      missing += lost;
      const arrayW = sun[year * 8760 + hour]! * ratedW;
      const busW = Math.min(arrayW * 0.96, 480);
      if (isLinkOn ? missing > 0.7 * full : missing <= 0.55 * full) isLinkOn = !isLinkOn;
      if (isCameraOn ? missing > 0.5 * full : missing <= 0.35 * full) isCameraOn = !isCameraOn;
      let load = 1;
      if (isLinkOn) load += linkW[hour]!;
      else tally[month]! += 1;
      if (isCameraOn) load += cameraW[hour]!;
      else tally[12 + month]! += 1;
      const net = busW - load;
      let stored = 0;
      let drawn = 0;
      let used = busW;
      if (net >= 0) {
        const into = Math.min(net * 0.89, rate);
        const bend = 2 * into;
        let after = missing - into;
        if (missing <= bend) after = missing * taper;
        else if (after < bend) after = bend * Math.exp(((missing - bend) / into - 1) / 2);
        stored = missing - after;
        missing = after;
        used = load + stored / 0.89;
      } else {
        drawn = -net / 0.95;
        missing += drawn;
      }
      const residual = Math.abs(
        used - (load + stored * (1 / 0.89 - 1) + drawn * 0.05 + lost + (before - missing)),
      );
      const turnover = used + drawn + lost + 1e-6 * store;
      if (residual > worst * turnover) worst = residual / turnover;
      available += arrayW;
      bus += used;
      storedSum += stored;
      drawnSum += drawn;
      selfSum += lost;
      const charge = 1 - missing / store;
      sum += charge;
      if (charge < low) low = charge;
      if (charge > high) high = charge;
      tally[24 + month * 501 + ((charge * 500 + 0.5) | 0)]! += 1;
      if (charge < frozenBelow[row]!) frozen += 1;
      aged += ageing[row]!;
    }
    const place = 24 + 12 * 501 + (year * 365 + day) * 3;
    tally[place] = low;
    tally[place + 1] = high;
    tally[place + 2] = sum / 24;
  }
  state[0] = missing;
  state[1] = isLinkOn ? 1 : 0;
  state[2] = isCameraOn ? 1 : 0;
  for (const [i, total] of [available, bus, storedSum, drawnSum, selfSum, frozen, aged, worst].entries()) {
    state[3 + i]! += total;
  }
}

function bareRun(ratedW: number, ratedAh: number): number {
  const state = Float64Array.of(0, 1, 1, ...new Float64Array(8));
  bareYear(state, new Float64Array(24 + 12 * 501 + 365 * 3), ratedW, ratedAh, 0);
  const tally = new Float64Array(24 + 12 * 501 + YEARS * 365 * 3);
  for (let year = 0; year < YEARS; year++) bareYear(state, tally, ratedW, ratedAh, year);
  return tally.subarray(0, 12).reduce((total, hours) => total + hours) / YEARS;
}

const candidate = (ratedW: number, ratedAh: number): number =>
  simulateBalance({
    ...post,
    pv: { kind: "mppt", outputRatio: sun, ratedW },
    bank: { ...post.bank, ratedAh },
  }).tiers[0]!.darkHoursPerYear;

// two answers far apart would not be the same arithmetic
const bare = bareRun(260, 150);
const ours = candidate(260, 150);
if (!(bare > 1) || Math.abs(bare / ours - 1) > 0.2) throw new Error(`bare loop ${bare} h, balance ${ours} h`);

describe("one candidate over thirty years", () => {
  bench("floor: a bare loop", () => {
    bareRun(260, 150);
  });
  bench("simulateBalance", () => {
    candidate(260, 150);
  });
});

describe("a curve of twenty pairs", () => {
  const panelCounts = Array.from({ length: 20 }, (_, i) => i + 3);
  bench("floor: twenty candidates", () => {
    for (const panels of panelCounts) candidate(60 * panels, 150);
  });
  bench("equalReliabilityPairs", () => {
    equalReliabilityPairs({
      panelCounts,
      mostStrings: 40,
      targetDarkHours: 20,
      darkHoursOf: ({ panels, strings }) => candidate(60 * panels, 25 * strings),
    });
  });
});
