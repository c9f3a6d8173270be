/** What a question and a closing topic take from the design as it stands. */
import { describe, expect, test } from "vitest";
import type { Finding } from "../../src/design/finding.ts";
import type { Interview, State } from "../../src/interview/conversation.ts";
import { update, view } from "../../src/interview/session.ts";
import { type SmallDesign, smallInterview, started, talk } from "./small-flow.ts";

const interview: Interview<SmallDesign> = {
  ...smallInterview,
  optionNotes: (id, design) =>
    id === "view.night" || id.endsWith(".night") ? { none: `${Object.keys(design()).length} figures` } : {},
  charts: (topicId) => [{ title: `Chart of ${topicId}`, words: "It falls.", lines: ["#"] }],
  details: () => [],
};
const after = (...lines: readonly string[]): State => talk(started(), ...lines).state;

describe("what options come to", () => {
  test("is said behind the hint, by number, where the flow knows it", () => {
    const state = after("hill", "4 m", "5 W");
    expect(view(interview, state).hint).toMatch(/^Infrared burns all night\. Here 1 is \d+ figures\.$/);
    expect(view(interview, state).options[0]).toEqual({ number: 1, label: "Nothing" });
  });
  test("is said once for options that come to the same", () => {
    const alike: Interview<SmallDesign> = {
      ...interview,
      optionNotes: () => ({ none: "200 W", infrared: "200 W" }),
    };
    expect(view(alike, talk(started(), "hill", "4 m", "5 W").state).hint).toMatch(
      /Here 1 and 2 are 200 W\.$/,
    );
  });
  test("and nothing is added to any other question", () => {
    expect(view(interview, started()).hint).toBe(view(smallInterview, started()).hint);
  });
});

describe("a topic that closes", () => {
  test("is followed by its charts, before the next one opens", () => {
    const [, effects] = update(interview, after("hill"), { type: "line", text: "4 m" });
    const said = effects.flatMap((effect) => (effect.type === "say" ? [effect.said] : []));
    const kinds = said.map(({ kind }) => kind);
    expect(kinds.indexOf("chart")).toBe(kinds.indexOf("topicClosed") + 1);
    expect(kinds.indexOf("topicOpened")).toBe(kinds.indexOf("chart") + 1);
    expect(said.find(({ kind }) => kind === "chart")).toMatchObject({ chart: { title: "Chart of place" } });
  });
});

describe("at the end", () => {
  const stop: Finding = {
    id: "wind",
    severity: "stop",
    says: "The mast breaks.",
    change: "Take a thicker one.",
    numbers: {},
    topics: [],
  };
  const finished = (): State => {
    let state = started();
    while (view(smallInterview, state).isFinished === false)
      state = update(smallInterview, state, { type: "line", text: "not sure" })[0];
    return state;
  };
  const withStop = { ...smallInterview, findingsOf: () => [stop] };

  test("what forbids buying is said again, also when the brief is taken up later", () => {
    const shown = view(withStop, finished());
    expect(shown.ask).toBe("Every question is answered. Do not buy yet: one thing must change first.");
    const [, effects] = update(withStop, finished(), { type: "start" });
    const said = effects.flatMap((effect) => (effect.type === "say" ? [effect.said] : []));
    expect(said.at(-1)).toEqual({
      kind: "aside",
      title: "Do not buy yet",
      lines: ["The mast breaks. Take a thicker one."],
    });
  });
  test("and nothing is said of it where nothing does", () => {
    expect(view(smallInterview, finished()).ask).toBe("Every question is answered.");
    const [, effects] = update(smallInterview, finished(), { type: "start" });
    expect(JSON.stringify(effects)).not.toContain("Do not buy");
  });
});
