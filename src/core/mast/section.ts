import { within } from "../numerics/index.ts";
import { METRIC_TUBE_ROWS, MM_PER_IN, PIPE_ROWS, STEEL, WELDED_WALL_FRAC } from "./tables.ts";

/** Properties of a round hollow section. */
export interface TubeSection {
  readonly areaMm2: number;
  readonly secondMomentMm4: number;
  readonly modulusMm3: number;
  readonly massKgPerM: number;
}

/**
 * Section properties of a round steel tube, from its geometry.
 *
 * @param outerMm  10 to 500
 * @param wallMm   0.5 to half of outerMm
 * @throws RangeFault outside the ranges above
 * @source pi (D4 - d4) / 64 and 2 I / D; steel of 7850 kg/m3
 */
export function tubeSection({
  outerMm,
  wallMm,
}: {
  readonly outerMm: number;
  readonly wallMm: number;
}): TubeSection {
  within("outerMm", outerMm, 10, 500);
  within("wallMm", wallMm, 0.5, outerMm / 2);
  const innerMm = outerMm - 2 * wallMm;
  const areaMm2 = (Math.PI / 4) * (outerMm ** 2 - innerMm ** 2);
  const secondMomentMm4 = (Math.PI / 64) * (outerMm ** 4 - innerMm ** 4);
  return {
    areaMm2,
    secondMomentMm4,
    modulusMm3: (2 * secondMomentMm4) / outerMm,
    massKgPerM: (areaMm2 * STEEL.densityKgPerM3) / 1e6,
  };
}

/** Tubes as sold: American pipe of two wall schedules, or metric structural tube. */
export type TubeFamily = "schedule-40" | "schedule-80" | "metric";

export interface Tube {
  readonly family: TubeFamily | "measured";
  /** As one would order it: "2-1/2 in schedule 40", "76.1 x 3.6 mm". */
  readonly name: string;
  readonly outerMm: number;
  /** Nominal. */
  readonly wallMm: number;
  /** What the sums may count. */
  readonly designWallMm: number;
  readonly yieldMPa: number;
}

/** Inches in mm without the last-digit error of the product. */
function mmOfInches(inches: number): number {
  return Math.round(inches * MM_PER_IN * 1e4) / 1e4;
}

function pipe(schedule: "40" | "80"): readonly Tube[] {
  return PIPE_ROWS.map(([nominal, outerIn, wall40In, wall80In]) => {
    const wallMm = mmOfInches(schedule === "40" ? wall40In : wall80In);
    return {
      family: `schedule-${schedule}`,
      name: `${nominal} in schedule ${schedule}`,
      outerMm: mmOfInches(outerIn),
      wallMm,
      designWallMm: WELDED_WALL_FRAC * wallMm,
      yieldMPa: STEEL.a53GradeBYieldMPa,
    };
  });
}

const TUBES: Readonly<Record<TubeFamily, readonly Tube[]>> = {
  "schedule-40": pipe("40"),
  "schedule-80": pipe("80"),
  metric: METRIC_TUBE_ROWS.map(([outerMm, wallMm]) => ({
    family: "metric",
    name: `${outerMm} x ${wallMm} mm`,
    outerMm,
    wallMm,
    designWallMm: wallMm,
    yieldMPa: STEEL.s235YieldMPa,
  })),
};

/**
 * Standard tubes of a family, slenderest first.
 *
 * @source ASME B36.10 with ASTM A53 grade B and the design wall of AISC 360 B4.2; EN 10219 sizes in S235 (from memory)
 */
export function tubes(family: TubeFamily): readonly Tube[] {
  return TUBES[family];
}

/**
 * A tube that somebody measured: unmarked steel is trusted with no more than 30 ksi.
 *
 * @param outerMm   10 to 500
 * @param wallMm    0.5 to half of outerMm
 * @param yieldMPa  100 to 700; default 207, for unmarked tube, fence post and conduit
 * @throws RangeFault outside the ranges above
 * @source 30 ksi for steel without a guaranteed yield: common practice, no source
 */
export function measuredTube({
  outerMm,
  wallMm,
  yieldMPa = 207,
}: {
  readonly outerMm: number;
  readonly wallMm: number;
  readonly yieldMPa?: number;
}): Tube {
  within("outerMm", outerMm, 10, 500);
  within("wallMm", wallMm, 0.5, outerMm / 2);
  within("yieldMPa", yieldMPa, 100, 700);
  return {
    family: "measured",
    name: `${outerMm} x ${wallMm} mm`,
    outerMm,
    wallMm,
    designWallMm: wallMm,
    yieldMPa,
  };
}
