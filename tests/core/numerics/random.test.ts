import { describe, expect, it } from "vitest";
import { mean, RangeFault, seededDraws } from "../../../src/core/numerics/index.ts";
import { near } from "../../helpers/near.ts";

function words(seed: number, stream: number, count: number): readonly string[] {
  const draws = seededDraws({ seed, stream });
  return Array.from({ length: count }, () => draws.bits().toString(16).padStart(8, "0"));
}

// Expected words: the printed algorithm in C with 64-bit integers, compiled with gcc 12. The first row is also what the
// demonstration of the author's minimal C library prints (from memory).
describe("bits", () => {
  it("are those of PCG-XSH-RR 64/32", () => {
    expect(words(42, 54, 6)).toEqual([
      "a15c02b7",
      "7b47f409",
      "ba1d3330",
      "83d2f293",
      "bfa4784b",
      "cbed606e",
    ]);
  });

  it("are so with the largest seed, a stream whose shift overflows, and after a hundred thousand draws", () => {
    const found = words(4_294_967_295, 4_000_000_000, 100_000);
    expect(found.slice(0, 3)).toEqual(["8f24f698", "0f5bae5d", "6109c79e"]);
    expect(found.slice(-3)).toEqual(["ab11a1cd", "e50f631a", "c2667ee2"]);
  });
});

describe("seeds", () => {
  it("the same seed gives the same draws, side by side", () => {
    const one = seededDraws({ seed: 9 });
    const other = seededDraws({ seed: 9 });
    for (let i = 0; i < 100; i += 1) expect(one.normal()).toBe(other.normal());
  });

  it("another seed or stream gives others", () => {
    const firsts = [
      [1, 0],
      [2, 0],
      [1, 1],
      [1, 2],
    ].map(([seed, stream]) => words(seed!, stream!, 1000));
    // small seeds and streams may share a first word; no two share more than chance has it
    expect(new Set(firsts.flat()).size).toBeGreaterThan(3990);
  });

  it.each([-1, 2 ** 32, Number.NaN])("%f is no seed", (seed) => {
    expect(() => seededDraws({ seed })).toThrow(RangeFault);
  });
});

// Moments and shares of the two distributions as any textbook has them; bands are four standard errors.
describe("100000 draws", () => {
  const draws = seededDraws({ seed: 20, stream: 3 });
  const uniforms = Array.from({ length: 100_000 }, draws.uniform);
  const normals = Array.from({ length: 100_000 }, draws.normal);

  it("uniform: inside 0 and 1, every tenth holds a tenth, neighbours know nothing of each other", () => {
    expect(Math.min(...uniforms.slice(0, 50_000))).toBeGreaterThan(0);
    expect(Math.max(...uniforms.slice(0, 50_000))).toBeLessThan(1);
    for (let tenth = 0; tenth < 10; tenth += 1) {
      const count = uniforms.filter((value) => Math.floor(value * 10) === tenth).length;
      near(count / 100_000, 0.1, { within: 0.0038 });
    }
    near(12 * mean(uniforms.map((value, i) => (value - 0.5) * ((uniforms[i + 1] ?? 0.5) - 0.5))), 0, {
      within: 0.013,
    });
  });

  it("normal: mean 0, variance 1, skewness 0, kurtosis 3, neighbours uncorrelated", () => {
    near(mean(normals), 0, { within: 0.013 });
    near(mean(normals.map((z) => z ** 2)), 1, { within: 0.018 });
    near(mean(normals.map((z) => z ** 3)), 0, { within: 0.049 });
    near(mean(normals.map((z) => z ** 4)), 3, { within: 0.124 });
    near(mean(normals.map((z, i) => z * (normals[i + 1] ?? 0))), 0, { within: 0.013 });
  });
});
