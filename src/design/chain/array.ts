import { coldVoc, hotVmp, recoveryDays } from "../../core/energy/index.ts";
import { clamp } from "../../core/numerics/index.ts";
import type { Brief, ControllerKind } from "../brief.ts";
import type { ArraySizing, Battery, Climate, Loads, Notes, Sun } from "../design.ts";
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

/** The array by the IEEE 1562 worksheet, in whole panels whose strings suit bank and controller. */
export function arrayStage(
  brief: Brief,
  climate: Climate | null,
  sun: Sun | null,
  loads: Loads,
  battery: Battery | null,
): ArraySizing | null {
  if (!climate || !sun || !battery) return null;
  const controller = controllerKind(brief);
  const need = arrayNeed(brief, { climate, sun, loads, chemistry: battery.chemistry });
  const requiredW = need.requiredW ?? 0;
  const strings = stringsOf(brief, { requiredW, climate, battery, controller });
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
  const { controllers, controllerA } = controllerRating(chargeCurrentA);
  return {
    controller,
    arrayToLoadRatio: need.arrayToLoadRatio,
    systemLossFrac: 1 - need.usableFracByMonth[design]!,
    soilingFrac: brief.place.soilingFrac.value,
    heatLossFracByMonth: need.heatLossFracByMonth,
    controllerEfficiencyFrac:
      controller === "mppt"
        ? MPPT_EFFICIENCY_FRAC
        : Math.min(1, CHARGING_V_PER_12_V / SOLD_PANELS[0]!.maxPowerV),
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
      usedWh: battery.autonomyDays * loads.designDailyWh,
      dailyLoadWh: loads.designDailyWh,
      arrayToLoadRatio: clamp(supplyRatioByMonth[design] ?? 0, 0, 20),
    }),
  };
}

interface Strings {
  readonly panel: SoldPanel;
  readonly inSeries: number;
  readonly inParallel: number;
  readonly coldOpenCircuitV: number;
  readonly hotMaxPowerV: number;
  readonly reason: string;
}

interface Wanted {
  readonly requiredW: number;
  readonly climate: Climate;
  readonly battery: Battery;
  readonly controller: ControllerKind;
}

/**
 * Fewest panels of the sizes that may be mounted, then the least beyond what is needed, then at most two strings in parallel.
 * Each string is long enough to charge the full bank with hot cells and short enough for a sold controller in the record cold.
 */
function stringsOf(brief: Brief, wanted: Wanted): Strings {
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

function controllerRating(chargeCurrentA: number): {
  readonly controllers: number;
  readonly controllerA: number;
} {
  const neededA = CONTROLLER_CURRENT_FACTOR * chargeCurrentA;
  const controllers = Math.max(1, Math.ceil(neededA / CONTROLLER_A.at(-1)! - 1e-9));
  return { controllers, controllerA: nextSize(CONTROLLER_A, neededA / controllers) };
}

const IEEE_1562 = "IEEE 1562 (form and ratios from memory), in Wh instead of Ah";

export const arrayNotes = {
  controller: {
    what: "kind of charge controller",
    formula: "the owned one's kind, else the one asked for",
    inputs: ["brief.power.controller", "brief.parts.controller"],
    source: "the builder",
  },
  arrayToLoadRatio: {
    what: "what the array is to give over what the load takes, in the month that decides",
    formula:
      "1 + the larger of your margin and the standard's excess: 0.1 nuisance, 0.3 worry, 0.4 disaster, 0.2 for plain days, by hours a year in the dark between; never both",
    inputs: ["brief.power.marginFrac", "brief.autonomy.consequence", "brief.autonomy.askedDarkHours"],
    source: "IEEE 1562, from memory: 1.1 to 1.2 non-critical, 1.3 to 1.4 critical; the rest judgement",
  },
  systemLossFrac: {
    what: "loss between the sun on the panel and the load, in the design month, battery and controller included",
    formula:
      "1 - (1 - soiling) x (1 - 0.03 wiring) x (1 - 0.03 mismatch) x (1 - heat) x controller x battery; a direct controller: the smaller of battery V / panel V and (1 - heat)",
    inputs: ["brief.place.soilingFrac", "array.heatLossFracByMonth", "array.controller", "battery.chemistry"],
    source:
      "wiring: common practice, no source; mismatch and nameplate: NREL/TP-6A20-62641; battery: Sandia SAND87-7023 default (from memory)",
  },
  soilingFrac: {
    what: "share lost to dirt",
    formula: "as answered",
    inputs: ["brief.place.soilingFrac"],
    source: "the builder; usual figures common practice, no source",
  },
  heatLossFracByMonth: {
    what: "share of each month's energy that heat takes; negative in the cold",
    formula: "0.0035 per K x (cell temperature - 25)",
    inputs: ["sun.cellTempCByMonth"],
    source: "Evans 1981, Solar Energy 27, 555 (from memory); coefficient of usual panels from memory",
  },
  controllerEfficiencyFrac: {
    what: "share that passes the controller",
    formula: "0.95 for a tracking one; a direct one holds the panel at battery voltage: 13 V / 19 V",
    inputs: ["array.controller"],
    source: "common practice, no source",
  },
  batteryEfficiencyFrac: {
    what: "of what is put into the bank, what comes out",
    formula: "0.90 lead-acid, 0.97 lithium iron phosphate, taken on all energy",
    inputs: ["battery.chemistry"],
    source: "Sandia SAND87-7023 worksheet default (from memory); lithium: common practice, no source",
  },
  requiredW: {
    what: "rating of panels needed",
    formula: "largest month's; where dark months are bridged, at least what carries the whole year",
    inputs: ["array.requiredWByMonth"],
    source: IEEE_1562,
  },
  requiredWByMonth: {
    what: "rating that each month by itself asks for",
    formula:
      "daily Wh x array-to-load ratio / (peak sun hours x (1 - losses)); 0 for a month left to the bank (dark, or below 1 kWh/m2 beside dark ones)",
    inputs: [
      "loads.dailyWhByMonth",
      "sun.poaDailyKWhPerM2ByMonth",
      "array.arrayToLoadRatio",
      "array.systemLossFrac",
      "brief.hours.runsInMonth",
    ],
    source: IEEE_1562,
  },
  darkMonths: {
    what: "months in which the post should run and no panel can carry it",
    formula: "less than 0.1 kWh/m2 a day on the panel",
    inputs: ["sun.poaDailyKWhPerM2ByMonth", "brief.hours.runsInMonth"],
    source: "judgement, no source",
  },
  marginFrac: {
    what: "margin on the sums that the ratio stands for",
    formula: "array-to-load ratio - 1",
    inputs: ["array.arrayToLoadRatio"],
    source: "arithmetic",
  },
  panelW: {
    what: "rating of one panel",
    formula: "sold size up to the largest that may be mounted: fewest panels, then least beyond the need",
    inputs: ["array.requiredW", "brief.power.largestPanelW", "brief.parts.panel"],
    source: "sold sizes from memory; order of preference our own",
  },
  panels: {
    what: "number of panels",
    formula: "series x parallel",
    inputs: ["array.inSeries", "array.inParallel"],
    source: "arithmetic",
  },
  inSeries: {
    what: "panels in series",
    formula:
      "at least so many that hot cells still exceed the absorption voltage; more for a tracking controller where that saves strings and the record cold allows it",
    inputs: ["array.maxPowerV", "climate.designHotTempC", "climate.recordColdTempC", "battery.absorptionV"],
    source: "IEEE 1562 (rule from memory), NEC 690.7",
  },
  inParallel: {
    what: "strings in parallel",
    formula: "required W / (panel W x series), rounded up",
    inputs: ["array.requiredW", "array.panelW", "array.inSeries"],
    source: "IEEE 1562 (from memory)",
  },
  installedW: {
    what: "rating of the whole array",
    formula: "panels x panel W",
    inputs: ["array.panels", "array.panelW"],
    source: "arithmetic",
  },
  areaM2: {
    what: "area of the whole array",
    formula: "W / 200",
    inputs: ["array.installedW"],
    source: "common figures from memory: about 200 W per square metre",
  },
  panelKg: {
    what: "weight of one panel",
    formula: "panel area x 12 kg/m2",
    inputs: ["array.panelW"],
    source: "common figures from memory: 10 to 12 kg per square metre",
  },
  layoutReason: {
    what: "why these panels",
    formula: "as above, in words",
    inputs: ["array.panelW", "array.inSeries", "array.inParallel"],
    source: "as above",
  },
  openCircuitV: {
    what: "open-circuit voltage of one panel at 25 degrees C",
    formula: "of the sold size, or the owned panel's",
    inputs: ["array.panelW", "brief.parts.panel"],
    source: "typical figures from memory",
  },
  maxPowerV: {
    what: "voltage of one panel at maximum power, 25 degrees C",
    formula: "of the sold size; an owned one's 0.83 x open-circuit voltage",
    inputs: ["array.panelW", "brief.parts.panel"],
    source: "typical figures from memory",
  },
  hotMaxPowerV: {
    what: "working voltage of a string with the hottest cells",
    formula: "series x V_mp x (1 - 0.0035 x (hottest hour + 31 - 25)) - cable drop",
    inputs: ["array.maxPowerV", "array.inSeries", "climate.designHotTempC"],
    source: "IEEE 1562 (rule from memory)",
  },
  coldOpenCircuitV: {
    what: "highest voltage a string can reach, at dawn in the record cold",
    formula: "the higher of series x V_oc x (1 - 0.003 x (record cold - 25)) and the table factor",
    inputs: ["array.openCircuitV", "array.inSeries", "climate.recordColdTempC"],
    source: "NEC 690.7, coefficient and table 690.7(A)",
  },
  shortCircuitA: {
    what: "short-circuit current of one string",
    formula: "current at maximum power / 0.94",
    inputs: ["array.maxPowerA"],
    source: "typical ratio from memory",
  },
  maxPowerA: {
    what: "current of one string at maximum power",
    formula: "panel W / panel V at maximum power",
    inputs: ["array.panelW", "array.maxPowerV"],
    source: "arithmetic",
  },
  chargeCurrentA: {
    what: "current into the bank in full sun",
    formula: "tracking: installed W x 0.95 / nominal V; direct: short-circuit current x strings",
    inputs: ["array.installedW", "battery.bankNominalV", "array.shortCircuitA", "array.inParallel"],
    source: "arithmetic",
  },
  controllerA: {
    what: "rated current of the controller to buy",
    formula: "next of 10, 15, 20, 30, 40, 50, 60 A at or above 1.25 x charge current",
    inputs: ["array.chargeCurrentA"],
    source: "NEC 690.8(B) for 1.25; sold sizes from memory",
  },
  controllerMaxInputV: {
    what: "input voltage that the controller to buy must bear",
    formula: "next of 50, 75, 100, 150 V at or above 1.05 x the record cold voltage",
    inputs: ["array.coldOpenCircuitV"],
    source: "headroom common practice, no source; sold sizes from memory",
  },
  controllers: {
    what: "number of controllers",
    formula: "1.25 x charge current / 60 A, rounded up",
    inputs: ["array.chargeCurrentA"],
    source: "sold sizes from memory",
  },
  supplyRatioByMonth: {
    what: "what the chosen array gives over what the load takes, by month",
    formula: "installed W x peak sun hours x (1 - losses) / daily Wh",
    inputs: [
      "array.installedW",
      "sun.poaDailyKWhPerM2ByMonth",
      "array.systemLossFrac",
      "loads.dailyWhByMonth",
    ],
    source: "IEEE 1562 (from memory)",
  },
  recoveryDays: {
    what: "days to refill the bank after the longest dull spell, in the design month, while carrying the load",
    formula: "days of autonomy / (supply over demand - 1)",
    inputs: ["battery.autonomyDays", "array.supplyRatioByMonth", "sun.designMonth"],
    source: "common practice, as the recovery test of IEC 62124 (from memory)",
  },
} satisfies Notes<ArraySizing>;
