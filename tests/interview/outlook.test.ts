import { describe, expect, it } from "vitest";
import type { Interview, OutlookAsked, Said } from "../../src/interview/conversation.ts";
import { readCommand } from "../../src/interview/read/index.ts";
import { update, view } from "../../src/interview/session.ts";
import { type SmallDesign, smallInterview, started, straight, talk } from "./small-flow.ts";

const asides = (said: readonly Said[]) => said.flatMap((one) => (one.kind === "aside" ? [one] : []));
const refusals = (said: readonly Said[]) => said.flatMap((one) => (one.kind === "refusal" ? [one.text] : []));

/** What was asked of the days to come, and with which design. */
function listening() {
  const heard: { readonly asked: OutlookAsked; readonly watts: number }[] = [];
  const interview: Interview<SmallDesign> = {
    ...smallInterview,
    outlook: (asked, { watts }) => {
      heard.push({ asked, watts });
      return { lines: ["It goes off."], chart: { title: "Charge", words: "Low.", lines: ["█"] } };
    },
  };
  return { interview, heard };
}

describe("outlook, typed at a question", () => {
  it("alone says what to type, and changes nothing", () => {
    const from = started();
    const { state, said } = talk(from, "outlook");
    expect(state).toEqual(from);
    expect(asides(said)).toHaveLength(1);
    expect(asides(said)[0]!.lines.join(" ")).toContain("outlook 60 %, rain, rain, sunny");
  });
  it("with a charge and days is worked for the post as it stands, at a question and at the end", () => {
    for (const lines of [["hill", "4 m", "5 W"], straight]) {
      const { interview, heard } = listening();
      const from = talk(started(), ...lines).state;
      const [state, effects] = update(interview, from, { type: "line", text: "Outlook: 60 %, rain, 2.4" });
      expect(state).toEqual(from);
      expect(heard).toHaveLength(1);
      expect(heard[0]!.asked).toMatchObject({
        charge: { by: "share", socFrac: 0.6 },
        days: [{ kind: "rain" }, { kind: "figure", ghiKWhPerM2: 2.4 }],
        switched: null,
      });
      expect(heard[0]!.watts).toBeGreaterThanOrEqual(5);
      expect(effects.map((effect) => (effect.type === "say" ? effect.said.kind : effect.type))).toEqual([
        "aside",
        "chart",
      ]);
    }
  });
  it("takes it that the picture is off, however that is said", () => {
    for (const line of [
      "outlook 30 % and off, rain",
      "outlook off, 30 %, rain",
      "outlook it's off at 30 %, rain",
      "outlook: the picture is off, 30 %, rain",
    ]) {
      const { interview, heard } = listening();
      update(interview, started(), { type: "line", text: line });
      expect(heard[0]?.asked, line).toMatchObject({
        charge: { by: "share", socFrac: 0.3 },
        switched: "off",
        days: [{ kind: "rain" }],
      });
    }
  });
  it("that cannot be read is refused with an example", () => {
    expect(refusals(talk(started(), "outlook 60 %, purple").said)[0]).toMatch(/"purple".*Example: 60 %/);
    expect(refusals(talk(started(), "outlook rain").said)[0]).toMatch(/Begin with the charge/);
  });
  it("is not taken for the town of that name, nor a town for it", () => {
    expect(readCommand("outlook")).toEqual({ command: "outlook", asks: "" });
    expect(readCommand("Outlook, Saskatchewan")).toBeNull();
    expect(readCommand("'outlook")).toBeNull();
    expect(readCommand("outlook 12,4 V, rain.")).toMatchObject({ command: "outlook", asks: "12,4 v, rain" });
  });
  it("stands among the words at the end, not at each question of a post that is still planned", () => {
    expect(view(smallInterview, talk(started(), ...straight).state).commands).toContain("outlook");
    expect(view(smallInterview, started()).commands).not.toContain("outlook");
  });
  it("stands in the help", () => {
    expect(asides(talk(started(), "help").said)[0]!.lines.join("\n")).toMatch(/^outlook 60 %/m);
  });
});
