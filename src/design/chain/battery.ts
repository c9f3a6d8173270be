import {
  autonomyDaysSuggestion,
  type BankLayout,
  type BlockSize,
  batteryCapacity,
  type Chemistry as CellChemistry,
  capacityFrac,
  chargeSettings,
  frostSafeDodFrac,
  layoutBank,
} from "../../core/energy/index.ts";
import { clamp, interpolate } from "../../core/numerics/index.ts";
import type { Brief, Chemistry } from "../brief.ts";
import type { Battery, Climate, Loads, Notes, Sun } from "../design.ts";
import {
  allowedDarkHours,
  BANK_LAG_K,
  BATTERY_MARGIN_FRAC,
  daysForDarkHours,
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
  RECONNECT_CELL_V,
  REST_CELL_V_BY_CHARGE_FRAC,
} from "../practice/battery.ts";
import { BLOCK_V, KG_PER_WH, SOLD_BLOCKS } from "../practice/sold.ts";
import { arrayNeed } from "./array-need.ts";
import { fixed, plain } from "./words.ts";

const CELL: Readonly<Record<Chemistry, CellChemistry>> = { agm: "lead-agm", lifepo4: "lifepo4" };

/** The bank by the IEEE 1013 worksheet, in whole blocks. */
export function batteryStage(
  brief: Brief,
  climate: Climate | null,
  sun: Sun | null,
  loads: Loads,
): Battery | null {
  if (!climate || !sun) return null;
  const { chemistry, chemistryReason } = chemistryOf(brief, climate);
  const temperatureC = Math.min(...climate.meanTempCByMonth);
  const need = arrayNeed(brief, { climate, sun, loads, chemistry });
  const autonomy = autonomyOf(brief, { sun, darkMonths: need.darkMonths.length });

  const frostSafe =
    chemistry === "agm" ? frostSafeDodFrac(clamp(climate.designColdTempC + BANK_LAG_K, -60, 60)) : 1;
  const permittedDodFrac = Math.max(
    LEAST_USEFUL_DOD_FRAC,
    Math.min(PERMITTED_DOD_FRAC[chemistry], frostSafe),
  );
  const capacityAtTemperatureFrac = coldCapacityFrac({
    chemistry,
    temperatureC,
    autonomyDays: autonomy.autonomyDays,
  });
  const sizedAt = (nominalV: number) =>
    batteryCapacity({
      dailyAh: loads.largestDailyWh / nominalV,
      autonomyDays: autonomy.autonomyDays,
      maxDodFrac: permittedDodFrac,
      maxDailyDodFrac: PERMITTED_DAILY_DOD_FRAC[chemistry],
      endOfLifeFrac: END_OF_LIFE_FRAC,
      capacityFrac: capacityAtTemperatureFrac,
      designMarginFrac: BATTERY_MARGIN_FRAC,
      largestRunningA: Math.max(...loads.batteryWByMonthAndHour.flat()) / nominalV,
    });
  const { bankV, bankVReason } = bankVoltage(brief, {
    requiredW: need.requiredW ?? 0,
    isHeavyAt12V: layOut(brief, {
      chemistry,
      bankV: 12,
      requiredAh: sizedAt(BLOCK_V[chemistry]).requiredAh,
    }).isHeavierThanAsked,
  });
  const bankNominalV = (BLOCK_V[chemistry] * bankV) / 12;
  const sized = sizedAt(bankNominalV);
  const layout = layOut(brief, { chemistry, bankV, requiredAh: sized.requiredAh });
  const { block } = layout;
  const settings = chargeSettings({ chemistry: CELL[chemistry], nominalV: bankNominalV, tempC: 25 });
  return {
    chemistry,
    chemistryReason,
    bankV,
    bankVReason,
    bankNominalV,
    ...autonomy,
    dailyAh: loads.largestDailyWh / bankNominalV,
    permittedDodFrac,
    permittedDodReason: dodReason(chemistry, { permittedDodFrac, climate }),
    frostSafeDodFrac: frostSafe,
    permittedDailyDodFrac: PERMITTED_DAILY_DOD_FRAC[chemistry],
    temperatureC,
    capacityAtTemperatureFrac,
    unadjustedAh: sized.unadjustedAh,
    forDepthAh: sized.dodAdjustedAh,
    forDailyDepthAh: sized.dailyDodAdjustedAh,
    forEndOfLifeAh: sized.endOfLifeAdjustedAh,
    marginFrac: BATTERY_MARGIN_FRAC,
    governing: GOVERNING[sized.governedBy],
    requiredAh: sized.requiredAh,
    functionalHourRateH: sized.functionalHourRateH ?? 0,
    blockAh: block.capacityAh,
    blockV: block.blockV,
    blockKg: block.massKg,
    inSeries: layout.series,
    inParallel: layout.parallel,
    blocks: layout.blocks,
    layoutReason: layout.reason,
    isHeavierThanAsked: layout.isHeavierThanAsked,
    bankAh: layout.bankAh,
    bankKg: layout.totalMassKg,
    usableWh: layout.bankAh * bankNominalV * permittedDodFrac * capacityAtTemperatureFrac,
    absorptionV: settings.absorptionAt25V,
    floatV: settings.floatAt25V!,
    lowVoltageDisconnectV: Math.max(
      settings.lowVoltageDisconnectV,
      permittedDodFrac < PERMITTED_DOD_FRAC[chemistry]
        ? settings.cellsInSeries * interpolate(REST_CELL_V_BY_CHARGE_FRAC, 1 - permittedDodFrac)
        : 0,
    ),
    reconnectV: RECONNECT_CELL_V[chemistry] * settings.cellsInSeries,
    compensationVPerK: settings.compensationVPerK,
    needsWarmth: chemistry === "lifepo4" && climate.designColdTempC < 0,
  };
}

const GOVERNING = {
  "depth-of-discharge": "depth of discharge",
  "daily-depth-of-discharge": "daily depth",
  "end-of-life": "end of life",
} as const;

function chemistryOf(
  brief: Brief,
  climate: Climate,
): { readonly chemistry: Chemistry; readonly chemistryReason: string } {
  const asked = brief.power.chemistry.value;
  const owned = brief.parts.battery?.value.chemistry;
  if (asked !== "choose") return { chemistry: asked, chemistryReason: "the kind you named" };
  if (owned) return { chemistry: owned, chemistryReason: "the kind you own" };
  const coldestC = Math.min(...climate.meanTempCByMonth);
  const hours = `the coldest month averages ${fixed(coldestC, 0)} °C and the coldest hour of a usual year is ${fixed(climate.designColdTempC, 0)} °C`;
  return coldestC < 0 || climate.designColdTempC < 0
    ? {
        chemistry: "agm",
        chemistryReason: `sealed lead-acid (AGM), because ${hours}: lithium iron phosphate must not be charged below 0 °C, and no heater is part of this post`,
      }
    : {
        chemistry: "lifepo4",
        chemistryReason: `lithium iron phosphate, because it does not freeze here (${hours}): lighter, and it may be emptied deeply every day`,
      };
}

function bankVoltage(
  brief: Brief,
  given: { readonly requiredW: number; readonly isHeavyAt12V: boolean },
): { readonly bankV: number; readonly bankVReason: string } {
  const { requiredW } = given;
  const asked = brief.power.bankV.value;
  if (asked !== "choose") return { bankV: asked, bankVReason: "the voltage you named" };
  const panels = `about ${fixed(requiredW, 0)} W of panel`;
  const chargeA = requiredW / 12;
  const isSmall = requiredW <= LARGEST_ARRAY_AT_12_V_W && chargeA <= LARGEST_CHARGE_AT_12_V_A;
  const bankV = isSmall && !given.isHeavyAt12V ? 12 : requiredW <= LARGEST_ARRAY_AT_24_V_W ? 24 : 48;
  const ownedV = brief.parts.battery?.value.blockV;
  if (ownedV !== undefined && ownedV > 1.2 * bankV) {
    // a block of 24 V cannot make 12 V
    return {
      bankV: 12 * Math.round(ownedV / 12),
      bankVReason: `the blocks you own are ${plain(ownedV)} V each`,
    };
  }
  if (bankV === 12) {
    return {
      bankV,
      bankVReason: `${panels} charge with ${fixed(chargeA, 0)} A at 12 V, which thin wire and a small controller carry`,
    };
  }
  return {
    bankV,
    bankVReason: isSmall
      ? `at 12 V the bank would need blocks too heavy for one person, or more than ${MOST_STRINGS} strings side by side`
      : `${panels} would charge with ${fixed(chargeA, 0)} A at 12 V; at ${bankV} V it is ${fixed(requiredW / bankV, 0)} A, with thinner wire and a smaller controller`,
  };
}

/** Days by the fits, held between what practice calls too few and enough, and never shorter than the way of whoever comes. */
function autonomyOf(
  brief: Brief,
  given: { readonly sun: Sun; readonly darkMonths: number },
): Pick<Battery, "autonomyDays" | "autonomyReason" | "bridgesDarkMonths"> {
  const { autonomy, place } = brief;
  const sunHours = given.sun.poaDailyKWhPerM2ByMonth[given.sun.designMonth]!;
  const isDark = given.darkMonths > 0;
  const darkHours = allowedDarkHours(autonomy);
  if (darkHours === null) {
    const days = autonomy.askedDays.value;
    return {
      autonomyDays: days,
      autonomyReason: `the ${plain(days)} days you asked for`,
      bridgesDarkMonths: false,
    };
  }
  const latitudeDeg = place.site.value!.latitudeDeg;
  const suggestion = (availability: 0.95 | 0.99, peakSunHours: number) =>
    autonomyDaysSuggestion({ availability, peakSunHours, latitudeDeg });
  if (isDark) {
    const days = POLAR_USABLE_FRAC * suggestion(darkHours > 200 ? 0.95 : 0.99, sunHours).days;
    return {
      autonomyDays: days,
      autonomyReason: `${fixed(days, 0)} days, because ${given.darkMonths} of the months asked for bring practically no sun here and the bank alone must carry them, as at polar stations`,
      bridgesDarkMonths: true,
    };
  }
  // where the array carries even a dull month by itself, no season has to be stored: the fits end at 1.5 and are held there
  const held = clamp(sunHours, 1.5, 15);
  const fitted = daysForDarkHours(
    {
      at95: suggestion(0.95, held).days,
      at99: suggestion(0.99, held).days,
      at99WhereFitsEnd: suggestion(0.99, 1.5).days,
      sunHours: held,
    },
    darkHours,
  );
  const visitDays = Math.min(autonomy.visitDays.value, MOST_VISIT_DAYS);
  const days = Math.max(fitted, visitDays);
  const worst = `${fixed(sunHours, 1)} kWh/m2 a day fall on the panel in the worst month`;
  return {
    autonomyDays: days,
    autonomyReason:
      days > fitted
        ? `${fixed(days, 0)} days, because it can take that long until somebody comes by (the sun alone would ask for ${fixed(fitted, 1)})`
        : `${fixed(days, 1)} days, because ${worst} and at most about ${fixed(darkHours, 0)} hours a year may be dark`,
    bridgesDarkMonths: false,
  };
}

function coldCapacityFrac(bank: {
  readonly chemistry: Chemistry;
  readonly temperatureC: number;
  readonly autonomyDays: number;
}): number {
  // lithium below its lowest discharge temperature is a finding of its own; the sum goes on at that temperature
  const lowestC = bank.chemistry === "lifepo4" ? -20 : -40;
  return capacityFrac({
    chemistry: CELL[bank.chemistry],
    tempC: clamp(bank.temperatureC, lowestC, 60),
    hourRateH: clamp(24 * bank.autonomyDays, 1, 10_000),
  });
}

function dodReason(
  chemistry: Chemistry,
  bank: { readonly permittedDodFrac: number; readonly climate: Climate },
): string {
  const share = `${fixed(100 * bank.permittedDodFrac, 0)} %`;
  if (chemistry === "lifepo4") return `${share}: usual for lithium iron phosphate, every day if need be`;
  return bank.permittedDodFrac < PERMITTED_DOD_FRAC.agm
    ? `${share}: an emptier battery could freeze and burst at ${fixed(bank.climate.designColdTempC, 0)} °C`
    : `${share} in the rare dull spell, ${fixed(100 * PERMITTED_DAILY_DOD_FRAC.agm, 0)} % on an ordinary day: usual for deep-cycle lead-acid`;
}

type Laid = BankLayout & { readonly isHeavierThanAsked: boolean; readonly reason: string };

/** Blocks as light as asked where four strings do; else the lightest heavier ones with which they do. */
function layOut(
  brief: Brief,
  bank: { readonly chemistry: Chemistry; readonly bankV: number; readonly requiredAh: number },
): Laid {
  const { chemistry, bankV, requiredAh } = bank;
  const owned = ownedBlocks(brief, { chemistry, bankV });
  const sizes: readonly BlockSize[] =
    owned ??
    SOLD_BLOCKS[chemistry].map(({ capacityAh, weightKg }) => ({
      blockV: BLOCK_V[chemistry],
      capacityAh,
      massKg: weightKg,
    }));
  const limits = [
    brief.power.heaviestBlockKg.value,
    ...sizes.map(({ massKg }) => massKg).filter((massKg) => massKg > brief.power.heaviestBlockKg.value),
  ];
  const tried = limits
    .map((maxBlockKg) => layoutBank({ requiredAh, bankV, sizes, maxBlockKg, maxParallel: MOST_STRINGS }))
    .filter((layout) => layout !== null);
  const best = tried.find((layout) => !layout.exceedsMaxParallel) ?? tried.at(-1)!;
  const isHeavierThanAsked = owned === null && best.block.massKg > brief.power.heaviestBlockKg.value;
  return {
    ...best,
    isHeavierThanAsked,
    reason: layoutReason(best, { owned: owned !== null, isHeavierThanAsked, brief }),
  };
}

/** Blocks in the shed, where they are of the chosen kind and make the bank's voltage. */
function ownedBlocks(
  brief: Brief,
  bank: { readonly chemistry: Chemistry; readonly bankV: number },
): readonly BlockSize[] | null {
  const owned = brief.parts.battery?.value;
  if (!owned || owned.chemistry !== bank.chemistry) return null;
  const series = Math.round(bank.bankV / owned.blockV);
  if (series < 1 || Math.abs((series * owned.blockV) / bank.bankV - 1) > 0.1) return null;
  const massKg = KG_PER_WH[bank.chemistry] * owned.blockV * owned.blockAh;
  return [{ blockV: owned.blockV, capacityAh: owned.blockAh, massKg }];
}

function layoutReason(
  layout: BankLayout,
  given: { readonly owned: boolean; readonly isHeavierThanAsked: boolean; readonly brief: Brief },
): string {
  const blocks = `${layout.blocks} × ${plain(layout.block.capacityAh)} Ah (${layout.series} in series, ${layout.parallel} in parallel)`;
  const limit = `${plain(given.brief.power.heaviestBlockKg.value)} kg`;
  if (given.owned) return `${blocks}, of the blocks you own`;
  if (given.isHeavierThanAsked) {
    return `${blocks}: blocks of at most ${limit} would need more than ${MOST_STRINGS} strings side by side, which share the current badly`;
  }
  return layout.decidedBy === "block-mass"
    ? `${blocks}: the fewest strings with blocks of at most ${limit}`
    : `${blocks}: the fewest strings, and among those the least beyond what is needed`;
}

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
    formula:
      "as named; else 12 V up to 200 W of panel (20 A of charge) and while four strings of liftable blocks do, 24 V up to 1400 W, 48 V beyond; an owned block's where it is higher",
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
    formula: "12 V for each lead-acid block, 12.8 V for each block of four lithium iron phosphate cells",
    inputs: ["battery.bankV", "battery.chemistry"],
    source: "definition",
  },
  autonomyDays: {
    what: "days that the bank carries the post without any sun",
    formula:
      "days asked; else the larger of two fits to the Sandia curves (95 % and 99 %, sun hours held at 1.5 and more), straight over the logarithm of the hours a year in the dark; at least 3, 5, 7 days; 99 %: at most 10 where 3 kWh/m2 fall, rising to the fit at 1.5; 99.9 %: 1.5 times that; not shorter than a visit takes (14 at most); where dark months are bridged, 0.8 of the polar station table's rated days",
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
  bridgesDarkMonths: {
    what: "whether months without sun are carried from the bank",
    formula: "a month that is asked for has less than 0.1 kWh/m2 a day on the panel",
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
    formula: "0.8, and for lead-acid not beyond what frost allows; 0.2 at least",
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
    formula: "1 - state of charge that freezes 5 K below the bank, which stays 5 K above the coldest hour",
    inputs: ["climate.designColdTempC", "battery.chemistry"],
    source:
      "US Army TM 5-3820-256-24-4 table 2; both 5 K: judgement (a boxed bank follows the mean of the day)",
  },
  permittedDailyDodFrac: {
    what: "how far an ordinary day may empty the bank",
    formula: "0.2 lead-acid, 0.8 lithium iron phosphate",
    inputs: ["battery.chemistry"],
    source: IEEE_1013,
  },
  temperatureC: {
    what: "temperature of the bank in its box in the coldest spell",
    formula: "mean of the coldest month (a box without heating follows the air within a day)",
    inputs: ["climate.meanTempCByMonth"],
    source: "common practice, no source",
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
    formula: "unadjusted Ah / 0.8",
    inputs: ["battery.unadjustedAh"],
    source: "IEEE 1013-2007 clause 6.3",
  },
  marginFrac: {
    what: "margin on the governing capacity",
    formula: "0.10",
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
    formula: "largest of the three / share left in the cold x 1.10",
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
    inputs: ["battery.requiredAh", "brief.power.heaviestBlockKg", "brief.parts.battery"],
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
    formula: "required Ah / block Ah, rounded up; 4 at most where some block allows it",
    inputs: ["battery.requiredAh", "battery.blockAh"],
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
      "1.93 V a lead-acid cell, 3.0 V a lithium iron phosphate cell; where frost allows less depth, the rest voltage of that state of charge",
    inputs: ["battery.chemistry", "battery.bankNominalV", "battery.permittedDodFrac"],
    source: "from memory; the maker's sheet goes first",
  },
  reconnectV: {
    what: "voltage at which the loads come back",
    formula: "2.10 V a lead-acid cell, 3.28 V a lithium iron phosphate cell",
    inputs: ["battery.chemistry", "battery.bankNominalV"],
    source: "common practice, no source",
  },
  compensationVPerK: {
    what: "shift of the charge voltages with temperature, whole bank",
    formula: "-4 mV per K and lead-acid cell; none for lithium iron phosphate",
    inputs: ["battery.chemistry", "battery.bankNominalV"],
    source: "from memory; the maker's sheet goes first",
  },
  needsWarmth: {
    what: "whether the bank meets frost in which it must not be charged",
    formula: "lithium iron phosphate and coldest hour below 0 degrees C",
    inputs: ["battery.chemistry", "climate.designColdTempC"],
    source: "maker's limits of charging temperature",
  },
} satisfies Notes<Battery>;
