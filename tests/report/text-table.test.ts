/** Tables and contents of the plain text, read back as a reader would: by column, by line number, by ear. */
import { describe, expect, it } from "vitest";
import { type Document, plainText } from "../../src/report/index.ts";
import { documents } from "./sheets.ts";

type Table = Extract<Document[number], { kind: "table" }>;
const words = (text: string): readonly string[] => text.split(/\s+/).filter((word) => word !== "");
const months: Table = {
  kind: "table",
  columns: [
    "Month",
    "On the panels kWh/m2 a day",
    "Mean temperature C",
    "Asked Wh a day",
    "Supply over demand",
  ],
  align: ["left", "right", "right", "right", "right"],
  rows: [
    ["Jan", "0.51", "-4", "1012", "rests"],
    ["Feb", "1.1", "4", "12", "2.7"],
  ],
};

describe("a table in the text", () => {
  it("has a row a month, each figure under the end of its column's name", () => {
    expect(plainText([months], 60).split("\n")).toEqual([
      "       On the",
      "       panels         Mean  Asked  Supply",
      "       kWh/m2  temperature   Wh a    over",
      "Month   a day            C    day  demand",
      "-----  ------  -----------  -----  ------",
      "Jan      0.51           -4   1012   rests",
      "Feb       1.1            4     12     2.7",
      "",
    ]);
  });
  it("is cut into several that begin alike where it is too wide, and no column is lost or said twice", () => {
    const text = plainText([months], 30);
    expect(text.match(/^Jan /gm)).toHaveLength(2);
    for (const cell of ["0.51", "-4", "1012", "rests", "1.1", "2.7"])
      expect(words(text).filter((word) => word === cell)).toHaveLength(1);
    for (const line of text.split("\n")) expect(line.length).toBeLessThanOrEqual(30);
  });
  it("wraps words in their column, not under another", () => {
    const table: Table = {
      kind: "table",
      columns: ["Topic", "Answer", "From"],
      align: ["left", "left", "left"],
      rows: [
        ["Place", "a town near the sea, with a long name of its own", "estimate"],
        ["View", "12 m", "measured"],
      ],
    };
    expect(plainText([table], 50).split("\n").slice(2, 5)).toEqual([
      "Place  a town near the sea, with a long   estimate",
      "       name of its own",
      "View   12 m                               measured",
    ]);
  });
  it("is told in words where it is read aloud, and no drawing comes with it", () => {
    expect(plainText([months], 200, { isSpoken: true }).split("\n")[0]).toBe(
      "Jan: On the panels kWh/m2 a day 0.51; Mean temperature C -4; Asked Wh a day 1012; Supply over demand rests",
    );
    const [, document] = documents[0]!;
    expect(plainText(document, 80)).toContain("---  ---");
    const spoken = plainText(document, 80, { isSpoken: true });
    expect(spoken).not.toMatch(/-{3} {2}-{3}|# \d+ panels|└|░/);
    expect(spoken).toContain("The post seen from the front");
  });
  it("does not say a column's name twice", () => {
    const table: Table = {
      ...months,
      columns: ["Part", "At least"],
      align: ["left", "left"],
      rows: [["Switch", "at least 2 ports"]],
    };
    expect(plainText([table], 80)).toBe("Switch: at least 2 ports\n");
  });

  const shown = [30, 60, 80].flatMap((columns) =>
    documents.map(([name, document]) => [name, columns, document] as const),
  );
  it.each(shown)("keeps every word of every cell: %s at %i columns", (_name, columns, document) => {
    for (const block of document) {
      if (block.kind !== "table") continue;
      const bare = (told: string) => told.replace(/\s/g, "");
      const text = plainText([block], columns);
      const all = bare(text);
      const has = new Set(words(text).map((word) => word.replace(/[;:]$/, "")));
      for (const cell of block.rows.flat())
        for (const word of words(cell))
          expect(has.has(word.replace(/[;:]$/, "")) || all.includes(word), word).toBe(true);
    }
  });
});

describe("the contents", () => {
  it.each(documents)("name every part and the line where it stands: %s", (_name, document) => {
    for (const columns of [46, 60, 80]) {
      const lines = plainText(document, columns).split("\n");
      const from = lines.findIndex((line) => line.startsWith("Contents, and"));
      const told = lines.slice(from).join("\n").split("\n\n")[0]!;
      const parts = document.flatMap((block) =>
        block.kind === "heading" && block.level === 2 ? [block.text] : [],
      );
      const numbers = Array.from(
        told.matchAll(/^ *(\d+) {2}(\S.*)$/gm),
        ([, number, title]) => [Number(number), title!] as const,
      );
      expect(numbers.map(([, title]) => title)).toEqual(parts);
      expect(numbers.length).toBeGreaterThan(0);
      for (const [number, title] of numbers)
        expect(lines[number - 1]).toMatch(new RegExp(`^${title.slice(0, 12)}`));
    }
  });
  it("are left out of what is short", () => {
    expect(plainText([{ kind: "heading", level: 2, text: "Tools" }], 80)).toBe("Tools\n-----\n");
  });
});

describe("steps in the text", () => {
  const step = (does: string, why: string, cautions: readonly string[] = []) => ({
    does,
    why,
    cautions,
    expects: "",
  });
  it("done for one reason say it once, with their numbers", () => {
    const steps = [
      step("Look.", "A."),
      step("Measure it.", "B."),
      step("Measure that.", "B."),
      step("Go.", ""),
    ];
    expect(plainText([{ kind: "steps", isOrdered: true, steps }], 80)).toBe(
      "1. Look.\n   Why: A.\n\n2. Measure it.\n   Why of 2 to 3: B.\n\n3. Measure that.\n\n4. Go.\n",
    );
  });
  it("to be ticked off stand close, but a caution never leans on the step before it", () => {
    const steps = [
      step("Rope.", ""),
      step("Meter.", ""),
      step("Blanket.", "", ["Sun burns."]),
      step("Towel.", ""),
    ];
    expect(plainText([{ kind: "steps", isOrdered: false, steps }], 80)).toBe(
      "- Rope.\n- Meter.\n\nCaution: Sun burns.\n- Blanket.\n\n- Towel.\n",
    );
  });
});
