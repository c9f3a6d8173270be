import { within } from "../../numerics/index.ts";

/** The smallest bank that reaches a target with so many panels. */
export interface ReliabilityPair {
  readonly panels: number;
  /** Strings of blocks; null: not even the largest bank does. */
  readonly strings: number | null;
  /** With that bank, or with the largest. */
  readonly darkHours: number;
}

/**
 * Pairs of panel count and bank size that reach the same target: for each count of panels the smallest bank.
 *
 * More panels are taken never to need a larger bank, and a larger bank never to be darker: the search walks down from the bank
 * of the count before in doubling strides, then halves. Each answer is tried out, and so is the next smaller bank; where the
 * first rule fails by a band between thresholds (see simulateBalance) the search goes up again. Where the second fails, a
 * smaller bank still may reach the target by chance; it is not looked for. A bank that must be heated may be darker for being
 * larger: without the second rule the search begins with the most panels and goes up from the smallest bank, never back.
 *
 * @param search.panelCounts      whole panels, rising
 * @param search.mostStrings      largest bank, 1 to 10000 strings
 * @param search.targetDarkHours  0 or more
 * @param search.isLargerNeverDarker  the second rule holds; so it does when left out
 * @param search.darkHoursOf      dark hours a year of the tier that rules, for one pair
 * @returns one pair for each count, and how often darkHoursOf was called
 * @throws RangeFault outside the ranges above
 * @source our own search
 */
export function equalReliabilityPairs(search: {
  readonly panelCounts: readonly number[];
  readonly mostStrings: number;
  readonly targetDarkHours: number;
  readonly isLargerNeverDarker?: boolean;
  readonly darkHoursOf: (pair: { readonly panels: number; readonly strings: number }) => number;
}): { readonly pairs: readonly ReliabilityPair[]; readonly runs: number } {
  const most = within("mostStrings", search.mostStrings, 1, 10_000);
  const target = within("targetDarkHours", search.targetDarkHours, 0, 8760);
  if (search.isLargerNeverDarker === false) return climbed(search, most, target);
  const pairs: ReliabilityPair[] = [];
  let runs = 0;
  let known = most;
  let last = 0;
  for (const panels of search.panelCounts) {
    last = within("panelCounts", panels, last, 1e6);
    const tried = new Map<number, number>();
    const darkHours = (strings: number): number => {
      const seen = tried.get(strings);
      if (seen !== undefined) return seen;
      runs += 1;
      const found = search.darkHoursOf({ panels, strings });
      tried.set(strings, found);
      return found;
    };
    const reaches = (strings: number): boolean => darkHours(strings) <= target;

    let enough = known;
    if (!reaches(enough)) {
      if (enough < most && reaches(most)) enough = halved(known, most, reaches);
      else {
        pairs.push({ panels, strings: null, darkHours: darkHours(most) });
        continue;
      }
    } else {
      let tooFew = 0;
      for (let stride = 1; enough > 1; stride *= 2) {
        const next = Math.max(1, enough - stride);
        if (!reaches(next)) {
          tooFew = next;
          break;
        }
        enough = next;
      }
      enough = halved(tooFew, enough, reaches);
    }
    known = enough;
    pairs.push({ panels, strings: enough, darkHours: darkHours(enough) });
  }
  return { pairs, runs };
}

/** Smallest count above `tooFew` that reaches, where `enough` does. */
function halved(tooFew: number, enough: number, reaches: (strings: number) => boolean): number {
  let low = tooFew;
  let high = enough;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (reaches(middle)) high = middle;
    else low = middle;
  }
  return high;
}

/** By the first rule alone: fewer panels need no smaller bank, and where none is enough for more panels none is for fewer. */
function climbed(
  { panelCounts, darkHoursOf }: Parameters<typeof equalReliabilityPairs>[0],
  most: number,
  target: number,
): ReturnType<typeof equalReliabilityPairs> {
  let runs = 0;
  let strings = 1;
  const pairs = panelCounts.toReversed().map((panels): ReliabilityPair => {
    let hours = Number.POSITIVE_INFINITY;
    for (; strings <= most; strings += 1) {
      runs += 1;
      hours = darkHoursOf({ panels, strings });
      if (hours <= target) return { panels, strings, darkHours: hours };
    }
    if (hours === Number.POSITIVE_INFINITY) {
      runs += 1;
      hours = darkHoursOf({ panels, strings: most });
    }
    return { panels, strings: null, darkHours: hours };
  });
  return { pairs: pairs.toReversed(), runs };
}
