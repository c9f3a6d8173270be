import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { interview } from "../../src/commands/wiring.ts";
import { runScript } from "../../src/interview/index.ts";
import { freshHome, inTerminal, piped } from "./start.ts";
import type { Terminal } from "./terminal.ts";

/** The real program in a real pseudo-terminal: ten topics, the real engine, data and design. */
const about = { name: "hill gate", currency: "EUR" };
const begin = ["new", "hill gate", "--currency", "EUR", "--units", "metric"];

/** What somebody types who knows a few things and is unsure of the rest. */
const known: Readonly<Record<string, string>> = {
  "place.where": "52.30, -3.51",
  "place.shade": "10 deg",
  "view.distance": "30 ft",
};

interface Question {
  readonly id: string;
  readonly typed: string;
}
let questions: readonly Question[] = [];
let unsureOnly: readonly Question[] = [];

/** Every question that comes up, in order, with the line that answers it. */
function asked(typedById: Readonly<Record<string, string>>): readonly Question[] {
  const all = new Proxy({} as Record<string, string>, {
    get: (_, id: string) => typedById[id] ?? "unsure",
    has: () => true,
    getOwnPropertyDescriptor: (_, id: string) => ({
      configurable: true,
      enumerable: true,
      value: typedById[id] ?? "unsure",
    }),
  });
  const run = runScript(interview, about, all);
  expect(run.refused).toEqual([]);
  return run.asked.map((id) => ({ id, typed: typedById[id] ?? "unsure" }));
}
beforeAll(() => {
  questions = asked(known);
  unsureOnly = asked({});
});

/** Types the answers one after the other, each when the one before it has been taken. */
async function typeAll(terminal: Terminal, lines: readonly Question[], answered = 0): Promise<void> {
  for (const [index, { typed }] of lines.entries()) {
    await terminal.waitFor("Answer │", { times: answered + index + 1 });
    terminal.send(`${typed}\r`);
  }
}
const savedIn = (home: string) => JSON.parse(readFileSync(join(home, "briefs", "hill-gate.json"), "utf8"));

describe("the whole interview", () => {
  test("the flow asks for what these journeys know", () => {
    for (const id of Object.keys(known)) expect(questions.map((question) => question.id)).toContain(id);
    expect(questions.length).toBeGreaterThan(20);
  });

  test.each([
    [60, 24],
    [100, 35],
    [160, 50],
  ])("at %i x %i: to the end, the scrollback whole, the lists written", async (columns, rows) => {
    const home = freshHome();
    const terminal = inTerminal({ program: "real", args: begin, home, columns, rows });
    await typeAll(terminal, questions);
    await terminal.waitFor("Every question is answered.");
    terminal.send("lists\r");
    await terminal.waitFor("The lists are written");
    terminal.send("save\r");
    expect(await terminal.end()).toBe(0);
    const text = terminal.everything();
    expect(text.split("\n")[0]).toMatch(/^Mastwright works out/);
    expect(text).toContain("\nMastwright: hill gate.\n");
    expect(text).toContain("Saved. Come back with: mastwright resume hill-gate");
    for (const title of interview.topics.map((topic) => topic.title))
      expect(text).toContain(`So far │ ${title}`);
    // The post is drawn beside each summary where there is room for it.
    expect(text.match(/m high/g) ?? []).toHaveLength(columns < 90 ? 0 : interview.topics.length);
    expect(terminal.sent()).not.toContain("\x1b[3J");
    for (const line of text.split("\n").slice(2)) expect(line.length).toBeLessThanOrEqual(columns);
    const page = readFileSync(join(home, "hill-gate.html"), "utf8");
    expect(page).toContain("hill gate");
    expect(Object.keys(savedIn(home).answers)).toHaveLength(questions.length);
  });

  test("unsure everywhere still ends in a design, every answer marked as assumed", async () => {
    const home = freshHome();
    const terminal = inTerminal({ program: "real", args: begin, home, columns: 100, rows: 35 });
    await typeAll(terminal, unsureOnly);
    await terminal.waitFor("Every question is answered.");
    terminal.send("\x04");
    expect(await terminal.end()).toBe(0);
    const origins = Object.values(savedIn(home).answers).map(
      (answer) => (answer as { origin: string }).origin,
    );
    expect(new Set(origins)).toEqual(new Set(["assumed"]));
    const { code, out, talk } = await piped({ program: "real", args: ["size", "hill-gate", "--json"], home });
    expect([0, 4]).toContain(code);
    expect(JSON.parse(out)).toHaveProperty("battery");
    expect(code === 4).toBe(talk.includes("Stop:"));
  });

  test("the chat screen, line by line, and from a file: one brief, one design", async () => {
    const chatHome = freshHome();
    const terminal = inTerminal({ program: "real", args: begin, home: chatHome, columns: 100, rows: 35 });
    await typeAll(terminal, questions);
    await terminal.waitFor("Every question is answered.");
    terminal.send("save\r");
    expect(await terminal.end()).toBe(0);

    const plainHome = freshHome();
    const lines = questions.map(({ typed }) => `${typed}\n`).join("");
    const plain = await piped({
      program: "real",
      args: [...begin, "--plain"],
      home: plainHome,
      input: lines,
    });
    expect(plain.code).toBe(0);
    expect(plain.out).not.toContain("\x1b");

    const typedById = Object.fromEntries(questions.map(({ id, typed }) => [id, typed]));
    const fileHome = freshHome();
    writeFileSync(
      join(fileHome, "site.json"),
      JSON.stringify({ schemaVersion: 1, ...about, answers: typedById }),
    );

    expect(savedIn(chatHome).answers).toEqual(savedIn(plainHome).answers);
    const designs = await Promise.all([
      piped({ program: "real", args: ["size", "hill-gate", "--json"], home: chatHome }),
      piped({ program: "real", args: ["size", "hill-gate", "--json"], home: plainHome }),
      piped({ program: "real", args: ["size", "site.json", "--json"], home: fileHome }),
    ]);
    for (const { out, code, talk } of designs) {
      expect(JSON.parse(out)).toEqual(JSON.parse(designs[0]!.out));
      expect(code).toBe(designs[0]!.code);
      expect(talk).toBe(designs[0]!.talk);
    }
  });
});

describe("a builder who thinks in feet", () => {
  test("types bare numbers on the chat screen; a file of bare numbers, and one with every unit, say the same", async () => {
    const home = freshHome();
    const terminal = inTerminal({
      program: "real",
      args: ["new", "hill gate"],
      home,
      env: { LANG: "en_US.UTF-8" },
      columns: 60,
      rows: 24,
    });
    await terminal.waitFor("(Enter alone takes USD)");
    terminal.send("\r");
    await terminal.waitFor("═ US (ft, lb)");
    terminal.send("\r");
    const bare = {
      "place.where": "39.80, -89.64",
      "view.distance": "30",
      "view.width": "20",
      "power.lift": "40",
    };
    const lines = asked(bare);
    const distance = lines.findIndex(({ id }) => id === "view.distance");
    const lift = lines.findIndex(({ id }) => id === "power.lift");
    await typeAll(terminal, lines.slice(0, distance));
    await terminal.waitFor("(ft or m):");
    await typeAll(terminal, lines.slice(distance, lift), distance);
    await terminal.waitFor("Heaviest lift (lb or kg):");
    await typeAll(terminal, lines.slice(lift), lift);
    await terminal.waitFor("Every question is answered.");
    terminal.send("save\r");
    expect(await terminal.end()).toBe(0);
    expect(terminal.everything()).toContain("Heard │ 30 ft");
    const saved = savedIn(home);
    expect(saved).toMatchObject({ units: "us", currency: "USD" });
    expect(saved.answers["view.distance"]).toMatchObject({ typed: "30", value: { best: 30, unit: "ft" } });

    const all = Object.fromEntries(asked(bare).map(({ id, typed }) => [id, typed]));
    const inMetres = { ...all, "view.distance": "30 ft", "view.width": "6.096 m", "power.lift": "40 lb" };
    const write = (name: string, brief: object): void =>
      writeFileSync(
        join(home, name),
        JSON.stringify({ schemaVersion: 1, name: "hill gate", currency: "USD", ...brief }),
      );
    write("feet.json", { units: "us", answers: all });
    write("units.json", { units: "us", answers: inMetres });
    write("metric.json", { answers: inMetres });
    write("metres.json", { answers: all });
    const size = (what: string) => piped({ program: "real", args: ["size", what], home });
    const [chat, feet, units, metric, metres] = await Promise.all(
      ["hill-gate", "feet.json", "units.json", "metric.json", "metres.json"].map(size),
    );
    expect(feet).toEqual(chat);
    expect(units!.out).toBe(chat!.out);
    // told in metres and kilograms it is the same post: what has no other unit in feet and pounds stays to the letter
    const alike = (out: string) =>
      out.split("\n").filter((line) => /^ *(Sun|Energy|Panels|Dark|Link|Cost)/.test(line));
    expect(alike(metric!.out)).toEqual(alike(chat!.out));
    expect(alike(chat!.out)).toHaveLength(6);
    expect(metres!.out).not.toBe(chat!.out);
  });
});

describe("a place being typed", () => {
  test("rhay is enough: its name is seen, Tab and Enter take it; 24 rows keep question and commands", async () => {
    const home = freshHome();
    const terminal = inTerminal({ program: "real", args: begin, home, columns: 80, rows: 24 });
    await terminal.waitFor("Answer │");
    terminal.send("52.30, -3");
    await terminal.settled();
    expect(terminal.everything()).not.toContain("Tab │");
    terminal.send("\x15rhay");
    await terminal.waitFor("Tab │ Rhayader, Wales, United Kingdom");
    const screen = terminal.screen().join("\n");
    expect(screen).toContain("question 1 of");
    expect(screen).toMatch(/Answer │ .*: rhay\n {7}Tab │ Rhayader.*\n.*\bhelp\b/);
    terminal.send("\t");
    await terminal.waitFor(": Rhayader, Wales, United Kingdom");
    terminal.send("\r");
    await terminal.waitFor("Answer │", { times: 2 });
    // GeoNames: Rhayader, 52.302 N 3.512 W.
    const { site } = savedIn(home).answers["place.where"].value;
    expect(site).toMatchObject({ label: "Rhayader, Wales, United Kingdom", countryCode: "GB" });
    expect(site.latitudeDeg).toBeCloseTo(52.302, 2);
    expect(site.longitudeDeg).toBeCloseTo(-3.512, 2);
    terminal.send("\x03");
    expect(await terminal.end()).toBe(130);
  });
});

describe("mistakes, and minds changed", () => {
  test("a unit that is none, a unit of the wrong kind, a figure out of range: said, nothing lost", async () => {
    const home = freshHome();
    const terminal = inTerminal({ program: "real", args: begin, home, columns: 100, rows: 35 });
    const before = questions.slice(
      0,
      questions.findIndex(({ id }) => id === "place.shade"),
    );
    await typeAll(terminal, before);
    await terminal.waitFor("Answer │", { times: before.length + 1 });
    terminal.send("5 fx\r");
    await terminal.waitFor("Once more │", { times: 1 });
    terminal.send("12 V\r");
    await terminal.waitFor("Once more │", { times: 2 });
    terminal.send("4000 deg\r");
    await terminal.waitFor("Once more │", { times: 3 });
    const text = terminal.everything();
    expect(text).toContain("fx");
    expect(text).toContain("12 V is a voltage");
    expect(text).toContain("4000");
    expect(Object.keys(savedIn(home).answers)).toEqual(before.map(({ id }) => id));
    terminal.send("10 deg\r");
    await terminal.waitFor("Answer │", { times: before.length + 2 });
  });

  test("back three times, the answers offered, and Enter keeps each", async () => {
    const home = freshHome();
    const terminal = inTerminal({ program: "real", args: begin, home, columns: 100, rows: 35 });
    await typeAll(terminal, questions.slice(0, 3));
    await terminal.waitFor("Answer │", { times: 4 });
    const before = savedIn(home).answers;
    for (let times = 0; times < 3; times++) {
      terminal.send("back\r");
      await terminal.waitFor("Enter alone keeps");
      await terminal.settled();
    }
    expect(terminal.screen().join("\n")).toContain("question 1 of");
    terminal.send("\r\r\r");
    await terminal.waitFor("Answer │", { times: 7 });
    expect(savedIn(home).answers).toEqual(before);
  });

  test("Ctrl-C in the middle, and on another day from there", async () => {
    const home = freshHome();
    const first = inTerminal({ program: "real", args: begin, home, columns: 100, rows: 35 });
    await typeAll(first, questions.slice(0, 6));
    await first.waitFor("Answer │", { times: 7 });
    first.send("\x03");
    expect(await first.end()).toBe(130);
    const second = inTerminal({
      program: "real",
      args: ["resume", "hill-gate"],
      home,
      columns: 100,
      rows: 35,
    });
    await second.waitFor("6 questions are answered");
    await typeAll(second, questions.slice(6));
    await second.waitFor("Every question is answered.");
    expect(Object.keys(savedIn(home).answers).sort()).toEqual(questions.map(({ id }) => id).sort());
  });

  test("an earlier answer changed at the end: what that changed is said", async () => {
    const home = freshHome();
    const terminal = inTerminal({ program: "real", args: begin, home, columns: 100, rows: 35 });
    await typeAll(terminal, questions);
    await terminal.waitFor("Every question is answered.");
    terminal.send("change 1\r");
    await terminal.waitFor("Enter alone keeps");
    terminal.send("30.05, 31.25\r");
    await terminal.waitFor("Changed │");
    await terminal.waitFor("Every question is answered.");
    expect(terminal.everything()).toMatch(/Changed │ .* → /);
  });
});

describe("surroundings", () => {
  test("with CI set, with NO_COLOR, and without Unicode it asks all the same", async () => {
    for (const env of [{ CI: "true" }, { NO_COLOR: "1" }, { LC_ALL: "C" }] as const) {
      const terminal = inTerminal({ program: "real", args: begin, home: freshHome(), env });
      const rule = "LC_ALL" in env ? "Answer |" : "Answer │";
      await terminal.waitFor(rule);
      terminal.send("52.30, -3.51\r");
      await terminal.waitFor(rule, { times: 2 });
      if ("NO_COLOR" in env) expect(terminal.sent()).not.toMatch(/\x1b\[[0-9;]*m/);
      if ("LC_ALL" in env) expect(terminal.sent()).toMatch(/^[\x00-\x7e]*$/);
    }
  });

  test("the schema names every question that can come up", async () => {
    const { out } = await piped({ program: "real", args: ["schema"], home: freshHome() });
    const { properties } = JSON.parse(out);
    const ids = Object.keys(properties.answers.properties);
    const patterns = Object.keys(properties.answers.patternProperties).map((pattern) => new RegExp(pattern));
    for (const { id } of questions) {
      expect(ids.includes(id) || patterns.some((pattern) => pattern.test(id)), id).toBe(true);
    }
  });

  test("where data comes from is said", async () => {
    const { out } = await piped({ program: "real", args: ["about"], home: freshHome() });
    expect(out).toMatch(/GeoNames.*CC BY 4\.0/);
  });

  test.each(["md", "text", "html", "csv", "json"])("a checklist as %s", async (format) => {
    const home = freshHome();
    const answers = { "place.where": "52.30, -3.51" };
    writeFileSync(join(home, "site.json"), JSON.stringify({ schemaVersion: 1, ...about, answers }));
    const { code, out, talk } = await piped({
      program: "real",
      args: ["checklist", "site.json", "--to", format],
      home,
    });
    expect(code).toBe(3);
    expect(talk).toContain("not answered: view.");
    expect(out.length).toBeGreaterThan(500);
    expect(out).not.toMatch(/undefined|NaN|\[object|Infinity/);
  });
});
