import { describe, expect, it } from "vitest";
import { type Hazard, listsOf, type Step } from "../../../src/design/index.ts";
import { expectedHazards, handLists, missingCautions, rules } from "./hazards.ts";
import { designNamed, designs } from "./variants.ts";

const typical = designNamed("new mast, radio, nothing owned");
const allSteps = designs.flatMap(([, design]) =>
  listsOf(design).flatMap(({ steps }) => steps.map((step) => ({ step, design }))),
);

describe("a step that can hurt", () => {
  it.each(designs)("carries its caution: %s", (_name, design) => {
    expect(missingCautions(listsOf(design), design)).toEqual([]);
  });
  it("is found by every rule somewhere: a rule that meets no step guards nothing", () => {
    for (const { when, unless } of rules) {
      const meets = allSteps.some(({ step }) => when.test(step.does) && !unless?.test(step.does));
      expect(meets, String(when)).toBe(true);
    }
  });
  it("is missed when its caution is taken away, each of them", () => {
    for (const [, design] of designs) {
      for (const list of listsOf(design).filter(({ id }) => handLists.includes(id))) {
        for (const step of list.steps) {
          for (const hazard of expectedHazards(step, design)) {
            const bare = { ...step, cautions: step.cautions.filter((one) => one.hazard !== hazard) };
            const planted = missingCautions([{ ...list, steps: [bare] }], design);
            expect(planted, `${step.id} without ${hazard}`).toHaveLength(1);
          }
        }
      }
    }
  });
  const planted: readonly (readonly [does: string, hazards: readonly Hazard[]])[] = [
    ["Climb the ladder and swap the lens.", ["ladder"]],
    ["Dig the pit for the drain.", ["buried lines", "open hole"]],
    ["Lower the mast and swap the tube.", ["overhead lines", "falling mast"]],
    ["Swap the battery.", ["short circuit", "lead-acid"]],
    ["Clean the panels with a cloth.", ["ladder", "live panel"]],
    ["Aim the radio once more.", ["ladder", "radio waves"]],
    ["Drill two holes for the bracket.", ["hidden lines"]],
  ];
  it.each(planted)("would be caught if it were new: %s", (does, hazards) => {
    const step: Step = { id: "new", does, why: "", expects: "", cautions: [] };
    expect([...expectedHazards(step, typical)].toSorted()).toEqual([...hazards].toSorted());
  });
});

describe("a caution", () => {
  it("begins with the name of what hurts, as a sign does", () => {
    for (const { step } of allSteps) {
      for (const { hazard, says } of step.cautions) {
        expect(says.toLowerCase(), step.id).toMatch(new RegExp(`^${hazard.split(" ")[0]!.toLowerCase()}`));
      }
    }
  });
  it("is given in full the first time in each list, and then in no more words than that", () => {
    for (const [name, design] of designs) {
      for (const list of listsOf(design)) {
        const first = new Map<string, string>();
        for (const { hazard, says } of list.steps.flatMap(({ cautions }) => cautions)) {
          if (hazard === "lifting" || hazard === "radio waves") continue;
          const full = first.get(hazard) ?? says;
          first.set(hazard, full);
          expect(says.length, `${name}, ${list.id}: ${says}`).toBeLessThanOrEqual(full.length);
          if (full !== says) expect(full.length).toBeGreaterThan(says.length);
        }
      }
    }
  });
  it("stands once on a step", () => {
    for (const { step } of allSteps) {
      const said = step.cautions.map(({ says }) => says);
      expect(new Set(said).size, `${step.id}: ${said.join(" / ")}`).toBe(said.length);
    }
  });
  it("names the battery that is there and no other", () => {
    for (const { step, design } of allSteps) {
      const hazards = step.cautions.map(({ hazard }) => hazard);
      if (design.battery?.chemistry === "lifepo4") expect(hazards, step.id).not.toContain("lead-acid");
      if (design.battery?.chemistry === "agm") expect(hazards, step.id).not.toContain("lithium");
    }
  });
  it("keeps the distance to a wire that the mounting asks for, never rounded down", () => {
    for (const [name, design] of designs) {
      const lookUp = listsOf(design)
        .find(({ id }) => id === "installation")!
        .steps.find(({ id }) => id === "lookUp")!;
      const [, metres] = /at least ([\d.]+) m from any wire/.exec(lookUp.cautions[0]!.says)!;
      expect(Number(metres), name).toBeGreaterThanOrEqual(design.mounting.keepClearM - 1e-9);
      expect(Number(metres), name).toBeLessThan(design.mounting.keepClearM + 0.1);
    }
  });
  it("asks for a qualified person where a string exceeds 60 V", () => {
    let dangerous = 0;
    for (const [name, design] of designs) {
      if (design.array === null || design.array.panels < 2) continue;
      const says = listsOf(design)
        .flatMap(({ steps }) => steps)
        .find(({ id }) => id === "panel")!
        .cautions.find(({ hazard }) => hazard === "live panel")!.says;
      const isDangerous = design.array.coldOpenCircuitV > 60;
      dangerous += isDangerous ? 1 : 0;
      expect(says.includes("qualified person"), name).toBe(isDangerous);
    }
    expect(dangerous).toBeGreaterThan(0);
  });
});
