import type { ArraySizing, Battery, Climate, Link, Loads, Mounting, View, Wiring } from "../design.ts";
import type * as prices from "../practice/prices.ts";

/** Everything the parts are read from. */
export interface Worked {
  readonly climate: Climate | null;
  readonly loads: Loads;
  readonly battery: Battery | null;
  readonly array: ArraySizing | null;
  readonly view: View;
  readonly link: Link | null;
  readonly mounting: Mounting;
  readonly wiring: Wiring | null;
}

/** A line before its price is worked: in dollars, for one unit. */
export interface Draft {
  readonly id: string;
  readonly name: string;
  readonly quantity: number;
  readonly unit: string;
  readonly specification: readonly string[];
  readonly price: prices.Band;
  /** Paths of what fixes it: "mounting.tube", "brief.link.distanceM". */
  readonly figures: readonly string[];
  readonly isOwned?: boolean;
}

export function times([low, high]: prices.Band, factor: number): prices.Band {
  return [low * factor, high * factor];
}

/** How many of what is needed stand in the shed, as one line, and how many are to be bought, as another. */
export function splitOwned(draft: Draft, ownedCount: number): readonly Draft[] {
  const used = Math.min(ownedCount, draft.quantity);
  return [
    { ...draft, quantity: used, isOwned: true },
    { ...draft, id: used > 0 ? `${draft.id}.more` : draft.id, quantity: draft.quantity - used },
  ];
}
