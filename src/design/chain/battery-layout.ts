import { type BankLayout, type BlockSize, layoutBank } from "../../core/energy/index.ts";
import { sayingIn } from "../../core/units/index.ts";
import type { Brief, Chemistry } from "../brief.ts";
import { MOST_STRINGS } from "../practice/battery.ts";
import { BLOCK_V, KG_PER_WH, SOLD_BLOCKS } from "../practice/sold.ts";
import { plain } from "./words.ts";

type Laid = BankLayout & { readonly isHeavierThanAsked: boolean; readonly reason: string };

/** Blocks as light as asked where four strings do; else the lightest heavier ones with which they do. */
export function layOut(
  brief: Brief,
  bank: { readonly chemistry: Chemistry; readonly bankV: number; readonly requiredAh: number },
): Laid {
  const { chemistry, bankV, requiredAh } = bank;
  const owned = ownedBlocks(brief, { chemistry, bankV });
  const sizes: readonly BlockSize[] =
    owned ??
    SOLD_BLOCKS[chemistry].map(({ capacityAh, weightKg }) => ({
      blockV: BLOCK_V[chemistry],
      capacityAh,
      massKg: weightKg,
    }));
  const limits = [
    brief.power.heaviestBlockKg.value,
    ...sizes.map(({ massKg }) => massKg).filter((massKg) => massKg > brief.power.heaviestBlockKg.value),
  ];
  const tried = limits
    .map((maxBlockKg) => layoutBank({ requiredAh, bankV, sizes, maxBlockKg, maxParallel: MOST_STRINGS }))
    .filter((layout) => layout !== null);
  const best = tried.find((layout) => !layout.exceedsMaxParallel) ?? tried.at(-1)!;
  const isHeavierThanAsked = owned === null && best.block.massKg > brief.power.heaviestBlockKg.value;
  return {
    ...best,
    isHeavierThanAsked,
    reason: layoutReason(best, { owned: owned !== null, isHeavierThanAsked, brief }),
  };
}

/** Blocks in the shed, where they are of the chosen kind and make the bank's voltage. */
function ownedBlocks(
  brief: Brief,
  bank: { readonly chemistry: Chemistry; readonly bankV: number },
): readonly BlockSize[] | null {
  const owned = brief.parts.battery?.value;
  if (!owned || owned.chemistry !== bank.chemistry) return null;
  const series = Math.round(bank.bankV / owned.blockV);
  if (series < 1 || Math.abs((series * owned.blockV) / bank.bankV - 1) > 0.1) return null;
  const massKg = KG_PER_WH[bank.chemistry] * owned.blockV * owned.blockAh;
  return [{ blockV: owned.blockV, capacityAh: owned.blockAh, massKg }];
}

function layoutReason(
  layout: BankLayout,
  given: { readonly owned: boolean; readonly isHeavierThanAsked: boolean; readonly brief: Brief },
): string {
  const blocks = `${layout.blocks} × ${plain(layout.block.capacityAh)} Ah (${layout.series} in series, ${layout.parallel} in parallel)`;
  const limit = sayingIn(given.brief.units)(given.brief.power.heaviestBlockKg.value, "kg", {
    places: 1,
    safe: "down",
  });
  if (given.owned) return `${blocks}, of the blocks you own`;
  if (given.isHeavierThanAsked) {
    return `${blocks}: blocks of at most ${limit} would need more than ${MOST_STRINGS} strings side by side, which share the current badly`;
  }
  return layout.decidedBy === "block-mass"
    ? `${blocks}: the fewest strings with blocks of at most ${limit}`
    : `${blocks}: the fewest strings, and among those the least beyond what is needed`;
}
