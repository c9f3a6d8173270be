import { within } from "../numerics/index.ts";
import { ampacityA } from "./ampacity.ts";
import {
  type Conductor,
  type ConductorFamily,
  columnAmpacityA,
  conductorOhmPerKm,
  conductors,
} from "./conductor.ts";
import { type VoltageDrop, voltageDrop } from "./drop.ts";
import { type FuseFamily, type FusePick, pickFuse } from "./fuse.ts";

/** What a conductor can fail on. */
export type ConductorCriterion = "ampacity" | "voltage-drop" | "fuse";

/** What one run of two wires must do. */
export interface WireRun {
  readonly family: ConductorFamily;
  /** Current for the voltage drop: at full load and the lowest voltage at which the load must still work. */
  readonly currentA: number;
  /** Largest current that can last three hours, for ampacity and fuse; default currentA. */
  readonly continuousCurrentA?: number;
  /** One way. */
  readonly lengthM: number;
  readonly systemV: number;
  readonly maxDropFrac: number;
  /** Hottest surroundings of the wire. */
  readonly ambientTempC: number;
  /** Working temperature of the copper, for its resistance; default 75. */
  readonly conductorTempC?: number;
  /** Rating of the insulation; default 90, that of wire fit for outdoors. */
  readonly insulationTempC?: number;
  /** Rating of the terminals at both ends; default 60, the safe stand-in for small unmarked ones. */
  readonly terminalTempC?: number;
  /** Current-carrying conductors in one raceway or cable; default 2. */
  readonly loadedConductors?: number;
  readonly tinned?: boolean;
  /** If given, a standard fuse of this family must fit between load and wire. */
  readonly fuseFamily?: FuseFamily;
  /** Thinnest wire to consider; default 1.5 mm2, so 14 AWG. */
  readonly minAreaMm2?: number;
}

/** How one conductor serves a run. */
export interface ConductorFit extends VoltageDrop {
  readonly conductor: Conductor;
  readonly ohmPerKm: number;
  readonly dropFrac: number;
  /** As installed: corrected for ambient and neighbours, limited by the terminals. */
  readonly ampacityA: number;
  /** Largest fuse this wire may have. */
  readonly fuseLimitA: number;
  /** Only where a fuse family was named. */
  readonly fuse: FusePick | null;
  /** What it fails on; empty when it serves. */
  readonly failsOn: readonly ConductorCriterion[];
}

export type ConductorPick =
  | (ConductorFit & {
      readonly kind: "picked";
      /** What the next thinner size fails on; empty when the thinnest one considered already serves. */
      readonly decidedBy: readonly ConductorCriterion[];
    })
  | { readonly kind: "none-fits"; readonly thickest: ConductorFit };

const CONTINUOUS_FACTOR = 1.25;

/**
 * How a given conductor serves a run: drop, loss, ampacity, fuse, and what it fails on.
 *
 * Ampacity is asked twice, as the code does: the terminals' column must carry 1.25 times the continuous current before
 * any correction, and the installed wire must carry the continuous current after all of them.
 *
 * @throws RangeFault if systemV is not 1 to 1500, maxDropFrac not 0.001 to 0.5, or another value outside the range
 *   of voltageDrop, ampacityA or pickFuse
 * @source NEC 690.8(B), 110.14(C), 240.4(D); drop limits 210.19 and 215.2 informational notes (3 % branch, 5 % total)
 */
export function conductorFit(run: WireRun & { readonly conductor: Conductor }): ConductorFit {
  const { conductor, currentA, lengthM, ambientTempC } = run;
  const {
    continuousCurrentA = currentA,
    conductorTempC = 75,
    insulationTempC = 90,
    terminalTempC = 60,
    loadedConductors = 2,
    tinned = false,
  } = run;
  const systemV = within("systemV", run.systemV, 1, 1500);
  const maxDropFrac = within("maxDropFrac", run.maxDropFrac, 0.001, 0.5);
  within("continuousCurrentA", continuousCurrentA, 0, 5000);
  const ohmPerKm = conductorOhmPerKm({ conductor, conductorTempC, tinned });
  const drop = voltageDrop({ currentA, lengthM, ohmPerKm });
  const dropFrac = drop.dropV / systemV;
  const installedA = ampacityA({ conductor, insulationTempC, terminalTempC, ambientTempC, loadedConductors });
  const limitA = conductor.overcurrentLimitA ?? Number.MAX_VALUE;
  const terminalA = Math.min(columnAmpacityA({ conductor, tempC: terminalTempC }), limitA);
  const fuseLimitA = Math.min(installedA, limitA);
  const fuse = run.fuseFamily
    ? pickFuse({
        continuousCurrentA,
        ampacityA: fuseLimitA,
        factor: CONTINUOUS_FACTOR,
        family: run.fuseFamily,
      })
    : null;
  const failsOn: ConductorCriterion[] = [];
  if (terminalA < CONTINUOUS_FACTOR * continuousCurrentA || installedA < continuousCurrentA) {
    failsOn.push("ampacity");
  }
  if (dropFrac > maxDropFrac) failsOn.push("voltage-drop");
  if (fuse?.kind === "none-fits") failsOn.push("fuse");
  return { ...drop, conductor, ohmPerKm, dropFrac, ampacityA: installedA, fuseLimitA, fuse, failsOn };
}

/**
 * Thinnest conductor of a family that bears the current, keeps the drop and takes a fuse.
 *
 * @returns the conductor with its drop, loss and ampacity and what decided; "none-fits" with the thickest one's figures
 * @throws RangeFault as conductorFit
 * @source as conductorFit; thinnest size 1.5 mm2 (IEC 60364-5-52 table 52.2) or 14 AWG (NEC 310.3), from memory
 */
export function pickConductor(run: WireRun): ConductorPick {
  const minAreaMm2 = within("minAreaMm2", run.minAreaMm2 ?? 1.5, 0.5, 100);
  const fits = conductors(run.family)
    .filter(({ areaMm2 }) => areaMm2 >= minAreaMm2)
    .map((conductor) => conductorFit({ ...run, conductor }));
  const first = fits.findIndex(({ failsOn }) => failsOn.length === 0);
  if (first < 0) return { kind: "none-fits", thickest: fits.at(-1)! };
  return { kind: "picked", ...fits[first]!, decidedBy: fits[first - 1]?.failsOn ?? [] };
}
