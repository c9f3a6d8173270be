/** The post an outlook stands on, made ready: what sun, loads, bank and controller are in the coming days. */
import { outlook, type TierOutlook } from "../core/energy/index.ts";
import { sum } from "../core/numerics/index.ts";
import { MEAN_DAY_BY_MONTH } from "../core/sun/index.ts";
import { expectedDays, HOURS_A_YEAR, normalShareBelow, planeYield } from "../core/weather/index.ts";
import { airOf } from "./chain/demand.ts";
import { type PostTier, tiersOf } from "./chain/reliability-loads.ts";
import { batteryHeater } from "./chain/reliability-runs.ts";
import { panelOf } from "./chain/reliability-weather.ts";
import type { ArraySizing, Battery, Climate, Design, Sun } from "./design.ts";
import {
  CHARGING_V_PER_12_V,
  MISMATCH_LOSS_FRAC,
  MPPT_EFFICIENCY_FRAC,
  WIRING_LOSS_FRAC,
} from "./practice/array.ts";
import { CELL_CHEMISTRY } from "./practice/battery.ts";
import { CONTROLLER_OWN_W } from "./practice/loads.ts";
import { PRESENT_HEALTH_FRAC } from "./practice/outlook.ts";

/** All that an outlook stands on. */
export interface Post {
  readonly design: Design;
  readonly climate: Climate;
  readonly sun: Sun;
  readonly battery: Battery;
  readonly array: ArraySizing;
}

/** What somebody at the post sees of its loads: all on, the picture off, or only what goes first off. */
export type SwitchedNow = "on" | "off" | "extrasOff";

export interface RunTier extends TierOutlook {
  /** In words. */
  readonly devices: string;
  /** False of the less important tier, and where the post has no camera. */
  readonly carriesPicture: boolean;
}

export interface CoursePerHour {
  /** What is shed first comes first. */
  readonly tiers: readonly RunTier[];
  readonly socFracByHour: readonly number[];
  readonly bankTempC: number;
}

/** From a charge, and what is seen of the loads (null: they are taken to be on while the charge allows it), to its course. */
export type Run = (socFrac: number, switched: SwitchedNow | null) => CoursePerHour;

export const coreChemistry = ({ chemistry }: Battery) => CELL_CHEMISTRY[chemistry];

/** @param ghiKWhPerM2ByDay  on the level, today first */
export function runOf(
  post: Post,
  { month, hourNow }: { readonly month: number; readonly hourNow: number },
  ghiKWhPerM2ByDay: readonly number[],
): Run {
  const { design, climate, sun, battery, array } = post;
  const { brief } = design;
  const hasCamera = brief.loads.devices.some(({ kind }) => kind === "camera");
  const arrayWByDay = arrayW(post, month, ghiKWhPerM2ByDay);
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
  // the least important is listed first; what is less important than a tier that is off is off as well
  const offName = { on: undefined, off: tiers.at(-1)?.name, extrasOff: tiers[0]?.name } as const;
  return (socFrac, switched) => {
    const firstOff = switched === null ? undefined : offName[switched];
    const run = outlook({
      ...now,
      socFrac,
      tiers: now.tiers.map((tier) => ({ ...tier, isShed: tier.name === firstOff })),
    });
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
    (byAmbient ?? []).map(({ runs, tempC, watts, runsInMonth }) => {
      if (runsInMonth?.[month] === false) return 0;
      const belowFrac = normalShareBelow((tempC - air.meanTempCByMonth[month]!) / air.spreadK);
      return watts * (runs === "below" ? belowFrac : 1 - belowFrac);
    }),
  );
}

/** Power of the array towards the controller, 24 hours a day. */
function arrayW(post: Post, month: number, ghiKWhPerM2ByDay: readonly number[]): readonly Float64Array[] {
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
      dailyGhiKWhPerM2: ghiKWhPerM2ByDay,
      tempC: climate.meanTempCByMonth[month]!,
    }),
  });
  const isDirect = array.controller === "pwm";
  const ratio = isDirect ? currentAPerRatedA : powerWPerRatedW;
  const ratedW = isDirect
    ? (array.maxPowerA * array.inParallel * CHARGING_V_PER_12_V * battery.bankV) / 12
    : array.panels * array.panelW;
  const givenW = ratedW * (1 - WIRING_LOSS_FRAC) * (1 - MISMATCH_LOSS_FRAC);
  return ghiKWhPerM2ByDay.map((_, i) => {
    const from = i * HOURS_A_YEAR + (dayOfYear - 1) * 24;
    return ratio.slice(from, from + 24).map((each) => each * givenW);
  });
}
