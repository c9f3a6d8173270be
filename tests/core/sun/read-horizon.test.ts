// What is understood of a builder's words about the horizon. Expected angles are worked by hand beside each case.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { RangeFault } from "../../../src/core/numerics/index.ts";
import { type HorizonRefusal, readHorizon, type UnderstoodObstacle } from "../../../src/core/sun/index.ts";
import { near } from "../../helpers/near.ts";

function obstacles(text: string, eyeHeightM = 0): readonly UnderstoodObstacle[] {
  const read = readHorizon(text, { eyeHeightM });
  if (read.kind === "refused") throw new Error(`${text}: ${read.why}`);
  return read.obstacles;
}

/** [from, to, elevation, width assumed] to a tenth of a degree. */
function spans(text: string, eyeHeightM = 0): readonly (readonly [number, number, number, boolean])[] {
  const tenth = (value: number) => Math.round(value * 10) / 10;
  return obstacles(text, eyeHeightM).map((each) => [
    tenth(each.fromAzimuthDeg),
    tenth(each.toAzimuthDeg),
    tenth(each.elevationDeg),
    each.isWidthAssumed,
  ]);
}

describe("pairs", () => {
  it.each(["120:5, 180:15, 240:8", "240:8;180:15;120:5", "120° : 5°  180:15\n240:8"])("%s", (text) => {
    const read = readHorizon(text);
    expect(read).toMatchObject({
      kind: "profile",
      obstacles: [],
      horizon: [
        { azimuthDeg: 120, elevationDeg: 5 },
        { azimuthDeg: 180, elevationDeg: 15 },
        { azimuthDeg: 240, elevationDeg: 8 },
      ],
    });
  });
  it("keeps the order of two points in one direction: an upright edge", () => {
    const read = readHorizon("100:0, 100:20, 200:20, 200:0");
    expect(read.kind === "profile" && read.horizon.map((point) => point.elevationDeg)).toEqual([
      0, 20, 20, 0,
    ]);
  });
});

describe("words", () => {
  // an eighth of the compass where no width is said: 22.5 deg either side
  it.each<[string, readonly (readonly [number, number, number, boolean])[]]>([
    ["hill to the south, 15° high", [[157.5, 202.5, 15, true]]],
    ["Hill to the North 15 degrees", [[337.5, 22.5, 15, true]]],
    ["two fists to the east", [[67.5, 112.5, 20, true]]],
    ["one and a half fists WNW", [[270, 315, 15, true]]],
    ["3 fingers south-south-west", [[180, 225, 6, true]]],
    // atan(8 / 10) = 38.66; a crown of 0.6 x 8 = 4.8 m at 10 m: atan(0.24) = 13.50 either side of 225
    ["tree 8 m tall, 10 m away, to the south-west", [[211.5, 238.5, 38.7, true]]],
    ["an 8-metre tree 10 m away in the SW", [[211.5, 238.5, 38.7, true]]],
    ["a tree to the southwest, 8 m high and 10 m off", [[211.5, 238.5, 38.7, true]]],
    // 26.247 ft are 8 m
    ["tree 26.25 ft tall, 32.81 feet away, sw", [[211.5, 238.5, 38.7, true]]],
    // atan(6 / 12) = 26.57; atan(5 / 12) = 22.62
    ["a house 6 m high, 12 m away, 10 m wide, due south", [[157.4, 202.6, 26.6, false]]],
    ["trees 12 m, 20 m away, from south to west", [[180, 270, 31, false]]],
    ["between west and south 20°", [[180, 270, 20, false]]],
    ["ridge north-west to north-east, 9°", [[315, 45, 9, false]]],
    ["from 120 to 240° 10° high", [[120, 240, 10, false]]],
    ["bearing 200°, 12° high, 20° wide", [[190, 210, 12, false]]],
    ["10° all round", [[0, 360, 10, false]]],
    ["10", [[0, 360, 10, false]]],
    ["the neighbour's barn, 20° high, east", [[67.5, 112.5, 20, true]]],
    [
      "S: 15°, SW: 8,5°",
      [
        [157.5, 202.5, 15, true],
        [202.5, 247.5, 8.5, true],
      ],
    ],
    [
      "two fists to the east and 3 fists to the west",
      [
        [67.5, 112.5, 20, true],
        [247.5, 292.5, 30, true],
      ],
    ],
    [
      "hill to the south, 15° high, tree 8 m tall, 10 m away, to the south-west. Wall 3 m high 4 m away to the west",
      [
        [157.5, 202.5, 15, true],
        [211.5, 238.5, 38.7, true],
        [247.5, 292.5, 36.9, true],
      ],
    ],
  ])("%s", (text, expected) => {
    expect(spans(text)).toEqual(expected);
  });

  it("takes the panel's height off a tree's: atan((8 - 3) / 10) = 26.57", () => {
    expect(spans("tree 8 m tall, 10 m away, south", 3)[0]![2]).toBe(26.6);
    expect(() => readHorizon("tree 8 m tall, 10 m away, south", { eyeHeightM: 101 })).toThrow(RangeFault);
  });

  it.each(["open", "Open sky.", "none", "0", "flat horizon"])("%s is an open horizon", (text) => {
    expect(readHorizon(text)).toEqual({ kind: "profile", horizon: [], obstacles: [] });
  });

  it("reads every wind alike in letters, in words with hyphens, with spaces and joined", () => {
    const names = ["north", "north-north-east", "north-east", "east-north-east", "east", "east-south-east"];
    names.push(
      "south-east",
      "south-south-east",
      "south",
      "south-south-west",
      "south-west",
      "west-south-west",
    );
    names.push("west", "west-north-west", "north-west", "north-north-west");
    names.forEach((name, i) => {
      const letters = name.split("-").map((wind) => wind[0]!.toUpperCase());
      for (const said of [name, name.replaceAll("-", " "), name.replaceAll("-", ""), letters.join("")]) {
        const [one] = obstacles(`hill ${said} 10°`);
        near((one!.fromAzimuthDeg + 22.5) % 360, i * 22.5, { within: 1e-9 });
      }
    });
  });
});

describe("refusals, each with one sentence", () => {
  it.each<[string, HorizonRefusal]>([
    ["", "empty"],
    ["180:15", "lone-pair"],
    ["370:3, 10:2", "pair-out-of-range"],
    ["90:3, 10:95", "pair-out-of-range"],
    ["no trees to the south", "negation"],
    ["hill south 15", "loose-number"],
    ["8 to 10 m tall tree south, 5 m away", "loose-number"],
    ["15° high", "no-direction"],
    ["hill to the south", "no-height"],
    ["hill to the south and west, 15°", "no-height"],
    ["tree 8 m tall to the south", "no-distance"],
    ["tree 10 m away to the south", "no-height"],
    ["tree 8 m, 10 m, south", "no-role"],
    ["tree 8 m south", "no-role"],
    ["from east to west 10°", "either-way"],
    ["12 fists south", "too-high"],
    ["purple", "empty"],
  ])("%s", (text, why) => {
    const read = readHorizon(text);
    expect(read).toMatchObject({ kind: "refused", why });
    expect(read.kind === "refused" && read.reason).toMatch(/^[A-Z"0-9].*[.?]$/);
  });

  it("any text gives a profile in range or a refusal, never a throw", () => {
    const word = fc.constantFrom(
      "hill",
      "tree",
      "south",
      "north-east",
      "W",
      "to",
      "the",
      "from",
      "between",
      "and",
      ",",
      ";",
      "15°",
      "8 m",
      "tall",
      "10 ft",
      "away",
      "two",
      "fists",
      "120:5",
      "99",
      "wide",
      "all round",
      "no",
      "°",
      ":",
      "in",
      "'",
      "1e9",
      "-3",
      "half",
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.array(word, { maxLength: 14 }).map((words) => words.join(" ")),
        ),
        (text) => {
          const read = readHorizon(text);
          if (read.kind === "refused") return;
          let beforeDeg = 0;
          for (const { azimuthDeg, elevationDeg } of read.horizon) {
            expect(azimuthDeg).toBeGreaterThanOrEqual(beforeDeg);
            expect(azimuthDeg).toBeLessThanOrEqual(360);
            expect(elevationDeg).toBeGreaterThanOrEqual(0);
            expect(elevationDeg).toBeLessThanOrEqual(90);
            beforeDeg = azimuthDeg;
          }
        },
      ),
      { numRuns: 3000 },
    );
  });
});
