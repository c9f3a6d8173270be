import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { columnsOf } from "../../src/plain/index.ts";
import { type Document, graphemesOf, plainText, wrapped } from "../../src/report/index.ts";
import { documents } from "./sheets.ts";

/** ASCII needs no segmenter, which is slow. */
const signs = (text: string) => (/^[ -~]*$/.test(text) ? text.length : graphemesOf(text).length);

describe("the text", () => {
  it("is never wider than asked, whatever the post", () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 140 }), fc.nat(documents.length - 1), (columns, i) => {
        const [name, document] = documents[i]!;
        const wide = plainText(document, columns)
          .split("\n")
          .filter((line) => signs(line) > columns);
        expect(wide, `${name} at ${columns}`).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });
  it("is never wider than asked in wide signs either, where it is told how wide they are", () => {
    const document: Document = [
      { kind: "heading", level: 1, text: "東京都の茶園の監視カメラ支柱" },
      { kind: "facts", rows: [["場所", "東京都東京都東京都東京都東京都"]] },
      {
        kind: "steps",
        isOrdered: true,
        steps: [
          { cautions: ["感電感電感電感電感電感電"], does: "柱柱柱柱柱柱柱柱柱柱柱柱", why: "", expects: "" },
        ],
      },
    ];
    const text = plainText(document, 20, { columnsOf });
    for (const line of text.split("\n")) expect(columnsOf(line), line).toBeLessThanOrEqual(20);
    expect(text.split("\n")[1]).toMatch(/^[^=]|^=+$/);
  });
  it("keeps every word of a paragraph, in its order", () => {
    const text = "Dig the hole 0.4 m across and 2 m deep, and 0.1 m more for gravel.";
    const words = plainText([{ kind: "paragraph", text }], 20)
      .trim()
      .split(/\s+/);
    expect(words.join(" ")).toBe(text);
  });
  it("leaves no blanks at the end of a line and no more than one empty line", () => {
    for (const [name, document] of documents) {
      const text = plainText(document, 80);
      expect(text, name).not.toMatch(/[ \t]+\n/);
      expect(text, name).not.toMatch(/\n{3,}/);
    }
  });
  it("speaks a table row by row, each cell after its column's name", () => {
    const table: Document = [
      {
        kind: "table",
        columns: ["Run", "Current A", "Fuse"],
        align: ["left", "right", "left"],
        rows: [
          ["Battery to bus", "3.1", "5 A"],
          ["Bus to switch", "1", ""],
        ],
      },
    ];
    expect(plainText(table, 80, { isSpoken: true })).toBe(
      "Battery to bus: Current A 3.1; Fuse 5 A\nBus to switch: Current A 1\n",
    );
  });
  it("draws the post where there is room and says what it would show where there is none", () => {
    const [, document] = documents[0]!;
    const wide = plainText(document, 80);
    const narrow = plainText(document, 24);
    expect(wide).toMatch(/# \d+ panels/);
    expect(narrow).not.toMatch(/# \d+ panels/);
    expect(narrow.replace(/\s+/g, " ")).toContain("The post seen from the front");
  });
});

describe("lines broken between words", () => {
  it("are as wide as asked at most, and lose no sign but the blanks they break at", () => {
    fc.assert(
      fc.property(
        fc.string({ unit: "grapheme", maxLength: 120 }),
        fc.integer({ min: 2, max: 40 }),
        (text, columns) => {
          const lines = wrapped(text, columns, columnsOf);
          for (const line of lines) {
            if (graphemesOf(line).length > 1) expect(columnsOf(line)).toBeLessThanOrEqual(columns);
          }
          const bare = (told: string) => told.replace(/[ \n]/g, "");
          expect(bare(lines.join(""))).toBe(bare(text));
        },
      ),
    );
  });
});
