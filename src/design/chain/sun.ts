import {
  bestPlane,
  bestTilt,
  compassWord,
  daylightHours,
  extraterrestrialDailyKWhPerM2,
  horizonLoss,
  type LevelSun,
  MEAN_DAY_BY_MONTH,
  monthlyHeatLossFrac,
  tiltPair,
} from "../../core/sun/index.ts";
import type { Brief } from "../brief.ts";
import type { ByMonth, Climate, Sun, World } from "../design.ts";
import { NOCT_C, POWER_PER_K } from "../practice/sold.ts";
import {
  ALBEDO,
  GENTLE_TILT_LOSS_FRAC,
  LEAST_TILT_DEG,
  SNOWY_LEAST_TILT_DEG,
  SNOWY_WEEKS,
  snowFracByMonth,
} from "../practice/sun.ts";
import { airOf, dailyWhByMonth } from "./demand.ts";

export { sunNotes } from "./sun-notes.ts";

/** What falls on the panel at the tilt whose worst month is best for this demand. */
export function sunStage(brief: Brief, climate: Climate | null, world: World): Sun | null {
  const site = brief.place.site.value;
  if (!site || !climate) return null;
  const { latitudeDeg } = site;
  const daylightHByMonth = MEAN_DAY_BY_MONTH.map(({ dayOfYear }) =>
    daylightHours({ dayOfYear, latitudeDeg }),
  );
  const clockMinusSolarH = world.clockMinusSolarH(site);
  const askedWhByMonth = askedOnly(
    brief,
    dailyWhByMonth(brief, { daylightHByMonth, clockMinusSolarH, air: airOf(climate) }),
  );
  const snow = snowFracByMonth({
    snowWeeks: brief.place.snowWeeks.value,
    meanTempCByMonth: climate.meanTempCByMonth,
  });
  // a snowed-in day weighs like a day without sun, so the sweep sees what is left of the demand's worth of sun
  const level: LevelSun = {
    ghiDailyKWhPerM2ByMonth: climate.ghiDailyKWhPerM2ByMonth,
    latitudeDeg,
    albedoByMonth: climate.ghiDailyKWhPerM2ByMonth.map(() => ALBEDO),
    horizon: brief.place.horizon.value,
  };
  const weighted = askedWhByMonth.map((dailyWh, month) => dailyWh / (1 - snow[month]!));
  const wish = {
    ...level,
    dailyWhByMonth: weighted,
    acceptedLossFrac: GENTLE_TILT_LOSS_FRAC,
    minTiltDeg: brief.place.snowWeeks.value >= SNOWY_WEEKS ? SNOWY_LEAST_TILT_DEG : LEAST_TILT_DEG,
  };
  // with an open horizon nothing is gained by turning away from the equator
  const turned = brief.place.horizon.value.length > 0 ? bestPlane(wish) : null;
  const one = turned?.equatorFacing ?? bestTilt(wish);
  const pair = brief.power.isTiltChanged.value ? tiltPair(wish) : null;
  const stands = pair ? { ...pair, tiltDeg: pair.winter.tiltDeg } : (turned ?? one);
  const bare = (poa: number, month: number) => poa * (1 - snow[month]!);
  const poaDailyKWhPerM2ByMonth = stands.poaDailyKWhPerM2ByMonth.map(bare);
  const shade = horizonLoss({ ...level, tiltDeg: stands.tiltDeg, azimuthDeg: stands.azimuthDeg });
  const hasTwoTilts = pair !== null && pair.summer.tiltDeg !== pair.winter.tiltDeg;
  return {
    tiltDeg: stands.tiltDeg,
    azimuthDeg: stands.azimuthDeg,
    facing: compassWord(stands.azimuthDeg),
    equatorLossFrac: pair ? 0 : (turned?.equatorLossFrac ?? 0),
    poaDailyKWhPerM2ByMonth,
    beamShadeFracByMonth: shade.beamLossFracByMonth,
    diffuseShadeFrac: shade.diffuseLossFrac,
    shadeFracByMonth: shade.poaLossFracByMonth,
    latitudeTiltDeg: one.latitudeTilt.tiltDeg,
    latitudePoaDailyKWhPerM2ByMonth: one.latitudeTilt.poaDailyKWhPerM2ByMonth.map(bare),
    latitudeLossFrac: one.latitudeLossFrac,
    summerTiltDeg: hasTwoTilts ? pair.summer.tiltDeg : null,
    summerMonths: hasTwoTilts ? pair.summer.months : [],
    twoTiltsWorstGainFrac: pair?.oneTiltLossFrac ?? 0,
    twoTiltsYearGainFrac: pair?.yearGainFrac ?? 0,
    daylightHByMonth,
    clockMinusSolarH,
    snowFracByMonth: snow,
    designMonth: worstMonth(poaDailyKWhPerM2ByMonth, askedWhByMonth),
    cellTempCByMonth: cellTempCByMonth(climate, latitudeDeg),
  };
}

/** Demand of the months in which the post runs: a laid-up month with its controller's half watt sets no panel. */
export function askedOnly(brief: Brief, dailyWh: ByMonth): ByMonth {
  const runs = brief.hours.runsInMonth.value;
  return runs.some(Boolean) ? dailyWh.map((wh, month) => (runs[month] ? wh : 0)) : dailyWh;
}

function worstMonth(poa: ByMonth, askedWh: ByMonth): number {
  let worst = -1;
  askedWh.forEach((wh, month) => {
    if (wh > 0 && (worst < 0 || poa[month]! / wh < poa[worst]! / askedWh[worst]!)) worst = month;
  });
  return worst;
}

/** Share of a month's energy that heat takes from a panel; negative in the cold. */
export function heatLossFracByMonth(climate: Climate, latitudeDeg: number): ByMonth {
  return climate.ghiDailyKWhPerM2ByMonth.map((ghi, month) => {
    const { dayOfYear } = MEAN_DAY_BY_MONTH[month]!;
    const outside = extraterrestrialDailyKWhPerM2({ dayOfYear, latitudeDeg });
    return monthlyHeatLossFrac({
      meanTempC: climate.meanTempCByMonth[month]!,
      clearnessIndex: outside > 0 ? Math.min(ghi / outside, 0.8) : 0,
      noctC: NOCT_C,
      powerTempCoefficientPerK: POWER_PER_K,
    });
  });
}

/** The same, read backwards: the temperature at which the cells lose that much. */
function cellTempCByMonth(climate: Climate, latitudeDeg: number): ByMonth {
  return heatLossFracByMonth(climate, latitudeDeg).map((lossFrac) => 25 - lossFrac / POWER_PER_K);
}
