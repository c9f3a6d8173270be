import type { Brief } from "../brief.ts";
import type { Climate, Design, StageName, Sun, Withheld, World } from "../design.ts";
import { climateRefusal, climateStage } from "./climate.ts";
import { linkStage } from "./link.ts";
import { moneyStage } from "./money.ts";
import { mountingStage } from "./mounting.ts";
import { provisionalStages } from "./order.ts";
import { partsStage } from "./parts.ts";
import { sizedOf } from "./sized.ts";
import { sunStage } from "./sun.ts";
import { viewStage } from "./view.ts";
import { wiringStage } from "./wiring.ts";

/** Every stage of a design, in order; what one must know of it is found afterwards. */
export function chainOf(brief: Brief, world: World): Omit<Design, "findings"> {
  const climate = climateStage(brief, world);
  return chainUnder(
    brief,
    { climate, sun: sunStage(brief, climate, world), refusal: climateRefusal(brief, world) },
    world,
  );
}

/** Stages that are known already, so that they need not be worked again. */
interface Above {
  readonly climate: Climate | null;
  readonly sun: Sun | null;
  readonly refusal: string | null;
}

/**
 * The stages below a sun that is known already: for asking "what if" about answers that do not move it.
 *
 * @param sizedLike  a design whose simulated pair is taken over in proportion to the handbook's sizes, instead of running the
 *                   weather years again
 */
export function chainUnder(
  brief: Brief,
  above: Above,
  world: World,
  sizedLike: Omit<Design, "findings"> | null = null,
): Omit<Design, "findings"> {
  const { climate, sun } = above;
  const { loads, reliability, battery, array } = sizedOf(brief, { climate, sun }, world, sizedLike);
  const view = viewStage(brief);
  const link = linkStage(brief, climate, view);
  const mounting = mountingStage(brief, sun, loads, battery, array, link);
  const wiring = wiringStage(brief, climate, loads, battery, array, mounting);
  const parts = partsStage(brief, { climate, loads, battery, array, view, link, mounting, wiring });
  const money = moneyStage(brief, parts);
  return {
    schemaVersion: 1,
    name: brief.name,
    brief,
    climate,
    sun,
    loads,
    reliability,
    battery,
    array,
    view,
    link,
    mounting,
    wiring,
    parts,
    money,
    provisional: provisionalStages(brief, { hasClimate: climate !== null }),
    withheld: withheldOf(brief, above.refusal),
  };
}

/** Stages that rest on the climate and have nothing to stand in for it. */
const NEEDS_CLIMATE: readonly StageName[] = ["climate", "sun", "reliability", "battery", "array", "wiring"];

function withheldOf(brief: Brief, because: string | null): readonly Withheld[] {
  const withheld: Withheld[] = because === null ? [] : NEEDS_CLIMATE.map((stage) => ({ stage, because }));
  if (brief.link.carrier.value === "none") {
    withheld.push({ stage: "link", because: "the picture stays at the post" });
  }
  return withheld;
}
