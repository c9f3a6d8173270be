import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, onTestFinished, test } from "vitest";
import { lastPlace } from "../../src/commands/last-place.ts";
import { openProgram } from "../../src/commands/open-program.ts";
import type { Site } from "../../src/design/index.ts";
import { type BriefFile, type BriefStore, openBriefs } from "../../src/store/index.ts";

const newport: Site = {
  label: "Newport, Wales, United Kingdom",
  latitudeDeg: 51.588,
  longitudeDeg: -2.998,
  elevationM: 14,
  countryCode: "GB",
};
const answerAt = (site: Site | null) =>
  ({ typed: "x", value: { kind: "place", site }, origin: "estimate" }) as const;
const fileWith = (day: number, answers: BriefFile["answers"]): BriefFile => ({
  schemaVersion: 1,
  name: "x",
  currency: "GBP",
  units: "metric",
  savedUtc: `2026-11-0${day}T00:00:00Z`,
  topicVersions: {},
  answers,
});

function freshBriefs(): BriefStore {
  const folder = mkdtempSync(join(tmpdir(), "mastwright-last-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return openBriefs(folder);
}

describe("the last place used", () => {
  test("is that of the brief saved last that has one, other than the one at hand", () => {
    const briefs = freshBriefs();
    expect(lastPlace(briefs, { exceptId: null })).toBeNull();
    briefs.save("oldest", fileWith(1, { "place.where": answerAt({ ...newport, label: "oldest" }) }));
    briefs.save("newport", fileWith(2, { "place.where": answerAt(newport) }));
    briefs.save("by-hand", fileWith(3, { "place.where": "Cardiff" }));
    briefs.save("unsure", fileWith(4, { "place.where": answerAt(null) }));
    briefs.save("at-hand", fileWith(5, { "place.where": answerAt({ ...newport, label: "here" }) }));
    writeFileSync(briefs.pathOf("unsure").replace("unsure", "damaged"), "{");
    expect(lastPlace(briefs, { exceptId: "at-hand" })).toEqual(newport);
  });

  test("puts the nearest of several namesakes first, says how far each is, and gives way to the brief's own", () => {
    let looks = 0;
    const program = openProgram({
      lastPlace: () => {
        looks++;
        return newport;
      },
    });
    let { state } = program.open({ ...fileWith(1, {}), savedUtc: undefined });
    expect(looks).toBe(0);
    [state] = program.update(state, { type: "start" });
    const shown = (text: string) => {
      const [asked] = program.update(state, { type: "line", text });
      return program.view(asked).options.map(({ label }) => label);
    };
    const labels = shown("Newport");
    expect(labels[0]).toMatch(/^Newport, Wales.*, [0-3] km away$/);
    for (const label of labels) expect(label).toMatch(/, \d+ km away$/);
    expect(shown("Newport")).toEqual(labels);
    expect(looks).toBe(1);

    // Newport in Rhode Island lies at 41.49 N, 71.31 W (any atlas).
    [state] = program.update(state, { type: "line", text: "Newport, Rhode Island" });
    [state] = program.update(state, { type: "line", text: "back" });
    expect(shown("Newport")[0]).toMatch(/^Newport, Rhode Island.*, 0 km away$/);
  });

  test("makes coordinates in another country doubtful where a slip of them is in its own", () => {
    const program = openProgram({ lastPlace: () => newport });
    const { state } = program.open(fileWith(1, {}));
    const [, effects] = program.update(program.update(state, { type: "start" })[0], {
      type: "line",
      text: "52.24, 4.26",
    });
    const said = effects.flatMap((effect) =>
      effect.type === "say" && effect.said.kind === "meaning" ? [effect.said.text] : [],
    );
    expect(said[0]).toMatch(/^Did you mean 52\.24, -4\.26, near .*in the country of the place before/);
  });
});
