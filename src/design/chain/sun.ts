import {
  type BestTilt,
  bestTilt,
  daylightHours,
  extraterrestrialDailyKWhPerM2,
  type LevelSun,
  MEAN_DAY_BY_MONTH,
  monthlyHeatLossFrac,
} from "../../core/sun/index.ts";
import type { Brief } from "../brief.ts";
import type { ByMonth, Climate, Notes, Sun, World } from "../design.ts";
import { NOCT_C, POWER_PER_K } from "../practice/sold.ts";
import { ALBEDO, LEAST_TILT_DEG, snowFracByMonth } from "../practice/sun.ts";
import { dailyWhByMonth } from "./demand.ts";

const NORTHERN_SUMMER: readonly number[] = [3, 4, 5, 6, 7, 8];

/** What falls on the panel at the tilt whose worst month is best for this demand. */
export function sunStage(brief: Brief, climate: Climate | null, world: World): Sun | null {
  const site = brief.place.site.value;
  if (!site || !climate) return null;
  const { latitudeDeg } = site;
  const daylightHByMonth = MEAN_DAY_BY_MONTH.map(({ dayOfYear }) =>
    daylightHours({ dayOfYear, latitudeDeg }),
  );
  const clockMinusSolarH = world.clockMinusSolarH(site);
  const askedWhByMonth = askedOnly(brief, dailyWhByMonth(brief, { daylightHByMonth, clockMinusSolarH }));
  const snow = snowFracByMonth({
    snowWeeks: brief.place.snowWeeks.value,
    meanTempCByMonth: climate.meanTempCByMonth,
  });
  // a snowed-in day weighs like a day without sun, so the sweep sees what is left of the demand's worth of sun
  const level: LevelSun = {
    ghiDailyKWhPerM2ByMonth: climate.ghiDailyKWhPerM2ByMonth,
    latitudeDeg,
    albedoByMonth: climate.ghiDailyKWhPerM2ByMonth.map(() => ALBEDO),
    horizonDeg: brief.place.horizonDeg.value,
  };
  const weighted = askedWhByMonth.map((dailyWh, month) => dailyWh / (1 - snow[month]!));
  const sweep = (months: (month: number) => boolean): BestTilt | null => {
    const demand = weighted.map((dailyWh, month) => (months(month) ? dailyWh : 0));
    return demand.some((dailyWh) => dailyWh > 0)
      ? bestTilt({ ...level, dailyWhByMonth: demand, minTiltDeg: LEAST_TILT_DEG })
      : null;
  };

  const year = sweep(() => true)!;
  const isSummer = (month: number) => NORTHERN_SUMMER.includes(month) === latitudeDeg >= 0;
  const summer = brief.power.isTiltChanged.value ? sweep(isSummer) : null;
  const winter = summer ? (sweep((month) => !isSummer(month)) ?? summer) : year;
  const bare = (poa: number, month: number) => poa * (1 - snow[month]!);
  const poaDailyKWhPerM2ByMonth = winter.poaDailyKWhPerM2ByMonth
    .map((poa, month) => (summer && isSummer(month) ? summer.poaDailyKWhPerM2ByMonth[month]! : poa))
    .map(bare);
  return {
    tiltDeg: winter.tiltDeg,
    azimuthDeg: winter.azimuthDeg,
    facing: winter.azimuthDeg === 0 ? "north" : "south",
    poaDailyKWhPerM2ByMonth,
    latitudeTiltDeg: year.latitudeTilt.tiltDeg,
    latitudePoaDailyKWhPerM2ByMonth: year.latitudeTilt.poaDailyKWhPerM2ByMonth.map(bare),
    summerTiltDeg: summer && summer.tiltDeg !== winter.tiltDeg ? summer.tiltDeg : null,
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

const MEAN_DAY_METHOD =
  "Liu and Jordan 1963, Klein 1977, Erbs et al. 1982 (Duffie and Beckman section 2.19); albedo 0.2 common practice, no source";

export const sunNotes = {
  tiltDeg: {
    what: "slope of the panel (in the darker half-year where it is changed)",
    formula:
      "whole degree from 15 to 80 whose worst month has most sun for its demand; the flattest of equals",
    inputs: [
      "climate.ghiDailyKWhPerM2ByMonth",
      "brief.place.site",
      "brief.place.horizonDeg",
      "brief.loads.devices",
    ],
    source:
      "design-month rule of IEEE 1562 (from memory); 15 degrees against dirt: common practice, no source",
  },
  azimuthDeg: {
    what: "direction the panel faces, clockwise from true north",
    formula: "180 on the equator and north of it, 0 south of it",
    inputs: ["brief.place.site"],
    source: "common practice, no source",
  },
  facing: {
    what: "the same in a word",
    formula: "the equator's side",
    inputs: ["sun.azimuthDeg"],
    source: "common practice, no source",
  },
  poaDailyKWhPerM2ByMonth: {
    what: "irradiation on the panel per day (the same as peak sun hours)",
    formula: "(beam x R_b + diffuse x sky in view + ground light) x (1 - share of days under snow)",
    inputs: [
      "climate.ghiDailyKWhPerM2ByMonth",
      "sun.tiltDeg",
      "sun.summerTiltDeg",
      "sun.snowFracByMonth",
      "brief.place.horizonDeg",
    ],
    source: MEAN_DAY_METHOD,
  },
  latitudeTiltDeg: {
    what: "the common rule's tilt, for comparison",
    formula: "latitude, held between 15 and 80",
    inputs: ["brief.place.site"],
    source: "common practice, no source",
  },
  latitudePoaDailyKWhPerM2ByMonth: {
    what: "irradiation on the panel at that tilt",
    formula: "as above",
    inputs: ["climate.ghiDailyKWhPerM2ByMonth", "sun.latitudeTiltDeg", "sun.snowFracByMonth"],
    source: MEAN_DAY_METHOD,
  },
  summerTiltDeg: {
    what: "second slope for the six lighter months, where the builder changes it",
    formula: "as the tilt, over those months alone",
    inputs: ["brief.power.isTiltChanged", "climate.ghiDailyKWhPerM2ByMonth"],
    source: "design-month rule of IEEE 1562 (from memory)",
  },
  daylightHByMonth: {
    what: "hours between sunrise and sunset on the mean day of each month",
    formula: "2/15 x acos(-tan latitude x tan declination)",
    inputs: ["brief.place.site"],
    source: "Duffie and Beckman eq. 1.6.11; mean days: Klein 1977",
  },
  clockMinusSolarH: {
    what: "local clock time less solar time",
    formula: "offset of the time zone in standard time - longitude / 15",
    inputs: ["brief.place.site"],
    source: "time-zone boundaries of the embedded map",
  },
  snowFracByMonth: {
    what: "share of each month in which snow lies on the panel",
    formula:
      "weeks named, spread evenly over the months below 1 degree C (the three coldest at least), 0.9 at most",
    inputs: ["brief.place.snowWeeks", "climate.meanTempCByMonth"],
    source: "judgement, no source",
  },
  designMonth: {
    what: "month that decides: least sun on the panel for the energy asked",
    formula: "smallest of irradiation / daily energy, over the months in which the post runs",
    inputs: ["sun.poaDailyKWhPerM2ByMonth", "brief.loads.devices", "brief.hours.runsInMonth"],
    source: "IEEE 1562 (from memory)",
  },
  cellTempCByMonth: {
    what: "mean temperature of the cells while the sun shines",
    formula: "air + (219 + 832 K_T) x (45 - 20) / 800",
    inputs: ["climate.meanTempCByMonth", "climate.ghiDailyKWhPerM2ByMonth"],
    source: "Evans 1981, Solar Energy 27, 555 (from memory)",
  },
} satisfies Notes<Sun>;
