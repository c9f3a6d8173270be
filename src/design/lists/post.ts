/** What the steps say and warn of again and again, worked out once for a design. */
import { CLOSEST_APPROACH_M } from "../../core/link/index.ts";
import { shedFirst } from "../chain/reliability-loads.ts";
import type { Design, Run } from "../design.ts";
import * as cautions from "./cautions.ts";
import { type Figures, figuresIn } from "./figures.ts";

export interface Post {
  readonly design: Design;
  /** How its figures are told. */
  readonly say: Figures;
  /** What everything hangs on. */
  readonly support: "mast" | "pole" | "wall" | "roof";
  readonly isNewMast: boolean;
  /** What the box hangs on or stands beside: a roof has none of it. */
  readonly boxSupport: string;
  /** Nothing of the building to bond to: mast or pole in the open. */
  readonly standsFree: boolean;
  /** "camera", or "cameras" where there are several. */
  readonly cameras: string;
  readonly sender: "radio" | "router" | null;
  /** What a voltage relay lets go before the rest, by name. */
  readonly first: readonly string[];
  /** Panels on a frame of their own on the ground. */
  readonly hasFrame: boolean;
  /** Before work above the ground. */
  readonly high: readonly cautions.Warning[];
  /** Before hands come near the battery. */
  readonly bank: readonly cautions.Warning[];
  readonly overheadLines: cautions.Warning;
  readonly buriedLines: cautions.Warning;
  readonly openHole: cautions.Warning;
  readonly livePanel: cautions.Warning;
  readonly radioWaves: cautions.Warning;
  readonly heat: cautions.Warning;
}

const supports = { newMast: "mast", existingPole: "pole", wall: "wall", roof: "roof" } as const;
const senders = { radio: "radio", cellular: "router", cable: null, none: null } as const;

export function postOf(design: Design): Post {
  const { brief, climate, battery, array, wiring, link, mounting } = design;
  const support = supports[brief.mounting.support.value];
  const say = figuresIn(brief.units);
  return {
    design,
    say,
    support,
    isNewMast: support === "mast",
    boxSupport: support === "roof" ? "wall below the roof" : support,
    standsFree: support === "mast" || support === "pole",
    cameras: brief.view.scenes.length > 1 ? "cameras" : "camera",
    sender: senders[brief.link.carrier.value],
    first: battery === null ? [] : shedFirst(brief).map(({ name }) => name),
    hasFrame: array !== null && mounting.panelMount === "ground frame",
    high:
      support === "roof"
        ? [cautions.ladder, cautions.roofEdge(say)]
        : support === "pole"
          ? [cautions.ladder, cautions.weakPole]
          : [cautions.ladder],
    bank: [
      cautions.shortCircuit(wiring?.shortCircuitA ?? null),
      battery?.chemistry === "lifepo4" ? cautions.lithium(say) : cautions.leadAcid,
    ],
    overheadLines: cautions.overheadLines(say, mounting.keepClearM),
    buriedLines: cautions.buriedLines(say),
    openHole: cautions.openHole(say),
    livePanel: cautions.livePanel(array?.coldOpenCircuitV ?? null, array?.inSeries),
    radioWaves: cautions.radioWaves(say, Math.max(CLOSEST_APPROACH_M, link?.radio?.exposureDistanceM ?? 0)),
    heat: cautions.heat(say, climate?.designHotTempC ?? null),
  };
}

/** Cautions for whatever of this kind must be lifted. */
export function liftsOf({ design, say }: Post, what: string): readonly cautions.Warning[] {
  return design.mounting.lifts
    .filter((one) => one.what.startsWith(what))
    .map((one) => cautions.lifting(say, one));
}

/** Owned and used: the parts list counts it as in the shed. */
export function usesOwned({ design }: Post, part: "battery" | "panel" | "controller" | "radio"): boolean {
  return design.parts.lines.some(({ id, isOwned }) => id === part && isOwned);
}

/** Runs whose fuse sits at the battery itself. */
export const isAtBattery = ({ from, to }: Run): boolean => from === "battery" || to === "battery";
