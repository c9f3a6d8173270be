/** Watts of panel that the months ask for: what the array stage rounds up, and what the battery stage needs for its voltage. */
import { type ArrayPower, arrayPower } from "../../core/energy/index.ts";
import type { Brief, Chemistry } from "../brief.ts";
import type { Climate, Loads, Sun } from "../design.ts";
import {
  BATTERY_EFFICIENCY_FRAC,
  CHARGING_V_PER_12_V,
  DIM_MONTH_KWH_PER_M2,
  leastArrayToLoadRatio,
  MISMATCH_LOSS_FRAC,
  MPPT_EFFICIENCY_FRAC,
  WIRING_LOSS_FRAC,
} from "../practice/array.ts";
import { MAX_POWER_OVER_OPEN_V, SOLD_PANELS } from "../practice/sold.ts";
import { askedOnly, heatLossFracByMonth } from "./sun.ts";

export interface ArrayNeed extends ArrayPower {
  readonly arrayToLoadRatio: number;
  /** Months in which the post should run and no panel can carry it. */
  readonly darkMonths: readonly number[];
  readonly heatLossFracByMonth: readonly number[];
}

/** Soiling, wiring and mismatch together: losses that do not change with the month. */
function fixedLossFrac(brief: Brief): number {
  return 1 - (1 - brief.place.soilingFrac.value) * (1 - WIRING_LOSS_FRAC) * (1 - MISMATCH_LOSS_FRAC);
}

export function arrayNeed(
  brief: Brief,
  given: {
    readonly climate: Climate;
    readonly sun: Sun;
    readonly loads: Loads;
    readonly chemistry: Chemistry;
  },
): ArrayNeed {
  const { climate, sun, loads, chemistry } = given;
  const heat = heatLossFracByMonth(climate, brief.place.site.value!.latitudeDeg);
  const arrayToLoadRatio = Math.max(1 + brief.power.marginFrac.value, leastArrayToLoadRatio(brief.autonomy));
  const lossFrac = fixedLossFrac(brief);
  const owned = brief.parts.panel?.value;
  const plant: Parameters<typeof arrayPower>[0] = {
    dailyWhByMonth: askedOnly(brief, loads.dailyWhByMonth),
    poaDailyKWhPerM2ByMonth: sun.poaDailyKWhPerM2ByMonth,
    arrayToLoadRatio,
    systemLossFrac: lossFrac,
    moduleHeatLossFracByMonth: heat,
    batteryEfficiencyFrac: BATTERY_EFFICIENCY_FRAC[chemistry],
    controller:
      controllerKind(brief) === "mppt"
        ? { kind: "mppt", efficiencyFrac: MPPT_EFFICIENCY_FRAC }
        : {
            kind: "pwm",
            moduleVmpV: owned ? MAX_POWER_OVER_OPEN_V * owned.openCircuitV : SOLD_PANELS[0]!.maxPowerV,
            batteryV: CHARGING_V_PER_12_V,
          },
  };
  const need = arrayPower(plant);
  const shared = { darkMonths: need.bridgedMonths, arrayToLoadRatio, heatLossFracByMonth: heat };
  const { requiredW } = need;
  if (need.bridgedMonths.length === 0 || requiredW === null) return { ...need, ...shared };
  // dropped, a month that snow dims would shrink the array; held, it asks for no less the dimmer it becomes
  const held = arrayPower({
    ...plant,
    poaDailyKWhPerM2ByMonth: sun.poaDailyKWhPerM2ByMonth.map((poa) => Math.max(poa, DIM_MONTH_KWH_PER_M2)),
  });
  return {
    ...need,
    ...shared,
    requiredWByMonth: held.requiredWByMonth,
    requiredW: Math.max(held.requiredW!, need.yearRequiredW ?? 0),
  };
}

/** The controller in the shed decides its kind. */
export function controllerKind(brief: Brief): Brief["power"]["controller"]["value"] {
  return brief.parts.controller?.value.kind ?? brief.power.controller.value;
}
