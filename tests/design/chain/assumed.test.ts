import { describe, expect, it } from "vitest";
import type { Brief } from "../../../src/design/brief.ts";
import { assumedFactWords } from "../../../src/design/chain/assumed.ts";
import { designOf, notesOf } from "../../../src/design/index.ts";
import { camera, changed, given, radio, syntheticWorld } from "../fixtures.ts";
import { designs } from "../lists/variants.ts";

const marked = (brief: Brief): readonly string[] =>
  designOf(brief, syntheticWorld)
    .parts.lines.filter(({ restsOnAssumed }) => restsOnAssumed)
    .map(({ id }) => id);

describe("a mark that says: find this out before you order the line", () => {
  it("stands on no line where everything was measured", () => {
    expect(marked(changed({}))).toEqual([]);
  });
  it("by the frost depth stands on what goes into the ground, and nowhere else", () => {
    expect(marked(changed({ mounting: { frostDepthM: given(0.6, "assumed") } }))).toEqual([
      "mast",
      "concrete",
    ]);
  });
  it("by one device's watts stands on that device and on what feeds it", () => {
    const devices = [{ ...camera, dayW: given(5, "assumed") }, radio];
    const ids = marked(changed({ loads: { devices } }));
    expect(ids).toContain("camera.1");
    expect(ids).toContain("switch");
    for (const other of ["radio", "battery", "panel", "mast"]) expect(ids).not.toContain(other);
  });
  it("by the diameter of an old pole stands on its clamps", () => {
    const mounting = { support: given("existingPole" as const), poleDiameterMm: given(76, "assumed") };
    expect(marked(changed({ mounting }))).toEqual(["clamps"]);
  });
  it("by a wish stands nowhere: nobody can measure a margin or a price", () => {
    const wishes = changed({
      power: { marginFrac: given(0.2, "assumed"), largestPanelW: given(200, "assumed") },
      money: { contingencyFrac: given(0.15, "assumed") },
      view: { keepDays: given(14, "assumed") },
    });
    expect(marked(wishes)).toEqual([]);
    expect(assumedFactWords(wishes)).toEqual([]);
  });
  it("is explained: each stand-in of a fact is named with its figure and unit", () => {
    const brief = changed({
      mounting: { frostDepthM: given(0.6, "assumed"), soil: given("clay", "assumed") },
      place: { soilingFrac: given(0.05, "assumed") },
      loads: { devices: [{ ...camera, dayW: given(5, "assumed") }, radio] },
    });
    expect([...assumedFactWords(brief)].toSorted()).toEqual(
      ["dirt on the panel (5 %)", "frost depth (0.6 m)", "power of Camera (5 W)", "the soil"].toSorted(),
    );
  });
});

describe("the figures of a part", () => {
  it("are figures of the design with a note, or answers of the brief", () => {
    const notes = notesOf();
    for (const [name, design] of designs) {
      for (const { id, figures } of design.parts.lines) {
        for (const path of figures) {
          const answer = path
            .split(".")
            .reduce<unknown>((at, key) => (at as Record<string, unknown> | undefined)?.[key], design);
          expect(path in notes || answer !== undefined, `${name}: ${id} <- ${path}`).toBe(true);
        }
      }
    }
  });
});
