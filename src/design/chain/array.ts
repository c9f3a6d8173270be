import { coldVoc, hotVmp, recoveryDays } from "../../core/energy/index.ts";
import { clamp } from "../../core/numerics/index.ts";
import type { Brief, ControllerKind } from "../brief.ts";
import type { ArraySizing, Battery, ChosenPair, Climate, Loads, Sun } from "../design.ts";
import {
  BATTERY_EFFICIENCY_FRAC,
  CHARGING_V_PER_12_V,
  CONTROLLER_CURRENT_FACTOR,
  CONTROLLER_HEADROOM_V,
  INPUT_HEADROOM_FRAC,
  MPPT_EFFICIENCY_FRAC,
  UNFUSED_STRINGS,
  WIRING_LOSS_FRAC,
} from "../practice/array.ts";
import {
  CONTROLLER_A,
  CONTROLLER_INPUT_V,
  MAX_POWER_OVER_OPEN_V,
  MAX_POWER_OVER_SHORT_A,
  NOCT_C,
  OPEN_CIRCUIT_PER_K,
  PANEL_KG_PER_M2,
  PANEL_W_PER_M2,
  POWER_PER_K,
  SOLD_PANELS,
  type SoldPanel,
} from "../practice/sold.ts";
import { arrayNeed, controllerKind } from "./array-need.ts";
import { askedOnly } from "./sun.ts";
import { fixed, plain } from "./words.ts";

export { arrayNotes } from "./array-notes.ts";

/**
 * The array by the IEEE 1562 worksheet, in whole panels whose strings suit bank and controller; where a simulated pair was
 * chosen, laid out for that.
 */
export function arrayStage(
  brief: Brief,
  climate: Climate | null,
  sun: Sun | null,
  loads: Loads,
  battery: Battery | null,
  chosen: ChosenPair | null = null,
): ArraySizing | null {
  if (!climate || !sun || !battery) return null;
  const controller = controllerKind(brief);
  const need = arrayNeed(brief, { climate, sun, loads, chemistry: battery.chemistry });
  const requiredW = need.requiredW ?? 0;
  const wantedW = chosen?.wantedW ?? requiredW;
  const strings = stringsOf(brief, { requiredW: wantedW, climate, battery, controller });
  const { panel, inSeries, inParallel } = strings;
  const panels = inSeries * inParallel;
  const installedW = panels * panel.ratedW;
  const maxPowerA = panel.ratedW / panel.maxPowerV;
  const shortCircuitA = maxPowerA / MAX_POWER_OVER_SHORT_A;
  const chargeCurrentA =
    controller === "mppt"
      ? (installedW * MPPT_EFFICIENCY_FRAC) / battery.bankNominalV
      : shortCircuitA * inParallel;
  const asked = askedOnly(brief, loads.dailyWhByMonth);
  const supplyRatioByMonth = asked.map((dailyWh, month) =>
    dailyWh > 0
      ? (installedW * sun.poaDailyKWhPerM2ByMonth[month]! * need.usableFracByMonth[month]!) / dailyWh
      : null,
  );
  const design = sun.designMonth;
  const { controllers, controllerA } = controllerRating({ chargeCurrentA, inParallel });
  return {
    controller,
    sizedBy: chosen ? "simulation" : "handbook",
    wantedW,
    arrayToLoadRatio: need.arrayToLoadRatio,
    systemLossFrac: 1 - need.usableFracByMonth[design]!,
    soilingFrac: brief.place.soilingFrac.value,
    heatLossFracByMonth: need.heatLossFracByMonth,
    controllerEfficiencyFrac:
      controller === "mppt" ? MPPT_EFFICIENCY_FRAC : Math.min(1, heldByBatteryFrac(brief)),
    batteryEfficiencyFrac: BATTERY_EFFICIENCY_FRAC[battery.chemistry],
    requiredW,
    requiredWByMonth: need.requiredWByMonth.map((w) => w ?? 0),
    darkMonths: need.darkMonths,
    marginFrac: need.arrayToLoadRatio - 1,
    panelW: panel.ratedW,
    panels,
    inSeries,
    inParallel,
    installedW,
    areaM2: installedW / PANEL_W_PER_M2,
    panelKg: (panel.ratedW / PANEL_W_PER_M2) * PANEL_KG_PER_M2,
    layoutReason: strings.reason,
    openCircuitV: panel.openCircuitV,
    maxPowerV: panel.maxPowerV,
    hotMaxPowerV: strings.hotMaxPowerV,
    coldOpenCircuitV: strings.coldOpenCircuitV,
    shortCircuitA,
    maxPowerA,
    chargeCurrentA,
    controllerA,
    controllerMaxInputV: nextSize(CONTROLLER_INPUT_V, strings.coldOpenCircuitV * (1 + INPUT_HEADROOM_FRAC)),
    controllers,
    supplyRatioByMonth,
    recoveryDays: recoveryDays({
      usedWh: battery.lastsDays * loads.designDailyWh,
      dailyLoadWh: loads.designDailyWh,
      arrayToLoadRatio: clamp(supplyRatioByMonth[design] ?? 0, 0, 20),
    }),
  };
}

/** What a direct controller makes of the panel's voltage: it holds it at the battery's. */
export function heldByBatteryFrac(brief: Brief): number {
  const owned = brief.parts.panel?.value;
  const panelV = owned ? MAX_POWER_OVER_OPEN_V * owned.openCircuitV : SOLD_PANELS[0]!.maxPowerV;
  return CHARGING_V_PER_12_V / panelV;
}

export interface Strings {
  readonly panel: SoldPanel;
  readonly inSeries: number;
  readonly inParallel: number;
  readonly coldOpenCircuitV: number;
  readonly hotMaxPowerV: number;
  readonly reason: string;
}

export interface Wanted {
  readonly requiredW: number;
  readonly climate: Climate;
  readonly battery: Battery;
  readonly controller: ControllerKind;
}

/**
 * Fewest panels of the sizes that may be mounted, then the least beyond what is needed, then at most two strings in parallel.
 * Each string is long enough to charge the full bank with hot cells and short enough for a sold controller in the record cold.
 */
export function stringsOf(brief: Brief, wanted: Wanted): Strings {
  const offered = offeredPanels(brief, wanted.controller);
  const laid = offered.flatMap((panel) => layoutsOf(panel, wanted));
  laid.sort(
    (a, b) =>
      count(a) - count(b) ||
      count(a) * a.panel.ratedW - count(b) * b.panel.ratedW ||
      Math.max(a.inParallel, UNFUSED_STRINGS) - Math.max(b.inParallel, UNFUSED_STRINGS) ||
      a.inSeries - b.inSeries,
  );
  const best = laid[0]!;
  const arrangement =
    count(best) === 1
      ? `one panel of ${plain(best.panel.ratedW)} W`
      : `${count(best)} panels of ${plain(best.panel.ratedW)} W, ${best.inSeries} in series and ${best.inParallel} in parallel`;
  const owned = brief.parts.panel ? ", of the kind you own" : "";
  const largest = `at most ${plain(brief.power.largestPanelW.value)} W each`;
  return {
    ...best,
    reason: `${arrangement}${owned}: ${fixed(wanted.requiredW, 0)} W are needed, ${owned ? "" : `${largest}, `}and a string of ${best.inSeries} still gives ${fixed(best.hotMaxPowerV, 0)} V when hot`,
  };
}

function count(strings: { readonly inSeries: number; readonly inParallel: number }): number {
  return strings.inSeries * strings.inParallel;
}

/** What may be mounted; a direct controller wastes what a panel has beyond the usual 36 cells for 12 V. */
function offeredPanels(brief: Brief, controller: ControllerKind): readonly SoldPanel[] {
  const owned = brief.parts.panel?.value;
  if (owned) {
    const { ratedW, openCircuitV } = owned;
    return [{ ratedW, openCircuitV, maxPowerV: MAX_POWER_OVER_OPEN_V * openCircuitV }];
  }
  const largestW = brief.power.largestPanelW.value;
  const mountable = SOLD_PANELS.filter(
    ({ ratedW, maxPowerV }) =>
      ratedW <= largestW && (controller === "mppt" || maxPowerV === SOLD_PANELS[0]!.maxPowerV),
  );
  return mountable.length > 0 ? mountable : [SOLD_PANELS[0]!];
}

function layoutsOf(panel: SoldPanel, wanted: Wanted): readonly Omit<Strings, "reason">[] {
  const { battery, climate, controller } = wanted;
  const inNeed = Math.max(1, Math.ceil(wanted.requiredW / panel.ratedW - 1e-9));
  const hot = (modulesInSeries: number) =>
    hotVmp({
      moduleVmpV: panel.maxPowerV,
      vmpTempCoefficientPerK: POWER_PER_K,
      modulesInSeries,
      hottestCellTempC: clamp(climate.designHotTempC + ((NOCT_C - 20) / 800) * 1000, 25, 120),
      highestChargeV: battery.absorptionV,
      dropV: WIRING_LOSS_FRAC * battery.bankNominalV,
      controllerHeadroomV: CONTROLLER_HEADROOM_V[controller],
    });
  const coldV = (modulesInSeries: number) =>
    coldVoc({
      moduleVocV: panel.openCircuitV,
      vocTempCoefficientPerK: OPEN_CIRCUIT_PER_K,
      modulesInSeries,
      recordLowTempC: clamp(climate.recordColdTempC, -70, 40),
    }).coldVocV;
  const least = hot(1).modulesNeeded;
  // a direct controller gains nothing from a longer string; a tracking one may take it as long as its input bears the cold
  const most = controller === "pwm" ? least : Math.max(least, 4);
  const limitV = CONTROLLER_INPUT_V.at(-1)! / (1 + INPUT_HEADROOM_FRAC);
  return Array.from({ length: most - least + 1 }, (_, i) => least + i)
    .filter((inSeries) => inSeries === least || coldV(inSeries) <= limitV)
    .map((inSeries) => ({
      panel,
      inSeries,
      inParallel: Math.ceil(inNeed / inSeries),
      coldOpenCircuitV: coldV(inSeries),
      hotMaxPowerV: hot(inSeries).hotVmpV,
    }));
}

/** Smallest sold size that suffices; the largest where none does (a finding says so). */
function nextSize(sizes: readonly number[], least: number): number {
  return sizes.find((size) => size >= least) ?? sizes.at(-1)!;
}

/** The fewest controllers that bear it; strings are whole, so the fullest one decides. */
function controllerRating(array: { readonly chargeCurrentA: number; readonly inParallel: number }): {
  readonly controllers: number;
  readonly controllerA: number;
} {
  const { chargeCurrentA, inParallel } = array;
  const fullestA = (controllers: number) =>
    (CONTROLLER_CURRENT_FACTOR * chargeCurrentA * Math.ceil(inParallel / controllers)) / inParallel;
  const enough = Array.from({ length: inParallel }, (_, i) => i + 1).find(
    (controllers) => fullestA(controllers) <= CONTROLLER_A.at(-1)! + 1e-9,
  );
  const controllers = enough ?? Math.max(1, inParallel);
  return { controllers, controllerA: nextSize(CONTROLLER_A, fullestA(controllers)) };
}
