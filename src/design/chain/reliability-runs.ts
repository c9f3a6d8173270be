/** One post under one weather: runs of a pair of array and bank, in one case of demand and sun. */
import {
  type Balance,
  type BalanceBank,
  balanceUnlessDarker,
  simulateBalance,
} from "../../core/energy/index.ts";
import type { Brief } from "../brief.ts";
import type { Remember, Sun } from "../design.ts";
import { MISMATCH_LOSS_FRAC, MPPT_EFFICIENCY_FRAC, WIRING_LOSS_FRAC } from "../practice/array.ts";
import { CELL_CHEMISTRY, END_OF_LIFE_FRAC } from "../practice/battery.ts";
import { batteryBoxLossWPerK } from "../practice/battery-box.ts";
import { BATTERY_WARM_C, CONTROLLER_OWN_W } from "../practice/loads.ts";
import { tiersOf } from "./reliability-loads.ts";
import {
  type ArrayCandidate,
  type BankCandidate,
  chargeBoundsA,
  type Handbook,
} from "./reliability-pairs.ts";
import type { PostWeather } from "./reliability-weather.ts";

interface Runs {
  readonly run: (pair: Pair, how: Case) => Balance;
  /** null where the picture is dark for longer than that. */
  readonly runUnlessDarker: (pair: Pair, how: Case, mostDarkHours: number) => Balance | null;
}

export interface Pair {
  readonly array: ArrayCandidate;
  readonly bank: BankCandidate;
}

export interface Case {
  readonly demandRatio: number;
  readonly sunRatio: number;
  /** Of the bank; at the end of its life where left out. */
  readonly healthFrac?: number;
}

export const AS_ANSWERED: Case = { demandRatio: 1, sunRatio: 1 };

export function runsOf(
  brief: Brief,
  given: Handbook & { readonly sun: Sun },
  weather: PostWeather,
  remember: Remember,
): Runs {
  const { climate, sun, battery, array } = given;
  const isDirect = array.controller === "pwm";
  const losses = (1 - WIRING_LOSS_FRAC) * (1 - MISMATCH_LOSS_FRAC);
  const span = ({ array: panels, bank }: Pair, how: Case) => {
    const { demandRatio, sunRatio, healthFrac = END_OF_LIFE_FRAC } = how;
    const loads = tiersOf(brief, {
      climate,
      sun,
      permittedDodFrac: battery.permittedDodFrac,
      demandRatio,
    });
    const plant = {
      bank: {
        chemistry: CELL_CHEMISTRY[battery.chemistry],
        nominalV: battery.bankNominalV,
        ratedAh: bank.bankAh,
        healthFrac,
        ...batteryHeater(brief, bank.bankAh * battery.bankNominalV),
      },
      controller: {
        efficiencyFrac: isDirect ? 1 : MPPT_EFFICIENCY_FRAC,
        maxOutputA: mostChargeA(brief, panels, bank, battery),
        ownW: CONTROLLER_OWN_W * demandRatio,
      },
      supply: isDirect
        ? { ratedA: panels.stringA * losses * sunRatio, strings: panels.inParallel }
        : { ratedW: panels.installedW * losses * sunRatio },
    };
    const facts = [
      weather.years,
      brief.place.site.value,
      climate,
      sun,
      brief.place.horizon.value,
      brief.place.soilingFrac.value,
    ];
    const keyed = loads.map((tier) => ({ ...tier, wattsByHourOfYear: digest(tier.wattsByHourOfYear) }));
    return {
      key: [plant, keyed, facts] as const,
      plant: {
        pv: isDirect
          ? {
              kind: "pwm" as const,
              outputRatio: weather.outputRatio,
              ratedA: plant.supply.ratedA!,
              strings: plant.supply.strings!,
            }
          : { kind: "mppt" as const, outputRatio: weather.outputRatio, ratedW: plant.supply.ratedW! },
        bank: { ...plant.bank, tempC: weather.bankTempC },
        controller: plant.controller,
        loads,
        ambientTempC: weather.ambientTempC,
        years: weather.years,
      },
    };
  };
  return {
    run: (pair, how) => {
      const { key, plant } = span(pair, how);
      return remember("balance", key, () => simulateBalance(plant));
    },
    runUnlessDarker: (pair, how, mostDarkHours) => {
      const { key, plant } = span(pair, how);
      return remember("balance", [...key, mostDarkHours], () =>
        balanceUnlessDarker({ ...plant, mostDarkHoursPerYear: mostDarkHours }),
      );
    },
  };
}

/** What the controller lets through: as rated where it is the builder's own, set to spare the bank, else more than the panels give. */
function mostChargeA(
  brief: Brief,
  panels: ArrayCandidate,
  bank: BankCandidate,
  battery: Handbook["battery"],
): number {
  const ownedA = brief.parts.controller?.value.maxChargeA ?? Number.POSITIVE_INFINITY;
  return Math.min(ownedA, 2 * panels.chargeA, chargeBoundsA(bank, battery).maxA);
}

/** What keeps a lithium battery of that rated energy warm; nothing without a heater. */
export function batteryHeater(brief: Brief, bankWh: number): Pick<BalanceBank, "heater"> {
  const heaterW = brief.power.batteryHeaterW.value;
  return heaterW > 0
    ? {
        heater: {
          heaterW,
          thermostatTempC: BATTERY_WARM_C,
          heatLossWPerK: batteryBoxLossWPerK(bankWh),
        },
      }
    : {};
}

/** A year of loads repeats each month's day: its twelve days tell it whole. */
function digest(wattsByHourOfYear: Float64Array): readonly number[] {
  return Array.from({ length: 12 }, (_, month) =>
    Array.from(wattsByHourOfYear.subarray(month * 730 + 48, month * 730 + 72)),
  ).flat();
}

/** Of the most important tier: the picture's, or whatever the post is there for. */
export function darkHoursOf(balance: Balance): number {
  return balance.tiers[0]?.darkHoursPerYear ?? 0;
}
