import { describe, expect, test } from "vitest";
import type { View } from "../../src/interview/index.ts";
import { columnsOf } from "../../src/plain/index.ts";
import { liveRows } from "../../src/screen/live.ts";
import type { Row } from "../../src/screen/page.ts";
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
  suggests: null,
  commands:
    "why   how   unsure   back   review   undo   lists   help   quit   and some more words that will not fit",
};
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

  test("a prompt too long for its place keeps its unit", () => {
    const prompt = "Distance to what is in between (m or ft)";
    for (const columns of [44, 60, 80]) {
      const live = liveRows({ columns, rows: 24, isAscii: false }, { ...view, prompt }, emptyTyping, 0);
      expect(textOf(live.rows[live.cursor.y]!), `${columns}`).toMatch(/Dist.*\(m or ft\): $/);
    }
  });

  test("namesakes too long for their row are still told apart", () => {
    const named = (place: string, number: number) => ({
      number,
      label: `Sankt Georgen an der Leys, Lower Austria, Austria (${place})`,
    });
    const options = [named("48.02, 15.23", 1), named("48.20, 15.90", 2)];
    const live = liveRows({ columns: 60, rows: 24, isAscii: true }, { ...view, options }, emptyTyping, 0);
    const text = live.rows.map(textOf).join("\n");
    expect(text).toContain("(48.02, 15.23)");
    expect(text).toContain("(48.20, 15.90)");
    expect(text).toContain("...");
  });

  test("what Enter keeps has a row of its own where it does not fit beside the prompt", () => {
    const keeps = "Always, but only part of the year";
    const live = liveRows({ columns: 60, rows: 40, isAscii: false }, { ...view, keeps }, emptyTyping, 0);
    const text = live.rows.map(textOf);
    expect(text.slice(live.cursor.y - 2, live.cursor.y)).toEqual([
      "           │ Enter alone keeps Always, but only part of the",
      "           │ year",
    ]);
    expect(text[live.cursor.y]).not.toContain("keeps");
  });

  test("in 24 rows a list of twelve is whole; the question, the typed line and the commands are there with any list", () => {
    const commands = "why, how, not sure, back, undo, review, change 3, more, help, save";
    const options = Array.from({ length: 12 }, (_, index) => ({
      number: index + 1,
      label: `month ${index}`,
    }));
    const texts = (of: View): readonly string[] =>
      liveRows({ columns: 60, rows: 24, isAscii: false }, of, emptyTyping, 0).rows.map(textOf);
    const twelve = texts({ ...view, ask: "Which month?", options, commands }).join("\n");
    for (const { label } of options) expect(twelve).toContain(label);
    for (const text of [twelve, texts({ ...view, commands }).join("\n")]) {
      expect(text).toMatch(/Which month\?|How far is the camera/);
      expect(text).toContain("Answer │");
      expect(text).toContain("why, how, not sure");
      expect(text).toMatch(/help, save$/);
    }
  });

  test("suggested names give way first: nothing else is lost to them, and no row is too many or too wide", () => {
    const names = ["Llanfihangel-y-Pennant, Wales, United Kingdom", "Llanfair, Wales", "Llanidloes, Wales"];
    const typing = { ...emptyTyping, before: "llan" };
    for (const options of [[], view.options.slice(0, 8), view.options]) {
      for (const columns of [20, 43, 44, 60, 80]) {
        for (let rows = 6; rows <= 45; rows++) {
          const sheet = { columns, rows, isAscii: false };
          const without = liveRows(sheet, { ...view, options }, typing, 0);
          const live = liveRows(sheet, { ...view, options }, typing, 0, names);
          expect(live.rows.length, `${columns}x${rows}`).toBeLessThanOrEqual(Math.max(2, rows - 4));
          for (const row of live.rows) expect(columnsOf(textOf(row))).toBeLessThan(columns);
          expect(live.cursor).toEqual(without.cursor);
          const more = live.rows.length - without.rows.length;
          const rest = live.rows.filter((_, index) => index <= live.cursor.y || index > live.cursor.y + more);
          expect(rest).toEqual(without.rows);
          expect(more).toBe(Math.max(0, Math.min(3, Math.max(2, rows - 4) - without.rows.length)));
        }
      }
    }
  });

  test("in 24 rows a place's question, the typed line, three names and the commands are all there", () => {
    const commands = "why, how, not sure, back, undo, review, change 3, more, help, save";
    const asking = { ...view, ask: "Where will the post stand?", options: [], prompt: "Place", commands };
    const typing = { ...emptyTyping, before: "new" };
    const names = ["Newport, Wales", "Newport, Oregon", "Newcastle"];
    const live = liveRows({ columns: 60, rows: 24, isAscii: false }, asking, typing, 0, names);
    const text = live.rows.map(textOf).join("\n");
    for (const part of ["Where will the post stand?", "Place: new", ...names, "help, save"])
      expect(text).toContain(part);
  });

  test("a hint is shown whole or not at all, and commands that are cut say so", () => {
    const last = "Example: 30 ft";
    for (let rows = 8; rows <= 40; rows++) {
      const live = liveRows({ columns: 60, rows, isAscii: false }, view, emptyTyping, 0);
      const text = live.rows.map(textOf).join("\n");
      expect(text.includes("Walk it with a tape"), `${rows} rows`).toBe(text.includes(last));
      if (text.includes("why   how")) expect(text).toMatch(/will not fit$|…$/);
    }
  });

  test("without Unicode every sign is ASCII, and no row too wide for it", () => {
    for (const columns of [30, 60, 100]) {
      const sheet = { columns, rows: 24, isAscii: true };
      const { rows } = liveRows(sheet, { ...view, ask: "Tromsø?", keeps: "5 Ω" }, emptyTyping, 0);
      for (const row of rows) {
        expect(textOf(row)).toMatch(/^[\x20-\x7e]*$/);
        expect(columnsOf(textOf(row))).toBeLessThan(columns);
      }
    }
  });
});
