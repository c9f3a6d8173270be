import { describe, expect, test } from "vitest";
import type { Said, View } from "../../src/interview/index.ts";
import { columnsOf } from "../../src/plain/index.ts";
import { drawingRoom, liveRows, type Row, saidRows } from "../../src/screen/page.ts";
import { emptyTyping } from "../../src/screen/typing.ts";

const textOf = (row: Row): string => row.map((piece) => piece.text).join("");

const view: View = {
  isFinished: false,
  position: "Power, question 3 of about 9",
  ask: "How far is the camera from the battery box, along the way that the cable will take?",
  hint: "Walk it with a tape or count steps; a long step is about 0.75 m. Example: 30 ft",
  options: Array.from({ length: 17 }, (_, index) => ({
    number: index + 1,
    label: `option number ${index + 1}`,
  })),
  prompt: "Distance (m or ft)",
  keeps: null,
  commands:
    "why   how   unsure   back   review   undo   lists   help   quit   and some more words that will not fit",
};
const closed: Said = {
  kind: "topicClosed",
  title: "Power",
  rows: [
    { label: "Battery", value: "200 Ah at 12 V, two blocks of 100 Ah side by side, 60 kg altogether" },
    { label: "Panel", value: "100 W" },
  ],
};
const drawing = ["  ______", " /_____/", "    |", "    |", "  __|__"];

describe("the live area", () => {
  test("is at least four rows lower than the screen, its input always shown, at any size and length of text", () => {
    for (let rows = 6; rows <= 60; rows++) {
      for (const columns of [20, 40, 43, 44, 60, 80, 120, 200]) {
        const live = liveRows({ columns, rows, isAscii: false }, view, emptyTyping, 0);
        expect(live.rows.length, `${columns}x${rows}`).toBeLessThanOrEqual(rows - 4);
        expect(textOf(live.rows[live.cursor.y]!)).toContain("Dist");
        for (const row of live.rows)
          expect(columnsOf(textOf(row)), `${columns}x${rows}`).toBeLessThan(columns);
        expect(live.cursor.x).toBeLessThan(columns);
      }
    }
  });

  test("shows the whole question and every option where there is room", () => {
    const live = liveRows({ columns: 100, rows: 50, isAscii: false }, view, emptyTyping, 0);
    const text = live.rows.map(textOf).join("\n");
    for (const option of view.options) expect(text).toContain(option.label);
    expect(text).toContain("question 3 of about 9");
    expect(text).not.toContain("Page Down");
  });

  test("long lists scroll, and say so in words", () => {
    const sheet = { columns: 80, rows: 20, isAscii: false };
    const from = (top: number) => liveRows(sheet, view, emptyTyping, top);
    expect(from(0).rows.map(textOf).join("\n")).toMatch(/1 to \d+ of 17: Page Up, Page Down/);
    const seen = new Set<string>();
    for (let top = 0; top < 17; top++) {
      for (const row of from(top).rows) seen.add(/option number \d+/.exec(textOf(row))?.[0] ?? "");
    }
    for (const option of view.options) expect(seen).toContain(option.label);
    expect(from(99).optionsTop).toBe(from(16).optionsTop);
  });

  test("a typed line longer than the screen scrolls with its cursor", () => {
    const long = "a".repeat(100);
    const sheet = { columns: 60, rows: 24, isAscii: false };
    for (const [before, after] of [
      [long, ""],
      ["", long],
      [long, long],
    ] as const) {
      const live = liveRows(sheet, view, { ...emptyTyping, before, after }, 0);
      expect(columnsOf(textOf(live.rows[live.cursor.y]!))).toBeLessThan(60);
      expect(live.cursor.x).toBeLessThan(60);
    }
  });

  test("the answer that Enter keeps is shown until something is typed", () => {
    const sheet = { columns: 80, rows: 40, isAscii: false };
    const kept = { ...view, keeps: "30 ft" };
    const input = (before: string): string => {
      const live = liveRows(sheet, kept, { ...emptyTyping, before }, 0);
      return textOf(live.rows[live.cursor.y]!);
    };
    expect(input("")).toContain("Enter alone keeps 30 ft");
    expect(input("4")).not.toContain("keeps");
  });
});

describe("what was said, as set on the page", () => {
  test("stays within the screen at any width", () => {
    for (let columns = 20; columns <= 220; columns += 7) {
      for (const said of [closed, { kind: "meaning", text: "x".repeat(150) }] as const) {
        const sheet = { columns, rows: 24, isAscii: false };
        const rows = saidRows(
          sheet,
          said,
          drawingRoom(sheet) > 0 && said.kind === "topicClosed" ? drawing : null,
        );
        for (const row of rows) expect(columnsOf(textOf(row))).toBeLessThan(columns);
      }
    }
  });

  test("the drawing stands beside the summary from 90 columns on, and not below", () => {
    const drawn = (columns: number): string => {
      const sheet = { columns, rows: 24, isAscii: false };
      return saidRows(sheet, closed, drawing).map(textOf).join("\n");
    };
    expect(drawn(90)).toContain("/_____/");
    expect(drawn(90)).toContain("Battery  200 Ah");
    expect(drawn(89)).not.toContain("/_____/");
    expect(drawingRoom({ columns: 89, rows: 24, isAscii: false })).toBe(0);
    expect(drawingRoom({ columns: 90, rows: 24, isAscii: false })).toBeGreaterThan(20);
  });

  test("without Unicode every sign is ASCII", () => {
    const sheet = { columns: 100, rows: 24, isAscii: true };
    const rows = [
      ...saidRows(sheet, closed, ["│ 1.5 m²"]),
      ...liveRows(sheet, { ...view, ask: "Tromsø?", keeps: "5 Ω" }, emptyTyping, 0).rows,
    ];
    for (const row of rows) expect(textOf(row)).toMatch(/^[\x20-\x7e]*$/);
  });

  test("sign words stand in the margin, right-aligned; on a very narrow screen in the line", () => {
    const meaning: Said = { kind: "meaning", text: "One wire is enough." };
    expect(saidRows({ columns: 60, rows: 24, isAscii: false }, meaning).map(textOf)).toEqual([
      "        So │ One wire is enough.",
    ]);
    expect(saidRows({ columns: 40, rows: 24, isAscii: false }, meaning).map(textOf)).toEqual([
      "So: One wire is enough.",
    ]);
  });
});
