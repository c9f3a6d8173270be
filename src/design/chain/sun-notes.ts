import type { Notes, Sun } from "../design.ts";
import { NOCT_C } from "../practice/sold.ts";
import {
  ALBEDO,
  GENTLE_TILT_LOSS_FRAC,
  LEAST_TILT_DEG,
  MOST_SNOW_FRAC,
  SNOW_MONTH_TEMP_C,
  SNOWY_LEAST_TILT_DEG,
  SNOWY_WEEKS,
} from "../practice/sun.ts";

const MEAN_DAY_METHOD = `Liu and Jordan 1963, Klein 1977, Erbs et al. 1982 (Duffie and Beckman section 2.19); albedo ${ALBEDO} common practice, no source`;

export const sunNotes = {
  tiltDeg: {
    what: "slope of the panel (in the darker half-year where it is changed)",
    formula: `whole degree from ${LEAST_TILT_DEG} (${SNOWY_LEAST_TILT_DEG} where snow lies for ${SNOWY_WEEKS} weeks or more) to 80 whose worst month has most sun for its demand; then the flattest that costs that month no more than ${100 * GENTLE_TILT_LOSS_FRAC} %, for the sake of dull days`,
    inputs: [
      "climate.ghiDailyKWhPerM2ByMonth",
      "brief.place.site",
      "brief.place.horizon",
      "brief.place.snowWeeks",
      "brief.loads.devices",
    ],
    source: `design-month rule of IEEE 1562 (from memory); ${LEAST_TILT_DEG} degrees against dirt: common practice, no source`,
  },
  azimuthDeg: {
    what: "direction the panel faces, clockwise from true north",
    formula:
      "the equator's side: 180 on the equator and north of it, 0 south of it; where hills or trees are named, the fifth degree whose worst month is best",
    inputs: ["brief.place.site", "brief.place.horizon"],
    source: "design-month rule of IEEE 1562 (from memory); the search is our own",
  },
  facing: {
    what: "the same in a word",
    formula: "nearest of eight winds",
    inputs: ["sun.azimuthDeg"],
    source: "definition",
  },
  equatorLossFrac: {
    what: "what facing the equator would lose in its worst month",
    formula: "1 - its worst month / the worst month of the panel as it stands",
    inputs: ["sun.azimuthDeg", "brief.place.horizon"],
    source: "arithmetic",
  },
  poaDailyKWhPerM2ByMonth: {
    what: "irradiation on the panel per day (the same as peak sun hours)",
    formula: "(beam x R_b + diffuse x sky in view + ground light) x (1 - share of days under snow)",
    inputs: [
      "climate.ghiDailyKWhPerM2ByMonth",
      "sun.tiltDeg",
      "sun.summerTiltDeg",
      "sun.snowFracByMonth",
      "brief.place.horizon",
    ],
    source: MEAN_DAY_METHOD,
  },
  beamShadeFracByMonth: {
    what: "share of the sun's straight light that hills, trees and houses keep from the panel",
    formula: "1 - beam with the horizon / beam under an open sky, on the mean days",
    inputs: ["climate.ghiDailyKWhPerM2ByMonth", "brief.place.horizon", "sun.tiltDeg"],
    source: "the method of poaDailyKWhPerM2ByMonth, with the horizon and without",
  },
  diffuseShadeFrac: {
    what: "share of the sky's light that they keep from it, the same in every month",
    formula: "1 - sky in view with the horizon / sky in view without",
    inputs: ["brief.place.horizon", "sun.tiltDeg"],
    source: "evenly bright sky (Liu and Jordan 1963)",
  },
  shadeFracByMonth: {
    what: "share of all light that they keep from it",
    formula: "1 - irradiation with the horizon / irradiation without",
    inputs: ["climate.ghiDailyKWhPerM2ByMonth", "brief.place.horizon", "sun.tiltDeg"],
    source: "the method of poaDailyKWhPerM2ByMonth, with the horizon and without",
  },
  latitudeTiltDeg: {
    what: "the common rule's tilt, for comparison",
    formula: `latitude, held between ${LEAST_TILT_DEG} and 80`,
    inputs: ["brief.place.site"],
    source: "common practice, no source",
  },
  latitudePoaDailyKWhPerM2ByMonth: {
    what: "irradiation on the panel at that tilt",
    formula: "as above",
    inputs: ["climate.ghiDailyKWhPerM2ByMonth", "sun.latitudeTiltDeg", "sun.snowFracByMonth"],
    source: MEAN_DAY_METHOD,
  },
  latitudeLossFrac: {
    what: "what that tilt loses in its worst month against the best one",
    formula: "1 - its worst month / the best tilt's worst month",
    inputs: ["sun.latitudePoaDailyKWhPerM2ByMonth", "sun.poaDailyKWhPerM2ByMonth"],
    source: "arithmetic",
  },
  summerTiltDeg: {
    what: "second slope for the lighter months, where the builder changes it",
    formula: `the pair of slopes and of seasons whose worst month is best; of equals the one that gathers most over the year; the steeper is then laid back toward the single slope while its worst month loses no more than ${100 * GENTLE_TILT_LOSS_FRAC} %, for dull days like it flatter`,
    inputs: ["brief.power.isTiltChanged", "climate.ghiDailyKWhPerM2ByMonth"],
    source: "design-month rule of IEEE 1562 (from memory); what it may lose is judgement, no source",
  },
  summerMonths: {
    what: "months of the second slope",
    formula: "as above, in a row, three at least",
    inputs: ["brief.power.isTiltChanged", "climate.ghiDailyKWhPerM2ByMonth"],
    source: "as above",
  },
  twoTiltsWorstGainFrac: {
    what: "what two slopes bring more than the best single one in the worst month",
    formula: "1 - the single slope's worst month / that of the pair",
    inputs: ["sun.summerTiltDeg"],
    source: "arithmetic",
  },
  twoTiltsYearGainFrac: {
    what: "and over the year",
    formula: "mean of the twelve months of the pair / that of the single slope - 1",
    inputs: ["sun.summerTiltDeg"],
    source: "arithmetic",
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
    formula: `weeks named, spread evenly over the months below ${SNOW_MONTH_TEMP_C} degree C (the three coldest at least), ${MOST_SNOW_FRAC} at most`,
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
    formula: `air + (219 + 832 K_T) x (${NOCT_C} - 20) / 800`,
    inputs: ["climate.meanTempCByMonth", "climate.ghiDailyKWhPerM2ByMonth"],
    source: "Evans 1981, Solar Energy 27, 555 (from memory)",
  },
} satisfies Notes<Sun>;
