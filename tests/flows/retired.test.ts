/** Briefs saved when one thing in between had three questions of its own. */
import { describe, expect, it } from "vitest";
import { withoutRetired } from "../../flows/index.ts";
import { readObstacles } from "../../src/core/link/index.ts";
import type { Answer } from "../../src/interview/index.ts";

const metres = (value: number, origin: Answer["origin"] = "estimate"): Answer => ({
  typed: `${value}`,
  value: { kind: "quantity", low: value, best: value, high: value, unit: "m" },
  origin,
});
const trees: Answer = { typed: "2", value: { kind: "choice", option: "trees" }, origin: "estimate" };

describe("answers to retired questions", () => {
  it("become words that are read as the same thing", () => {
    const answers = withoutRetired({
      "link.sight": trees,
      "link.obstacleTop": metres(6),
      "link.obstacleDepth": metres(10),
      "link.obstacleDistance": metres(225),
    });
    expect(Object.keys(answers)).toEqual(["link.sight", "link.between"]);
    const words = answers["link.between"];
    expect(words).toBe("trees 6 m high and 10 m deep at 225 m");
    expect(readObstacles(words as string, { distanceM: 450 })).toMatchObject({
      kind: "obstacles",
      obstacles: [{ kind: "trees", heightM: 6, depthM: 10, distanceFromNearM: 225 }],
    });
  });
  it.each([
    ["trees", "trees"],
    ["a building or barn", "building"],
    ["4", "rise"],
  ])("typed in a file by hand: %s", (sight, noun) => {
    const answers = withoutRetired({ "link.sight": sight, "link.obstacleTop": "20 ft" });
    const words = answers["link.between"]!;
    expect(words).toBe(`${noun} 20 ft high half way`);
    expect(readObstacles(words, { distanceM: 450 }).kind).toBe("obstacles");
  });
  it("that were stand-ins are asked anew, and what was not retired stays", () => {
    const answers = withoutRetired({
      "link.sight": trees,
      "link.obstacleTop": metres(10, "assumed"),
      "link.farHeight": metres(4),
    });
    expect(Object.keys(answers)).toEqual(["link.sight", "link.farHeight"]);
  });
});
