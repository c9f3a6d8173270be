import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readObstacles } from "../../../src/core/link/index.ts";

/** kind, own height, distance from the post, depth. */
function read(text: string, distanceM = 800): unknown {
  const found = readObstacles(text, { distanceM });
  if (found.kind === "refused") return found.reason;
  const round = (m: number) => Math.round(m * 100) / 100;
  return found.obstacles.map((one) => [
    one.kind,
    round(one.heightM),
    round(one.distanceFromNearM),
    ...(one.depthM === undefined ? [] : [round(one.depthM)]),
  ]);
}

describe("a newcomer's words about what stands in the way", () => {
  it.each<readonly [string, readonly (readonly (string | number)[])[]]>([
    ["barn 7 m high, 300 m from the post", [["building", 7, 300]]],
    ["row of trees 12 m high and 20 m deep at 450 m", [["trees", 12, 450, 20]]],
    ["rise of 5 m in the middle", [["ridge", 5, 400]]],
    [
      "two houses 6 m high at 200 m and 350 m",
      [
        ["building", 6, 200],
        ["building", 6, 350],
      ],
    ],
    [
      "house 6 m high at 200 and 350 m",
      [
        ["building", 6, 200],
        ["building", 6, 350],
      ],
    ],
    [
      "3 barns 6 m high at 100, 200 and 300 m",
      [
        ["building", 6, 100],
        ["building", 6, 200],
        ["building", 6, 300],
      ],
    ],
    [
      "7 m high barn at 300 m, 12 m trees at 500 m",
      [
        ["building", 7, 300],
        ["trees", 12, 500],
      ],
    ],
    [
      "Trees 12 m tall half way; a wall of 3 m at 700 m",
      [
        ["trees", 12, 400],
        ["building", 3, 700],
      ],
    ],
    ["A 20 ft shed 300 ft away", [["building", 6.1, 91.44]]],
    ["trees 10 m high from 200 to 300 m", [["trees", 10, 250, 100]]],
    ["wood 15 m high between 0.2 km and 0.3 km", [["trees", 15, 250, 100]]],
    ["hill 30 m high a third of the way", [["ridge", 30, 266.67]]],
    ["hedge 2 m high two thirds of the way", [["trees", 2, 533.33]]],
    ["house 8 m tall 100 m from the far end", [["building", 8, 700]]],
    ["dyke, height 4 m, 120 m off", [["ridge", 4, 120]]],
    ["the hedge is 3m tall and stands at 0.5 km", [["trees", 3, 500]]],
    [
      "trees 12 m high at 500 m\nbarn 7 m high at 300 m",
      [
        ["building", 7, 300],
        ["trees", 12, 500],
      ],
    ],
    [
      "houses at 200 m, 350 m, 6 m high",
      [
        ["building", 6, 200],
        ["building", 6, 350],
      ],
    ],
    ["trees at 0,3 km, 12,5 m high", [["trees", 12.5, 300]]],
    ["barn, 7 m, 300 m", [["building", 7, 300]]],
    ["clear", []],
    ["nothing in the way", []],
    ["open view.", []],
  ])("%j", (text, obstacles) => {
    expect(read(text)).toEqual(obstacles);
  });

  it("stands them on the ground that is known", () => {
    const profile = [
      { distanceFromNearM: 0, groundM: 100 },
      { distanceFromNearM: 800, groundM: 140 },
    ];
    const found = readObstacles("barn 7 m high in the middle", { distanceM: 800, profile });
    expect(found).toMatchObject({ kind: "obstacles", obstacles: [{ topM: 127, heightM: 7, noun: "barn" }] });
  });
});

describe("what it will not take, in one sentence", () => {
  it.each([
    ["", "Say what stands where and how high, such as: barn 7 m high, 300 m from the post."],
    ["some stuff", "Say what stands where and how high, such as: barn 7 m high, 300 m from the post."],
    ["no trees", '"no" cannot be followed here: say only what does stand there.'],
    ["barn 7 high at 300 m", "Is 7 in metres or feet?"],
    ["something 4 m high at 30 m", "What is it: trees, a building, or a rise of the ground?"],
    ["barn with trees 9 m high at 300 m", "Say barn and trees one after the other, with a comma between."],
    ["trees at 300 m", "How high? The height of the trees is missing."],
    ["trees 10 m high", "How far from the post? The distance of the trees is missing."],
    ["barn 7 m high, 20 m, 300 m", "Is 300 m the height, the depth or the distance of the barn?"],
    ["barn 7 m high, 9 m high at 300 m", "Two heights for one thing: which one holds?"],
    ["two houses 6 m high at 200 m", "Where does each of the 2 stand? Say a distance for each."],
    ["house -3 m high at 100 m", "-3 m high is not above the ground: leave it out."],
    ["rise of 0 m at 100 m", "0 m high is not above the ground: leave it out."],
    ["tree 300 m tall at 20 m", "300 m is higher than any tree: check the unit."],
    ["hill 30 m high 1,500 m away", "Is 1,500 a thousand or a fraction? Write it without the comma."],
    ["barn at 300 m, 7 m", "How high? The height of the barn is missing."],
    ["barn 7 m high at 900 m", "900 m lies beyond the far end, which is 800 m away."],
    ["trees 10 m high from 700 to 900 m", "900 m lies beyond the far end, which is 800 m away."],
    ["barn 7 m high at -50 m", "-50 m lies behind the post: it is not in the way."],
    ["barn 7 m high at 0 m", "The barn would stand at an antenna itself, not between the two."],
    ["barn 7 m high at 800 m", "The barn would stand at an antenna itself, not between the two."],
    ["trees 10 m high and 900 m deep at 400 m", "900 m deep is more than the whole path of 800 m."],
  ])("%j", (text, reason) => {
    expect(read(text)).toBe(reason);
  });

  it("a path that is none, or that no radio spans", () => {
    expect(read("clear", 3)).toBe("The two ends stand in one place: there is no path between them.");
    expect(read("clear", 300_000)).toBe("300000 m is farther than any post's radio reaches.");
  });

  it("is either a list within the path or one sentence, whatever is typed", () => {
    const word = fc.constantFrom(
      "barn",
      "trees",
      "rise",
      "7 m",
      "300 m",
      "high",
      "at",
      "and",
      ",",
      "two",
      "in the middle",
      "12",
      "deep",
      "-5 m",
      "from the far end",
    );
    fc.assert(
      fc.property(fc.array(word, { maxLength: 12 }), (words) => {
        const found = readObstacles(words.join(" "), { distanceM: 800 });
        if (found.kind === "refused") {
          expect(found.reason).toMatch(/^\S.*[.?]$/);
          return;
        }
        for (const one of found.obstacles) {
          expect(one.distanceFromNearM).toBeGreaterThan(0);
          expect(one.distanceFromNearM).toBeLessThan(800);
          expect(one.heightM).toBeGreaterThan(0);
        }
      }),
    );
  });
});
