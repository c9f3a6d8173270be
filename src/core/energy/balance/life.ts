import { interpolate, within } from "../../numerics/index.ts";
import type { Chemistry } from "../chemistry.ts";
import { BANK_WEAR } from "../tables.ts";

export interface BankLife {
  /** The smaller of the two. */
  readonly years: number;
  readonly ruledBy: "cycles" | "calendar";
  /** Until the cycles are spent; Infinity never leaves here: 1000 stands for a bank that is hardly cycled. */
  readonly cycleYears: number;
  readonly calendarYears: number;
}

const HARDLY_CYCLED_YEARS = 1000;

/**
 * Years until a bank has fallen to 0.8 of its rating: by its cycles, each worth the more the deeper it is (Miner's sum), or by
 * the calendar, whichever ends first.
 *
 * @param bank.cyclesPerYearByDepth  entry i of n counts cycles of depth i/n to (i+1)/n a year (simulateBalance); each counts
 *         at the middle of its depth
 * @param bank.tempC                 steady temperature that stands for the bank's year, -60 to 70 (ageingTempC)
 * @accuracy a factor of 2: curves differ so much between makers, and a lead-acid bank that is seldom filled dies sooner
 *         (sulphation), which no curve here counts
 * @throws RangeFault outside the ranges above
 * @source curves from memory, see BANK_WEAR; life halved for each 10 K above 25 deg C (from memory: 8 to 10 K)
 */
export function bankLifeYears(bank: {
  readonly chemistry: Chemistry;
  readonly cyclesPerYearByDepth: Float64Array;
  readonly tempC: number;
}): BankLife {
  const { cyclesByDepthFrac, calendarYears: at25Years } = BANK_WEAR[bank.chemistry];
  const tempC = within("tempC", bank.tempC, -60, 70);
  const bins = within("entries of cyclesPerYearByDepth", bank.cyclesPerYearByDepth.length, 1, 1000);
  let wornPerYear = 0;
  bank.cyclesPerYearByDepth.forEach((cycles, i) => {
    wornPerYear += within("cycles", cycles, 0, 1e5) / cyclesAtDepth(cyclesByDepthFrac, (i + 0.5) / bins);
  });
  const cycleYears = wornPerYear > 1 / HARDLY_CYCLED_YEARS ? 1 / wornPerYear : HARDLY_CYCLED_YEARS;
  const calendarYears = at25Years / 2 ** (Math.max(0, tempC - 25) / 10);
  return {
    years: Math.min(cycleYears, calendarYears),
    ruledBy: cycleYears < calendarYears ? "cycles" : "calendar",
    cycleYears,
    calendarYears,
  };
}

/** Beyond both ends of a curve the same energy in all is taken to go through: depth times cycles stays. */
function cyclesAtDepth(curve: readonly (readonly [number, number])[], depthFrac: number): number {
  const [shallowest] = curve[0]!;
  const [deepest] = curve.at(-1)!;
  const held = Math.min(Math.max(depthFrac, shallowest), deepest);
  const logs = curve.map(([depth, cycles]) => [Math.log(depth), Math.log(cycles)] as const);
  return Math.exp(interpolate(logs, Math.log(held))) * (held / depthFrac);
}
