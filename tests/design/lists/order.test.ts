import { describe, expect, it } from "vitest";
import { type Design, type List, type ListId, listsOf } from "../../../src/design/index.ts";
import { designNamed, designs } from "./variants.ts";

const listOf = (design: Design, id: ListId): List => listsOf(design).find((list) => list.id === id)!;
const idsOf = (design: Design, id: ListId): readonly string[] =>
  listOf(design, id).steps.map((step) => step.id);
const stepOf = (design: Design, list: ListId, id: string) =>
  listOf(design, list).steps.find((step) => step.id === id);

/** Common practice and makers' manuals in general, from memory: what must never come after what. */
const before: readonly (readonly [first: string, later: string])[] = [
  ["marks", "hole"],
  ["marks", "trench"],
  ["marks", "frame"],
  ["marks", "earth"],
  ["ownedBattery", "bench"],
  ["radioRules", "bench"],
  ["radioRules", "farEnd"],
  ["bench", "box"],
  ["hole", "mast"],
  ["mast", "cure"],
  ["cure", "brackets"],
  ["pole", "brackets"],
  ["anchor", "brackets"],
  ["frame", "panel"],
  ["earth", "cables"],
  ["box", "cables"],
  ["brackets", "panel"],
  ["panel", "strings"],
  ["cables", "fuses"],
  ["devices", "aim"],
  ["farEnd", "aim"],
  ["fuses", "bank"],
  ["box", "heaterPad"],
  ["fuses", "heaterPad"],
  ["heaterPad", "bank"],
  ["deadTests", "heaterOn"],
  ["controllerOn", "heaterOn"],
  ["bank", "deadTests"],
  ["deadTests", "controllerOn"],
  ["controllerOn", "loadsOn"],
  ["loadsOn", "panelOn"],
  ["panelOn", "aim"],
  ["sign", "look"],
  ["look", "close"],
  ["close", "takeDown"],
];

describe("the order of installation", () => {
  it.each(designs)("begins with the wires overhead and breaks no law: %s", (_name, design) => {
    const ids = idsOf(design, "installation");
    expect(ids[0]).toBe("lookUp");
    for (const [first, later] of before) {
      if (!ids.includes(first) || !ids.includes(later)) continue;
      expect(ids.indexOf(first), `${first} before ${later}`).toBeLessThan(ids.indexOf(later));
    }
  });
  it("has every pair of the laws in some post", () => {
    for (const pair of before) {
      const isMet = designs.some(([, design]) =>
        pair.every((id) => idsOf(design, "installation").includes(id)),
      );
      expect(isMet, pair.join(" before ")).toBe(true);
    }
  });
  it("says of every step why it comes then", () => {
    for (const [name, design] of designs) {
      for (const step of listOf(design, "installation").steps) {
        expect(step.why.length, `${name}: ${step.id}`).toBeGreaterThan(20);
      }
    }
  });
});

describe("the way back", () => {
  it.each(["takeDown", "end"])("takes the panels first and the battery last: %s", (id) => {
    let told = 0;
    for (const [name, design] of designs) {
      const does = (stepOf(design, "installation", id) ?? stepOf(design, "upkeep", id))?.does ?? "";
      if (design.array === null) continue;
      told += 1;
      const [panels, loads, battery] = [/panels first/i, /then the loads/, /the battery last/].map((words) =>
        does.search(words),
      );
      expect(panels, `${name}: ${does}`).toBeGreaterThanOrEqual(0);
      expect(loads, name).toBeGreaterThan(panels!);
      expect(battery, name).toBeGreaterThan(loads!);
    }
    expect(told).toBeGreaterThan(20);
  });
});

describe("the lists", () => {
  it("come in the order in which they are used: asking before buying's tools, proof after building", () => {
    for (const [, design] of designs) {
      expect(listsOf(design).map(({ id }) => id)).toEqual([
        "permissions",
        "tools",
        "installation",
        "settings",
        "commissioning",
        "upkeep",
      ]);
    }
  });
  it("begin the asking with the wires overhead too", () => {
    for (const [, design] of designs) expect(idsOf(design, "permissions")[0]).toBe("wires");
  });
  it("have ids of their own for every step", () => {
    for (const [name, design] of designs) {
      for (const list of listsOf(design)) {
        const ids = list.steps.map(({ id }) => id);
        expect(new Set(ids).size, `${name}: ${list.id}`).toBe(ids.length);
      }
    }
  });
  it("send nobody to work where a wire is too near", () => {
    const near = designNamed("a wire too near");
    expect(stepOf(near, "installation", "lookUp")!.does).toMatch(/^Stop here/);
    expect(stepOf(designNamed("nobody has looked for wires"), "installation", "lookUp")!.does).not.toMatch(
      /^Stop/,
    );
  });
  it("send nobody to dig or raise what an engineer must design first", () => {
    const soft = designNamed("soft ground");
    expect(stepOf(soft, "installation", "hole")!.does).toMatch(/^Do not dig yet/);
    expect(stepOf(soft, "installation", "mast")).toBeUndefined();
    expect(stepOf(soft, "installation", "cure")).toBeUndefined();
    const stormy = designNamed("a wind that no tube bears");
    expect(stepOf(stormy, "installation", "mast")!.does).toMatch(/^Do not raise a mast yet/);
  });
  it("say what is missing while no place is named", () => {
    const nowhere = listOf(designNamed("no place"), "installation");
    expect(nowhere.intro).toContain("No place has been named");
    expect(nowhere.steps.map(({ id }) => id)).not.toContain("loadsOn");
    expect(listOf(designNamed("new mast, radio, nothing owned"), "installation").intro).not.toContain(
      "No place",
    );
  });
});
