import { within } from "../numerics/index.ts";
import { awgAreaMm2, copperResistanceRatio } from "./copper.ts";
import { AWG_ROWS, MM2_ROWS } from "./tables.ts";

/** The two ways wire is sold: square millimetres, or American wire gauge. */
export type ConductorFamily = "mm2" | "awg";

/** A stranded copper conductor that can be bought. */
export interface Conductor {
  readonly family: ConductorFamily;
  /** As written on the reel: "4 mm2", "10 AWG", "2/0 AWG". */
  readonly name: string;
  readonly areaMm2: number;
  /** Plain (untinned) copper at 20 degrees C; mm2: class 5, the flexible kind. */
  readonly ohmPerKm20: number;
  readonly tinnedOhmPerKm20: number;
  /** [conductor temperature, ampacity at 30 degrees C ambient], rising. */
  readonly ampacityByTempC: readonly (readonly [number, number])[];
  /** Largest fuse whatever the ampacity, where a rule sets one. */
  readonly overcurrentLimitA: number | null;
}

const KFT_PER_KM = 3.28084;

const AWG: readonly Conductor[] = AWG_ROWS.map(
  ([gauge, stranded, coated, at60A, at75A, at90A, overcurrentLimitA]) => {
    // Table 8 prints 75 degree values; everything else here starts at 20 degrees.
    const from75 = KFT_PER_KM / copperResistanceRatio(75);
    return {
      family: "awg",
      name: `${gauge > 0 ? gauge : `${1 - gauge}/0`} AWG`,
      areaMm2: awgAreaMm2(gauge),
      ohmPerKm20: stranded * from75,
      tinnedOhmPerKm20: coated * from75,
      ampacityByTempC: [
        [60, at60A],
        [75, at75A],
        [90, at90A],
      ],
      overcurrentLimitA,
    };
  },
);

const MM2: readonly Conductor[] = MM2_ROWS.map(([areaMm2, , class5, class5Tinned, at70A, at90A]) => ({
  family: "mm2",
  name: `${areaMm2} mm2`,
  areaMm2,
  ohmPerKm20: class5,
  tinnedOhmPerKm20: class5Tinned,
  ampacityByTempC: [
    [70, at70A],
    [90, at90A],
  ],
  overcurrentLimitA: null,
}));

/** All conductors of a family, thinnest first. */
export function conductors(family: ConductorFamily): readonly Conductor[] {
  return family === "awg" ? AWG : MM2;
}

/**
 * Resistance of one kilometre of a conductor at its working temperature.
 *
 * @param conductorTempC  -60 to 150
 * @param tinned          tinned strands (usual for photovoltaic cable), about 3 % higher; default plain
 * @returns ohm per km, one conductor
 * @accuracy the tabulated maximum (mm2) or nominal value (AWG); real wire is usually 1 to 5 % lower
 * @throws RangeFault outside the range above
 * @source IEC 60228 tables 2 and 3; NEC chapter 9 table 8
 */
export function conductorOhmPerKm({
  conductor,
  conductorTempC,
  tinned = false,
}: {
  readonly conductor: Conductor;
  readonly conductorTempC: number;
  readonly tinned?: boolean;
}): number {
  return (tinned ? conductor.tinnedOhmPerKm20 : conductor.ohmPerKm20) * copperResistanceRatio(conductorTempC);
}

/**
 * Ampacity of a conductor at 30 degrees C ambient for a conductor or terminal temperature.
 *
 * @param tempC  60 to 90; between two printed columns the lower one counts, below the lowest the ambient law scales it
 * @returns A
 * @throws RangeFault outside the range above
 * @source NEC table 310.16; IEC 60364-5-52 table B.52 (from memory)
 */
export function columnAmpacityA({
  conductor,
  tempC,
}: {
  readonly conductor: Conductor;
  readonly tempC: number;
}): number {
  within("tempC", tempC, 60, 90);
  const [lowestC, lowestA] = conductor.ampacityByTempC[0]!;
  if (tempC < lowestC) return lowestA * Math.sqrt((tempC - 30) / (lowestC - 30));
  return Math.max(
    ...conductor.ampacityByTempC.filter(([atC]) => atC <= tempC).map(([, carriesA]) => carriesA),
  );
}
