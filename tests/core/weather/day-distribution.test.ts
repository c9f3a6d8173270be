// The broken line behind the draws. Its mean of exactly 1 is what makes the expectation of a month the given mean; both
// are arithmetic.
import fc from "fast-check";
import { describe, it } from "vitest";
import { mean } from "../../../src/core/numerics/index.ts";
import { dayDistribution, shareOf } from "../../../src/core/weather/day-distribution.ts";
import { normalOfShare, normalShareBelow } from "../../../src/core/weather/gauss.ts";
import { near } from "../../helpers/near.ts";
import { boston } from "./places.ts";

const EVEN = Array.from({ length: 4000 }, (_, i) => normalOfShare((i + 0.5) / 4000));

it("any sixteen values: never falling, never beyond the light from outside, mean 1", () => {
  fc.assert(
    fc.property(
      fc.record({
        dailyGhiQuantiles: fc.array(fc.double({ min: 0, max: 20, noNaN: true }), {
          minLength: 16,
          maxLength: 16,
        }),
        clearnessIndex: fc.double({ min: 0, max: 1, noNaN: true }),
        trendVariance: fc.double({ min: 0, max: 3, noNaN: true }),
      }),
      (month) => {
        const corners = Array.from(dayDistribution(month));
        const isRising = corners.every((corner, i) => i === 0 || corner >= corners[i - 1]! - 1e-12);
        const trapezoids = mean(corners.slice(1).map((corner, i) => (corner + corners[i]!) / 2));
        return (
          isRising &&
          corners[0]! >= 0 &&
          corners[32]! * month.clearnessIndex <= 1 + 1e-9 &&
          Math.abs(trapezoids - 1) < 1e-6
        );
      },
    ),
    { numRuns: 300 },
  );
});

describe("Boston in January", () => {
  const dailyGhiQuantiles = boston.dailyGhiQuantilesByMonth[0]!;
  const distribution = dayDistribution({
    dailyGhiQuantiles,
    clearnessIndex: boston.clearnessFracByMonth[0]!,
    trendVariance: 0,
  });
  const days = EVEN.map((normal) => shareOf(distribution, normal));

  it("evenly drawn days have a mean of 1", () => near(mean(days), 1, { within: 1e-4 }));

  it("each sixteenth of them has the given mean", () => {
    dailyGhiQuantiles.forEach((wanted, i) => {
      near(mean(days.slice(i * 250, (i + 1) * 250)), wanted, { within: 0.02 });
    });
  });

  it("takes the trend's variance out: mean squares multiply", () => {
    const narrower = dayDistribution({
      dailyGhiQuantiles,
      clearnessIndex: boston.clearnessFracByMonth[0]!,
      trendVariance: 0.03,
    });
    const square = (d: typeof narrower) => mean(EVEN.map((normal) => shareOf(d, normal) ** 2));
    near(square(narrower) * 1.03, square(distribution), { within: 0.005 });
  });
});

// Abramowitz and Stegun 1964, table 26.1
it.each([
  [0, 0.5],
  [1, 0.841_344_746],
  [-1, 0.158_655_254],
  [1.96, 0.975_002_105],
  [3, 0.998_650_102],
])("of the normal distribution below %f lies %f", (z, share) => {
  near(normalShareBelow(z), share, { within: 1e-7 });
  near(normalOfShare(share), z, { within: 1e-4 });
});
