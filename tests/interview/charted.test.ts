/** When a chart is drawn: with its topic, as soon as an answer moves what it is of, after a correction, and behind "more". */
import { describe, expect, it } from "vitest";
import type { Chart, Interview, State } from "../../src/interview/conversation.ts";
import { begin, update } from "../../src/interview/session.ts";
import { type SmallDesign, smallInterview } from "./small-flow.ts";

const chartOf = (title: string, figure: string, isOfIt: boolean): Chart => ({
  title,
  words: `${title}: ${figure}.`,
  lines: [figure],
  ...(isOfIt ? { of: figure } : {}),
});

/** Loads and hours draw the watts, moved at once; the place draws its daily energy, with its topic only. */
const drawing: Interview<SmallDesign> = {
  ...smallInterview,
  charts: (topicId, { watts, dailyWh }) =>
    topicId === "place" ? [chartOf("Day", `${dailyWh} Wh`, false)] : [chartOf("Watts", `${watts} W`, true)],
  details: (topicId, { watts }) => [{ title: `Of ${topicId}`, lines: [`${watts} W it is.`] }],
};

/** The state after these lines, and the charts that each line brought. */
function drawn(...lines: readonly string[]): { readonly state: State; readonly charts: readonly string[] } {
  let [state] = update(drawing, begin({ name: "gate", currency: "EUR" }), { type: "start" });
  const charts = lines.map((text) => {
    const [next, effects] = update(drawing, state, { type: "line", text });
    state = next;
    return effects
      .flatMap((effect) =>
        effect.type === "say" && effect.said.kind === "chart" ? [effect.said.chart.words] : [],
      )
      .join(" ");
  });
  return { state, charts };
}

const toLoads = ["hill", "4 m"] as const;
const toEnd = [...toLoads, "5 W", "1", "1", "6:00 to 18:00"] as const;

describe("a chart", () => {
  it("is drawn with its topic, once", () => {
    // nothing has been said of the watts yet: a camera of 5 W and 2.5 W of infrared are stood in for, 24 h a day
    expect(drawn(...toLoads).charts).toEqual(["", "Day: 180 Wh."]);
  });
  it("is drawn as soon as an answer moves what it is of, and not again when the topic closes on the same numbers", () => {
    // camera 10 W: infrared 5 W more; nothing at night: 10 W; nothing else: the topic closes
    expect(drawn(...toLoads, "10 W", "1", "1").charts.slice(2)).toEqual(["Watts: 15 W.", "Watts: 10 W.", ""]);
  });
  it("is drawn when its topic closes where no answer moved it before", () => {
    // as stood in for: camera 5 W, infrared 2.5 W
    expect(drawn(...toLoads, "5 W", "2", "2.5 W", "1").charts.slice(2)).toEqual([
      "",
      "",
      "",
      "Watts: 7.5 W.",
    ]);
  });
  it("is drawn after a correction that moves it, and not after one that does not", () => {
    const { charts } = drawn(...toEnd, "change 3", "8 W", "change 6", "7:00 to 18:00", "change 3", "8 W");
    expect(charts.slice(-6)).toEqual(["", "Watts: 8 W.", "", "", "", ""]);
  });
  it("is drawn after a correction in another topic that moves what it is of", () => {
    const moved: Interview<SmallDesign> = {
      ...drawing,
      charts: (topicId, design) =>
        topicId === "loads"
          ? [chartOf("Known", design.dailyWh === null ? "nowhere" : "somewhere", true)]
          : [],
    };
    let [state] = update(moved, begin({ name: "gate", currency: "EUR" }), { type: "start" });
    const said = [...toEnd, "change 1", "not sure"].map((text) => {
      const [next, effects] = update(moved, state, { type: "line", text });
      state = next;
      return effects.flatMap((effect) =>
        effect.type === "say" && effect.said.kind === "chart" ? [effect.said.chart.words] : [],
      );
    });
    expect(said.flat()).toEqual(["Known: somewhere.", "Known: nowhere."]);
  });
  it("without a matter of its own is drawn again after a correction in its closed topic that changes it", () => {
    const { charts } = drawn(...toEnd, "change 1", "not sure", "change 2", "5 m");
    expect(charts.slice(-4)).toEqual(["", "Day: null Wh.", "", ""]);
  });
  it("is drawn behind more each time, with what its topic has to tell, and changes nothing by that", () => {
    const before = drawn(...toEnd.slice(0, 5));
    const [state, effects] = update(drawing, before.state, { type: "line", text: "more" });
    const said = effects.flatMap((effect) => (effect.type === "say" ? [effect.said] : []));
    expect(said.map(({ kind }) => kind)).toEqual(["aside", "aside", "chart"]);
    expect(said[1]).toEqual({ kind: "aside", title: "Of hours", lines: ["5 W it is."] });
    expect(state).toEqual(before.state);
    expect(update(drawing, state, { type: "line", text: "explain" })[1]).toEqual(effects);
  });
  it("stands behind more at the end of all questions too", () => {
    const [, effects] = update(drawing, drawn(...toEnd).state, { type: "line", text: "more" });
    expect(JSON.stringify(effects)).toContain("Of null");
    expect(JSON.stringify(effects)).toContain("Watts: 5 W.");
  });
});
