import { DARK_MONTH_GHI_KWH_PER_M2 } from "../../core/sun/index.ts";
import type { ArraySizing, Notes } from "../design.ts";
import {
  BATTERY_EFFICIENCY_FRAC,
  CHARGING_V_PER_12_V,
  CONTROLLER_CURRENT_FACTOR,
  DIM_MONTH_KWH_PER_M2,
  INPUT_HEADROOM_FRAC,
  MISMATCH_LOSS_FRAC,
  MPPT_EFFICIENCY_FRAC,
  WIRING_LOSS_FRAC,
} from "../practice/array.ts";
import {
  CONTROLLER_A,
  CONTROLLER_INPUT_V,
  MAX_POWER_OVER_OPEN_V,
  MAX_POWER_OVER_SHORT_A,
  OPEN_CIRCUIT_PER_K,
  PANEL_KG_PER_M2,
  PANEL_W_PER_M2,
  POWER_PER_K,
  SOLD_PANELS,
} from "../practice/sold.ts";

const IEEE_1562 = "IEEE 1562 (form and ratios from memory), in Wh instead of Ah";

export const arrayNotes = {
  controller: {
    what: "kind of charge controller",
    formula: "the owned one's kind, else the one asked for",
    inputs: ["brief.power.controller", "brief.parts.controller"],
    source: "the builder",
  },
  sizedBy: {
    what: "whose power the panels were laid out for",
    formula: "the method of reliability.chosenMethod",
    inputs: ["reliability.chosenMethod"],
    source: "judgement: see reliability.because",
  },
  wantedW: {
    what: "power that the layout rounds up to whole panels",
    formula: "by the handbook: required W; by the simulation: that of the chosen pair",
    inputs: ["array.requiredW", "reliability.chosen"],
    source: "arithmetic",
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
    formula: `1 - (1 - soiling) x (1 - ${WIRING_LOSS_FRAC} wiring) x (1 - ${MISMATCH_LOSS_FRAC} mismatch) x (1 - heat) x controller x battery; a direct controller: the smaller of battery V / panel V and (1 - heat)`,
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
    formula: `${-POWER_PER_K} per K x (cell temperature - 25)`,
    inputs: ["sun.cellTempCByMonth"],
    source: "Evans 1981, Solar Energy 27, 555 (from memory); coefficient of usual panels from memory",
  },
  controllerEfficiencyFrac: {
    what: "share that passes the controller",
    formula: `${MPPT_EFFICIENCY_FRAC} for a tracking one; a direct one holds the panel at battery voltage: ${CHARGING_V_PER_12_V} V / ${SOLD_PANELS[0]!.maxPowerV} V, or over the owned panel's`,
    inputs: ["array.controller", "brief.parts.panel"],
    source: "common practice, no source",
  },
  batteryEfficiencyFrac: {
    what: "of what is put into the bank, what comes out",
    formula: `${BATTERY_EFFICIENCY_FRAC.agm} lead-acid, ${BATTERY_EFFICIENCY_FRAC.lifepo4} lithium iron phosphate, taken on all energy`,
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
    formula: `daily Wh x array-to-load ratio / (peak sun hours x (1 - losses)); where the bank bridges dark months, no month asks for more than it would with ${DIM_MONTH_KWH_PER_M2} kWh/m2`,
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
    formula: `less than ${DARK_MONTH_GHI_KWH_PER_M2} kWh/m2 a day on the panel`,
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
    formula: `W / ${PANEL_W_PER_M2}`,
    inputs: ["array.installedW"],
    source: "common figures from memory",
  },
  panelKg: {
    what: "weight of one panel",
    formula: `panel area x ${PANEL_KG_PER_M2} kg/m2`,
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
    formula: `of the sold size; an owned one's ${MAX_POWER_OVER_OPEN_V} x open-circuit voltage`,
    inputs: ["array.panelW", "brief.parts.panel"],
    source: "typical figures from memory",
  },
  hotMaxPowerV: {
    what: "working voltage of a string with the hottest cells",
    formula: `series x V_mp x (1 - ${-POWER_PER_K} x (hottest hour + 31 - 25)) - cable drop`,
    inputs: ["array.maxPowerV", "array.inSeries", "climate.designHotTempC"],
    source: "IEEE 1562 (rule from memory)",
  },
  coldOpenCircuitV: {
    what: "highest voltage a string can reach, at dawn in the record cold",
    formula: `the higher of series x V_oc x (1 - ${-OPEN_CIRCUIT_PER_K} x (record cold - 25)) and the table factor`,
    inputs: ["array.openCircuitV", "array.inSeries", "climate.recordColdTempC"],
    source: "NEC 690.7, coefficient and table 690.7(A)",
  },
  shortCircuitA: {
    what: "short-circuit current of one string",
    formula: `current at maximum power / ${MAX_POWER_OVER_SHORT_A}`,
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
    formula: `tracking: installed W x ${MPPT_EFFICIENCY_FRAC} / nominal V; direct: short-circuit current x strings`,
    inputs: ["array.installedW", "battery.bankNominalV", "array.shortCircuitA", "array.inParallel"],
    source: "arithmetic",
  },
  controllerA: {
    what: "rated current of the controller to buy",
    formula: `next of ${CONTROLLER_A.join(", ")} A at or above ${CONTROLLER_CURRENT_FACTOR} x charge current`,
    inputs: ["array.chargeCurrentA"],
    source: "NEC 690.8(B) for 1.25; sold sizes from memory",
  },
  controllerMaxInputV: {
    what: "input voltage that the controller to buy must bear",
    formula: `next of ${CONTROLLER_INPUT_V.join(", ")} V at or above ${1 + INPUT_HEADROOM_FRAC} x the record cold voltage`,
    inputs: ["array.coldOpenCircuitV"],
    source: "headroom common practice, no source; sold sizes from memory",
  },
  controllers: {
    what: "number of controllers",
    formula: `${CONTROLLER_CURRENT_FACTOR} x charge current of the fullest controller is at most ${CONTROLLER_A.at(-1)} A, strings being whole`,
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
