import { within } from "../numerics/index.ts";
import { GASSING_ROWS } from "./tables.ts";

/** How a box stands: free on all sides, or flat against a wall or mast. */
export type BoxPlace = "free-standing" | "on-wall-or-mast";

/** A closed box and how it stands. */
export interface ClosedBox {
  /** 0.05 to 3 each. */
  readonly heightM: number;
  readonly widthM: number;
  readonly depthM: number;
  readonly place: BoxPlace;
}

/**
 * Surface through which a closed box gives off heat, its poorer sides counted less.
 *
 * @returns m2
 * @throws RangeFault outside the ranges of ClosedBox
 * @source VDE 0660-500 / -507 practice, read in two unrelated manuals that agree
 */
export function coolingAreaM2({ heightM, widthM, depthM, place }: ClosedBox): number {
  within("heightM", heightM, 0.05, 3);
  within("widthM", widthM, 0.05, 3);
  within("depthM", depthM, 0.05, 3);
  return place === "free-standing"
    ? 1.8 * heightM * (widthM + depthM) + 1.4 * widthM * depthM
    : 1.4 * widthM * (heightM + depthM) + 1.8 * depthM * heightM;
}

/** Share of the sun's heat that a surface takes in. Source: common figures, from memory */
export const SOLAR_ABSORPTANCE = { white: 0.3, galvanised: 0.5, black: 0.9 } as const;

/** Heat passed through a box's wall for each square metre and kelvin. Source: painted steel from one manual, others from memory */
export const WALL_WATTS_PER_M2K = {
  "painted-steel": 5.5,
  stainless: 3.7,
  polyester: 3.5,
  aluminium: 12,
} as const;

export interface BoxRise {
  /** From the equipment inside. */
  readonly equipmentRiseK: number;
  /** From the sun on the outside. */
  readonly sunRiseK: number;
  readonly riseK: number;
}

/**
 * How much warmer than the air a closed box becomes inside.
 *
 * @param lossW             given off inside, 0 to 5000
 * @param wallWPerM2K       1 to 20; see WALL_WATTS_PER_M2K
 * @param sunWPerM2         on the lit side, 0 to 1200; 0 behind a sun shield with an air gap
 * @param sunlitAreaM2      as the sun sees it, 0 to 10
 * @param solarAbsorptance  0.05 to 1; see SOLAR_ABSORPTANCE
 * @returns K above the surrounding air
 * @accuracy rough and on the high side: no wind, no heat radiated to the sky
 * @throws RangeFault outside the ranges above
 * @source VDE 0660-500 practice for the equipment; the sun's term by heat balance (IEC TR 60890 is the thorough method)
 */
export function boxRise({
  lossW,
  wallWPerM2K,
  sunWPerM2,
  sunlitAreaM2,
  solarAbsorptance,
  ...box
}: ClosedBox & {
  readonly lossW: number;
  readonly wallWPerM2K: number;
  readonly sunWPerM2: number;
  readonly sunlitAreaM2: number;
  readonly solarAbsorptance: number;
}): BoxRise {
  within("lossW", lossW, 0, 5000);
  within("wallWPerM2K", wallWPerM2K, 1, 20);
  within("sunWPerM2", sunWPerM2, 0, 1200);
  within("sunlitAreaM2", sunlitAreaM2, 0, 10);
  within("solarAbsorptance", solarAbsorptance, 0.05, 1);
  const wattsPerK = wallWPerM2K * coolingAreaM2(box);
  const equipmentRiseK = lossW / wattsPerK;
  const sunRiseK = (solarAbsorptance * sunWPerM2 * sunlitAreaM2) / wattsPerK;
  return { equipmentRiseK, sunRiseK, riseK: equipmentRiseK + sunRiseK };
}

/** Batteries that give off hydrogen on charge. Lithium iron phosphate does not in normal use. */
export type GassingBattery = keyof typeof GASSING_ROWS;

export interface BatteryVentilation {
  /** Air that must pass through the box. */
  readonly airM3PerH: number;
  /** Free area of the inlet low down, and again of the outlet high up; an insect screen passes about half. */
  readonly openingCm2: number;
  /** Least free volume in the box for natural ventilation. */
  readonly freeVolumeM3: number;
  /** Nothing that sparks or glows within this distance of a vent. */
  readonly sparkDistanceM: number;
}

/**
 * Air that carries off a battery's hydrogen. A sealed box is forbidden for every battery this function knows.
 *
 * @param cells       in series, 1 to 400; 6 for a 12 V lead-acid block
 * @param capacityAh  of all parallel strings together, ten-hour rate (nickel-cadmium: five-hour), 0.5 to 10 000
 * @param charge      "boost" for anything charged by the sun, which reaches absorption daily
 * @returns m3/h, cm2, m3 and m
 * @throws RangeFault outside the ranges above
 * @source IEC 62485-2 clause 7 with the rounded 0.05 (0.0504 unrounded); spark distance from memory
 */
export function batteryVentilation({
  cells,
  capacityAh,
  battery,
  charge,
}: {
  readonly cells: number;
  readonly capacityAh: number;
  readonly battery: GassingBattery;
  readonly charge: "float" | "boost";
}): BatteryVentilation {
  within("cells", cells, 1, 400);
  within("capacityAh", capacityAh, 0.5, 10_000);
  const gasMilliampPerAh = GASSING_ROWS[battery][charge];
  const airM3PerH = (0.05 * cells * gasMilliampPerAh * capacityAh) / 1000;
  return {
    airM3PerH,
    openingCm2: 28 * airM3PerH,
    freeVolumeM3: 2.5 * airM3PerH,
    sparkDistanceM: (28.8 * Math.cbrt(gasMilliampPerAh) * Math.cbrt(capacityAh)) / 1000,
  };
}
