import { describe, expect, test } from "vitest";
import type { Answer, Effect, Said, State } from "../../src/interview/conversation.ts";
import { begin, update, view, walkNow } from "../../src/interview/session.ts";
import { smallInterview, started, straight, talk } from "./small-flow.ts";

const viewOf = (state: State) => view(smallInterview, state);
const kinds = (effects: readonly Effect[]) =>
  effects.map((effect) => (effect.type === "say" ? effect.said.kind : effect.type));
const texts = (said: readonly Said[], kind: "meaning" | "refusal") =>
  said.flatMap((each) => (each.kind === kind ? [each.text] : []));
const rowsOf = (said: readonly Said[]) => said.flatMap((each) => (each.kind === "changed" ? each.rows : []));
const finished = talk(started(), ...straight).state;
const halfway = talk(started(), "hill", "4 m", "5 W").state;

describe("start", () => {
  test("opens the first topic and shows its first question", () => {
    const [state, effects] = update(smallInterview, begin({ name: "gate", currency: "EUR" }), {
      type: "start",
    });
    expect(effects).toEqual([
      {
        type: "say",
        said: { kind: "topicOpened", title: "Place", opening: "First the place.", number: 1, of: 3 },
      },
    ]);
    expect(viewOf(state)).toMatchObject({
      isFinished: false,
      position: "Place, question 1 of 2",
      ask: "Where will the post stand?",
      hint: "A town, or coordinates. Example: 52.30, -3.51",
      options: [],
      prompt: "Place",
      keeps: null,
    });
  });

  test("with answers: says how far it is, opens the topic at hand, asks the first open question", () => {
    const [state, effects] = update(smallInterview, begin({ ...halfway }), { type: "start" });
    expect(effects).toEqual([
      {
        type: "say",
        said: {
          kind: "aside",
          title: "Where you are",
          lines: ["3 questions are answered, about 4 to go. Next: Loads, Night."],
        },
      },
      {
        type: "say",
        said: { kind: "topicOpened", title: "Loads", opening: "Now the power.", number: 2, of: 3 },
      },
    ]);
    expect(viewOf(state).ask).toBe("What must it see at night?");
  });

  test("with every answer: nothing is opened or closed again", () => {
    const [state, effects] = update(smallInterview, begin({ ...finished }), { type: "start" });
    expect(effects).toEqual([
      {
        type: "say",
        said: { kind: "aside", title: "Where you are", lines: ["All 6 questions are answered."] },
      },
    ]);
    expect(viewOf(state).isFinished).toBe(true);
    expect(state.closed).toEqual(["place", "loads", "hours"]);
  });

  test("the view before the first event is that of the first question", () => {
    expect(viewOf(begin({ name: "gate", currency: "EUR" })).ask).toBe("Where will the post stand?");
  });
});

describe("the question shown", () => {
  test("a choice is numbered; a topic whose questions depend on answers says about", () => {
    expect(viewOf(halfway)).toMatchObject({
      position: "Loads, question 2 of about 4",
      prompt: "Night",
      options: [
        { number: 1, label: "Nothing" },
        { number: 2, label: "People, by infrared light" },
        { number: 3, label: "Stop" },
      ],
    });
  });

  test("the prompt names the unit, and a second one where there is one", () => {
    expect(viewOf(talk(started(), "hill").state).prompt).toBe("Height (m or ft)");
    expect(viewOf(talk(started(), "hill", "4").state).prompt).toBe("Camera (W)");
  });
});

describe("an answer", () => {
  test("is said with what was heard, weighed, and saved; a topic it completes is closed, the next one opened", () => {
    const { effects, state } = talk(started(), "hill", "13 ft");
    expect(effects).toEqual([
      {
        type: "say",
        said: { kind: "answered", ask: "How high is the mast?", typed: "13 ft", heard: "13 ft = 4 m" },
      },
      {
        type: "say",
        said: {
          kind: "topicClosed",
          title: "Place",
          rows: [
            { label: "Place", value: "Hill, GB" },
            { label: "Height", value: "13 ft = 4 m" },
          ],
        },
      },
      {
        type: "say",
        said: { kind: "topicOpened", title: "Loads", opening: "Now the power.", number: 2, of: 3 },
      },
      { type: "save" },
    ]);
    // 13 ft is 3.9624 m: the foot is 0.3048 m exactly (international yard and pound agreement, 1959).
    expect(state.answers["place.height"]).toEqual({
      typed: "13 ft",
      value: { kind: "quantity", low: 3.9624, best: 3.9624, high: 3.9624, unit: "m" },
      origin: "estimate",
    });
  });

  test("says what it means where a figure appears or moves, at most three, in the order of the list", () => {
    // 5 W and half of it for infrared are 7.5 W: 180 Wh a day.
    expect(texts(talk(started(), "hill").said, "meaning")).toEqual(["It takes 180 Wh a day."]);
    // 12 W camera and 6 W infrared.
    expect(texts(talk(started(), "hill", "4", "12 W").said, "meaning")).toEqual([
      "It takes 432 Wh a day, before 180.",
      "All devices draw 18 W.",
    ]);
    const { said } = talk(started(), "fell", "4", "5 W", "2", "20 W", "yes");
    expect(texts(said, "meaning")).toEqual([
      "It takes 600 Wh a day, before 180.",
      "All devices draw 25 W.",
      "The supply is large.",
    ]);
  });

  test("that moves a figure by less than its step is not told", () => {
    // 5 W to 5.1 W moves both figures by 2 %: 3.6 Wh of 180, and 0.15 W of 7.5, which is not more than 2 %.
    expect(texts(talk(started(), "hill", "4", "5.1 W").said, "meaning")).toEqual([]);
    expect(texts(talk(started(), "hill", "4", "5.2 W").said, "meaning")).toHaveLength(1);
  });

  test("says new stops and cautions always, a note where there is room, and what is no longer in the way", () => {
    const findingsIn = (said: readonly Said[]) =>
      said.flatMap((each) =>
        each.kind === "finding" ? [`${each.isGone ? "gone " : ""}${each.finding.says}`] : [],
      );
    const heavy = talk(started(), "hill", "4", "12 W");
    // Two figures, one caution: no room for the note.
    expect(findingsIn(heavy.said)).toEqual(["18 W is a lot."]);
    expect(findingsIn(talk(started(), "hill", "4", "6 W").said)).toEqual(["More than a camera."]);
    // 4 W less than before: the caution goes, and nothing is said of the note.
    expect(findingsIn(talk(heavy.state, "1").said)).toEqual(["gone 18 W is a lot."]);
    const stop = talk(heavy.state, "2", "30 W", "yes");
    expect(findingsIn(stop.said)).toEqual(["42 W is too much."]);
  });

  test("closes a topic only the first time its questions are all answered", () => {
    const again = talk(finished, "change night", "2");
    expect(kinds(again.effects)).toEqual(["answered", "changed", "save"]);
    expect(kinds(talk(again.state, "3 W").effects)).toEqual(["answered", "meaning", "meaning", "save"]);
  });

  test("origin: a word that says it wins, otherwise it is an estimate", () => {
    const origin = (line: string) => talk(started(), "hill", "4", line).state.answers["loads.camera"]?.origin;
    expect(origin("4.2 W measured")).toBe("measured");
    expect(origin("4.2 W label")).toBe("datasheet");
    expect(origin("4.2 W")).toBe("estimate");
  });

  test("a range is kept with both ends; an open end goes as far as is usual, and that is said", () => {
    const range = talk(started(), "hill", "4", "4-6 W");
    expect(range.state.answers["loads.camera"]?.value).toMatchObject({ low: 4, best: 5, high: 6 });
    const open = talk(started(), "hill", "4", "at least 4 W");
    expect(open.state.answers["loads.camera"]?.value).toMatchObject({ low: 4, best: 4, high: 12 });
    const under = talk(started(), "hill", "4", "under 6 W").state.answers["loads.camera"];
    expect(under?.value).toMatchObject({ low: 2, best: 6, high: 6 });
    expect(texts(open.said, "meaning")[0]).toBe("To be on the safe side I use 12 W until you know more.");
  });

  test("only whole things are counted, and the middle of a range goes to the cautious side", () => {
    const lamp = talk(halfway, "1", "lamp", "8 W").state;
    expect(viewOf(lamp).ask).toBe("How many such lamps?");
    expect(talk(lamp, "1.5").state).toEqual(lamp);
    expect(talk(lamp, "1 to 4").state.answers["loads.extra.1.count"]?.value).toMatchObject({
      low: 1,
      best: 3,
      high: 4,
    });
  });

  test("in quotation marks is never a command", () => {
    expect(talk(started(), "'hill'").state.answers["place.where"]?.typed).toBe("hill");
    expect(texts(talk(started(), "'why").said, "refusal")).toEqual(['I could not find "why".']);
  });

  test("an option's own words are an answer even where they are a command too", () => {
    expect(talk(halfway, "stop").state.answers["loads.night"]?.value).toEqual({
      kind: "choice",
      option: "stop",
    });
  });
});

describe("a line that is no answer", () => {
  test.each([
    ["12 V", "12 V is a voltage."],
    ["5 fx", 'I don\'t know the unit "fx".'],
    ["61 W", "Camera must be between 0 and 60 W"],
    ["plenty", 'There is no figure for the camera in "plenty".'],
    ["", "Type the camera, for example 5 W. If you are not sure, type: not sure."],
  ])("%j is refused in a sentence, and nothing is lost", (text, begins) => {
    const before = talk(started(), "hill", "4").state;
    const { state, said } = talk(before, text);
    expect(texts(said, "refusal")[0]).toContain(begins);
    expect(said).toHaveLength(1);
    expect(state).toEqual(before);
  });

  test("an empty line at a choice asks for a number", () => {
    expect(texts(talk(halfway, "").said, "refusal")).toEqual([
      "Type a number from 1 to 3. If you are not sure, type: not sure.",
    ]);
  });

  test("a clock is refused with an example", () => {
    const { said } = talk(halfway, "1", "1", "teatime");
    expect(texts(said, "refusal")[0]).toContain("6:00 to 18:00");
  });

  test("an unknown place is refused in the words of the reader of places", () => {
    expect(texts(talk(started(), "Nowhere").said, "refusal")).toEqual(['I could not find "Nowhere".']);
  });
});

describe("an unusual quantity", () => {
  const odd = talk(started(), "hill", "40 ft");

  test("is asked about before it is taken", () => {
    expect(odd.effects).toEqual([]);
    expect(odd.state.answers["place.height"]).toBeUndefined();
    expect(viewOf(odd.state)).toMatchObject({
      ask: "40 ft = 12.2 m is more than usual here (usual: 2 to 10 m). Keep it?",
      hint: "Type yes to keep it, no to answer again, or the right figure.",
      prompt: "Yes or no",
    });
  });

  test("yes keeps it", () => {
    const { state } = talk(odd.state, "yes");
    expect(state.answers["place.height"]).toMatchObject({ typed: "40 ft", value: { best: 12.192 } });
    expect(state.cursor).toBe("loads.camera");
  });

  test("no asks again; back too", () => {
    for (const word of ["no", "back"]) {
      const { state } = talk(odd.state, word);
      expect(state.answers["place.height"]).toBeUndefined();
      expect(viewOf(state).ask).toBe("How high is the mast?");
    }
  });

  test("another figure is taken, or asked about in its turn, or refused", () => {
    expect(talk(odd.state, "4 m").state.answers["place.height"]?.typed).toBe("4 m");
    expect(viewOf(talk(odd.state, "1 m").state).ask).toContain("less than usual");
    const wrong = talk(odd.state, "12 V");
    expect(texts(wrong.said, "refusal")[0]).toContain("12 V is a voltage");
    expect(wrong.state).toEqual(odd.state);
  });

  test("anything else is answered with what to type", () => {
    for (const text of ["", "perhaps"])
      expect(texts(talk(odd.state, text).said, "refusal")).toEqual([
        "Type yes to keep it, no to answer again, or the right figure.",
      ]);
  });

  test("commands still work", () => {
    expect(kinds(talk(odd.state, "why").effects)).toEqual(["aside"]);
    expect(talk(odd.state, "why").state).toEqual(odd.state);
    expect(talk(odd.state, "not sure").state.answers["place.height"]?.origin).toBe("assumed");
  });

  test("a range is unusual by either end; an open end that nobody typed is not", () => {
    expect(talk(started(), "hill", "1-4 m").state.mode.kind).toBe("confirming");
    expect(talk(started(), "hill", "at least 4 m").state.mode.kind).toBe("asking");
  });
});

describe("a place of several names", () => {
  const several = talk(started(), "Newport");

  test("is asked about with a numbered list", () => {
    expect(several.effects).toEqual([]);
    expect(viewOf(several.state)).toMatchObject({
      ask: 'Which of these is meant by "Newport"?',
      prompt: "Place, number",
      options: [
        { number: 1, label: "Newport, Wales, GB" },
        { number: 2, label: "Newport, Shropshire, GB" },
      ],
    });
  });

  test("a face may suggest places while one is typed, and nothing at any other question", () => {
    const { state } = talk(started(), "hill");
    const suggests = [started(), several.state, state, halfway].map((each) => viewOf(each).suggests);
    expect(suggests).toEqual(["places", "places", null, null]);
  });

  test("takes a number, its words, or another place", () => {
    const label = (text: string) => {
      const value = talk(several.state, text).state.answers["place.where"]?.value;
      return value?.kind === "place" ? value.site?.label : value;
    };
    expect(label("2")).toBe("Newport, Shropshire, GB");
    expect(label("newport, wales")).toBe("Newport, Wales, GB");
    expect(label("Fell")).toBe("Fell, NO");
  });

  test("refuses what is neither, and stays", () => {
    for (const text of ["3", ""])
      expect(texts(talk(several.state, text).said, "refusal")).toEqual([
        "Type a number from 1 to 2, or another place.",
      ]);
    const lost = talk(several.state, "Nowhere");
    expect(texts(lost.said, "refusal")).toEqual(['I could not find "Nowhere".']);
    expect(lost.state).toEqual(several.state);
    expect(viewOf(talk(several.state, "back").state).ask).toBe("Where will the post stand?");
  });
});

describe("not sure", () => {
  test("takes the stand-in, marks it and says why", () => {
    const { state, said } = talk(started(), "hill", "I don't know");
    expect(state.answers["place.height"]).toMatchObject({
      typed: "unsure",
      origin: "assumed",
      value: { best: 4 },
    });
    expect(texts(said, "meaning")).toEqual([
      "That is fine. I use 4 m until you know: most masts are 3 to 5 m.",
    ]);
    expect(said.at(0)).toEqual({
      kind: "answered",
      ask: "How high is the mast?",
      typed: "unsure",
      heard: null,
    });
  });

  test("quotes an option, and ends in one full stop", () => {
    expect(texts(talk(halfway, "not sure").said, "meaning")).toContain(
      'That is fine. I use "People, by infrared light" until you know: it is the safe side.',
    );
    expect(texts(talk(started(), "hill", "4", "not sure").said, "meaning")).toContain(
      "That is fine. I use 5 W until you know: fixed cameras draw 3 to 6 W.",
    );
  });

  test("leaves a place open and says so", () => {
    const { state, said } = talk(started(), "not sure");
    expect(state.answers["place.where"]?.value).toEqual({ kind: "place", site: null });
    expect(texts(said, "meaning")).toEqual(["That is fine. No place can stand in for yours."]);
  });

  test("follows the present stand-in, and is kept as assumed by Enter", () => {
    const assumed = talk(halfway, "2", "not sure").state;
    const richer = talk(assumed, "change camera", "10 W").state;
    const row = walkNow(smallInterview, richer).find((each) => each.id === "loads.infrared")!;
    expect(row.answer).toMatchObject({ origin: "assumed", value: { best: 5 } });
    const kept = talk(richer, "change infrared");
    expect(viewOf(kept.state).keeps).toBe("assumed: 5 W");
    expect(talk(kept.state, "").state.answers["loads.infrared"]?.origin).toBe("assumed");
  });
});

describe("back", () => {
  test("says so at the first question", () => {
    const { state, said } = talk(started(), "back");
    expect(texts(said, "refusal")).toEqual(["This is the first question: there is nothing before it."]);
    expect(state).toEqual(started());
  });

  test("goes back across topics, again and again, and shows what Enter keeps", () => {
    const { state } = talk(halfway, "back", "back", "back");
    expect(state.cursor).toBe("place.where");
    expect(viewOf(state).keeps).toBe("Hill, GB");
    expect(state.answers).toEqual(halfway.answers);
  });

  test("then Enter and answers walk forward in order to the first open question", () => {
    const cursors: (string | null)[] = [];
    let { state } = talk(halfway, "back", "back", "back");
    for (const text of ["", "5 m", ""]) {
      state = talk(state, text).state;
      cursors.push(state.cursor);
    }
    expect(cursors).toEqual(["place.height", "loads.camera", "loads.night"]);
    expect(state.answers["place.height"]?.typed).toBe("5 m");
  });

  test("out of the end, and forward to it again", () => {
    const last = talk(finished, "back");
    expect(last.state.cursor).toBe("hours.span");
    expect(viewOf(last.state).keeps).toBe("6:00 to 18:00");
    expect(viewOf(talk(last.state, "").state).isFinished).toBe(true);
    expect(talk(finished, "back", "back", "back", "back").state.cursor).toBe("loads.camera");
  });

  test("Enter says again what was kept, and saves nothing", () => {
    const { effects } = talk(halfway, "back", "");
    expect(effects).toEqual([
      {
        type: "say",
        said: { kind: "answered", ask: "How many watts does the camera draw?", typed: "5 W", heard: null },
      },
    ]);
  });

  test("a changed answer that calls for a new question is followed by it", () => {
    const { state } = talk(finished, "back", "back", "back", "2");
    expect(state.cursor).toBe("loads.infrared");
    expect(viewOf(talk(state, "4 W").state).isFinished).toBe(true);
  });
});

describe("review and change", () => {
  test("an answer whose value was edited in its file is shown by its value", () => {
    const edited = started({
      "place.height": {
        typed: "13 ft",
        value: { kind: "quantity", low: 5, best: 5, high: 6, unit: "m" },
        origin: "measured",
      },
    });
    const said = talk(edited, "review").said[0];
    expect(said?.kind === "review" ? said.rows[1]?.answer : said).toBe("5 to 6 m");
  });

  test("every question is a numbered row", () => {
    const { said } = talk(halfway, "review");
    expect(said).toEqual([
      {
        kind: "review",
        rows: [
          {
            number: 1,
            id: "place.where",
            topic: "Place",
            label: "Place",
            answer: "Hill, GB",
            origin: "estimate",
          },
          {
            number: 2,
            id: "place.height",
            topic: "Place",
            label: "Height",
            answer: "4 m",
            origin: "estimate",
          },
          {
            number: 3,
            id: "loads.camera",
            topic: "Loads",
            label: "Camera",
            answer: "5 W",
            origin: "estimate",
          },
          {
            number: 4,
            id: "loads.night",
            topic: "Loads",
            label: "Night",
            answer: "not answered",
            origin: null,
          },
          {
            number: 5,
            id: "loads.infrared",
            topic: "Loads",
            label: "Infrared",
            answer: "not answered",
            origin: null,
          },
          {
            number: 6,
            id: "loads.extra.1.kind",
            topic: "Loads",
            label: "Other device 1",
            answer: "not answered",
            origin: null,
          },
          {
            number: 7,
            id: "hours.span",
            topic: "Hours",
            label: "Hours",
            answer: "not answered",
            origin: null,
          },
        ],
      },
    ]);
  });

  test.each([
    ["change 2"],
    ["change height"],
    ["change place.height"],
    ["change place height"],
    ["change heig"],
  ])("%s goes there, and its answer leads back", (text) => {
    const there = talk(halfway, text).state;
    expect(there).toMatchObject({ cursor: "place.height", returnTo: "loads.night" });
    expect(viewOf(there).keeps).toBe("4 m");
    for (const answer of ["5 m", ""])
      expect(talk(there, answer).state).toMatchObject({ cursor: "loads.night", returnTo: null });
  });

  test.each([
    ["change 99", "There is no answer 99. Type change and a number from 1 to 7; review shows them."],
    ["change", "Type change and a number from 1 to 7; review shows them."],
    [
      "change colour",
      'No answer here is called "colour". Type review to see them, then change and a number.',
    ],
    [
      "change loads",
      '"loads" fits several answers: 3 Camera, 4 Night, 5 Infrared, 6 Other device 1. Type change and its number.',
    ],
  ])("%s is refused with what to type", (text, says) => {
    const { said, state } = talk(halfway, text);
    expect(texts(said, "refusal")).toEqual([says]);
    expect(state).toEqual(halfway);
  });

  test("a changed answer says every figure it moved, before and after", () => {
    const { said } = talk(finished, "change camera", "10 W");
    expect(rowsOf(said)).toEqual([
      { label: "Energy", before: "120 Wh a day", after: "240 Wh a day" },
      { label: "Power", before: "5 W", after: "10 W" },
    ]);
    expect(texts(said, "meaning")).toEqual([]);
    const place = talk(finished, "change place", "not sure").said;
    expect(rowsOf(place)).toEqual([{ label: "Energy", before: "120 Wh a day", after: "not known yet" }]);
  });

  test("from the end: follow-ups first, then back to the end", () => {
    const there = talk(finished, "change night").state;
    expect(there.returnTo).toBe("finished");
    const followUp = talk(there, "2").state;
    expect(followUp).toMatchObject({ cursor: "loads.infrared", returnTo: "finished" });
    const end = talk(followUp, "3 W").state;
    expect(end).toMatchObject({ cursor: null, returnTo: null });
    expect(viewOf(talk(there, "").state).isFinished).toBe(true);
  });

  test("follow-ups before the place left are asked first, those after it in their turn", () => {
    const late = talk(started(), ...straight.slice(0, 5), "change night", "2").state;
    expect(late.cursor).toBe("loads.infrared");
    expect(talk(late, "3").state.cursor).toBe("hours.span");
    const snow = talk(started(), ...straight.slice(0, 5), "change 1", "fell").state;
    expect(snow.cursor).toBe("hours.span");
    expect(talk(snow, "all day").state.cursor).toBe("hours.snow");
  });

  test("where the place left is no longer called for, it goes on with what is open", () => {
    const atInfrared = talk(halfway, "2").state;
    expect(atInfrared.cursor).toBe("loads.infrared");
    expect(talk(atInfrared, "change night", "1").state).toMatchObject({
      cursor: "loads.extra.1.kind",
      returnTo: null,
    });
  });

  test("a question that is still open can be answered ahead", () => {
    const ahead = talk(halfway, "change hours", "all day").state;
    expect(ahead.cursor).toBe("loads.night");
    expect(viewOf(talk(ahead, "1", "1").state).isFinished).toBe(true);
  });

  test("asked for twice still leads back to where it began", () => {
    expect(talk(halfway, "change 1", "change 2", "5 m").state).toMatchObject({
      cursor: "loads.night",
      returnTo: null,
    });
  });

  test("the last answer, with one before it still open, is followed by that one", () => {
    const ahead = talk(halfway, "change hours", "all day").state;
    expect(talk({ ...ahead, cursor: "hours.span" }, "").state.cursor).toBe("loads.night");
  });

  test("to the question at hand is no detour; back within a change still returns", () => {
    expect(talk(halfway, "change night").state.returnTo).toBeNull();
    expect(talk(halfway, "change camera", "back", "").state).toMatchObject({
      cursor: "loads.night",
      returnTo: null,
    });
  });
});

describe("undo", () => {
  test("takes a new answer back and asks it again", () => {
    const { state, said, effects } = talk(halfway, "undo");
    expect(state.cursor).toBe("loads.camera");
    expect(state.answers).toEqual(talk(started(), "hill", "4 m").state.answers);
    expect(texts(said, "meaning")).toEqual(["Taken back: Camera is not answered."]);
    expect(effects.at(-1)).toEqual({ type: "save" });
  });

  test("takes a change back, says what moved, and stays where the builder is", () => {
    const { state, said } = talk(finished, "change camera", "10 W", "undo");
    expect(state.answers).toEqual(finished.answers);
    expect(texts(said, "meaning")).toEqual(["Taken back: Camera is again 5 W."]);
    expect(rowsOf(said)[1]).toEqual({ label: "Power", before: "10 W", after: "5 W" });
    expect(viewOf(state).isFinished).toBe(true);
  });

  test("again and again, to the first answer, and then says so", () => {
    const { state, said } = talk(halfway, "undo", "undo", "undo", "undo");
    expect(state.answers).toEqual({});
    expect(state.cursor).toBe("place.where");
    expect(texts(said, "refusal")).toEqual(["There is no answer to take back."]);
  });

  test("an answer typed a second time leaves nothing to take back twice", () => {
    const { state: twice, effects } = talk(halfway, "back", "5 W");
    expect(kinds(effects)).toEqual(["answered", "save"]);
    expect(talk(twice, "undo").state.answers).toEqual(talk(started(), "hill", "4 m").state.answers);
  });

  test("a topic it opens again is summed up again when it is complete", () => {
    const { effects } = talk(started(), "hill", "4 m", "undo", "5 m");
    expect(kinds(effects)).toEqual(["answered", "topicClosed", "save"]);
  });

  test("the past is bounded", () => {
    let state = started();
    for (let n = 0; n < 80; n++) state = talk(state, "change place", n % 2 === 0 ? "hill" : "fell").state;
    expect(state.past).toHaveLength(50);
  });
});

describe("asides", () => {
  test("why and how speak of the question at hand", () => {
    expect(talk(halfway, "why").said).toEqual([
      { kind: "aside", title: "Why we ask", lines: ["The light is fed by the battery alone."] },
    ]);
    expect(talk(halfway, "how do I find that out").said).toEqual([
      { kind: "aside", title: "How to find out", lines: ["Ask who looks at the picture."] },
    ]);
  });

  test("more gives the design so far in short", () => {
    expect(talk(started(), "more").said).toEqual([
      {
        kind: "aside",
        title: "The design so far",
        lines: ["Power: 7.5 W", "Supply: small", "Snow: 0 weeks"],
      },
    ]);
    const heavy = talk(started(), "hill", "4", "12 W", "more").said[0];
    expect(heavy).toMatchObject({ lines: expect.arrayContaining(["Caution: 18 W is a lot."]) });
  });

  test("help names what can be typed, for each kind of question", () => {
    const first = (state: State) => {
      const said = talk(state, "help").said[0];
      return said?.kind === "aside" ? said.lines[0] : undefined;
    };
    expect(first(started())).toContain("a town");
    expect(first(halfway)).toContain("the number of an option");
    expect(first(talk(started(), "hill").state)).toContain("30 ft");
    expect(first(talk(halfway, "1", "1").state)).toContain("6:30 to 18:00");
    expect(first(finished)).toContain("back");
  });

  test("none of them changes anything", () => {
    for (const text of ["why", "how", "help", "more", "review", "lists"])
      expect(talk(halfway, text).state).toEqual(halfway);
  });
});

describe("leaving", () => {
  test("save and quit save and leave", () => {
    for (const text of ["save", "quit"])
      expect(talk(halfway, text).effects).toEqual([{ type: "save" }, { type: "leave", code: 0 }]);
  });

  test("an interrupt saves and leaves with 130, the end of input with 3 while questions are open", () => {
    const effects = (state: State, type: "interrupt" | "end") => update(smallInterview, state, { type })[1];
    expect(effects(halfway, "interrupt")).toEqual([{ type: "save" }, { type: "leave", code: 130 }]);
    expect(effects(halfway, "end")).toEqual([{ type: "save" }, { type: "leave", code: 3 }]);
    expect(effects(finished, "end")).toEqual([{ type: "save" }, { type: "leave", code: 0 }]);
  });

  test("lists can be had at any time", () => {
    for (const state of [halfway, finished])
      for (const text of ["lists", "Lists.", "show the lists", "shopping list"])
        expect(talk(state, text).effects).toEqual([{ type: "lists" }]);
  });
});

describe("the end", () => {
  test("says what can be done", () => {
    expect(viewOf(finished)).toEqual({
      isFinished: true,
      position: "",
      ask: "Every question is answered.",
      hint: "Type lists for what to buy and do, review to see the answers, change 3 to correct the third, or save.",
      options: [],
      prompt: "Next",
      keeps: null,
      suggests: null,
      commands: "lists, review, change 3, more, outlook, back, undo, help, save",
    });
  });

  test.each([["5 W"], [""], ["why"], ["how"], ["not sure"]])("%j is answered with one sentence", (text) => {
    const { state, said } = talk(finished, text);
    expect(texts(said, "refusal")).toEqual([viewOf(finished).hint]);
    expect(state).toEqual(finished);
  });
});

describe("an answer as it was kept", () => {
  const record = (state: State, answer: Answer) => update(smallInterview, state, { type: "record", answer });
  const watts: Answer = {
    typed: "7 W",
    value: { kind: "quantity", low: 7, best: 7, high: 7, unit: "W" },
    origin: "measured",
  };
  const atCamera = talk(started(), "hill", "4").state;

  test("is taken as it is", () => {
    expect(record(atCamera, watts)[0].answers["loads.camera"]).toEqual(watts);
  });

  test("is refused where it does not fit, and where nothing is asked", () => {
    expect(kinds(record(halfway, watts)[1])).toEqual(["refusal"]);
    expect(record(halfway, watts)[0]).toEqual(halfway);
    expect(kinds(record(finished, watts)[1])).toEqual(["refusal"]);
  });

  test("follows the stand-in where it was assumed", () => {
    const [state] = record(atCamera, { ...watts, origin: "assumed" });
    expect(state.answers["loads.camera"]).toMatchObject({ origin: "assumed", value: { best: 5 } });
  });
});

test("a cursor whose question is no longer there falls to the first open question", () => {
  const lost: State = {
    ...halfway,
    cursor: "gone.for.good",
    mode: { kind: "confirming", pending: halfway.answers["loads.camera"]!, says: "?" },
  };
  expect(viewOf(lost).ask).toBe("What must it see at night?");
  expect(talk(lost, "1").state).toMatchObject({ cursor: "loads.extra.1.kind" });
});

describe("a sentence at a list of options", () => {
  const at = (text: string) => talk(halfway, text);

  test("is taken where it means one of them, and what was understood is said", () => {
    const { state, said } = at("I want to see people please");
    expect(state.answers["loads.night"]?.value).toEqual({ kind: "choice", option: "infrared" });
    expect(said[0]).toMatchObject({ kind: "answered", heard: "People, by infrared light" });
  });

  test("that names two, denies one or asks back changes nothing and says why", () => {
    for (const [text, says] of [
      [
        "nothing or people",
        '"nothing or people" fits "Nothing" and "People, by infrared light". Type the one you mean.',
      ],
      ["not people", '"not people" does not say which one it is.'],
      ["is infrared for people", '"is infrared for people" is a question.'],
    ] as const) {
      const { state, said } = at(text);
      expect(texts(said, "refusal")[0]).toContain(says);
      expect(state).toEqual(halfway);
      expect(viewOf(state).ask).toBe("What must it see at night?");
    }
  });

  test("that says only that nobody knows takes the stand-in; why and how with more words stay commands", () => {
    expect(at("well, I have really no idea").state.answers["loads.night"]?.origin).toBe("assumed");
    expect(at("why people").said[0]).toMatchObject({ kind: "aside", title: "Why we ask" });
    expect(at("how can it see people").said[0]).toMatchObject({ kind: "aside", title: "How to find out" });
    expect(at("why people").state).toEqual(halfway);
  });
});
