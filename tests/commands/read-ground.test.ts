import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readGround } from "../../src/commands/read-ground.ts";

const line = { lengthM: 450, units: "metric" as const, near: null, far: null };
const profileOf = (text: string, path = line) => {
  const read = readGround(text, path);
  return read.kind === "ground"
    ? (read.ground?.profile.map((p) => [p.distanceFromNearM, p.groundM]) ?? null)
    : read.says;
};
const folder = mkdtempSync(join(tmpdir(), "ground-"));
const file = (name: string, content: string | Buffer): string => {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
};
const points = [
  [0, 12],
  [200, 14],
  [450, 13.5],
];

describe("the ground under a path", () => {
  it.each(["level", "flat", "none"])("is level: %s", (text) => expect(profileOf(text)).toBeNull());
  it.each(["0 12, 200 14, 450 13.5", "0 12 200 14 450 13.5", "0:12; 200:14; 450:13.5"])(
    "is pairs, also those whose lines a terminal ran together: %s",
    (text) => expect(profileOf(text)).toEqual(points),
  );
  it("is a table in a file, and says what was read", () => {
    const read = readGround(file("path.csv", "distance m, height m\n0,12\n200,14\n450,13.5\n"), line);
    expect(read).toMatchObject({ kind: "ground", ground: { source: "path.csv" } });
    expect(read.says).toBe(
      "The ground lies at 12 m at the post and 13.5 m at the other end; its highest point is 14 m, 200 m from the post.",
    );
  });
  it.each([
    ["0 12, 450 14, 200 13", /out|outwards/],
    ["0 12, 200 14", /ends at 200 m/],
    ["0 12, 600 14", /beyond the far end/],
    ["0 12, 450 -900", /No ground lies/],
    ["hilly", /no pair/],
    ["missing.csv", /There is no file missing.csv here/],
  ])("is refused in one sentence where it cannot be: %s", (text, why) => {
    expect(profileOf(text)).toMatch(why);
  });
  it("in a file of heights needs coordinates at both ends", () => {
    expect(profileOf(file("N52W004.hgt", Buffer.alloc(8)))).toMatch(/coordinates at both ends/);
  });
  it("in an open tile is read along the way: a slope of 1 m a cell to the north", () => {
    const side = 1201;
    const heights = Buffer.alloc(2 * side * side);
    // rows run from the north edge down: 1200 m there, 0 m on the south edge
    for (let row = 0; row < side; row++)
      for (let column = 0; column < side; column++)
        heights.writeInt16BE(side - 1 - row, 2 * (row * side + column));
    const near = { latitudeDeg: 52.25, longitudeDeg: -3.5 };
    const far = { latitudeDeg: 52.26, longitudeDeg: -3.5 };
    const read = readGround(file("N52W004.hgt", heights), { lengthM: 1112.7, units: "metric", near, far });
    if (read.kind !== "ground") throw new Error(read.says);
    // a quarter of a degree is 300 cells, a hundredth twelve more
    expect(read.ground!.profile[0]!.groundM).toBeCloseTo(300, 1);
    expect(read.ground!.profile.at(-1)!.groundM).toBeCloseTo(312, 1);
  });
});
