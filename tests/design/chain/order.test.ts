import { describe, expect, it } from "vitest";
import type { TopicId } from "../../../src/design/brief.ts";
import {
  assumedAnswers,
  minorInputs,
  provisionalStages,
  restsOn,
  stagesUnder,
  topicsUnder,
} from "../../../src/design/chain/order.ts";
import { designOf, notesOf, type StageName, stageNames, topicIds } from "../../../src/design/index.ts";
import { at, changed, given, simulatedWorld, syntheticWorld, typicalBrief } from "../fixtures.ts";

describe("the order of the stages", () => {
  it("each rests only on stages named before it", () => {
    for (const stage of stageNames) {
      for (const below of restsOn[stage].stages) {
        expect(stageNames.indexOf(below), `${stage} on ${below}`).toBeLessThan(stageNames.indexOf(stage));
      }
    }
  });
  it("money rests on every topic, view on its own and the loads", () => {
    expect([...topicsUnder("money")].toSorted()).toEqual([...topicIds].toSorted());
    expect([...stagesUnder("view")]).toEqual(["view"]);
  });
});

describe("notes", () => {
  const notes = notesOf();
  const design = designOf(typicalBrief, simulatedWorld);
  it("stand beside every field of every stage, and beside nothing else", () => {
    const fields = stageNames.flatMap((stage) =>
      Object.keys(design[stage]!).map((field) => `${stage}.${field}`),
    );
    expect(Object.keys(notes).toSorted()).toEqual(fields.toSorted());
  });
  it("say what, how and who says so", () => {
    for (const [path, note] of Object.entries(notes)) {
      for (const text of [note.what, note.formula, note.source]) expect(text.length, path).toBeGreaterThan(1);
    }
  });
  it("name inputs that exist, of topics and stages the stage rests on", () => {
    const exists = (path: string) =>
      path.split(".").reduce<unknown>((at, key) => (at as Record<string, unknown> | undefined)?.[key], {
        ...design,
        brief: typicalBrief,
      });
    for (const [path, { inputs }] of Object.entries(notes)) {
      const stage = path.split(".")[0] as StageName;
      for (const input of inputs) {
        expect(exists(input), `${path} <- ${input}`).not.toBeUndefined();
        const [first, second] = input.split(".");
        if (first === "brief") {
          if (second === "currency" || minorInputs.includes(input)) continue;
          expect([...topicsUnder(stage)], `${path} <- ${input}`).toContain(second as TopicId);
        } else expect([...stagesUnder(stage)], `${path} <- ${input}`).toContain(first);
      }
    }
  });
});

describe("what is provisional", () => {
  it("nothing, where everything is answered", () => {
    expect(designOf(typicalBrief, syntheticWorld).provisional).toEqual([]);
    expect(designOf(typicalBrief, syntheticWorld).withheld).toEqual([]);
  });
  it("an open link leaves battery and panel alone, but not mast, parts and money", () => {
    const open = { ...typicalBrief, openTopics: ["link" as const] };
    expect(provisionalStages(open, { hasClimate: true })).toEqual([
      "link",
      "mounting",
      "wiring",
      "parts",
      "money",
    ]);
  });
  it("without a place everything that rests on the sun, and the stages that cannot be worked are named", () => {
    const { provisional, withheld } = designOf(at(null), syntheticWorld);
    expect(provisional).not.toContain("view");
    expect(provisional).toContain("loads");
    expect(withheld.map(({ stage }) => stage)).toEqual([
      "climate",
      "sun",
      "reliability",
      "battery",
      "array",
      "wiring",
    ]);
  });
});

describe("stand-ins that count", () => {
  it("are those the other answers call for", () => {
    const poleDiameterMm = given(60, "assumed");
    const paths = (brief: typeof typicalBrief) => assumedAnswers(brief).map(({ path }) => path);
    expect(paths(typicalBrief)).toEqual([]);
    expect(paths(changed({ mounting: { poleDiameterMm } }))).toEqual([]);
    expect(paths(changed({ mounting: { poleDiameterMm, support: given("existingPole") } }))).toEqual([
      "mounting.poleDiameterMm",
    ]);
  });
  it("mark the parts that rest on them", () => {
    const design = designOf(changed({ mounting: { gustMPerS: given(45, "assumed") } }), syntheticWorld);
    const marked = design.parts.lines.filter(({ restsOnAssumed }) => restsOnAssumed).map(({ id }) => id);
    expect(marked).toContain("mast");
    expect(marked).not.toContain("panel");
    expect(marked).not.toContain("battery");
  });
});
