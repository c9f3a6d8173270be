import type { Loads, Notes } from "../design.ts";
import { BOX_LOSS_FORMULA } from "../practice/battery-box.ts";
import {
  BATTERY_WARM_C,
  CONTROLLER_OWN_W,
  CONVERTER_EFFICIENCY_FRAC,
  CONVERTER_IDLE_W,
  peakRatio,
  STAND_IN_BANK_DAYS,
  SWITCH_OWN_W,
  WIRE_EFFICIENCY_FRAC,
} from "../practice/loads.ts";

const DEVICES = [
  "brief.loads.devices",
  "brief.power.batteryHeaterW",
  "brief.hours.runsInMonth",
  "brief.view.night",
] as const;
const OWN_DRAWS = `converter and step-up ${CONVERTER_EFFICIENCY_FRAC}, switch ${SWITCH_OWN_W} W, regulator ${CONVERTER_IDLE_W} W idle, controller ${CONTROLLER_OWN_W} W: common practice from memory; wire ${WIRE_EFFICIENCY_FRAC}: Sandia SAND87-7023 worksheet default, from memory`;

export const loadsNotes = {
  lines: {
    what: "what each device, and each part that serves them, takes from the battery on a day of the design month",
    formula: `(day W x hours in the light + night W x hours in the dark) / (${CONVERTER_EFFICIENCY_FRAC} converter or step-up) / (${WIRE_EFFICIENCY_FRAC} wire); what runs by a thermostat: x share of the month's hours beyond its limit, hours taken as spread by the bell curve so that the coldest or hottest hour of a usual year lies three standard deviations out; a battery heater: the heat that the box of the bank that is built loses below ${BATTERY_WARM_C} °C, up to its watts`,
    inputs: [
      ...DEVICES,
      "brief.parts.radio",
      "sun.designMonth",
      "sun.daylightHByMonth",
      "climate.meanTempCByMonth",
    ],
    source: OWN_DRAWS,
  },
  batteryWByMonthAndHour: {
    what: "mean power from the battery in each solar hour of the mean day of each month",
    formula:
      "sum over devices of running share of the hour x power; in months without the camera only the controller draws",
    inputs: [
      ...DEVICES,
      "sun.daylightHByMonth",
      "sun.clockMinusSolarH",
      "climate.meanTempCByMonth",
      "climate.designColdTempC",
      "climate.designHotTempC",
    ],
    source: OWN_DRAWS,
  },
  dailyWhByMonth: {
    what: "energy from the battery on the mean day of each month",
    formula: "sum of the 24 hours",
    inputs: ["loads.batteryWByMonthAndHour"],
    source: "arithmetic",
  },
  designDailyWh: {
    what: "energy from the battery on a day of the design month",
    formula: "sum of the lines",
    inputs: ["loads.lines"],
    source: "arithmetic",
  },
  largestDailyWh: {
    what: "energy from the battery on a day of the month that asks for most",
    formula: "largest of the twelve months",
    inputs: ["loads.dailyWhByMonth"],
    source: "IEEE 1013 sizes by the heaviest load of the year (from memory)",
  },
  peakW: {
    what: "power from the battery for a moment, when everything runs and starts at once in the dark",
    formula: `sum of night W x peak ratio / efficiencies; ratio ${peakRatio({ kind: "camera", isTurning: true })} for a turning camera, ${peakRatio({ kind: "cellular router", isTurning: false })} for a cellular router, else ${peakRatio({ kind: "camera", isTurning: false })}`,
    inputs: ["brief.loads.devices", "brief.view.scenes"],
    source: "peak ratios from memory of usual data sheets",
  },
  batteryBoxLossWPerK: {
    what: "heat that the battery's box loses for each kelvin, by which its heater is reckoned",
    formula: `${BOX_LOSS_FORMULA}; of the bank that is built, found by turns: a larger bank loses more and asks for a larger one; where no bank is known, of one for ${STAND_IN_BANK_DAYS} days of the other draws`,
    inputs: ["brief.power.batteryHeaterW"],
    source:
      "conduction shape factors: Holman, Heat Transfer, section 3-4 (from memory); sizes and foam: from memory and common practice",
  },
  longestNightH: {
    what: "length of the longest night, by mean days of months",
    formula: "24 - shortest day",
    inputs: ["sun.daylightHByMonth"],
    source: "arithmetic",
  },
  nightShareFrac: {
    what: "share of the design month's energy that is drawn in the dark",
    formula: "energy drawn between sunset and sunrise / energy of the day",
    inputs: ["loads.lines", "sun.daylightHByMonth"],
    source: "arithmetic",
  },
} satisfies Notes<Loads>;
