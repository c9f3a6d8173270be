import { hoursUntilMissing, missingAfter } from "./charge-step.ts";
import type { Prepared } from "./prepare.ts";
import { BUS_WH, DRAWN_WH, FED_WH, ON_COUNT, RETURNS, STORED_WH, type Tally } from "./state.ts";
import type { YearOfLoads } from "./watts.ts";

/** After so many switchings in one step a relay is taken to feed in part: only a bank far too small gets here. */
const MOST_SWITCHINGS = 60;

/** What holds throughout one step. */
interface StepOfWeather {
  readonly busW: number;
  /** What can be drawn from a full bank, in terms of its store. */
  readonly capacityWh: number;
  readonly isChargeable: boolean;
  /** Place in the loads. */
  readonly hour: number;
  /** Month in the tally: year x 12 + month. */
  readonly slot: number;
}

/**
 * One step in which tiers are shed or return, followed from event to event: each is switched at its own moment within the
 * step, so that dark time is not counted in whole steps.
 *
 * Tiers are shed from the least important up and return from the most important down, so that a count of those connected says
 * all. A tier without a band between its two thresholds is fed, when it stands on them, from what the sun leaves.
 *
 * @param missingWh  missing from full at the start
 * @returns missing from full at the end; the flows stand in `state`
 */
export function switchedStep(
  plant: Prepared,
  state: Float64Array,
  tally: Tally,
  { watts, firstW }: YearOfLoads,
  { busW, capacityWh, isChargeable, hour, slot }: StepOfWeather,
  missingWh: number,
): number {
  const { tierCount, shedDepth, returnDepth, chargeEfficiencyFrac, dischargeEfficiencyFrac } = plant;
  let missing = missingWh;
  let leftH = plant.stepH;
  let on = state[ON_COUNT]!;
  let bus = 0;
  let fed = 0;
  let stored = 0;
  let drawn = 0;

  for (let switchings = 0; leftH > 0; switchings++) {
    const isBandKept = switchings < MOST_SWITCHINGS;
    const backDepth = isBandKept ? returnDepth : shedDepth;
    while (on > 0 && missing > shedDepth[on - 1]! * capacityWh) on -= 1;
    while (on < tierCount) {
      const returnWh = backDepth[on]! * capacityWh;
      const isBanded = backDepth[on]! < shedDepth[on]!;
      if (!(missing < returnWh || (isBanded && missing === returnWh))) break;
      on += 1;
      state[RETURNS]! += 1;
    }
    const fedW = firstW[on]![hour]!;
    const netW = busW - fedW;

    if (netW < 0) {
      // something draws, so something is connected: the least important of it is the next to go
      const last = on - 1;
      const shedWh = shedDepth[last]! * capacityWh;
      const drainW = -netW / dischargeEfficiencyFrac;
      const hours = (shedWh - missing) / drainW;
      if (hours >= leftH) {
        const after = Math.min(missing + drainW * leftH, shedWh);
        drawn += after - missing;
        missing = after;
        bus += busW * leftH;
        fed += fedW * leftH;
        bookDark(tally, watts, hour, slot, on, leftH);
        break;
      }
      drawn += shedWh - missing;
      missing = shedWh;
      bus += busW * hours;
      fed += fedW * hours;
      bookDark(tally, watts, hour, slot, on, hours);
      leftH -= hours;
      const tierW = watts[last]![hour]!;
      on -= 1;
      if (backDepth[last]! < shedDepth[last]! || netW + tierW < 0) continue;
      const sharedFrac = (netW + tierW) / tierW;
      bus += busW * leftH;
      fed += busW * leftH;
      bookDark(tally, watts, hour, slot, last + 1, leftH);
      bookPart(tally, last, slot, (1 - sharedFrac) * leftH, tierW);
      break;
    }

    const rateW = isChargeable ? Math.min(netW * chargeEfficiencyFrac, plant.chargeLimitW) : 0;
    const returnWh = on < tierCount ? backDepth[on]! * capacityWh : -1;
    const hours =
      on < tierCount && missing >= returnWh
        ? hoursUntilMissing(missing, plant, rateW, returnWh)
        : Number.POSITIVE_INFINITY;
    const isReached = hours < leftH;
    const passedH = isReached ? hours : leftH;
    const after = isReached ? returnWh : missingAfter(missing, plant, rateW, passedH);
    stored += missing - after;
    bus += fedW * passedH + (missing - after) / chargeEfficiencyFrac;
    fed += fedW * passedH;
    missing = after;
    bookDark(tally, watts, hour, slot, on, passedH);
    leftH -= passedH;
    if (!isReached) break;
    const tierW = watts[on]![hour]!;
    if (backDepth[on]! < shedDepth[on]! || netW >= tierW) {
      on += 1;
      state[RETURNS]! += 1;
      continue;
    }
    bus += busW * leftH;
    fed += busW * leftH;
    bookDark(tally, watts, hour, slot, on + 1, leftH);
    bookPart(tally, on, slot, (1 - netW / tierW) * leftH, tierW);
    break;
  }

  state[ON_COUNT] = on;
  state[BUS_WH] = bus;
  state[FED_WH] = fed;
  state[STORED_WH] = stored;
  state[DRAWN_WH] = drawn;
  return missing;
}

/** Books dark time of every tier from `on` to the least important, where it wants power. */
export function bookDark(
  tally: Tally,
  watts: readonly Float64Array[],
  hour: number,
  slot: number,
  on: number,
  hours: number,
): void {
  for (let k = on; k < watts.length; k++) bookPart(tally, k, slot, hours, watts[k]![hour]!);
}

function bookPart(
  { months, darkH, unmetWh }: Tally,
  k: number,
  slot: number,
  hours: number,
  tierW: number,
): void {
  if (tierW === 0) return;
  darkH[k * months + slot]! += hours;
  unmetWh[k * months + slot]! += hours * tierW;
}
