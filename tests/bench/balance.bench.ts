/**
 * The hour-by-hour balance against the same arithmetic written as one bare loop over typed arrays, in the same run: ratios, not
 * times, are to be compared.
 *
 * The bare loop does for this one post all that the balance does in an hour: the same losses, limits, taper, cold, bands
 * followed from event to event, dark time and unmet energy by tier and month, daily extremes, histogram, recoveries and
 * closure. It knows one chemistry, one kind of controller, two tiers and no heater, checks no input, and is handed its tables
 * ready. Tables, checks, energy wanted and the figures drawn from the tallies at the end count against the balance alone.
 */
import { bench, describe } from "vitest";
import {
  BANK_TRAITS,
  type Balance,
  capacityFrac,
  chargeSettings,
  equalReliabilityPairs,
  FREEZING_MARGIN_K,
  frostSafeDodFrac,
  simulateBalance,
} from "../../src/core/energy/index.ts";
import { typicalPlant } from "../core/energy/balance/weather.ts";

const YEARS = 30;
const MONTHS = YEARS * 12;
const post = typicalPlant({ seed: 3, years: YEARS });
const sun = post.pv.outputRatio;
const { tempC } = post.bank;
const traits = BANK_TRAITS["lead-agm"];

const rows = 1301;
const tableOf = (at: (tempC: number) => number): Float64Array =>
  Float64Array.from({ length: rows }, (_, row) => at(row / 10 - 60));
const coldAt = (tempC: number): number =>
  capacityFrac({ chemistry: "lead-agm", tempC: Math.min(60, Math.max(-40, tempC)) });
// read at whole kelvins and straight between, as the balance does
const capacity = tableOf((tempC) => {
  const low = Math.min(69, Math.floor(tempC));
  return coldAt(low) + (tempC - low) * (coldAt(low + 1) - coldAt(low));
});
const selfLoss = tableOf((tempC) => (traits.selfDischargePerMonthFrac / 730) * 2 ** ((tempC - 25) / 10));
const { chargeMinTempC, chargeMaxTempC } = chargeSettings({ chemistry: "lead-agm", nominalV: 24, tempC: 25 });
const chargeable = tableOf((tempC) => (tempC >= chargeMinTempC && tempC <= chargeMaxTempC ? 1 : 0));
const ageing = tableOf((tempC) => Math.max(0, 2 ** ((tempC - 25) / 10) - 1));
const frozenBelow = tableOf((tempC) =>
  tempC > 0 ? -1 : 1 - frostSafeDodFrac(Math.max(-60, tempC + FREEZING_MARGIN_K)),
);
const monthOfDay = Float64Array.from(
  [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31].flatMap((days, month) => Array<number>(days).fill(month)),
);

const ratedLoadW = [1, 8, 12];
const tierW = ratedLoadW.map((watts) => new Float64Array(8760).fill(watts));
/** Load while the first n are fed. */
const fedFirstW = [0, 1, 9, 21].map((watts) => new Float64Array(8760).fill(watts));
const shedDepth = Float64Array.of(1, 0.7, 0.5);
const backDepth = Float64Array.of(1, 0.55, 0.35);

// places in one array of state and sums
const [MISSING, ON, PHASE, RECOVERY_H, RETURNS] = [0, 1, 2, 3, 4];
const [BUS, FED, STORED, DRAWN] = [5, 6, 7, 8];
const [AVAILABLE, BUS_SUM, STORED_SUM, DRAWN_SUM, SELF_SUM, FROZEN, AGED, WORST] = [
  9, 10, 11, 12, 13, 14, 15, 16,
];
const [SPELLS, SPELL_SUM_H, SPELL_WORST_H] = [17, 18, 19];
// and in one of tallies
const UNMET = 3 * MONTHS;
const BY_CHARGE = 6 * MONTHS;
const BY_DAY = BY_CHARGE + 12 * 501;

function bareYear(
  state: Float64Array,
  tally: Float64Array,
  ratedW: number,
  ratedAh: number,
  year: number,
): void {
  const store = (24 * ratedAh * 0.9) / 0.95;
  const mostRate = 0.2 * ratedAh * 24 * 0.89;
  const perStore = 1 / store;
  const perCharge = 1 / 0.89;
  const perDischarge = 1 / 0.95;
  const taper = Math.exp(-0.5);
  const refilled = 0.05 * store;
  const least = 1e-6 * store;
  const [, linkW, cameraW] = tierW as [Float64Array, Float64Array, Float64Array];
  const link = MONTHS;
  const camera = 2 * MONTHS;
  const linkUnmet = UNMET + link;
  const cameraUnmet = UNMET + camera;
  const temp = tempC.subarray(year * 8760, year * 8760 + 8760);
  const ratio = sun.subarray(year * 8760, year * 8760 + 8760);
  const capacityByRow = capacity;
  const lossByRow = selfLoss;
  const chargeableByRow = chargeable;
  const ageingByRow = ageing;
  const frozenBelowByRow = frozenBelow;
  let missing = state[MISSING]!;
  let on = state[ON]!;
  let load = fedFirstW[on]!;
  let shedAt = shedDepth[on - 1]!;
  let backAt = on < 3 ? backDepth[on]! : -1;
  let phase = state[PHASE]!;
  let recoveryH = state[RECOVERY_H]!;
  let available = 0;
  let busSum = 0;
  let storedSum = 0;
  let drawnSum = 0;
  let selfSum = 0;
  let frozen = 0;
  let aged = 0;
  let worst = state[WORST]!;
  let hour = 0;
  for (let day = 0; day < 365; day++) {
    const month = monthOfDay[day]!;
    const slot = year * 12 + month;
    const scale = BY_CHARGE + month * 501;
    let low = 1;
    let lowRow = 0;
    let lowOn = on;
    let high = 0;
    let sum = 0;
    for (const end = hour + 24; hour < end; hour++) {
      const row = ((temp[hour]! + 60) * 10 + 0.5) | 0;
      const full = store * capacityByRow[row]!;
      const before = missing;
      const lost = (store - missing) * lossByRow[row]!;
      missing += lost;
      const arrayW = ratio[hour]! * ratedW;
      const busW = Math.min(arrayW * 0.96, 480);
      let fed = load[hour]!;
      let bus = busW;
      let stored = 0;
      let drawn = 0;
      const net = busW - fed;
      let after = missing;
      if (net < 0) {
        after = missing - net * perDischarge;
        drawn = after - missing;
      } else {
        if (chargeableByRow[row] === 1) {
          const into = Math.min(net * 0.89, mostRate);
          const bend = 2 * into;
          if (missing <= bend) after = missing * taper;
          else if (missing - into >= bend) after = missing - into;
          else after = bend * Math.exp(((missing - bend) / into - 1) / 2);
        }
        stored = missing - after;
        bus = fed + stored * perCharge;
      }
      if (missing < shedAt * full && after <= shedAt * full && after > backAt * full) {
        missing = after;
        if (on < 3) {
          tally[camera + slot]! += 1;
          tally[cameraUnmet + slot]! += cameraW[hour]!;
          if (on < 2) {
            tally[link + slot]! += 1;
            tally[linkUnmet + slot]! += linkW[hour]!;
          }
        }
      } else {
        const returns = state[RETURNS]!;
        missing = bareSwitching(
          state,
          tally,
          slot,
          hour,
          missing,
          busW,
          full,
          chargeableByRow[row]!,
          mostRate,
        );
        bus = state[BUS]!;
        fed = state[FED]!;
        stored = state[STORED]!;
        drawn = state[DRAWN]!;
        on = state[ON]!;
        load = fedFirstW[on]!;
        shedAt = shedDepth[on - 1]!;
        backAt = on < 3 ? backDepth[on]! : -1;
        if (on < 3 && phase === 0) phase = 1;
        if (state[RETURNS]! > returns && phase === 1) phase = 2;
      }
      if (phase === 2) {
        recoveryH += 1;
        if (missing <= refilled) {
          state[SPELLS]! += 1;
          state[SPELL_SUM_H]! += recoveryH;
          if (recoveryH > state[SPELL_WORST_H]!) state[SPELL_WORST_H] = recoveryH;
          recoveryH = 0;
          phase = 0;
        }
      }
      const residual = Math.abs(
        bus - (fed + stored * (perCharge - 1) + drawn * 0.05 + lost + (before - missing)),
      );
      const turnover = bus + drawn + lost + least;
      if (residual > worst * turnover) worst = residual / turnover;
      available += arrayW;
      busSum += bus;
      storedSum += stored;
      drawnSum += drawn;
      selfSum += lost;
      const charge = 1 - missing * perStore;
      sum += charge;
      if (charge <= low) {
        low = charge;
        lowRow = row;
        lowOn = on;
      }
      if (charge > high) high = charge;
      tally[scale + ((charge * 500 + 0.5) | 0)]! += 1;
      if (charge < frozenBelowByRow[row]!) frozen += 1;
      aged += ageingByRow[row]!;
    }
    const place = BY_DAY + (year * 365 + day) * 5;
    tally[place] = low;
    tally[place + 1] = high;
    tally[place + 2] = sum / 24;
    tally[place + 3] = capacityByRow[lowRow]!;
    tally[place + 4] = lowOn;
  }
  state[MISSING] = missing;
  state[PHASE] = phase;
  state[RECOVERY_H] = recoveryH;
  state[AVAILABLE]! += available;
  state[BUS_SUM]! += busSum;
  state[STORED_SUM]! += storedSum;
  state[DRAWN_SUM]! += drawnSum;
  state[SELF_SUM]! += selfSum;
  state[FROZEN]! += frozen;
  state[AGED]! += aged;
  state[WORST] = worst;
}

/** The few hours in which a tier goes or returns, each at its own moment. */
function bareSwitching(
  state: Float64Array,
  tally: Float64Array,
  slot: number,
  hour: number,
  missingWh: number,
  busW: number,
  full: number,
  isChargeable: number,
  mostRate: number,
): number {
  let missing = missingWh;
  let on = state[ON]!;
  let left = 1;
  let bus = 0;
  let fed = 0;
  let stored = 0;
  let drawn = 0;
  while (left > 0) {
    while (on > 1 && missing > shedDepth[on - 1]! * full) on -= 1;
    for (; on < 3 && missing <= backDepth[on]! * full; on++) state[RETURNS]! += 1;
    const fedW = fedFirstW[on]![hour]!;
    const net = busW - fedW;
    const place = on;
    let hours = left;
    let after = missing;
    if (net < 0) {
      const shedWh = shedDepth[on - 1]! * full;
      const drain = -net / 0.95;
      hours = Math.min(left, (shedWh - missing) / drain);
      after = hours < left ? shedWh : Math.min(missing + drain * left, shedWh);
      if (hours < left) on -= 1;
      drawn += after - missing;
      bus += busW * hours;
    } else {
      const rate = isChargeable === 1 ? Math.min(net * 0.89, mostRate) : 0;
      const bend = 2 * rate;
      const backWh = on < 3 ? backDepth[on]! * full : -1;
      let untilBack = Number.POSITIVE_INFINITY;
      if (on < 3 && rate > 0) {
        untilBack =
          backWh >= bend
            ? (missing - backWh) / rate
            : Math.max(0, missing - bend) / rate + 2 * Math.log(Math.min(missing, bend) / backWh);
      }
      hours = Math.min(left, untilBack);
      const straightH = (missing - bend) / rate;
      if (untilBack < left) after = backWh;
      else if (missing <= bend) after = missing * Math.exp(-left / 2);
      else if (rate > 0)
        after = straightH >= left ? missing - rate * left : bend * Math.exp((straightH - left) / 2);
      if (untilBack < left) {
        on += 1;
        state[RETURNS]! += 1;
      }
      stored += missing - after;
      bus += fedW * hours + (missing - after) / 0.89;
    }
    fed += fedW * hours;
    missing = after;
    for (let k = place; k < 3; k++) {
      tally[k * MONTHS + slot]! += hours;
      tally[UNMET + k * MONTHS + slot]! += hours * tierW[k]![hour]!;
    }
    left -= hours;
  }
  state[ON] = on;
  state[BUS] = bus;
  state[FED] = fed;
  state[STORED] = stored;
  state[DRAWN] = drawn;
  return missing;
}

function bareRun(ratedW: number, ratedAh: number): { state: Float64Array; tally: Float64Array } {
  const state = new Float64Array(20);
  state[ON] = 3;
  bareYear(state, new Float64Array(BY_DAY + 365 * 5), ratedW, ratedAh, 0);
  state.fill(0, AVAILABLE);
  const tally = new Float64Array(BY_DAY + YEARS * 365 * 5);
  for (let year = 0; year < YEARS; year++) bareYear(state, tally, ratedW, ratedAh, year);
  return { state, tally };
}

const candidate = (ratedW: number, ratedAh: number): Balance =>
  simulateBalance({
    ...post,
    pv: { kind: "mppt", outputRatio: sun, ratedW },
    bank: { ...post.bank, ratedAh },
  });

// answers that differ would not be the same arithmetic
for (const ratedAh of [100, 120, 150]) {
  const { state, tally } = bareRun(260, ratedAh);
  const ours = candidate(260, ratedAh);
  const perYear = (from: number): number =>
    tally.subarray(from, from + MONTHS).reduce((total, each) => total + each, 0) / YEARS;
  const pairs: readonly (readonly [string, number, number])[] = [
    ["link dark", perYear(MONTHS), ours.tiers[0]!.darkHoursPerYear],
    ["camera dark", perYear(2 * MONTHS), ours.tiers[1]!.darkHoursPerYear],
    ["camera unmet", perYear(UNMET + 2 * MONTHS), ours.tiers[1]!.unmetWhPerYear],
    ["sun", state[AVAILABLE]!, ours.energy.pvAvailableWh],
    ["sun used", state[BUS_SUM]! / 0.96, ours.energy.pvUsedWh],
    ["into the bank", state[STORED_SUM]! / 0.89, ours.energy.chargedWh],
    ["out of it", state[DRAWN_SUM]! * 0.95, ours.energy.dischargedWh],
    ["lost by itself", state[SELF_SUM]!, ours.energy.selfDischargeWh],
    ["ice", state[FROZEN]! / YEARS, ours.freezingHoursPerYear],
    ["ageing", 25 + 10 * Math.log2(1 + state[AGED]! / (YEARS * 8760)), ours.ageingTempC],
    ["recovery", state[SPELL_SUM_H]! / state[SPELLS]!, ours.recovery!.meanHours],
  ];
  for (const [name, bare, balance] of pairs) {
    if (!(Math.abs(bare - balance) <= 1e-9 * Math.max(1, balance))) {
      throw new Error(`${name}: bare loop ${bare}, balance ${balance}`);
    }
  }
}

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
      darkHoursOf: ({ panels, strings }) => candidate(60 * panels, 25 * strings).tiers[0]!.darkHoursPerYear,
    });
  });
});
