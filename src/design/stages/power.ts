/** What the post draws, stores and makes: loads, battery, array. */
import type { Chemistry, ControllerKind, Device, Origin } from "../brief.ts";
import type { ByMonth } from "./note.ts";

/** One device's share of what the battery must give. */
export interface LoadLine {
  readonly name: string;
  readonly kind: Device["kind"] | "switch" | "converter" | "controller";
  /** At the device itself, by day and in the dark, while it runs. */
  readonly dayW: number;
  readonly nightW: number;
  /** Hours it runs on a day of the design month (of the longest night without a place). */
  readonly hoursPerDay: number;
  /** At the battery, after conversion, on a day of the design month. */
  readonly dailyWh: number;
  readonly origin: Origin;
}

export interface Loads {
  readonly lines: readonly LoadLine[];
  /** Power drawn from the battery in each hour of the mean day: [month][hour of solar day], 12 x 24. */
  readonly batteryWByMonthAndHour: readonly (readonly number[])[];
  readonly dailyWhByMonth: ByMonth;
  /** In the design month (the longest night without a place). */
  readonly designDailyWh: number;
  /** In the month with the greatest demand. */
  readonly largestDailyWh: number;
  readonly peakW: number;
  /** Heat loss of the battery's box that its heater was worked with, W/K; null without a heater. */
  readonly batteryBoxLossWPerK: number | null;
  readonly longestNightH: number;
  /** Share of the design month's energy that is drawn in the dark. */
  readonly nightShareFrac: number;
}

export interface Battery {
  readonly chemistry: Chemistry;
  readonly chemistryReason: string;
  readonly bankV: number;
  readonly bankVReason: string;
  /** What the chosen blocks make in series: 12, 24 or 48 of lead, 12.8, 25.6 or 51.2 of lithium iron phosphate. */
  readonly bankNominalV: number;
  readonly autonomyDays: number;
  readonly autonomyReason: string;
  /** Days without sun that may be counted on: those asked of the worksheet, or what the chosen bank still gives when it is old. */
  readonly lastsDays: number;
  /** Whose capacity the layout rounds up: the worksheet's, or that of the simulated pair. */
  readonly sizedBy: SizedBy;
  /** Capacity that the layout rounds up. */
  readonly wantedAh: number;
  /** The bank carries the post through months without sun: the days are those of polar stations. */
  readonly bridgesDarkMonths: boolean;
  readonly dailyAh: number;
  readonly permittedDodFrac: number;
  readonly permittedDodReason: string;
  /** Deepest discharge at which the electrolyte stays liquid on the coldest night; 1 for lithium iron phosphate. */
  readonly frostSafeDodFrac: number;
  readonly permittedDailyDodFrac: number;
  readonly temperatureC: number;
  /** Heat that its box loses for each kelvin, insulated as a heater asks. */
  readonly boxLossWPerK: number;
  readonly capacityAtTemperatureFrac: number;
  readonly unadjustedAh: number;
  readonly forDepthAh: number;
  readonly forDailyDepthAh: number;
  readonly forEndOfLifeAh: number;
  /** Added on top of the governing figure. */
  readonly marginFrac: number;
  readonly governing: "depth of discharge" | "daily depth" | "end of life";
  readonly requiredAh: number;
  readonly functionalHourRateH: number;
  readonly blockAh: number;
  readonly blockV: number;
  readonly blockKg: number;
  readonly inSeries: number;
  readonly inParallel: number;
  readonly blocks: number;
  readonly layoutReason: string;
  /** A block heavier than the builder wanted to lift, because more than four strings would be needed otherwise. */
  readonly isHeavierThanAsked: boolean;
  readonly bankAh: number;
  readonly bankKg: number;
  readonly usableWh: number;
  readonly absorptionV: number;
  readonly floatV: number;
  readonly lowVoltageDisconnectV: number;
  /** While it is charged, as are all returns. */
  readonly reconnectV: number;
  /** The same of what is shed first, where the post has such. */
  readonly earlyDisconnectV: number;
  readonly earlyReconnectV: number;
  readonly compensationVPerK: number;
  /** Does the bank reach below 0 degC where lithium may not be charged? */
  readonly needsWarmth: boolean;
}

/** The handbook's worksheet, or the simulation over many weather years. */
export type SizedBy = "handbook" | "simulation";

/** What a bank and an array are to be laid out for instead of what the worksheets ask. */
export interface ChosenPair {
  readonly wantedAh: number;
  readonly wantedW: number;
}

export interface ArraySizing {
  readonly controller: ControllerKind;
  readonly sizedBy: SizedBy;
  /** Power that the layout rounds up. */
  readonly wantedW: number;
  readonly arrayToLoadRatio: number;
  /** All losses between the sun on the panel and the battery's terminals in the design month, heat and soiling included. */
  readonly systemLossFrac: number;
  readonly soilingFrac: number;
  /** Of the panel, by heat; negative in the cold, when it gains. */
  readonly heatLossFracByMonth: ByMonth;
  readonly controllerEfficiencyFrac: number;
  /** Of what is put into the battery, what comes out. */
  readonly batteryEfficiencyFrac: number;
  readonly requiredW: number;
  /** 0 where nothing is asked or the month has no sun to meet it (see darkMonths). */
  readonly requiredWByMonth: ByMonth;
  /** Months (0 = January) in which the post should run and no panel can carry it. */
  readonly darkMonths: readonly number[];
  readonly marginFrac: number;
  readonly panelW: number;
  readonly panels: number;
  readonly inSeries: number;
  readonly inParallel: number;
  readonly installedW: number;
  readonly areaM2: number;
  readonly panelKg: number;
  readonly layoutReason: string;
  /** One panel's, at 25 degrees C. */
  readonly openCircuitV: number;
  readonly maxPowerV: number;
  /** Whole string's at maximum power with the hottest cells, cable drop taken off. */
  readonly hotMaxPowerV: number;
  /** Whole string on the record cold morning. */
  readonly coldOpenCircuitV: number;
  /** Of one string. */
  readonly shortCircuitA: number;
  readonly maxPowerA: number;
  /** Into the bank at full sun. */
  readonly chargeCurrentA: number;
  /** The controller to buy: at least this current and this input voltage. */
  readonly controllerA: number;
  readonly controllerMaxInputV: number;
  /** More than one only where the current is beyond the largest sold; each then has an equal share of the strings. */
  readonly controllers: number;
  /** Monthly supply over demand; 0 in a month without sun, null where nothing is asked. */
  readonly supplyRatioByMonth: readonly (number | null)[];
  /** Days of the design month to refill the bank while carrying the load; null where it never refills in that month. */
  readonly recoveryDays: number | null;
}
