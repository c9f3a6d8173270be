import {
  type ConductorFamily,
  type ConductorFit,
  type FuseFamily,
  pickConductor,
  type WireRun,
} from "../../core/wiring/index.ts";
import type { Run } from "../design.ts";
import { plain } from "./words.ts";

/** Fuse over lasting current, as the core picks it. @source NEC 210.20(A), 215.3 */
const FUSE_OVER_LASTING = 1.25;

export interface Surroundings {
  readonly family: ConductorFamily;
  readonly wireTempC: number;
}

type Wanted = Pick<WireRun, "currentA" | "lengthM" | "systemV" | "maxDropFrac"> & {
  readonly name: string;
  readonly from: string;
  readonly to: string;
  readonly continuousCurrentA?: number;
  /** Its fuse is no smaller than this; the conductor is then sized for that fuse. */
  readonly leastFuseA?: number;
  /** Fuse at the source, or why there is none. */
  readonly fuse: FuseFamily | { readonly none: string };
  readonly fuseReason?: string;
};

export function runOf(ctx: Surroundings, wanted: Wanted): Run {
  const { name, from, to, fuse, fuseReason, leastFuseA = 0, ...electrical } = wanted;
  const { currentA, continuousCurrentA = currentA } = electrical;
  const fuseFamily = typeof fuse === "string" ? fuse : undefined;
  const pickIn = (family: ConductorFamily) => {
    const pick = pickConductor({
      ...electrical,
      // a run with a larger fuse is sized as if it carried the current that asks for that fuse
      continuousCurrentA: Math.max(continuousCurrentA, leastFuseA / FUSE_OVER_LASTING),
      family,
      ambientTempC: ctx.wireTempC,
      conductorTempC: ctx.wireTempC,
      ...(fuseFamily ? { fuseFamily } : {}),
    });
    return pick.kind === "picked"
      ? { fit: pick as ConductorFit, decidedBy: pick.decidedBy[0], isEnough: true }
      : { fit: pick.thickest, decidedBy: pick.thickest.failsOn[0], isEnough: false };
  };
  const metric = pickIn("mm2");
  const american = pickIn("awg");
  const used = ctx.family === "mm2" ? metric : american;
  const rating = used.fit.fuse?.kind === "picked" ? used.fit.fuse.ratingA : null;
  return {
    name,
    from,
    to,
    currentA: wanted.currentA,
    lengthM: wanted.lengthM,
    systemV: wanted.systemV,
    areaMm2: metric.fit.conductor.areaMm2,
    awg: american.fit.conductor.name,
    sold: ctx.family === "mm2" ? `${plain(metric.fit.conductor.areaMm2)} mm2` : american.fit.conductor.name,
    dropV: used.fit.dropV,
    dropFrac: used.fit.dropFrac,
    maxDropFrac: wanted.maxDropFrac,
    isEnough: used.isEnough,
    decidedBy: used.decidedBy === "voltage-drop" ? "voltage drop" : (used.decidedBy ?? "smallest sold"),
    fuseA: rating,
    fuseReason:
      typeof fuse === "string"
        ? (fuseReason ?? "at the source, so that it protects the whole wire")
        : fuse.none,
  };
}
