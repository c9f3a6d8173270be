import { describe, expect, test } from "vitest";
import type { Said } from "../../src/interview/index.ts";
import { columnsOf } from "../../src/plain/index.ts";
import { drawingRoom, type Row, saidRows } from "../../src/screen/page.ts";

const textOf = (row: Row): string => row.map((piece) => piece.text).join("");

const closed: Said = {
  kind: "topicClosed",
  title: "Power",
  rows: [
    { label: "Battery", value: "200 Ah at 12 V, two blocks of 100 Ah side by side, 60 kg altogether" },
    { label: "Panel", value: "100 W" },
  ],
};
const drawing = ["  ______", " /_____/", "    |", "    |", "  __|__"];

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

  test("the drawing keeps its blanks: what stands above another stands there on the screen", () => {
    const rows = saidRows({ columns: 110, rows: 30, isAscii: false }, closed, drawing).map(textOf);
    const mastColumns = rows.flatMap((row) => (row.includes("__|__") ? [row.indexOf("|__")] : []));
    const [footColumn] = mastColumns;
    expect(footColumn).toBeGreaterThan(0);
    expect(rows.filter((row) => row[footColumn!] === "|").length).toBe(3);
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

  test("a chart keeps its lines as they are, with its words below; where it has no room, its words alone", () => {
    const chart = {
      title: "Charge",
      words: "It falls to 20 %.",
      lines: [`100 % │${"█".repeat(30)}▄▄`, "  0 % └──────"],
    };
    const set = (columns: number) =>
      saidRows({ columns, rows: 24, isAscii: false }, { kind: "chart", chart }).map(textOf);
    expect(set(60).filter((row) => row.endsWith("████▄▄"))).toHaveLength(1);
    expect(set(60).at(-1)).toContain("It falls to 20 %.");
    expect(set(36).join(" ")).not.toContain("████");
    const ascii = saidRows({ columns: 60, rows: 24, isAscii: true }, { kind: "chart", chart }).map(textOf);
    for (const row of ascii) expect(row).toMatch(/^[\x20-\x7e]*$/);
    expect(ascii.join(" ")).toContain("####==");
  });

  test("without Unicode every sign is ASCII", () => {
    const sheet = { columns: 100, rows: 24, isAscii: true };
    for (const row of saidRows(sheet, closed, ["│ 1.5 m²"])) expect(textOf(row)).toMatch(/^[\x20-\x7e]*$/);
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
