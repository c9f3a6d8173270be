/** The loads as the simulation switches them: what sheds together, hour by hour of the year. */
import type { AmbientLoad, LoadTier } from "../../core/energy/index.ts";
import { MEAN_DAY_BY_MONTH } from "../../core/sun/index.ts";
import type { Brief, Device } from "../brief.ts";
import type { Climate, Sun } from "../design.ts";
import { switchingOf } from "../practice/switching.ts";
import { airOf, type Drawn, drawsOf, wByMonthAndHour } from "./demand.ts";

export interface PostTier extends LoadTier {
  /** In words. */
  readonly devices: string;
  /** The picture, or what the post is there for where it has no camera, is dark while this tier is off. */
  readonly carriesPicture: boolean;
}

const HOURS_OF_YEAR = 8760;

/**
 * Two tiers at most: what may go early, and what the picture needs, the switch and the controller with it. They differ by
 * what the bank still holds when they are shed.
 *
 * @param demandRatio  every draw is taken this much larger
 */
export function tiersOf(
  brief: Brief,
  given: {
    readonly climate: Climate;
    readonly sun: Sun;
    readonly permittedDodFrac: number;
    readonly demandRatio: number;
  },
): readonly PostTier[] {
  const switching = switchingOf(given.permittedDodFrac);
  const draws = drawsOf(brief);
  const mainPriority = mainPriorityOf(draws);
  const isEarly = ({ device }: Drawn) => device !== null && device.priority < mainPriority;
  const early = draws.filter(isEarly);
  const core = draws.filter(
    (drawn) => !isEarly(drawn) && drawn.kind !== "controller" && !drawn.keepsBatteryWarm,
  );
  const tier = (some: readonly Drawn[], about: { readonly isCore: boolean }): PostTier => {
    const { offSocFrac, backSocFrac } = about.isCore ? switching.main : switching.early;
    return {
      name: about.isCore ? "picture" : "extras",
      devices: some.map(({ name }) => name).join(", "),
      carriesPicture: about.isCore,
      priority: about.isCore ? 1 : 2,
      shedBelowSocFrac: offSocFrac,
      returnAboveSocFrac: backSocFrac,
      ...hourly(some, brief, given),
    };
  };
  return [
    ...(early.length > 0 ? [tier(early, { isCore: false })] : []),
    ...(core.length > 0 ? [tier(core, { isCore: true })] : []),
  ];
}

/** What is let go before the picture is: it needs a switch of its own. */
export function shedFirst(brief: Brief): readonly Device[] {
  const mainPriority = mainPriorityOf(drawsOf(brief));
  return brief.loads.devices.filter(({ priority }) => priority < mainPriority);
}

/** Of the first camera to go; of the most important device where there is no camera, for then the post is there for that. */
function mainPriorityOf(draws: readonly Drawn[]): number {
  const devices = draws.flatMap(({ device }) => (device === null ? [] : [device]));
  const cameras = devices.filter(({ kind }) => kind === "camera");
  return cameras.length > 0
    ? Math.min(...cameras.map(({ priority }) => priority))
    : Math.max(0, ...devices.map(({ priority }) => priority));
}

/** Watts by hour, and what a thermostat switches by the weather's own temperature. */
function hourly(
  draws: readonly Drawn[],
  brief: Brief,
  given: { readonly climate: Climate; readonly sun: Sun; readonly demandRatio: number },
): { readonly wattsByHourOfYear: Float64Array; readonly byAmbient: readonly AmbientLoad[] } {
  const runsInMonth = brief.hours.runsInMonth.value;
  const byAmbient = draws
    .flatMap((drawn) => ambientLoad(drawn, given.demandRatio))
    .map((load) => ({ ...load, runsInMonth }));
  const steady = draws.filter((drawn) => ambientLoad(drawn, 1).length === 0);
  const byMonth = wByMonthAndHour(steady, brief, { ...given.sun, air: airOf(given.climate) });
  const wattsByHourOfYear = new Float64Array(HOURS_OF_YEAR);
  let hour = 0;
  MEAN_DAY_BY_MONTH.forEach(({ days }, month) => {
    const day = byMonth[month]!;
    for (let end = hour + 24 * days; hour < end; hour += 1)
      wattsByHourOfYear[hour] = day[hour % 24]! * given.demandRatio;
  });
  return { wattsByHourOfYear, byAmbient };
}

function ambientLoad({ device, dayW, batteryRatio }: Drawn, demandRatio: number): readonly AmbientLoad[] {
  const watts = dayW * batteryRatio * demandRatio;
  const schedule = device?.schedule;
  if (schedule?.kind === "cold") return [{ runs: "below", tempC: schedule.belowC, watts }];
  if (schedule?.kind === "heat") return [{ runs: "above", tempC: schedule.aboveC, watts }];
  return [];
}
