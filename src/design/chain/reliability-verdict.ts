/** Which of the two sizings is built, and why. */
import type { Brief } from "../brief.ts";
import type { PairOutcome, SizedBy } from "../design.ts";
import { limitText } from "./limit.ts";
import { darkHoursText, fixed } from "./words.ts";

export interface Verdict {
  readonly method: SizedBy;
  readonly because: string;
  readonly chosen: PairOutcome;
}

/** A pair that costs no more than this share above the cheapest is as cheap: prices are not known better. @source judgement */
const AS_CHEAP_FRAC = 0.1;
/** Nor may it ask for so much more panel to carry up, fix and hold against the wind. @source judgement */
const AS_LARGE_FRAC = 0.25;

/**
 * The least dark of the cheapest first, then by cost: many a pair reaches what was asked by a hair, and the next bank or panel
 * halves the dark hours for a few coins.
 */
export function bestFirst(pairs: readonly PairOutcome[]): readonly PairOutcome[] {
  const byCost = pairs.toSorted((a, b) => a.highCost - b.highCost);
  const [cheapest] = byCost;
  if (cheapest === undefined) return [];
  const best = byCost
    .filter(({ highCost }) => highCost <= (1 + AS_CHEAP_FRAC) * cheapest.highCost)
    .filter(({ areaM2 }) => areaM2 <= (1 + AS_LARGE_FRAC) * cheapest.areaM2)
    .reduce((least, pair) => (pair.darkHours < least.darkHours ? pair : least));
  return [best, ...byCost.filter((pair) => pair !== best)];
}

/** What comes nearest where nothing reaches: the least dark of all, of equals the cheapest; null where nothing was tried. */
export function leastDarkOf(tried: readonly PairOutcome[]): PairOutcome | null {
  return (
    tried.toSorted(
      (a, b) => Math.round(a.darkHours) - Math.round(b.darkHours) || a.highCost - b.highCost,
    )[0] ?? null
  );
}

/**
 * The one that reaches the dark hours asked for; of two that do, the cheaper; where none does, the least dark, so that a worse
 * place never comes out with a smaller post. The builder's own word goes first.
 *
 * @param given.pairs      that reach what was asked, best first
 * @param given.leastDark  of those tried, where none reaches
 */
export function recommended(
  brief: Brief,
  given: {
    readonly askedDarkHours: number | null;
    readonly handbook: PairOutcome;
    readonly pairs: readonly PairOutcome[];
    readonly leastDark: PairOutcome | null;
  },
): Verdict {
  const { askedDarkHours, handbook, pairs, leastDark } = given;
  const best = pairs[0];
  const byHandbook = (because: string): Verdict => ({ method: "handbook", because, chosen: handbook });
  if (askedDarkHours === null) {
    return byHandbook("the handbook's, because you asked for days of autonomy and not for dark hours");
  }
  const hours = (pair: PairOutcome) => darkHoursText(pair.darkHours);
  const asked = limitText(brief.autonomy);
  const wish = brief.power.sizing.value;
  if (wish === "handbook") return byHandbook(`the handbook's, as you chose: ${hours(handbook)}, ${asked}`);
  const bySimulation = (because: string, chosen: PairOutcome): Verdict => ({
    method: "simulation",
    because,
    chosen,
  });
  if (best === undefined && handbook.darkHours > askedDarkHours && leastDark !== null) {
    if (leastDark.darkHours < handbook.darkHours) {
      return bySimulation(
        `the weather years', for want of anything better: no pair of panels and battery that was tried reaches it; the least dark of them has ${hours(leastDark)}, ${asked}`,
        leastDark,
      );
    }
  }
  if (best === undefined) {
    return byHandbook(
      handbook.darkHours <= askedDarkHours
        ? `the handbook's: ${hours(handbook)}, ${asked}, and no smaller pair reaches it`
        : `the handbook's for want of anything better: no pair of panels and battery that was tried reaches it; this one has ${hours(handbook)}, ${asked}`,
    );
  }
  if (wish === "simulation")
    return bySimulation(`the weather years', as you chose: ${hours(best)}, ${asked}`, best);
  if (handbook.darkHours > askedDarkHours) {
    return bySimulation(
      `the weather years', because the handbook's size would have ${hours(handbook)} where ${asked}; this pair has ${hours(best)}${passedOver(pairs)}`,
      best,
    );
  }
  return best.highCost < handbook.highCost
    ? bySimulation(
        `the weather years', because it costs less and still has no more than ${hours(best)} (${asked})${passedOver(pairs)}; the handbook's dearer size would have ${hours(handbook)}`,
        best,
      )
    : byHandbook(`the handbook's: ${hours(handbook)}, ${asked}, and the best of the others costs no less`);
}

/** Says so where a cheaper pair also reaches what was asked. */
function passedOver([best, ...others]: readonly PairOutcome[]): string {
  const [cheapest] = others;
  if (best === undefined || cheapest === undefined || cheapest.highCost >= best.highCost) return "";
  return `, as the least dark of those within a tenth of the lowest price: ${fixed(cheapest.installedW, 0)} W with ${fixed(cheapest.bankAh, 0)} Ah would cost a little less and have ${darkHoursText(cheapest.darkHours)}`;
}
