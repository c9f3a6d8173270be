import {
  batteryCapacity,
  capacityFrac,
  chargeSettings,
  chargingVFromSoc,
  frostSafeDodFrac,
  restVFromSoc,
} from "../../core/energy/index.ts";
import { clamp } from "../../core/numerics/index.ts";
import { type Saying, sayingIn } from "../../core/units/index.ts";
import type { Brief, Chemistry } from "../brief.ts";
import type { Battery, ChosenPair, Climate, Loads, Sun } from "../design.ts";
import {
  BANK_LAG_K,
  BATTERY_MARGIN_FRAC,
  CELL_CHEMISTRY,
  END_OF_LIFE_FRAC,
  LARGEST_ARRAY_AT_12_V_W,
  LARGEST_ARRAY_AT_24_V_W,
  LARGEST_CHARGE_AT_12_V_A,
  LEAST_USEFUL_DOD_FRAC,
  MOST_STRINGS,
  PERMITTED_DAILY_DOD_FRAC,
  PERMITTED_DOD_FRAC,
} from "../practice/battery.ts";
import { batteryBoxLossWPerK } from "../practice/battery-box.ts";
import { BATTERY_WARM_C } from "../practice/loads.ts";
import { BLOCK_V } from "../practice/sold.ts";
import { SWITCHING_C_RATE, type Switching, switchingOf } from "../practice/switching.ts";
import { arrayNeed } from "./array-need.ts";
import { autonomyOf } from "./battery-autonomy.ts";
import { layOut } from "./battery-layout.ts";
import { fixed, plain } from "./words.ts";

export { batteryNotes } from "./battery-notes.ts";

/** The bank by the IEEE 1013 worksheet, in whole blocks; where a simulated pair was chosen, laid out for that. */
export function batteryStage(
  brief: Brief,
  climate: Climate | null,
  sun: Sun | null,
  loads: Loads,
  chosen: ChosenPair | null = null,
): Battery | null {
  if (!climate || !sun) return null;
  const { chemistry, chemistryReason } = chemistryOf(brief, climate);
  const outsideC = Math.min(...climate.meanTempCByMonth);
  const heaterW = brief.power.batteryHeaterW.value;
  // the loads were worked with the box of the bank that comes out here: whoever asks for both settles them (settled-bank.ts)
  const warmedC =
    loads.batteryBoxLossWPerK === null ? outsideC : outsideC + heaterW / loads.batteryBoxLossWPerK;
  const temperatureC = Math.max(outsideC, Math.min(BATTERY_WARM_C, warmedC));
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
  const wantedAh = chosen?.wantedAh ?? sized.requiredAh;
  const layout = layOut(brief, { chemistry, bankV, requiredAh: wantedAh });
  const { block } = layout;
  const settings = chargeSettings({
    chemistry: CELL_CHEMISTRY[chemistry],
    nominalV: bankNominalV,
    tempC: 25,
  });
  const boxLossWPerK = batteryBoxLossWPerK(layout.bankAh * bankNominalV);
  const usableWh = layout.bankAh * bankNominalV * permittedDodFrac * capacityAtTemperatureFrac;
  return {
    chemistry,
    chemistryReason,
    bankV,
    bankVReason,
    bankNominalV,
    ...autonomy,
    lastsDays: chosen ? (END_OF_LIFE_FRAC * usableWh) / loads.largestDailyWh : autonomy.autonomyDays,
    sizedBy: chosen ? "simulation" : "handbook",
    wantedAh,
    dailyAh: loads.largestDailyWh / bankNominalV,
    permittedDodFrac,
    permittedDodReason: dodReason(chemistry, { permittedDodFrac, climate, said: sayingIn(brief.units) }),
    frostSafeDodFrac: frostSafe,
    permittedDailyDodFrac: PERMITTED_DAILY_DOD_FRAC[chemistry],
    temperatureC,
    boxLossWPerK,
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
    usableWh,
    absorptionV: settings.absorptionAt25V,
    floatV: settings.floatAt25V!,
    ...switchingVoltages({
      chemistry,
      permittedDodFrac,
      bankNominalV,
      leastV: settings.lowVoltageDisconnectV,
    }),
    compensationVPerK: settings.compensationVPerK,
    needsWarmth:
      chemistry === "lifepo4" &&
      climate.designColdTempC < 0 &&
      // a heater that holds the box at its warmth through the coldest hour leaves nothing to warn of
      heaterW < boxLossWPerK * (BATTERY_WARM_C - climate.designColdTempC),
  };
}

/**
 * Off at the voltage at rest of the charge at which the sums let the loads go: at a solar post's small currents it hardly sags.
 * On again only happens while the bank is charged, so at the voltage that its charge has then.
 */
function switchingVoltages(bank: {
  readonly chemistry: Chemistry;
  readonly permittedDodFrac: number;
  readonly bankNominalV: number;
  readonly leastV: number;
}): Pick<Battery, "lowVoltageDisconnectV" | "reconnectV" | "earlyDisconnectV" | "earlyReconnectV"> {
  const { main, early } = switchingOf(bank.permittedDodFrac);
  const cells = { chemistry: CELL_CHEMISTRY[bank.chemistry], nominalV: bank.bankNominalV };
  const offV = ({ offSocFrac }: Switching) =>
    Math.max(bank.leastV, restVFromSoc({ ...cells, socFrac: offSocFrac }));
  const onV = ({ backSocFrac }: Switching) =>
    chargingVFromSoc({ ...cells, socFrac: backSocFrac, chargeCRate: SWITCHING_C_RATE });
  return {
    lowVoltageDisconnectV: offV(main),
    reconnectV: onV(main),
    earlyDisconnectV: offV(early),
    earlyReconnectV: onV(early),
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
  const said = sayingIn(brief.units);
  const hours = `the coldest month averages ${said(coldestC, "°C")} and the coldest hour of a usual year is ${said(climate.designColdTempC, "°C")}`;
  return coldestC < 0 || climate.designColdTempC < 0
    ? {
        chemistry: "agm",
        chemistryReason: `sealed lead-acid (AGM), because ${hours}: lithium iron phosphate must not be charged below ${said(0, "°C")}, and no heater is part of this post`,
      }
    : {
        chemistry: "lifepo4",
        chemistryReason: `lithium iron phosphate, because it does not freeze here (${hours}): lighter, and it may be emptied deeply every day`,
      };
}

/** Voltage that suits a pair that was chosen by another way than the worksheets. */
export function voltageOfPair(
  brief: Brief,
  battery: Battery,
  pair: ChosenPair,
): { readonly bankV: number; readonly bankVReason: string } {
  const { chemistry, bankNominalV } = battery;
  const requiredAh = (pair.wantedAh * bankNominalV) / BLOCK_V[chemistry];
  return bankVoltage(brief, {
    requiredW: pair.wantedW,
    isHeavyAt12V: layOut(brief, { chemistry, bankV: 12, requiredAh }).isHeavierThanAsked,
  });
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

function coldCapacityFrac(bank: {
  readonly chemistry: Chemistry;
  readonly temperatureC: number;
  readonly autonomyDays: number;
}): number {
  // lithium below its lowest discharge temperature is a finding of its own; the sum goes on at that temperature
  const lowestC = bank.chemistry === "lifepo4" ? -20 : -40;
  return capacityFrac({
    chemistry: CELL_CHEMISTRY[bank.chemistry],
    tempC: clamp(bank.temperatureC, lowestC, 60),
    hourRateH: clamp(24 * bank.autonomyDays, 1, 10_000),
  });
}

function dodReason(
  chemistry: Chemistry,
  bank: { readonly permittedDodFrac: number; readonly climate: Climate; readonly said: Saying },
): string {
  const share = `${fixed(100 * bank.permittedDodFrac, 0)} %`;
  if (chemistry === "lifepo4") return `${share}: usual for lithium iron phosphate, every day if need be`;
  return bank.permittedDodFrac < PERMITTED_DOD_FRAC.agm
    ? `${share}: an emptier battery could freeze and burst at ${bank.said(bank.climate.designColdTempC, "°C")}`
    : `${share} in the rare dull spell, ${fixed(100 * PERMITTED_DAILY_DOD_FRAC.agm, 0)} % on an ordinary day: usual for deep-cycle lead-acid`;
}
