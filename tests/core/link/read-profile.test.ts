import { describe, expect, it } from "vitest";
import { readProfile } from "../../../src/core/link/index.ts";

const PLAIN = [
  [0, 12],
  [200, 14],
  [450, 13.5],
];

function pairs(text: string, distanceM?: number): unknown {
  const read = readProfile(text, distanceM === undefined ? {} : { distanceM });
  if (read.kind === "refused") return read.reason;
  return read.profile.map((point) => [
    Math.round(point.distanceFromNearM * 1e6) / 1e6,
    Math.round(point.groundM * 1e6) / 1e6,
  ]);
}

describe("ground heights as a builder pastes them", () => {
  it.each([
    "0 12, 200 14, 450 13.5",
    "0 12; 200 14; 450 13,5",
    "0\t12\n200\t14\n450\t13.5\n",
    "0,12\n200,14\n450,13.5",
    "0, 12, 200, 14, 450, 13.5",
    "0 m 12 m, 200 m 14 m, 0.45 km 13.5 m",
    "distance km, height m\n0,12\n0.2,14\n0.45,13.5",
    "Distance in km\tHeight in m\n0\t12\n0.2\t14\n0.45\t13.5",
    "0: 12\n200: 14\n450: 13.5",
    "  0   12 ,200 14,   450 13.5.",
  ])("%j", (text) => {
    expect(pairs(text)).toEqual(PLAIN);
  });

  it("takes feet", () => {
    expect(pairs("0 ft 40 ft; 300 ft 42 ft")).toEqual([
      [0, 12.192],
      [91.44, 12.8016],
    ]);
    expect(pairs("distance ft, height ft\n0 40\n300 42")).toEqual([
      [0, 12.192],
      [91.44, 12.8016],
    ]);
  });

  it("takes ground below the sea", () => {
    expect(pairs("0 -3, 500 -4")).toEqual([
      [0, -3],
      [500, -4],
    ]);
  });

  it("ends at the far end when it falls a step short of it or passes it", () => {
    expect(pairs("0 12, 200 14, 448 13", 450)).toEqual([
      [0, 12],
      [200, 14],
      [450, 13],
    ]);
    expect(pairs("0 12, 200 14, 453 13", 450)).toEqual([
      [0, 12],
      [200, 14],
      [450, 13],
    ]);
  });
});

describe("what it will not take, in one sentence", () => {
  it.each([
    ["", "Give pairs of distance from the post and height of the ground, such as: 0 12, 200 14, 450 13.5."],
    ["hilly", '"hilly" is no pair of distance and height, such as 200 14.'],
    ["0 12", "One point is no profile: give the ground at the post and at the far end at least."],
    ["0 12, -5 13, 450 12", "-5 m lies behind the post: count from it."],
    [
      "0 12, 450 13, 200 14",
      "200 m comes after 450 m: give the distances from the post outwards, each once.",
    ],
    [
      "0 12, 200 13, 200 14",
      "200 m comes after 200 m: give the distances from the post outwards, each once.",
    ],
    ["0 12, 500 13", "500 m lies beyond the far end, which is 450 m away."],
    ["0 12, 300 13", "The profile ends at 300 m; the far end is 450 m away."],
    ["20 12, 450 13", "Begin with the ground at the post itself, at distance 0."],
    ["0 12, 450 9500", "No ground lies at 9500 m."],
    ["0 12; 1,200 14", "Is 1,200 a thousand or a fraction? Write it without the comma."],
    [
      "0 12, 0.2 km 14, 0.45 14",
      '"0.45 14" has no unit for its distance where others have one: give each one, or none.',
    ],
    ["0 12, 450 W 14", '"W" is no unit of length that is known here: m, km, ft or mi.'],
    ["0 12, 5 13", "The two ends stand in one place: there is no path between them."],
    ["0 12, 300 km 13", "300000 m is farther than any post's radio reaches."],
  ])("%j", (text, reason) => {
    expect(pairs(text, 450)).toBe(reason);
  });

  it("a path that is none", () => {
    expect(pairs("0 12, 5 13", 5)).toBe("The two ends stand in one place: there is no path between them.");
  });
});
