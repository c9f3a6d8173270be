import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import type { Options } from "../../src/commands/command-line.ts";
import type { Context } from "../../src/commands/context.ts";
import { postClock } from "../../src/commands/look-ahead.ts";
import { briefAndOutlook, run } from "../../src/commands/outlook.ts";
import { surroundingsFrom } from "../../src/commands/surroundings.ts";
import { designOf } from "../../src/design/index.ts";
import { at, sites, syntheticWorld } from "../design/fixtures.ts";

const brief = "transcripts-demo/trailhead/brief.json";

function played(words: string, options: Options = {}, columns = 80) {
  let printed = "";
  let talked = "";
  const context = {
    args: words.split(" "),
    options,
    surroundings: surroundingsFrom({
      env: { LANG: "en_GB.UTF-8" },
      options,
      platform: "linux",
      isInputTerminal: true,
      isOutputTerminal: true,
      systemLocale: "en-GB",
      columns,
    }),
    briefs: { exists: () => false, list: () => [] },
    out: (text: string) => {
      printed += text;
    },
    talk: (text: string) => {
      talked += text;
    },
    nowUtc: () => "2026-11-24T02:30:00Z",
  } as unknown as Context;
  const code = run(context);
  return { code, printed, talked };
}

describe("which words are the brief and which the outlook", () => {
  test.each([
    ["hill-gate 60 %, rain, sunny", "hill-gate", "60 %, rain, sunny"],
    ["hill gate 60%, rain", "hill gate", "60%, rain"],
    ["gate 2 60 %, rain", "gate 2", "60 %, rain"],
    ["2026-gate.json 12.4 V 2 rain", "2026-gate.json", "12.4 V 2 rain"],
    ["hill gate at 60 %, rain", "hill gate", "at 60 %, rain"],
    ["- 24,6V, 1.2", "-", "24,6V, 1.2"],
    ["hill gate off 60 %, rain", "hill gate", "off 60 %, rain"],
    ["hill gate it is off 60 %, rain", "hill gate", "it is off 60 %, rain"],
    ["north camera 60 %, rain, camera off", "north camera", "60 %, rain, camera off"],
    ["hill-gate", "hill-gate", ""],
    ["hill-gate 6o %, rain", "hill-gate", "6o %, rain"],
  ])("%s", (words, name, outlook) => {
    expect(briefAndOutlook(words.split(" "))).toEqual({ brief: name, outlook });
  });
});

describe("the command", () => {
  test("says when loads go off, and draws the charge, no wider than the window", () => {
    for (const columns of [60, 120]) {
      const { code, printed } = played(
        `${brief} 60 %, rain, rain, sunny`,
        { month: "6", hour: "14" },
        columns,
      );
      expect(code).toBe(0);
      expect(printed).toMatch(/^trailhead\n\n/);
      expect(printed.replace(/\n/g, " ")).toMatch(/The picture, with all that it needs, /);
      expect(printed).toMatch(/a mark at midnight\n$/);
      for (const line of printed.split("\n")) expect(line.length).toBeLessThanOrEqual(Math.min(80, columns));
    }
  });
  test("leaves the drawing out where it is read line by line, and knows ASCII", () => {
    const { printed } = played(`${brief} 60 %, rain`, { month: "jun", hour: "14", plain: true, ascii: true });
    expect(printed).toMatch(/^[\x20-\x7e\n]+$/);
    expect(printed).not.toMatch(/\|/);
    expect(printed).toMatch(/The last loads/);
  });
  test("as JSON has every hour, and the more charge there is the later it is dark", () => {
    const of = (charge: number) => {
      const { printed } = played(`${brief} ${charge} %, 10 rain`, { json: true, month: "6", hour: "0" });
      return JSON.parse(printed);
    };
    const full = of(100);
    expect(full).toMatchObject({ name: "trailhead", kind: "outlook", month: 5, hourNow: 0 });
    expect(full.socFracByHour).toHaveLength(241);
    const pictureOff = (outlook: { tiers: { carriesPicture: boolean; hoursUntilShed: number | null }[] }) =>
      outlook.tiers.find(({ carriesPicture }) => carriesPicture)!.hoursUntilShed ?? 999;
    expect(pictureOff(of(50))).toBeLessThanOrEqual(pictureOff(full));
    expect(pictureOff(of(10))).toBe(0);
  });
  test("of an unfinished brief it says in one sentence that questions are open", () => {
    const dir = mkdtempSync(join(tmpdir(), "outlook-"));
    const file = join(dir, "half.json");
    const { answers, ...rest } = JSON.parse(readFileSync(brief, "utf8"));
    const half = Object.fromEntries(Object.entries(answers).slice(0, 12));
    writeFileSync(file, JSON.stringify({ ...rest, answers: half }));
    const { printed, talked } = played(`${file} 60 %, rain`, { month: "6", hour: "14" });
    expect(printed).toMatch(/picture/);
    expect(talked).toMatch(/\d+ questions are not answered yet, and stand-ins are used/);
    expect(talked).not.toMatch(/not answered:/);
    rmSync(dir, { recursive: true });
  });
  test.each([
    [`${brief}`, {}, /Begin with the charge.*\nSee: mastwright help outlook/],
    [`${brief} 60 %, purple`, {}, /"purple" is neither/],
    [`${brief} 60 %, rain`, { month: "13" }, /--month takes 1 to 12 or a name; got "13"/],
    [`${brief} 60 %, rain`, { hour: "24" }, /--hour takes 0 to 23; got "24"/],
    [`nowhere.json 60 %, rain`, {}, /neither a file nor a saved brief/],
    [`${brief} 60 V, rain`, {}, /no voltage at rest of this bank of \d+.* V: measure across the whole bank/],
    [`${brief} 60 %, 14`, {}, /No day in \w+ can bring 14 kWh\/m2/],
  ] as const)("%s cannot be used, and why", (words, options, says) => {
    const { code, printed, talked } = played(words, options);
    expect(code).toBe(2);
    expect(printed).toBe("");
    expect(talked).toMatch(says);
  });
});

describe("the clock", () => {
  const now = "2026-12-01T02:30:00Z";
  test("is the one at the post", () => {
    // Colorado: seven hours behind in winter, so it is still the evening of 30 November there
    expect(postClock(designOf(at(sites.colorado), syntheticWorld), now)).toEqual({ month: 10, hourNow: 19 });
    // 60 N, 25 E lies in Finland: two hours ahead
    expect(postClock(designOf(at(sites.north60), syntheticWorld), now)).toEqual({ month: 11, hourNow: 4 });
  });
});
