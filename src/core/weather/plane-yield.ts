import { within } from "../numerics/index.ts";
import {
  type ModuleMount,
  moduleCurrentRatio,
  modulePowerW,
  sandiaModuleTempC,
  weakLightRatio,
} from "../sun/index.ts";
import { DAYS_A_YEAR, HOURS_A_YEAR, MONTH_OF_DAY, twelveWithin } from "./calendar.ts";
import { levelYear } from "./level-year.ts";
import { type PlaneSite, planeYear } from "./plane-year.ts";
import { snowDays } from "./snow.ts";
import { sunSteps } from "./sun-steps.ts";
import type { WeatherYears } from "./weather-years.ts";

/** A panel under the weather; lists by month have twelve entries, January first. */
export interface PanelSite extends Omit<PlaneSite, "latitudeDeg"> {
  readonly weather: WeatherYears;
  /** Of the ground before the panel, 0 to 1: about 0.2, fresh snow 0.7. */
  readonly albedoByMonth: readonly number[];
  /** Share of days on which snow covers the panel, 0 to 1; none when left out. */
  readonly snowCoveredFracByMonth?: readonly number[] | undefined;
  /** Of the light, by dust and dirt, 0 to 0.5; 0 when left out. */
  readonly soilingLossFrac?: number | undefined;
  /** "open-rack-glass-polymer" when left out. */
  readonly mount?: ModuleMount | undefined;
  /** Steady wind at the panel, 0 to 30; 2 when left out (judgement: a sheltered pole). */
  readonly windMPerS?: number | undefined;
  /** -0.0065 to 0; -0.004 when left out (an ordinary crystalline module, common practice). */
  readonly powerTempCoefficientPerK?: number | undefined;
  /** Of the snow, 0 to 4294967295; 0 when left out. */
  readonly seed?: number | undefined;
}

/** Every hour of the weather's years, in its order: years * 8760 entries each. */
export interface PlaneYield {
  readonly years: number;
  /** On the plane, before glass, dirt and snow. */
  readonly poaWPerM2: Float64Array;
  readonly cellTempC: Float64Array;
  /** DC power at the maximum power point per watt rated (1000 W/m2, 25 deg C): what a tracking controller is given. */
  readonly powerWPerRatedW: Float64Array;
  /** Current per ampere rated at maximum power: what a controller that joins panel and battery directly draws. */
  readonly currentAPerRatedA: Float64Array;
}

/** Functions of the sun field answer in these ranges; hours outside them do not occur but as rounding. */
const MOST_LIGHT_WPERM2 = 1500;
const COLDEST_CELL_C = -60;
const HOTTEST_CELL_C = 120;

/**
 * What a fixed panel gives in every hour of weather.
 *
 * Beam and sky by Hay and Davies: the ring round the sun strikes as the beam does, the rest of the sky is even. Hills
 * and trees hide beam and ring as long as the sun is behind them and always their share of the even sky; the ground is
 * lit by what passes them. Then glass, dirt, snow, heat (Sandia, steady wind) and weak light. Wiring, mismatch, age
 * and the controller are not in it. Snow takes a day as a whole.
 *
 * @returns factors of the rating, 0 or more
 * @accuracy a year's irradiation on the plane within 3 % of an hourly Hay-Davies sum with the same months, single
 *           months within 10 % (see README)
 * @throws RangeFault outside the ranges of PanelSite
 * @source Hay and Davies 1980; Duffie and Beckman eq. 2.16.4 without its horizon term; for the rest see the functions
 *         of core/sun
 */
export function planeYield(panel: PanelSite): PlaneYield {
  const { weather } = panel;
  const steps = sunSteps({ latitudeDeg: weather.latitudeDeg, clock: weather.clock });
  const size = weather.years * HOURS_A_YEAR;
  const yielded: PlaneYield = {
    years: weather.years,
    poaWPerM2: new Float64Array(size),
    cellTempC: new Float64Array(size),
    powerWPerRatedW: new Float64Array(size),
    currentAPerRatedA: new Float64Array(size),
  };
  const fixed = {
    plane: planeYear(steps, { ...panel, latitudeDeg: weather.latitudeDeg }),
    extraterrestrialWPerM2: levelYear(steps, weather.latitudeDeg).extraterrestrialWPerM2,
    albedoByMonth: twelveWithin("albedoByMonth", panel.albedoByMonth, 0, 1),
    cleanFrac: 1 - within("soilingLossFrac", panel.soilingLossFrac ?? 0, 0, 0.5),
    // the model is linear in light
    riseKPerWPerM2:
      sandiaModuleTempC({
        poaWPerM2: 1000,
        ambientTempC: 0,
        windMPerS: within("windMPerS", panel.windMPerS ?? 2, 0, 30),
        mount: panel.mount ?? "open-rack-glass-polymer",
      }).cellTempC / 1000,
    powerTempCoefficientPerK: within(
      "powerTempCoefficientPerK",
      panel.powerTempCoefficientPerK ?? -0.004,
      -0.0065,
      0,
    ),
    covered: snowDays({
      coveredFracByMonth: panel.snowCoveredFracByMonth ?? Array.from({ length: 12 }, () => 0),
      years: weather.years,
      seed: panel.seed ?? 0,
    }),
  };
  for (let year = 0; year < weather.years; year += 1) fillYear(yielded, weather, fixed, year);
  return yielded;
}

/** The fit in steps of 1 W/m2, because its logarithms would take two thirds of the run; within 0.0002 of it. */
const WEAK_RATIOS: Readonly<Float64Array> = Float64Array.from(
  { length: MOST_LIGHT_WPERM2 + 2 },
  (_, effectiveWPerM2) => weakLightRatio({ effectiveWPerM2: Math.min(MOST_LIGHT_WPERM2, effectiveWPerM2) }),
);

function weakRatioOf(effectiveWPerM2: number): number {
  const from = Math.floor(effectiveWPerM2);
  return WEAK_RATIOS[from]! + (WEAK_RATIOS[from + 1]! - WEAK_RATIOS[from]!) * (effectiveWPerM2 - from);
}

interface Fixed {
  readonly plane: ReturnType<typeof planeYear>;
  readonly extraterrestrialWPerM2: Float64Array;
  readonly albedoByMonth: readonly number[];
  readonly cleanFrac: number;
  readonly riseKPerWPerM2: number;
  readonly powerTempCoefficientPerK: number;
  readonly covered: Uint8Array;
}

function fillYear(yielded: PlaneYield, weather: WeatherYears, fixed: Fixed, year: number): void {
  const { ghiWPerM2, diffuseWPerM2, ambientTempC } = weather;
  const { poaWPerM2, cellTempC, powerWPerRatedW, currentAPerRatedA } = yielded;
  const { plane, extraterrestrialWPerM2, cleanFrac, riseKPerWPerM2, powerTempCoefficientPerK } = fixed;
  for (let hour = 0; hour < HOURS_A_YEAR; hour += 1) {
    const at = year * HOURS_A_YEAR + hour;
    const ghi = ghiWPerM2[at]!;
    const ambient = ambientTempC[at]!;
    cellTempC[at] = ambient;
    if (ghi <= 0) continue;
    const day = Math.floor(hour / 24);
    const diffuse = diffuseWPerM2[at]!;
    const beam = ghi - diffuse;
    const outside = extraterrestrialWPerM2[hour]!;
    const ringFrac = outside > 0 ? Math.min(1, beam / outside) : 0;
    const straight = beam + diffuse * ringFrac;
    const dome = diffuse * (1 - ringFrac) * plane.skyFrac;
    const ground =
      (beam * plane.groundBeamRatio[hour]! + diffuse * plane.groundSkyFrac) *
      plane.groundFrac *
      fixed.albedoByMonth[MONTH_OF_DAY[day]!]!;
    const poa = straight * plane.beamRatio[hour]! + dome + ground;
    poaWPerM2[at] = poa;
    if (fixed.covered[year * DAYS_A_YEAR + day] === 1) continue;
    const effectiveWPerM2 = Math.min(
      MOST_LIGHT_WPERM2,
      cleanFrac *
        (straight * plane.glassBeamRatio[hour]! +
          dome * plane.skyGlassRatio +
          ground * plane.groundGlassRatio),
    );
    const cell = ambient + riseKPerWPerM2 * cleanFrac * poa;
    cellTempC[at] = cell;
    const heldCellTempC = Math.min(HOTTEST_CELL_C, Math.max(COLDEST_CELL_C, cell));
    powerWPerRatedW[at] =
      modulePowerW({
        ratedW: 1,
        poaWPerM2: effectiveWPerM2,
        cellTempC: heldCellTempC,
        powerTempCoefficientPerK,
      }) * weakRatioOf(effectiveWPerM2);
    currentAPerRatedA[at] = moduleCurrentRatio({ effectiveWPerM2, cellTempC: heldCellTempC });
  }
}
