import { describe, expect, test } from "vitest";
import type { Said } from "../../src/interview/index.ts";
import { asciiText, saidToLines, wrapText } from "../../src/plain/index.ts";

const stop = {
  id: "mast.overhead",
  severity: "stop",
  says: "An overhead line is 4 m from the mast.",
  change: "Move the post.",
  numbers: { distanceM: 4 },
  topics: [],
} as const;

const sayings: readonly Said[] = [
  { kind: "topicOpened", title: "Place", opening: "Where the post stands.", number: 1, of: 10 },
  { kind: "answered", ask: "How far is it?", typed: "30 ft", heard: "30 ft = 9.1 m" },
  { kind: "meaning", text: "2.5 mm² wire is enough." },
  { kind: "finding", finding: stop, isGone: false },
  { kind: "finding", finding: stop, isGone: true },
  { kind: "refusal", text: "12 V is a voltage. This asks for a distance." },
  { kind: "aside", title: "Why we ask", lines: ["A longer cable loses more voltage."] },
  { kind: "changed", rows: [{ label: "Battery", before: "100 Ah", after: "200 Ah" }] },
  {
    kind: "review",
    rows: [
      { number: 1, id: "place.site", topic: "Place", label: "Where", answer: "Tromsø", origin: "measured" },
      {
        number: 2,
        id: "place.horizon",
        topic: "Place",
        label: "Horizon",
        answer: "assumed: 10°",
        origin: "assumed",
      },
      { number: 3, id: "view.night", topic: "View", label: "Night", answer: "not answered", origin: null },
    ],
  },
  { kind: "topicClosed", title: "Place", rows: [{ label: "Sun", value: "0.4 kWh/m² a day" }] },
];

describe("what was said, as lines", () => {
  test("every kind has its sign word, so that colour is never needed", () => {
    expect(sayings.flatMap((said) => saidToLines(said))).toEqual([
      "",
      "Part 1 of 10: Place",
      "Where the post stands.",
      "How far is it?",
      "Answer: 30 ft",
      "Heard: 30 ft = 9.1 m",
      "So: 2.5 mm² wire is enough.",
      "Stop: An overhead line is 4 m from the mast.",
      "Move the post.",
      "Settled: An overhead line is 4 m from the mast.",
      "Once more: 12 V is a voltage. This asks for a distance.",
      "",
      "Why we ask",
      "A longer cable loses more voltage.",
      "Changed: Battery: 100 Ah → 200 Ah",
      "",
      "Place",
      "1: Where: Tromsø, measured",
      "2: Horizon: assumed: 10°",
      "View",
      "3: Night: not answered",
      "",
      "So far: Place",
      "Sun: 0.4 kWh/m² a day",
    ]);
  });

  test("on a live page the question and the typed answer are not said again", () => {
    expect(saidToLines(sayings[1]!, { isLive: true })).toEqual(["Heard: 30 ft = 9.1 m"]);
    expect(saidToLines({ kind: "answered", ask: "?", typed: "x", heard: null }, { isLive: true })).toEqual(
      [],
    );
  });

  test("without Unicode every line stays within ASCII and keeps its numbers", () => {
    const lines = sayings.flatMap((said) => saidToLines(said, { isAscii: true }));
    for (const line of lines) expect(line).toMatch(/^[\x20-\x7e]*$/);
    expect(lines).toContain("So: 2.5 mm2 wire is enough.");
    expect(lines).toContain("1: Where: Tromso, measured");
  });

  test("wraps between words at the width asked for", () => {
    for (const line of sayings.flatMap((said) => saidToLines(said, { width: 20 }))) {
      expect(line.length).toBeLessThanOrEqual(20);
    }
  });
});

describe("wrapping", () => {
  test("keeps every word, in order, whatever the width", () => {
    const text = "The darkest month sets the panel, not the yearly average.";
    for (let width = 1; width < 70; width++) {
      const lines = wrapText(text, width);
      expect(lines.join("").replaceAll(" ", "")).toBe(text.replaceAll(" ", ""));
      for (const line of lines) expect(line.length).toBeLessThanOrEqual(width);
    }
  });

  test("counts a wide sign as two columns and breaks it off whole", () => {
    expect(wrapText("東京都", 4)).toEqual(["東京", "都"]);
  });
});

test("a sign that ASCII has no spelling for becomes a question mark, never nothing", () => {
  expect(asciiText("東")).toBe("?");
  expect(asciiText("Łódź, 5 Ω")).toBe("Lodz, 5 ohm");
});
