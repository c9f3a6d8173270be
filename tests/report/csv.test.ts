import { describe, expect, it } from "vitest";
import { type Design, designOf } from "../../src/design/index.ts";
import { partsCsv } from "../../src/report/index.ts";
import { syntheticWorld, typicalBrief } from "../design/fixtures.ts";
import { designs } from "../design/lists/variants.ts";
import { csvRecords } from "./sheets.ts";

const typical = designOf(typicalBrief, syntheticWorld);
const withName = (name: string): Design => ({
  ...typical,
  parts: { lines: [{ ...typical.parts.lines[0]!, name, specification: [name] }] },
});
const fieldOf = (name: string) => csvRecords(partsCsv(withName(name)))[1]![1];

describe("the parts as CSV", () => {
  it.each(designs)("is a header and one whole record a part: %s", (_name, design) => {
    const [header, ...records] = csvRecords(partsCsv(design));
    expect(records).toHaveLength(design.parts.lines.length);
    for (const record of records) expect(record).toHaveLength(header!.length);
    const at = (column: string) => header!.findIndex((name) => name.startsWith(column));
    records.forEach((record, i) => {
      const part = design.parts.lines[i]!;
      expect(record[at("part")]).toBe(part.name);
      expect(Number(record[at("quantity")])).toBe(part.quantity);
      expect(Number(record[at("low price")])).toBe(part.lowPrice);
      expect(record[at("confirm first")]).toBe(part.restsOnAssumed ? "yes" : "no");
    });
    expect(header!.join()).toContain(`price ${design.money.currency}`);
  });
  it("quotes commas, quotation marks and line ends, and gives them back", () => {
    for (const name of ["a, b", 'say "x"', "two\r\nlines", "two\nlines", '",', '""']) {
      expect(fieldOf(name)).toBe(name);
    }
  });
  it("is nothing a spreadsheet would run", () => {
    for (const name of ["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1"])
      expect(fieldOf(name)).toBe(`'${name}`);
    expect(fieldOf("1-1")).toBe("1-1");
  });
  it("spells degrees, so that no guess at the encoding spoils them", () => {
    for (const [name, design] of designs) expect(partsCsv(design), name).toMatch(/^[\x20-\x7e\r\n]*$/);
    expect(fieldOf("25 °C")).toBe("25 C");
    expect(fieldOf("tilt 15°")).toBe("tilt 15 degrees");
  });
});
