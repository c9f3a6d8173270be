/** The days to come at a post that stands: from today's charge and a forecast to the hours at which loads go off and come back. */
import { chargeSettings, outlook, socFromRestVoltage, type TierOutlook } from "../core/energy/index.ts";
import { sum } from "../core/numerics/index.ts";
import { extraterrestrialDailyKWhPerM2, MEAN_DAY_BY_MONTH } from "../core/sun/index.ts";
import { expectedDays, HOURS_A_YEAR, normalShareBelow, planeYield } from "../core/weather/index.ts";
import { airOf } from "./chain/demand.ts";
import { batteryHeater } from "./chain/reliability.ts";
import { type PostTier, tiersOf } from "./chain/reliability-loads.ts";
import { panelOf } from "./chain/reliability-weather.ts";
import { fixed, monthName } from "./chain/words.ts";
import type { ArraySizing, Battery, Climate, Design, Sun } from "./design.ts";
import {
  CHARGING_V_PER_12_V,
  MISMATCH_LOSS_FRAC,
  MPPT_EFFICIENCY_FRAC,
  WIRING_LOSS_FRAC,
} from "./practice/array.ts";
import { CELL_CHEMISTRY } from "./practice/battery.ts";
import { CONTROLLER_OWN_W } from "./practice/loads.ts";
import { PRESENT_HEALTH_FRAC, REST_V_RATIO, type SkyKind, skyRatio } from "./practice/outlook.ts";

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
  /** 1 to 30, today first. */
  readonly days: readonly ComingSky[];
}

export interface PostTierOutlook extends TierOutlook {
  /** In words. */
  readonly devices: string;
  /** False of the less important tier, and where the post has no camera. */
  readonly carriesPicture: boolean;
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
  const run = runOf(post, asked, days);

  const { tiers, socFracByHour, bankTempC } = run(charge.socFrac);
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
            tiersAtLowest: run(charge.lowestSocFrac).tiers,
          },
    tiers,
    lowestSocFrac,
    hoursUntilLowest: socFracByHour.indexOf(lowestSocFrac),
    socFracByHour,
    healthFrac: PRESENT_HEALTH_FRAC,
    bankTempC,
    isTooColdToCharge: bankTempC < chargeMinTempC,
  };
}

/** All that an outlook stands on. */
interface Post {
  readonly design: Design;
  readonly climate: Climate;
  readonly sun: Sun;
  readonly battery: Battery;
  readonly array: ArraySizing;
}

const coreChemistry = ({ chemistry }: Battery) => CELL_CHEMISTRY[chemistry];

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
    return `${charge.restV} V is no voltage at rest of this bank of ${fixed(bankNominalV, 1)} V: nothing may charge it or draw from it for an hour.`;
  return socFromRestVoltage({
    chemistry: coreChemistry(battery),
    restV: charge.restV,
    nominalV: bankNominalV,
  });
}

type Run = (socFrac: number) => Pick<PostOutlook, "tiers" | "socFracByHour" | "bankTempC">;

function runOf(post: Post, { month, hourNow }: OutlookQuestion, days: PostOutlook["days"]): Run {
  const { design, climate, sun, battery, array } = post;
  const { brief } = design;
  const hasCamera = brief.loads.devices.some(({ kind }) => kind === "camera");
  const arrayWByDay = arrayW(post, month, days);
  const tiers = tiersOf(brief, {
    climate,
    sun,
    permittedDodFrac: battery.permittedDodFrac,
    demandRatio: 1,
  });
  const firstHour = (MEAN_DAY_BY_MONTH[month]!.firstDayOfYear - 1) * 24;
  const now = {
    bank: {
      chemistry: coreChemistry(battery),
      nominalV: battery.bankNominalV,
      ratedAh: battery.bankAh,
      healthFrac: PRESENT_HEALTH_FRAC,
      tempC: climate.meanTempCByMonth[month]!,
      ...batteryHeater(brief, battery.bankAh * battery.bankNominalV),
    } as const,
    controller: {
      efficiencyFrac: array.controller === "pwm" ? 1 : MPPT_EFFICIENCY_FRAC,
      maxOutputA: array.controllerA * array.controllers,
      ownW: CONTROLLER_OWN_W,
    },
    hourNow,
    days: arrayWByDay.map((watts) => ({ arrayW: byClock(watts, sun) })),
    tiers: tiers.map((tier) => {
      const switchedW = switchedByAir(tier, climate, month);
      const { name, priority, shedBelowSocFrac, returnAboveSocFrac } = tier;
      return {
        name,
        priority,
        shedBelowSocFrac,
        returnAboveSocFrac,
        wattsByHourOfDay: byClock(tier.wattsByHourOfYear.slice(firstHour, firstHour + 24), sun).map(
          (watts) => watts + switchedW,
        ),
      };
    }),
  };
  return (socFrac) => {
    const run = outlook({ ...now, socFrac });
    return {
      socFracByHour: Array.from(run.socFracByHour),
      bankTempC: run.bankTempC,
      tiers: run.tiers
        .map((tier) => {
          const { devices, carriesPicture } = tiers.find(({ name }) => name === tier.name)!;
          return { ...tier, devices, carriesPicture: carriesPicture && hasCamera };
        })
        .toReversed(),
    };
  };
}

/** Hours of a day by the sun, told by the clock; to whole hours. */
function byClock(wattsBySolarHour: Float64Array, { clockMinusSolarH }: Sun): Float64Array {
  const late = Math.round(clockMinusSolarH);
  return wattsBySolarHour.map((_, hour) => wattsBySolarHour[(((hour - late) % 24) + 24) % 24]!);
}

/** What heaters and fans draw on the mean of the month's hours: the share of them in which the thermostat has them on. */
function switchedByAir({ byAmbient }: PostTier, climate: Climate, month: number): number {
  const air = airOf(climate)!;
  return sum(
    (byAmbient ?? []).map(({ runs, tempC, watts }) => {
      const belowFrac = normalShareBelow((tempC - air.meanTempCByMonth[month]!) / air.spreadK);
      return watts * (runs === "below" ? belowFrac : 1 - belowFrac);
    }),
  );
}

/** Power of the array towards the controller, 24 hours a day. */
function arrayW(post: Post, month: number, days: PostOutlook["days"]): readonly Float64Array[] {
  const { design, climate, sun, battery, array } = post;
  const { dayOfYear } = MEAN_DAY_BY_MONTH[month]!;
  const isSummer = sun.summerTiltDeg !== null && sun.summerMonths.includes(month);
  const { snowCoveredFracByMonth: _bare, ...panel } = panelOf(design.brief, sun);
  const { powerWPerRatedW, currentAPerRatedA } = planeYield({
    ...panel,
    tiltDeg: isSummer ? sun.summerTiltDeg : sun.tiltDeg,
    weather: expectedDays({
      latitudeDeg: design.brief.place.site.value!.latitudeDeg,
      dayOfYear,
      dailyGhiKWhPerM2: days.map(({ ghiKWhPerM2 }) => ghiKWhPerM2),
      tempC: climate.meanTempCByMonth[month]!,
    }),
  });
  const isDirect = array.controller === "pwm";
  const ratio = isDirect ? currentAPerRatedA : powerWPerRatedW;
  const ratedW = isDirect
    ? (array.maxPowerA * array.inParallel * CHARGING_V_PER_12_V * battery.bankV) / 12
    : array.panels * array.panelW;
  const givenW = ratedW * (1 - WIRING_LOSS_FRAC) * (1 - MISMATCH_LOSS_FRAC);
  return days.map((_, i) => {
    const from = i * HOURS_A_YEAR + (dayOfYear - 1) * 24;
    return ratio.slice(from, from + 24).map((each) => each * givenW);
  });
}
