// Laws of the hour-by-hour balance: no outside value, only what must hold for every post and every weather.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { simulateBalance } from "../../src/core/energy/index.ts";
import { sum } from "../../src/core/numerics/index.ts";
import { near, nearRatio } from "../helpers/near.ts";
import { plainDarkHours } from "./plain-reckoning.ts";
import {
  between,
  type Post,
  postOf,
  recipe,
  shippedSwitching,
  withBank,
  withLoad,
  withPanel,
} from "./posts.ts";

const darkHours = (post: Post & { readonly stepsPerHour?: number }): readonly number[] =>
  simulateBalance(post).tiers.map(({ darkHoursPerYear }) => darkHoursPerYear);

/** Hours differ by rounding only. */
const ROUNDING_H = 1e-4;

const COLD_FRAC = 0.002;

const RUNS = { numRuns: 25 };

/** Half of them small steps: in large ones a flaw of a few per cent would drown. */
const ratio = fc.oneof(between(1.002, 1.05), between(1.05, 2));

describe("energy", () => {
  it("closes in every hour, whatever is switched", () => {
    fc.assert(
      fc.property(recipe, fc.boolean(), fc.integer({ min: 1, max: 4 }), (given, isBanded, stepsPerHour) => {
        const found = simulateBalance({
          ...postOf(given, { bands: isBanded ? "made up" : "none" }),
          stepsPerHour,
        });
        expect(found.largestResidualFrac).toBeLessThan(1e-9);
        const { energy } = found;
        const out =
          energy.servedWh +
          energy.ownWh +
          energy.controllerLossWh +
          energy.chargeLossWh +
          energy.dischargeLossWh +
          energy.selfDischargeWh +
          energy.storedWh;
        nearRatio(out, energy.pvUsedWh, { withinFrac: 1e-9 });
        expect(energy.pvWastedWh).toBeGreaterThan(-1e-6);
        for (const one of found.tiers) {
          expect(one.lossOfLoadEnergyFrac).toBeLessThanOrEqual(1 + 1e-12);
          expect(one.darkHoursPerYear).toBeLessThanOrEqual(8760 + 1e-6);
        }
        expect(Math.min(...found.lowestSocFracByMonth)).toBeGreaterThan(-1e-12);
      }),
      RUNS,
    );
  });
});

describe("without a band between thresholds", () => {
  it("more panel or less load never darkens any tier by more than cold and self-discharge explain", () => {
    fc.assert(
      fc.property(recipe, ratio, (given, by) => {
        const post = postOf(given, { bands: "none" });
        const base = darkHours(post);
        for (const better of [withPanel(post, by), withLoad(post, 1 / by)]) {
          for (const [i, hours] of darkHours(better).entries()) {
            // three in 1200 broke the bare law, by 0.05 % at most: where a tier was fed longer the bank met a cold hour emptier
            expect(hours).toBeLessThanOrEqual(base[i]! * (1 + COLD_FRAC) + ROUNDING_H);
          }
        }
      }),
      RUNS,
    );
  });
  it("a larger bank, at a steady temperature and keeping its charge, never darkens the tier that is shed last", () => {
    fc.assert(
      fc.property(recipe, ratio, (given, by) => {
        // under a PWM controller a larger bank rises less in voltage as it is charged, and takes less from the array
        const post = postOf({ ...given, controller: "mppt" }, { bands: "none", isSteady: true });
        const base = simulateBalance(post);
        const larger = simulateBalance(withBank(post, by));
        // the controller is the last of all: where it starves, its own draw empties the bank below the tiers' thresholds
        const rules = (found: typeof base): number =>
          base.controllerDarkHoursPerYear > 0
            ? found.controllerDarkHoursPerYear
            : found.tiers[0]!.darkHoursPerYear;
        expect(rules(larger)).toBeLessThanOrEqual(rules(base) + ROUNDING_H);
      }),
      RUNS,
    );
  });
});

/**
 * Where bands, cold or self-discharge break the laws they still hold for nearly all posts, and by little for the rest: what was
 * counted over 700 posts of another seed stands beside the limits. The dark hours of all posts together must fall by what they
 * fell there: a change that works the wrong way, or of which a third gets lost, does not pass.
 */
const BETTER: readonly ((post: Post) => Post)[] = [
  (post) => withPanel(post, 1.03),
  (post) => withLoad(post, 1 / 1.03),
  (post) => withBank(post, 1.03),
];

interface Counted {
  readonly riseFrac: number;
  /** Of those that were dark. */
  readonly fallFrac: number;
  readonly mostRiseH: number;
  /** Over the hours that one band is worth. */
  readonly mostBands: number;
  readonly totalRatio: number;
}

/** What each change does to the tier shed last. */
function counted(bands: "none" | "shipped", posts: number): readonly Counted[] {
  const rows = fc.sample(recipe, { numRuns: posts, seed: 2 }).flatMap((given) => {
    const post = postOf(given, { bands });
    const base = simulateBalance(post);
    // where the controller starves too, its own draw empties the bank below the tiers' thresholds: another law
    if (base.controllerDarkHoursPerYear > 0) return [];
    const before = base.tiers[0]!.darkHoursPerYear;
    const { offSocFrac, backSocFrac } = shippedSwitching(given.offFrac, 0);
    const bandH = ((backSocFrac - offSocFrac) * post.bank.nominalV * post.bank.ratedAh) / given.watts;
    return [{ before, bandH, rises: BETTER.map((better) => darkHours(better(post))[0]! - before) }];
  });
  const dark = rows.filter(({ before }) => before > 1);
  expect(dark.length).toBeGreaterThan(posts / 2);
  return BETTER.map((_, i) => ({
    riseFrac: rows.filter(({ rises }) => rises[i]! > 1).length / rows.length,
    fallFrac: dark.filter(({ rises }) => rises[i]! < -0.01).length / dark.length,
    mostRiseH: Math.max(...rows.map(({ rises }) => rises[i]!)),
    mostBands: Math.max(...rows.map(({ rises, bandH }) => rises[i]! / bandH)),
    totalRatio: 1 + sum(rows.map(({ rises }) => rises[i]!)) / sum(rows.map(({ before }) => before)),
  }));
}

/** Of the three changes, in their order: what is left of all dark hours. */
const LEFT_FRAC = [0.965, 0.933, 0.96];

describe("over many posts, in changing temperature and with self-discharge, 3 % more panel, less load and more battery", () => {
  it("without bands darken none and brighten all that were dark", () => {
    counted("none", 60).forEach(({ mostRiseH, fallFrac, totalRatio }, i) => {
      expect(mostRiseH).toBeLessThan(0.05);
      expect(fallFrac).toBeGreaterThan(0.98);
      near(totalRatio, LEFT_FRAC[i]!, { within: 0.025 });
    });
  });
  it("with the bands that the design sets seldom darken one, and by less than one band is worth in the whole year", () => {
    // counted over 400 posts: more than an hour darker 5, 4 and 8 of 100; of the dark ones 91, 94 and 85 of 100 fell; at most 90,
    // 57 and 41 h, and 0.5 to 0.7 of what one band is worth
    const limits = [
      { riseFrac: 0.08, fallFrac: 0.87 },
      { riseFrac: 0.06, fallFrac: 0.9 },
      { riseFrac: 0.12, fallFrac: 0.8 },
    ];
    counted("shipped", 160).forEach(({ riseFrac, fallFrac, mostRiseH, mostBands, totalRatio }, i) => {
      expect(riseFrac).toBeLessThan(limits[i]!.riseFrac);
      expect(fallFrac).toBeGreaterThan(limits[i]!.fallFrac);
      expect(mostRiseH).toBeLessThan(120);
      expect(mostBands).toBeLessThan(0.9);
      near(totalRatio, LEFT_FRAC[i]!, { within: 0.015 });
    });
  });
});

describe("a second reckoning", () => {
  it("of the same posts, step by step, finds the same dark hours in every tier", () => {
    const hours = fc.sample(recipe, { numRuns: 8, seed: 3 }).flatMap((given) => {
      const post = postOf({ ...given, controller: "mppt", bandFrac: Math.max(0.04, given.bandFrac) });
      const plain = plainDarkHours(post);
      return darkHours(post).map((found, i) => ({ found, plain: plain[i]! }));
    });
    nearRatio(sum(hours.map(({ found }) => found)), sum(hours.map(({ plain }) => plain)), {
      withinFrac: 0.005,
    });
    // a switching that falls a minute later may, seldom, cost a day behind a band
    const close = hours.filter(({ found, plain }) => Math.abs(found - plain) <= Math.max(0.5, 0.005 * plain));
    expect(close.length / hours.length).toBeGreaterThan(0.85);
  });
});

describe("the result does not hang on", () => {
  it("the order in which loads are listed, to the last bit", () => {
    fc.assert(
      fc.property(
        recipe,
        fc.boolean(),
        fc.boolean(),
        fc.shuffledSubarray([0, 1, 2, 3], { minLength: 4 }),
        (given, isBanded, areAlike, order) => {
          const post = postOf({ ...given, tierCount: 4 }, { bands: isBanded ? "made up" : "none" });
          // two that differ by their names alone
          const loads = areAlike
            ? post.loads.with(2, { ...post.loads[1]!, name: "another link" })
            : post.loads;
          const turned = order.map((i) => loads[i]!);
          expect(simulateBalance({ ...post, loads: turned })).toEqual(simulateBalance({ ...post, loads }));
        },
      ),
      { numRuns: 15 },
    );
  });
  it("the step: halved, dark hours move by less than 5 % or an hour, in two to four tiers with bands and heaters", () => {
    const moved = fc.sample(recipe, { numRuns: 60, seed: 5 }).flatMap((given) => {
      const post = postOf({ ...given, tierCount: Math.max(2, given.tierCount) });
      const whole = darkHours(post);
      const halved = darkHours({ ...post, stepsPerHour: 2 });
      return whole.map((hours, i) => Math.abs(halved[i]! - hours) / Math.max(20, hours));
    });
    // of 3200 tiers 6 moved further, for a switching some minutes later may cost a day behind a band: 1 of 2100 with a tracking
    // controller (by 9 %), 5 of 1100 with a PWM one, whose bank voltage is set once a step (by 24 % at most); 2.5 % moved by
    // more than half a per cent
    const share = (limit: number): number => moved.filter((frac) => frac > limit).length / moved.length;
    expect(share(0.05)).toBeLessThan(0.01);
    expect(share(0.005)).toBeLessThan(0.05);
    expect(Math.max(...moved)).toBeLessThan(0.25);
  });
});
