import { describe, expect, it } from "vitest";
import { stageNames } from "../../src/design/index.ts";
import { designJson } from "../../src/report/index.ts";
import { designs } from "../design/lists/variants.ts";

type Json = Readonly<Record<string, unknown>>;
const holdsNumber = (value: unknown): boolean =>
  typeof value === "number" ||
  (typeof value === "object" && value !== null && Object.values(value).some(holdsNumber));

/** Numbers below a value, with their paths. */
function numbers(value: unknown, path: string): readonly (readonly [path: string, number: number])[] {
  if (typeof value === "number") return [[path, value]];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, below]) => numbers(below, `${path}.${key}`));
}

describe("the design as JSON", () => {
  it.each(designs)("parses, is versioned, and keeps the brief as it was given: %s", (_name, design) => {
    const text = designJson(design);
    const json = JSON.parse(text) as Json;
    expect(text.endsWith("}\n")).toBe(true);
    expect(json.schemaVersion).toBe(1);
    expect(json.name).toBe(design.name);
    expect(json.brief).toEqual(JSON.parse(JSON.stringify(design.brief)));
    expect((json.findings as readonly unknown[]).length).toBe(design.findings.length);
    expect((json.lists as readonly Json[]).map(({ id }) => id)).toContain("installation");
  });
  it.each(designs)("says of every figure how it was worked and who says so: %s", (_name, design) => {
    const json = JSON.parse(designJson(design)) as Json;
    const sources = json.sources as Readonly<Record<string, Json>>;
    let figures = 0;
    for (const stage of stageNames) {
      for (const [field, value] of Object.entries((json[stage] as Json | null) ?? {})) {
        if (!holdsNumber(value)) continue;
        const source = sources[`${stage}.${field}`];
        expect(source, `${stage}.${field}`).toBeDefined();
        for (const told of ["what", "formula", "source"]) expect(String(source![told])).not.toBe("");
        figures += 1;
      }
    }
    expect(figures).toBeGreaterThan(20);
  });
  it.each(designs)("has an origin beside every answer: %s", (_name, design) => {
    const { brief } = JSON.parse(designJson(design)) as { readonly brief: Json };
    const bare: string[] = [];
    const walk = (value: unknown, path: string): void => {
      if (typeof value !== "object" || value === null) return;
      if ("origin" in value) return;
      // A schedule and a shedding order are read from the answers of the hours topic, which carry the origins.
      for (const [key, below] of Object.entries(value)) {
        if (typeof below === "number" && !/schedule|priority/.test(`${path}.${key}`))
          bare.push(`${path}.${key}`);
        walk(below, `${path}.${key}`);
      }
    };
    walk(brief, "brief");
    expect(bare).toEqual([]);
  });
  it("gives no figure more than six digits, and changes none by more than that", () => {
    for (const [name, design] of designs) {
      const json = JSON.parse(designJson(design)) as Json;
      for (const stage of stageNames) {
        const before = new Map(numbers(design[stage], stage));
        for (const [path, value] of numbers(json[stage], stage)) {
          expect(
            value.toExponential().replace(/e.*|[-.]/g, "").length,
            `${name}: ${path}`,
          ).toBeLessThanOrEqual(6);
          const exact = before.get(path)!;
          expect(Math.abs(value - exact), path).toBeLessThanOrEqual(5e-6 * Math.abs(exact));
        }
      }
    }
  });
  it("names the unit of every figure: a stage's number ends in its unit or is a count, a share or a ratio", () => {
    const unit =
      /(W|Wh|V|A|Ah|M|M2|M3|Mm|Mm2|Cm2|L|Kg|N|Nm|Pa|C|K|H|S|Days|Db|Dbm|Dbi|MHz|Mbps|GB|Deg|Frac|Ratio|PerDay|PerM2ByMonth|ByMonth|ByMonthAndHour|PerS|PerH|PerKm|PerK|PxPerM|Wh|Month|Price|Parts|Total|PerUsd|Hours|Years|PerYear|ByDay|Cost)$/;
    const counts =
      /^(panels|posts|hiddenPairs|blocks|inSeries|inParallel|controllers|quantity|people|poeClass|pixelsAcross|pixelsDown|bags25Kg|bags50Lb|ceiling|darkMonths|summerMonths|month|years|blockV)$/;
    for (const [, design] of designs) {
      for (const stage of stageNames) {
        for (const [path] of numbers(design[stage], stage)) {
          const name = path.split(".").findLast((key) => !/^\d+$/.test(key))!;
          expect(unit.test(name) || counts.test(name), path).toBe(true);
        }
      }
    }
  });
});
