/** The days to come at a post that stands: from today's charge and a forecast to the hours at which loads go off and come back. */
import { chargeSettings, REFILLED_FRAC, socFromRestVoltage } from "../core/energy/index.ts";
import { extraterrestrialDailyKWhPerM2, MEAN_DAY_BY_MONTH } from "../core/sun/index.ts";
import { fixed, monthName } from "./chain/words.ts";
import type { Battery, Design } from "./design.ts";
import { coreChemistry, type Post, type RunTier, runOf, type SwitchedNow } from "./outlook-run.ts";
import { PRESENT_HEALTH_FRAC, REST_V_RATIO, type SkyKind, skyRatio } from "./practice/outlook.ts";

export type { SwitchedNow } from "./outlook-run.ts";
export type { SkyKind } from "./practice/outlook.ts";

/** A day to come, by a word or by its irradiation on the level. */
export type ComingSky =
  | { readonly kind: SkyKind }
  | { readonly kind: "figure"; readonly ghiKWhPerM2: number };

/** What the bank holds now: known, or read from its voltage at rest. */
export type ChargeNow =
  | { readonly by: "share"; readonly socFrac: number }
  | { readonly by: "volts"; readonly restV: number };

export interface OutlookQuestion {
  /** 0 = January. */
  readonly month: number;
  /** Of the clock at the post, 0 to 23, whole. */
  readonly hourNow: number;
  readonly charge: ChargeNow;
  /** What was said of the loads; nothing was: they are taken to be on where the charge allows it. */
  readonly switched?: SwitchedNow | null;
  /** 1 to 30, today first. */
  readonly days: readonly ComingSky[];
}

export interface PostTierOutlook extends RunTier {
  /** As it was said, or as the charge has it. */
  readonly isOffNow: boolean;
  /** The charge would let it be on or still off, and nobody said which: it was taken to be on. */
  readonly isTakenAsOn: boolean;
}

/** When the bank is well again: hours from now, 0: it is; null: not within the days given. */
export interface BankRecovery {
  /** Median of the month in the weather years; null where they were not run. */
  readonly usualSocFrac: number | null;
  readonly hoursUntilUsual: number | null;
  /** From here on it counts as full, as in the weather years. */
  readonly fullSocFrac: number;
  readonly hoursUntilFull: number | null;
}

export interface PostOutlook {
  readonly kind: "outlook";
  readonly month: number;
  readonly hourNow: number;
  readonly days: readonly { readonly sky: SkyKind | "figure"; readonly ghiKWhPerM2: number }[];
  /** Of all that the bank holds when full. */
  readonly socFrac: number;
  /** Where it was read from a voltage, what that voltage can mean; else null. */
  readonly reading: {
    readonly restV: number;
    readonly chemistry: Battery["chemistry"];
    readonly lowestSocFrac: number;
    readonly highestSocFrac: number;
    readonly isBlind: boolean;
    /** The tiers as they fare if the charge is at the low end. */
    readonly tiersAtLowest: readonly PostTierOutlook[];
  } | null;
  /** What is shed first comes first. */
  readonly tiers: readonly PostTierOutlook[];
  readonly lowestSocFrac: number;
  readonly hoursUntilLowest: number;
  readonly recovery: BankRecovery;
  /** What was said of the loads does not go with the charge. */
  readonly contradiction: "off though charged" | "on though empty" | null;
  /** At each full hour from now on. */
  readonly socFracByHour: readonly number[];
  readonly healthFrac: number;
  readonly bankTempC: number;
  /** In this cold the bank takes no charge. */
  readonly isTooColdToCharge: boolean;
}

export type OutlookAnswer = PostOutlook | { readonly kind: "withheld"; readonly because: string };

const withheld = (because: string): OutlookAnswer => ({ kind: "withheld", because });

/**
 * When each tier of loads is shed and is back, if the coming days are as expected.
 *
 * Kept simple: every day has the sun's path of the month's mean day, and the month's mean temperature all day (the bank's
 * heater counts). Its irradiation is laid over the hours, parted into beam and diffuse by its own clearness and brought to
 * the panel as in the simulation, so that a dull day gains less from the panel's tilt than a clear one; horizon, glass,
 * dirt, heat, wiring and mismatch as there, but the panel bare of snow. The bank has 0.9 of its new capacity. A controller
 * that joins panel and bank directly is taken to give its current at the mean voltage of a bank on charge. Standard time,
 * to whole hours.
 *
 * @throws RangeFault for a month, an hour, a share or a count of days outside the ranges of OutlookQuestion
 * @accuracy no better than the forecast; words for days are judgement
 * @source core outlook, planeYield; see practice/outlook.ts
 */
export function outlookOf(design: Design, asked: OutlookQuestion): OutlookAnswer {
  const { brief, climate, sun, battery, array } = design;
  if (climate === null || sun === null)
    return withheld("Where the post stands is not known yet, and with it the sun that is to be expected.");
  if (battery === null || array === null || array.panels === 0)
    return withheld("The post has no battery and panel yet that could be looked ahead for.");
  if (!brief.hours.runsInMonth.value[asked.month])
    return withheld(`The post is laid up in ${monthName(asked.month)}: nothing can go off.`);
  const post = { design, climate, sun, battery, array };
  const days = daysOf(post, asked);
  if (typeof days === "string") return withheld(days);
  const charge = chargeOf(battery, asked.charge);
  if (typeof charge === "string") return withheld(charge);
  const run = runOf(
    post,
    asked,
    days.map(({ ghiKWhPerM2 }) => ghiKWhPerM2),
  );

  const switched = asked.switched ?? null;
  const { socFracByHour, bankTempC, tiers: runTiers } = run(charge.socFrac, switched);
  const tiers = tiersNow(runTiers, charge.socFrac, switched);
  const lowestSocFrac = Math.min(...socFracByHour);
  const { chargeMinTempC } = chargeSettings({
    chemistry: coreChemistry(battery),
    nominalV: battery.bankNominalV,
    tempC: bankTempC,
  });
  return {
    kind: "outlook",
    month: asked.month,
    hourNow: asked.hourNow,
    days,
    socFrac: charge.socFrac,
    reading:
      asked.charge.by === "share"
        ? null
        : {
            restV: asked.charge.restV,
            chemistry: battery.chemistry,
            lowestSocFrac: charge.lowestSocFrac,
            highestSocFrac: charge.highestSocFrac,
            isBlind: charge.isBlind,
            tiersAtLowest: tiersNow(
              run(charge.lowestSocFrac, switched).tiers,
              charge.lowestSocFrac,
              switched,
            ),
          },
    tiers,
    lowestSocFrac,
    hoursUntilLowest: socFracByHour.indexOf(lowestSocFrac),
    recovery: recoveryOf(design, asked.month, socFracByHour),
    contradiction: contradictionOf(tiers, charge.socFrac, switched),
    socFracByHour,
    healthFrac: PRESENT_HEALTH_FRAC,
    bankTempC,
    isTooColdToCharge: bankTempC < chargeMinTempC,
  };
}

function tiersNow(
  tiers: readonly RunTier[],
  socFrac: number,
  switched: SwitchedNow | null,
): readonly PostTierOutlook[] {
  return tiers.map((tier, i) => {
    const isSaidOff = switched === "off" || (switched === "extrasOff" && i === 0);
    const canBeOff = socFrac < tier.backAtSocFrac;
    const mustBeOff = socFrac < tier.shedAtSocFrac;
    return {
      ...tier,
      isOffNow: mustBeOff || (isSaidOff && canBeOff),
      isTakenAsOn: switched === null && canBeOff && !mustBeOff,
    };
  });
}

function contradictionOf(
  tiers: readonly RunTier[],
  socFrac: number,
  switched: SwitchedNow | null,
): PostOutlook["contradiction"] {
  if (switched === null || tiers.length === 0) return null;
  const last = tiers.at(-1)!;
  const off = switched === "off" ? last : switched === "extrasOff" ? tiers[0]! : null;
  if (off !== null && socFrac >= off.backAtSocFrac) return "off though charged";
  const isLastOn = switched !== "off" && !(switched === "extrasOff" && tiers.length === 1);
  return isLastOn && socFrac < last.shedAtSocFrac ? "on though empty" : null;
}

/** From now where the bank is below the level; else from the lowest point of the days to come. */
function recoveryOf(design: Design, month: number, socFracByHour: readonly number[]): BankRecovery {
  const hoursUntil = (level: number): number | null => {
    const lowestSocFrac = Math.min(...socFracByHour);
    if (lowestSocFrac >= level) return 0;
    const from = socFracByHour[0]! < level ? 0 : socFracByHour.indexOf(lowestSocFrac);
    const hour = socFracByHour.findIndex((socFrac, i) => i >= from && socFrac >= level);
    return hour < 0 ? null : hour;
  };
  const usualSocFrac = design.reliability?.yearly.medianSocFracByMonth[month] ?? null;
  return {
    usualSocFrac,
    hoursUntilUsual: usualSocFrac === null ? null : hoursUntil(usualSocFrac),
    fullSocFrac: REFILLED_FRAC,
    hoursUntilFull: hoursUntil(REFILLED_FRAC),
  };
}

/** What falls on the level, day by day; or a sentence where a figure is more than the sun can give. */
function daysOf({ design, climate }: Post, { month, days }: OutlookQuestion): PostOutlook["days"] | string {
  const mostKWhPerM2 = extraterrestrialDailyKWhPerM2({
    dayOfYear: MEAN_DAY_BY_MONTH[month]!.dayOfYear,
    latitudeDeg: design.brief.place.site.value!.latitudeDeg,
  });
  const meanKWhPerM2 = climate.ghiDailyKWhPerM2ByMonth[month]!;
  const quantiles = climate.dailyGhiQuantilesByMonth[month]!;
  const known = days.map((sky) => ({
    sky: sky.kind,
    ghiKWhPerM2: sky.kind === "figure" ? sky.ghiKWhPerM2 : meanKWhPerM2 * skyRatio(sky.kind, quantiles),
  }));
  const tooMuch = known.find(({ sky, ghiKWhPerM2 }) => sky === "figure" && ghiKWhPerM2 > mostKWhPerM2);
  return tooMuch === undefined
    ? known
    : `No day in ${monthName(month)} can bring ${tooMuch.ghiKWhPerM2} kWh/m2 here: above the air it is ${fixed(mostKWhPerM2, 1)}.`;
}

/** The charge and what it lies between; or a sentence where the voltage is none of this bank's. */
function chargeOf(battery: Battery, charge: ChargeNow): ReturnType<typeof socFromRestVoltage> | string {
  if (charge.by === "share")
    return {
      socFrac: charge.socFrac,
      lowestSocFrac: charge.socFrac,
      highestSocFrac: charge.socFrac,
      isBlind: false,
    };
  const { bankNominalV } = battery;
  const ratio = charge.restV / bankNominalV;
  if (ratio < REST_V_RATIO.least || ratio > REST_V_RATIO.most)
    return `${charge.restV} V is no voltage at rest of this bank of ${fixed(bankNominalV, 1)} V: measure across the whole bank, from the first plus to the last minus, when nothing has charged it or drawn from it for an hour.`;
  return socFromRestVoltage({
    chemistry: coreChemistry(battery),
    restV: charge.restV,
    nominalV: bankNominalV,
  });
}
