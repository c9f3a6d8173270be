/** What to buy, and what it costs. */

/** One line of what to buy: a generic part and the least specification to buy by. */
export interface Part {
  readonly id: string;
  readonly name: string;
  readonly quantity: number;
  readonly unit: string;
  readonly specification: readonly string[];
  /** Of the whole line in the money stage's currency; 0 where it is owned. */
  readonly lowPrice: number;
  readonly highPrice: number;
  readonly isOwned: boolean;
  /** Figures that fix it, by path ("mounting.tube"), and answers it takes directly ("brief.link.distanceM"). */
  readonly figures: readonly string[];
  /** A stand-in of something that can be found out enters one of them within its own stage: confirm before buying. */
  readonly restsOnAssumed: boolean;
}
export interface Parts {
  readonly lines: readonly Part[];
}

export interface Money {
  /** The brief's, or USD where no rate for it is known. */
  readonly currency: string;
  /** Units of that currency for one US dollar, in which the price bands are kept. */
  readonly unitsPerUsd: number;
  /** Of the parts alone. */
  readonly lowParts: number;
  readonly highParts: number;
  readonly lowTotal: number;
  readonly highTotal: number;
  readonly contingencyFrac: number;
  readonly ceiling: number;
}
