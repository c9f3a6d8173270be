import { describe, expect, it } from "vitest";
import { designOf } from "../../src/design/index.ts";
import { type Document, markdown } from "../../src/report/index.ts";
import { syntheticWorld } from "../design/fixtures.ts";
import { documentOf, documents, hostile, hostileBrief } from "./sheets.ts";

const lines = (document: Document) => markdown(document).split("\n");
const paragraph = (text: string): string => markdown([{ kind: "paragraph", text }]).trim();
const cells = (row: string) => row.replaceAll("\\|", "").split("|").length;

describe("Markdown", () => {
  it.each(documents)("has as many cells in each row as in its header: %s", (_name, document) => {
    let width = 0;
    let rows = 0;
    for (const line of lines(document)) {
      if (!line.startsWith("|")) width = 0;
      else {
        if (width > 0) expect(cells(line), line).toBe(width);
        width = cells(line);
        rows += 1;
      }
    }
    expect(rows).toBeGreaterThan(20);
  });
  it.each(documents)(
    "has a blank line round every heading, quotation, fence and table: %s",
    (_name, document) => {
      const all = lines(document);
      const kind = (line: string) =>
        /^#/.test(line) ? "heading" : /^>/.test(line) ? "quotation" : /^\|/.test(line) ? "table" : "text";
      let isFenced = false;
      all.forEach((line, i) => {
        if (line === "```") {
          if (!isFenced) expect(all[i - 1]).toBe("");
          else expect(all[i + 1]).toBe("");
          isFenced = !isFenced;
          return;
        }
        const before = all[i - 1] ?? "";
        if (isFenced || before === "" || before === "```" || line === "") return;
        if (kind(line) !== "text" || kind(before) !== "text") {
          expect(kind(before), `${before}\n${line}`).toBe(kind(line));
          expect(kind(line)).not.toBe("heading");
        }
      });
      expect(isFenced).toBe(false);
    },
  );
  it("numbers the steps from one, each in the list that its caution interrupts", () => {
    for (const [name, document] of documents) {
      const numbers = lines(document).flatMap((line) => /^(\d+)\. \[ \] /.exec(line)?.[1] ?? []);
      let last = 0;
      for (const number of numbers.map(Number)) {
        expect([1, last + 1], name).toContain(number);
        last = number;
      }
      expect(numbers.length).toBeGreaterThan(10);
    }
  });
  it("indents what belongs to a step to its text, as CommonMark asks", () => {
    let told = 0;
    for (const [, document] of documents) {
      let indent = 0;
      for (const line of lines(document)) {
        const mark = /^(\d+\.|-) \[ \] /.exec(line);
        if (mark) indent = mark[1]!.length + 1;
        const sub = /^( +)- (Expect|Why): /.exec(line);
        if (sub) {
          expect(sub[1]!.length, line).toBe(indent);
          told += 1;
        }
      }
    }
    expect(told).toBeGreaterThan(100);
  });
  it("takes no sign in a text for markup", () => {
    expect(paragraph("a * b")).toBe("a \\* b");
    expect(paragraph("<b>")).toBe("\\<b>");
    expect(paragraph("[x](y)")).toBe("\\[x\\](y)");
    expect(paragraph("`x`")).toBe("\\`x\\`");
    expect(paragraph("&lt;")).toBe("\\&lt;");
    expect(paragraph("_x_")).toBe("\\_x\\_");
    expect(paragraph("# x")).toBe("\\# x");
    expect(paragraph("> x")).toBe("\\> x");
    expect(paragraph("- x")).toBe("\\- x");
    expect(paragraph("1. x")).toBe("1\\. x");
    expect(paragraph("a\nb")).toBe("a b");
  });
  it("leaves alone what is none: decimals, names with underscores, minus signs inside", () => {
    for (const text of ["0.28", "-61 is a level", "V_mp x 3", "a > b", "3.4 m - 1"])
      expect(paragraph(text).replace(/^\\-/, "-")).toBe(text);
  });
  it("leaves a negative figure in a table as it is", () => {
    const table = markdown([{ kind: "table", columns: ["C"], align: ["right"], rows: [["-2"], ["a|b"]] }]);
    expect(table).toBe("| C |\n| ---: |\n| -2 |\n| a\\|b |\n");
  });
  it("survives a post whose name is made of markup", () => {
    const text = markdown(documentOf(designOf(hostileBrief, syntheticWorld)));
    expect(text).not.toMatch(/(?<!\\)<script/);
    expect(text.split("\n")[0]).toContain("\\`code\\`");
    expect(hostile).toContain("`code`");
  });
});
