import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { flattestBestDeg } from "../../../src/core/sun/tilt-search.ts";

function everyTilt(minDeg: number, maxDeg: number, worth: (tiltDeg: number) => number): number {
  let best = minDeg;
  for (let tiltDeg = minDeg; tiltDeg <= maxDeg; tiltDeg += 1)
    if (worth(tiltDeg) > worth(best)) best = tiltDeg;
  return best;
}

const bounds = fc.tuple(fc.integer({ min: 0, max: 90 }), fc.integer({ min: 0, max: 90 })).map(([a, b]) => ({
  minDeg: Math.min(a, b),
  maxDeg: Math.max(a, b),
}));

describe("flattestBestDeg", () => {
  it("finds the top of the least of several hills, as trying every tilt does, in a third of the looks", () => {
    const hill = fc.record({
      topDeg: fc.integer({ min: -400, max: 1300 }).map((tenth) => tenth / 10),
      height: fc.integer({ min: 1, max: 50 }),
      slope: fc.integer({ min: 1, max: 200 }).map((i) => i / 40_000),
    });
    fc.assert(
      fc.property(bounds, fc.array(hill, { minLength: 1, maxLength: 5 }), ({ minDeg, maxDeg }, hills) => {
        const worth = (tiltDeg: number) =>
          Math.min(
            ...hills.map(({ topDeg, height, slope }) => height * Math.exp(-slope * (tiltDeg - topDeg) ** 2)),
          );
        const looked = new Set<number>();
        const found = flattestBestDeg({
          minDeg,
          maxDeg,
          worth: (tiltDeg) => {
            looked.add(tiltDeg);
            return worth(tiltDeg);
          },
        });
        expect(worth(found)).toBeGreaterThanOrEqual(worth(everyTilt(minDeg, maxDeg, worth)) * (1 - 1e-8));
        expect(looked.size).toBeLessThanOrEqual(20);
        for (const tiltDeg of looked) expect(tiltDeg >= minDeg && tiltDeg <= maxDeg).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });

  it("of a level top takes the flattest", () => {
    fc.assert(
      fc.property(
        bounds,
        fc.integer({ min: -10, max: 100 }),
        fc.integer({ min: 0, max: 60 }),
        (range, from, width) => {
          const worth = (tiltDeg: number) => 100 - Math.max(0, from - tiltDeg, tiltDeg - from - width);
          expect(flattestBestDeg({ ...range, worth })).toBe(everyTilt(range.minDeg, range.maxDeg, worth));
        },
      ),
      { numRuns: 1000 },
    );
    expect(flattestBestDeg({ minDeg: 10, maxDeg: 80, worth: () => 0 })).toBe(10);
  });

  it("tries every tilt where it sees a valley", () => {
    // two hills; the narrow one at 71 lies between the looks at 64 and 73 and is the higher
    const worth = (tiltDeg: number) => Math.max(5 - Math.abs(tiltDeg - 20) / 10, 6 - Math.abs(tiltDeg - 71));
    expect(flattestBestDeg({ minDeg: 10, maxDeg: 80, worth })).toBe(71);
  });
});
