/**
 * What a builder waits for after an answer, each against a floor in the same run: a whole design against the search for its
 * tilt alone, and a place by name against one pass over all the names. Ratios, not times, are to be compared.
 */
import { bench, describe } from "vitest";
import { interview, places, world } from "../../src/commands/wiring.ts";
import { findPlaces } from "../../src/core/place/index.ts";
import { bestTilt } from "../../src/core/sun/index.ts";
import { designOf } from "../../src/design/index.ts";
import { begin, designNow } from "../../src/interview/index.ts";

const read = interview.readPlace("52.30, -3.51", { near: null, currency: "GBP" });
if (read.kind !== "sites") throw new Error("the place of the bench is not found");
const { site } = read.matches[0]!;
const state = begin({
  name: "bench",
  currency: "GBP",
  answers: { "place.where": { typed: "x", value: { kind: "place", site }, origin: "estimate" } },
});
const { brief, climate } = designNow(interview, state);
const level = {
  ghiDailyKWhPerM2ByMonth: climate!.ghiDailyKWhPerM2ByMonth,
  latitudeDeg: site.latitudeDeg,
  albedoByMonth: Array(12).fill(0.2),
  horizonDeg: 10,
  dailyWhByMonth: Array(12).fill(400),
};

describe("a design after an answer", () => {
  bench("floor: the best tilt alone", () => {
    bestTilt(level);
  });
  bench("the whole design", () => {
    designOf(brief, world);
  });
});

describe("a place by name", () => {
  const index = places();
  bench("floor: one pass over the latitudes of all places", () => {
    let north = 0;
    for (let row = 0; row < index.count; row++) if (index.latitudeThousandths[row]! > 0) north += 1;
    if (north === 0) throw new Error("no place lies north");
  });
  bench("an exact name", () => {
    findPlaces({ index, text: "Rhayader", atMost: 8 });
  });
  bench("the first letters of a name", () => {
    findPlaces({ index, text: "rhay", atMost: 3, isForgiving: false });
  });
});
