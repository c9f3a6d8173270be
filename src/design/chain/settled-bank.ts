/** Loads, bank and array that agree: the heater of a lithium bank draws by the size of the bank, and the bank is sized by what it draws. */
import type { Brief } from "../brief.ts";
import type { ArraySizing, Battery, ChosenPair, Climate, Loads, Sun } from "../design.ts";
import { arrayStage } from "./array.ts";
import { batteryStage } from "./battery.ts";
import { layOut } from "./battery-layout.ts";
import { loadsStage } from "./loads.ts";
import type { Handbook } from "./reliability-pairs.ts";

export interface Sky {
  readonly climate: Climate;
  readonly sun: Sun;
}

/** Each turn brings the sizes nearer by a third at least: heat grows with the bank to the power of 2/3. */
const MOST_TURNS = 40;

/** The same brief with the bank's voltage named. */
export function atVoltage(brief: Brief, bankV: number): Brief {
  const { power } = brief;
  return { ...brief, power: { ...power, bankV: { ...power.bankV, value: bankV as 12 | 24 | 48 } } };
}

/**
 * Both sizes by the worksheets: what the simulation starts from, and the design itself where nothing better is chosen. A bank with
 * a heater is worked from a box of nothing upwards, until it is no larger than the one its heater was reckoned for.
 *
 * @param bankV  null lets the worksheets choose the voltage
 */
export function handbookOf(
  brief: Brief,
  { climate, sun }: Sky,
  bankV: number | null = null,
): (Handbook & Sky) | null {
  const named = bankV === null ? brief : atVoltage(brief, bankV);
  const hasHeater = brief.power.batteryHeaterW.value > 0;
  let loads = loadsStage(brief, sun, climate, hasHeater ? 0 : null);
  let battery = batteryStage(named, climate, sun, loads);
  for (let turn = 0, warmedWh = 0; hasHeater && battery !== null && turn < MOST_TURNS; turn += 1) {
    const bankWh = battery.bankAh * battery.bankNominalV;
    if (bankWh <= warmedWh) break;
    warmedWh = bankWh;
    loads = loadsStage(brief, sun, climate, warmedWh);
    battery = batteryStage(named, climate, sun, loads);
  }
  const array = arrayStage(brief, climate, sun, loads, battery);
  return battery && array ? { climate, sun, loads, battery, array } : null;
}

/** What is built for a pair of other sizes, its heater reckoned for the bank of that pair. */
export function builtFor(
  brief: Brief,
  { climate, sun, battery: { chemistry, bankV, bankVReason, bankNominalV } }: Sky & Pick<Handbook, "battery">,
  chosen: ChosenPair,
): { readonly loads: Loads; readonly battery: Battery | null; readonly array: ArraySizing | null } {
  const { bankAh } = layOut(brief, { chemistry, bankV, requiredAh: chosen.wantedAh });
  const loads = loadsStage(brief, sun, climate, bankAh * bankNominalV);
  // the pair's ampere-hours are of this voltage, whatever other loads would choose
  const built = batteryStage(atVoltage(brief, bankV), climate, sun, loads, chosen);
  const battery = built && { ...built, bankVReason };
  return { loads, battery, array: arrayStage(brief, climate, sun, loads, battery, chosen) };
}
