import { FREEZING_MARGIN_K } from "../../core/energy/index.ts";
import { DARK_MONTH_GHI_KWH_PER_M2 } from "../../core/sun/index.ts";
import type { Battery, Notes } from "../design.ts";
import {
  BANK_LAG_K,
  BATTERY_MARGIN_FRAC,
  END_OF_LIFE_FRAC,
  LARGEST_ARRAY_AT_12_V_W,
  LARGEST_ARRAY_AT_24_V_W,
  LARGEST_CHARGE_AT_12_V_A,
  LEAST_USEFUL_DOD_FRAC,
  MOST_STRINGS,
  MOST_VISIT_DAYS,
  PERMITTED_DAILY_DOD_FRAC,
  PERMITTED_DOD_FRAC,
  POLAR_USABLE_FRAC,
} from "../practice/battery.ts";
import { BOX_LOSS_FORMULA } from "../practice/battery-box.ts";
import { BATTERY_WARM_C } from "../practice/loads.ts";
import { BLOCK_V } from "../practice/sold.ts";
import { SWITCHING_C_RATE, SWITCHING_WORDS } from "../practice/switching.ts";

const IEEE_1013 = "IEEE 1013-2007 (clauses read in the contents, values from memory)";

export const batteryNotes = {
  chemistry: {
    what: "kind of battery",
    formula:
      "as named or owned; else AGM where the coldest month or the coldest hour lies below 0 degrees C, LiFePO4 elsewhere",
    inputs: [
      "brief.power.chemistry",
      "brief.parts.battery",
      "climate.meanTempCByMonth",
      "climate.designColdTempC",
    ],
    source: "common practice, no source; no charging of lithium below 0 degrees C: maker's limits",
  },
  chemistryReason: {
    what: "why that kind",
    formula: "as above, in words",
    inputs: ["battery.chemistry"],
    source: "as above",
  },
  bankV: {
    what: "voltage of the bank",
    formula: `as named; else 12 V up to ${LARGEST_ARRAY_AT_12_V_W} W of panel (${LARGEST_CHARGE_AT_12_V_A} A of charge) and while ${MOST_STRINGS} strings of liftable blocks do, 24 V up to ${LARGEST_ARRAY_AT_24_V_W} W, 48 V beyond; an owned block's where it is higher`,
    inputs: [
      "brief.power.bankV",
      "brief.parts.battery",
      "loads.dailyWhByMonth",
      "sun.poaDailyKWhPerM2ByMonth",
    ],
    source: "common practice, no source",
  },
  bankVReason: {
    what: "why that voltage",
    formula: "as above, in words",
    inputs: ["battery.bankV"],
    source: "as above",
  },
  bankNominalV: {
    what: "voltage that the blocks make in series",
    formula: `${BLOCK_V.agm} V for each lead-acid block, ${BLOCK_V.lifepo4} V for each block of four lithium iron phosphate cells`,
    inputs: ["battery.bankV", "battery.chemistry"],
    source: "definition",
  },
  autonomyDays: {
    what: "days that the bank carries the post without any sun",
    formula: `days asked; else the larger of two fits to the Sandia curves (95 % and 99 %, sun hours held at 1.5 and more), straight over the logarithm of the hours a year in the dark; at least 3, 5, 7 days; 99 %: at most 10 where 3 kWh/m2 fall, rising to the fit at 1.5; 99.9 %: 1.5 times that; not shorter than a visit takes (${MOST_VISIT_DAYS} at most); where dark months are bridged, ${POLAR_USABLE_FRAC} of the polar station table's rated days`,
    inputs: [
      "brief.autonomy.consequence",
      "brief.autonomy.askedDays",
      "brief.autonomy.askedDarkHours",
      "brief.autonomy.visitDays",
      "sun.poaDailyKWhPerM2ByMonth",
      "sun.designMonth",
      "brief.place.site",
    ],
    source:
      "fits: Masters, Renewable and Efficient Electric Power Systems ch. 9, and Messenger and Ventre, Photovoltaic Systems Engineering (both from memory); polar table: UNAVCO article 190 (2007); bounds and interpolation: judgement",
  },
  autonomyReason: {
    what: "why that many days",
    formula: "as above, in words",
    inputs: ["battery.autonomyDays"],
    source: "as above",
  },
  lastsDays: {
    what: "days without sun that may be counted on",
    formula: `by the handbook: the days of autonomy; by the simulation: ${END_OF_LIFE_FRAC} of the usable energy (an old bank) / the largest day's Wh`,
    inputs: ["battery.autonomyDays", "battery.usableWh", "loads.largestDailyWh"],
    source: "arithmetic; end of life: IEEE 1013, from memory",
  },
  sizedBy: {
    what: "whose capacity the blocks were laid out for",
    formula: "the method of reliability.chosenMethod",
    inputs: ["reliability.chosenMethod"],
    source: "judgement: see reliability.because",
  },
  wantedAh: {
    what: "capacity that the layout rounds up to whole blocks",
    formula: "by the handbook: required Ah; by the simulation: that of the chosen pair",
    inputs: ["battery.requiredAh", "reliability.chosen"],
    source: "arithmetic",
  },
  bridgesDarkMonths: {
    what: "whether months without sun are carried from the bank",
    formula: `a month that is asked for has less than ${DARK_MONTH_GHI_KWH_PER_M2} kWh/m2 a day on the panel`,
    inputs: ["sun.poaDailyKWhPerM2ByMonth", "brief.hours.runsInMonth"],
    source: "judgement, no source",
  },
  dailyAh: {
    what: "charge that a day takes from the bank in the month of greatest demand",
    formula: "daily Wh / nominal V",
    inputs: ["loads.largestDailyWh", "battery.bankNominalV"],
    source: IEEE_1013,
  },
  permittedDodFrac: {
    what: "how far the bank may be emptied in the longest dull spell",
    formula: `${PERMITTED_DOD_FRAC.agm}, and for lead-acid not beyond what frost allows; ${LEAST_USEFUL_DOD_FRAC} at least`,
    inputs: ["battery.chemistry", "battery.frostSafeDodFrac"],
    source: `${IEEE_1013}; frost: US Army TM 5-3820-256-24-4 table 2`,
  },
  permittedDodReason: {
    what: "why that far",
    formula: "as above, in words",
    inputs: ["battery.permittedDodFrac"],
    source: "as above",
  },
  frostSafeDodFrac: {
    what: "deepest discharge at which the acid stays liquid in the coldest hour of a usual year",
    formula: `1 - state of charge that freezes ${FREEZING_MARGIN_K} K below the bank, which stays ${BANK_LAG_K} K above the coldest hour`,
    inputs: ["climate.designColdTempC", "battery.chemistry"],
    source:
      "US Army TM 5-3820-256-24-4 table 2; both 5 K: judgement (a boxed bank follows the mean of the day)",
  },
  permittedDailyDodFrac: {
    what: "how far an ordinary day may empty the bank",
    formula: `${PERMITTED_DAILY_DOD_FRAC.agm} lead-acid, ${PERMITTED_DAILY_DOD_FRAC.lifepo4} lithium iron phosphate`,
    inputs: ["battery.chemistry"],
    source: IEEE_1013,
  },
  temperatureC: {
    what: "temperature of the bank in its box in the coldest spell",
    formula: `mean of the coldest month (a box without heating follows the air within a day); with a heater warmer by its W / heat loss of the box, ${BATTERY_WARM_C} °C at most`,
    inputs: ["climate.meanTempCByMonth", "brief.power.batteryHeaterW", "loads.batteryBoxLossWPerK"],
    source: "common practice, no source",
  },
  boxLossWPerK: {
    what: "heat that the battery's insulated box loses for each kelvin; it counts where a heater keeps the battery warm",
    formula: BOX_LOSS_FORMULA,
    inputs: ["battery.bankAh", "battery.bankNominalV"],
    source:
      "conduction shape factors: Holman, Heat Transfer, section 3-4 (from memory); sizes and foam: from memory and common practice",
  },
  capacityAtTemperatureFrac: {
    what: "share of the rated capacity that is left at that temperature",
    formula: "curve by chemistry, at the rate of the days of autonomy",
    inputs: ["battery.temperatureC", "battery.chemistry", "battery.autonomyDays"],
    source: "IEEE 485 table 1 (from memory) for fast rates, common practice for slow ones; cautious ends",
  },
  unadjustedAh: {
    what: "charge for all days of autonomy",
    formula: "daily Ah x days",
    inputs: ["battery.dailyAh", "battery.autonomyDays"],
    source: "IEEE 1013-2007 clause 6.1",
  },
  forDepthAh: {
    what: "capacity so that the dull spell stays within the permitted depth",
    formula: "unadjusted Ah / permitted depth",
    inputs: ["battery.unadjustedAh", "battery.permittedDodFrac"],
    source: "IEEE 1013-2007 clause 6.3",
  },
  forDailyDepthAh: {
    what: "capacity so that an ordinary day stays within its depth",
    formula: "daily Ah / permitted daily depth",
    inputs: ["battery.dailyAh", "battery.permittedDailyDodFrac"],
    source: "IEEE 1013-2007 clause 6.3",
  },
  forEndOfLifeAh: {
    what: "capacity so that the aged bank still carries the dull spell",
    formula: `unadjusted Ah / ${END_OF_LIFE_FRAC}`,
    inputs: ["battery.unadjustedAh"],
    source: "IEEE 1013-2007 clause 6.3",
  },
  marginFrac: {
    what: "margin on the governing capacity",
    formula: `${BATTERY_MARGIN_FRAC}`,
    inputs: [],
    source: "IEEE 1013, lower end of 10 to 25 % (from memory)",
  },
  governing: {
    what: "which of the three capacities is largest and so decides",
    formula: "maximum, not product",
    inputs: ["battery.forDepthAh", "battery.forDailyDepthAh", "battery.forEndOfLifeAh"],
    source: "IEEE 1013-2007 clause 6.3",
  },
  requiredAh: {
    what: "rated capacity to buy",
    formula: `largest of the three / share left in the cold x ${1 + BATTERY_MARGIN_FRAC}`,
    inputs: [
      "battery.forDepthAh",
      "battery.forDailyDepthAh",
      "battery.forEndOfLifeAh",
      "battery.capacityAtTemperatureFrac",
      "battery.marginFrac",
    ],
    source: "IEEE 1013-2007 clause 6.3",
  },
  functionalHourRateH: {
    what: "discharge time at which the block's capacity should be read on its sheet",
    formula: "required Ah / largest lasting current",
    inputs: ["battery.requiredAh", "loads.batteryWByMonthAndHour"],
    source: "IEEE 1013-2007 clause 6.4",
  },
  blockAh: {
    what: "capacity of one block",
    formula: "sold size with the fewest strings, then the least beyond what is needed",
    inputs: ["battery.wantedAh", "brief.power.heaviestBlockKg", "brief.parts.battery"],
    source: "IEEE 1013-2007 clauses 7 and 8.2; sold sizes from memory",
  },
  blockV: {
    what: "nominal voltage of one block",
    formula: "12 V lead-acid, 12.8 V lithium iron phosphate, or the owned block's",
    inputs: ["battery.chemistry", "brief.parts.battery"],
    source: "sold sizes from memory",
  },
  blockKg: {
    what: "weight of one block",
    formula: "of the sold size; an owned one's by its energy",
    inputs: ["battery.blockAh"],
    source: "sold sizes from memory",
  },
  inSeries: {
    what: "blocks in series",
    formula: "bank V / block V",
    inputs: ["battery.bankV", "battery.blockV"],
    source: "IEEE 1013-2007 clause 7",
  },
  inParallel: {
    what: "strings in parallel",
    formula: `wanted Ah / block Ah, rounded up; ${MOST_STRINGS} at most where some block allows it`,
    inputs: ["battery.wantedAh", "battery.blockAh"],
    source: "IEEE 1013-2007 clause 8.2 (number from memory)",
  },
  blocks: {
    what: "blocks in all",
    formula: "series x parallel",
    inputs: ["battery.inSeries", "battery.inParallel"],
    source: "arithmetic",
  },
  layoutReason: {
    what: "why these blocks",
    formula: "as above, in words",
    inputs: ["battery.blockAh"],
    source: "as above",
  },
  isHeavierThanAsked: {
    what: "whether a block is heavier than one person was to lift",
    formula: "block kg > kg asked, taken only where lighter ones would need more than four strings",
    inputs: ["battery.blockKg", "brief.power.heaviestBlockKg"],
    source: "judgement, no source",
  },
  bankAh: {
    what: "capacity of the whole bank",
    formula: "strings x block Ah",
    inputs: ["battery.inParallel", "battery.blockAh"],
    source: "arithmetic",
  },
  bankKg: {
    what: "weight of the whole bank",
    formula: "blocks x block kg",
    inputs: ["battery.blocks", "battery.blockKg"],
    source: "arithmetic",
  },
  usableWh: {
    what: "energy that the new bank gives in the coldest month down to the permitted depth",
    formula: "bank Ah x nominal V x permitted depth x share left in the cold",
    inputs: [
      "battery.bankAh",
      "battery.bankNominalV",
      "battery.permittedDodFrac",
      "battery.capacityAtTemperatureFrac",
    ],
    source: "arithmetic",
  },
  absorptionV: {
    what: "absorption setting at 25 degrees C",
    formula: "2.40 V a lead-acid cell, 3.55 V a lithium iron phosphate cell",
    inputs: ["battery.chemistry", "battery.bankNominalV"],
    source: "from memory; the maker's sheet goes first",
  },
  floatV: {
    what: "float setting at 25 degrees C",
    formula: "2.27 V a lead-acid cell, 3.375 V a lithium iron phosphate cell",
    inputs: ["battery.chemistry", "battery.bankNominalV"],
    source: "from memory; the maker's sheet goes first",
  },
  lowVoltageDisconnectV: {
    what: "voltage at which the loads are cut off",
    formula:
      "voltage at rest of the charge that the permitted depth leaves; 1.93 V a lead-acid cell, 3.0 V a lithium iron phosphate cell at least",
    inputs: ["battery.chemistry", "battery.bankNominalV", "battery.permittedDodFrac"],
    source: "from memory; the maker's sheet goes first",
  },
  reconnectV: {
    what: "voltage at which the loads come back, while the bank is charged",
    formula: `voltage at rest of the charge at which the weather years let them come back (${SWITCHING_WORDS}), and the rise while it is charged at C/${Math.round(1 / SWITCHING_C_RATE)}: 1.2 V a lead-acid cell, 0.3 V a lithium iron phosphate cell, times current over capacity`,
    inputs: ["battery.chemistry", "battery.bankNominalV", "battery.permittedDodFrac"],
    source:
      "rest from memory, rise common practice without a source; lithium iron phosphate keeps nearly one voltage from 20 to 90 % of its charge",
  },
  earlyDisconnectV: {
    what: "voltage at which what is shed first is cut off",
    formula:
      "as the voltage at which the loads are cut off, of the charge at which the weather years shed it",
    inputs: ["battery.chemistry", "battery.bankNominalV", "battery.permittedDodFrac"],
    source: "as above",
  },
  earlyReconnectV: {
    what: "voltage at which what is shed first comes back, while the bank is charged",
    formula:
      "as the voltage at which the loads come back, of the charge at which the weather years let it return",
    inputs: ["battery.chemistry", "battery.bankNominalV", "battery.permittedDodFrac"],
    source: "as above",
  },
  compensationVPerK: {
    what: "shift of the charge voltages with temperature, whole bank",
    formula: "-4 mV per K and lead-acid cell; none for lithium iron phosphate",
    inputs: ["battery.chemistry", "battery.bankNominalV"],
    source: "from memory; the maker's sheet goes first",
  },
  needsWarmth: {
    what: "whether the bank meets frost in which it must not be charged",
    formula: `lithium iron phosphate, coldest hour below 0 degrees C, and no heater that holds ${BATTERY_WARM_C} °C then: W < heat loss of the box x kelvins to make up`,
    inputs: [
      "battery.chemistry",
      "battery.boxLossWPerK",
      "climate.designColdTempC",
      "brief.power.batteryHeaterW",
    ],
    source: "maker's limits of charging temperature",
  },
} satisfies Notes<Battery>;
