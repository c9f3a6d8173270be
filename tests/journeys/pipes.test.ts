import { spawn } from "node:child_process";
import { once } from "node:events";
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { programs } from "./build.ts";
import { freshHome, piped, shellEnv } from "./start.ts";

/** The commands without a terminal, over the tiny three-question conversation. */
const run = (home: string, args: readonly string[], input = "") =>
  piped({ program: "tiny", args, home, input });
const brief = (answers: Readonly<Record<string, string>>, more: object = {}): string =>
  JSON.stringify({ schemaVersion: 1, name: "Gate", currency: "EUR", answers, ...more });
const whole = { "place.name": "Tromsø", "view.kind": "fixed", "link.distance": "1 km" };

describe("without a terminal", () => {
  test("it explains itself and ends cleanly", async () => {
    const home = freshHome();
    const { code, out, talk } = await run(home, []);
    expect(code).toBe(0);
    expect(out).toContain("mastwright size BRIEF.json --json");
    expect(out).toContain("mastwright --plain");
    expect(talk).toBe("");
    expect(existsSync(join(home, "briefs"))).toBe(false);
  });

  test("with --plain it interviews from the pipe, without one escape sequence", async () => {
    const home = freshHome();
    const { code, out, talk } = await run(home, ["--plain"], "Tromsø\nfixed\n1.2 km\nquit\n");
    expect(code).toBe(0);
    expect(out).not.toContain("\x1b");
    expect(out).toContain("Place: Tromsø\nSo: Noted Tromsø as answer 1.\n");
    expect(out.trimEnd().split("\n").at(-1)).toBe("Saved. Come back with: mastwright resume my-post --plain");
    expect(talk).toBe("");
  });

  test("a new post begins with what this is, a resumed one does not", async () => {
    const home = freshHome();
    const begun = await run(home, ["new", "gate", "--plain", "--units", "us"], "Tromsø\n");
    expect(begun.out).toMatch(
      /^Mastwright works out a camera post .*\nAbout \d+ questions.*\n.*internet.*\n\n/,
    );
    const saved = JSON.parse(readFileSync(join(home, "briefs", "gate.json"), "utf8"));
    expect(saved).toMatchObject({ units: "us", currency: "USD" });
    // One brief: there is nothing to ask about which is meant.
    const resumed = await run(home, ["resume", "--plain"], "fixed\n");
    expect(resumed.out).toMatch(/^Mastwright: gate\.\nSaved as you go\./);
    expect(resumed.out).not.toContain("questions");
    expect(JSON.parse(readFileSync(join(home, "briefs", "gate.json"), "utf8")).units).toBe("us");
  });

  test("the input may end anywhere: saved, code 3, and it goes on from there", async () => {
    const home = freshHome();
    expect((await run(home, ["new", "gate", "--plain"], "Tromsø\n")).code).toBe(3);
    const rest = await run(home, ["resume", "gate", "--plain"], "fixed\n1 km\n");
    expect(rest.code).toBe(0);
    expect(rest.out).not.toContain("nearest town?");
  });

  test("a name that is not there, a wrong option, a wrong currency: code 2 and one sentence", async () => {
    const home = freshHome();
    for (const args of [
      ["resume", "nowhere", "--plain"],
      ["new", "gate", "--currency", "taler", "--plain"],
      ["new", "gate", "--units", "imperial", "--plain"],
      ["--nonsense"],
      ["sizes"],
      ["remove", "nowhere"],
      ["checklist", "nowhere.json"],
    ]) {
      const { code, out, talk } = await run(home, args);
      expect(code, args.join(" ")).toBe(2);
      expect(out).toBe("");
      expect(talk.length).toBeGreaterThan(10);
      expect(talk).not.toMatch(/\n\s+at /);
    }
  });

  test("a name that is not there is answered with those that are", async () => {
    const home = freshHome();
    expect((await run(home, ["resume", "nowhere", "--plain"])).talk).toContain("No brief is saved yet.");
    for (const name of ["a", "b"]) await run(home, ["new", name, "--plain"], "Tromsø\n");
    const args = [
      ["resume", "nowhere", "--plain"],
      ["remove", "no", "where"],
      ["size", "nowhere"],
    ] as const;
    for (const each of args) expect((await run(home, each)).talk, each[0]).toContain("Saved: b, a.\n");
    for (const name of "cdef") await run(home, ["new", name, "--plain"], "Tromsø\n");
    expect((await run(home, ["show", "nowhere"])).talk).toContain(
      "Saved: f, e, d, c, b and 1 more, see: mastwright list",
    );
  });

  test("removing needs --yes where nobody can confirm it", async () => {
    const home = freshHome();
    await run(home, ["new", "gate", "--plain"], "Tromsø\n");
    expect((await run(home, ["remove", "gate"])).talk).toContain("mastwright remove gate --yes");
    expect((await run(home, ["remove", "gate", "--yes"])).code).toBe(0);
    expect(readdirSync(join(home, "briefs"))).toEqual([]);
  });

  test("the lists are written where one stands, and no file of somebody else's is touched", async () => {
    const home = freshHome();
    writeFileSync(join(home, "gate.html"), "mine");
    const { out } = await run(home, ["new", "gate", "--plain"], "lists\nlists\n");
    expect(out).toContain("The lists are written");
    expect(readFileSync(join(home, "gate.html"), "utf8")).toBe("mine");
    // Their own ones are written anew, not numbered on and on.
    const lists = readdirSync(home).filter((name) => name.startsWith("gate"));
    expect(lists.sort()).toEqual(["gate-2.html", "gate-parts.csv", "gate.html", "gate.md"]);
    expect(readFileSync(join(home, "gate-2.html"), "utf8")).toContain("Camera post: gate (html)");
  });
});

describe("from a file", () => {
  test("results on standard output, everything else on standard error", async () => {
    const home = freshHome();
    const { code, out, talk } = await run(home, ["size", "-", "--json"], brief(whole));
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ name: "Gate" });
    expect(talk).toBe("");
  });

  test("missing answers are named, and the code is 3; a stop is 4; an answer not understood is 2", async () => {
    const home = freshHome();
    const missing = await run(home, ["size", "-"], brief({ "place.name": "Tromsø" }));
    expect(missing.code).toBe(3);
    expect(missing.talk).toBe(
      "Gate: not answered: view.kind (view.kind?)\nGate: not answered: link.distance (link.distance?)\n",
    );
    expect(missing.out).toContain("200 Ah at 12 V");
    const stop = await run(home, ["size", "-"], brief({ ...whole, "place.name": "under the line" }));
    expect(stop.code).toBe(4);
    expect(stop.talk).toContain("Stop: A line is overhead.");
    const both = await run(home, ["size", "-"], brief({ "place.name": "under the line" }));
    expect(both.code).toBe(4);
    expect(both.talk).toContain("not answered: view.kind");
    const refused = await run(home, ["size", "-"], brief({ ...whole, "view.colour": "red" }));
    expect(refused.code).toBe(2);
    expect(refused.talk).toContain("view.colour was not understood");
  });

  test("several at once are one JSON list, and the gravest decides", async () => {
    const home = freshHome();
    writeFileSync(join(home, "a.json"), brief(whole));
    writeFileSync(join(home, "b.json"), brief(whole, { name: "Barn" }));
    const both = await run(home, ["size", "a.json", "b.json", "--json"]);
    expect(JSON.parse(both.out).map((one: { name: string }) => one.name)).toEqual(["Gate", "Barn"]);
    writeFileSync(join(home, "c.json"), "{");
    const broken = await run(home, ["size", "a.json", "c.json", "--json"]);
    expect(broken.code).toBe(2);
    expect(JSON.parse(broken.out)).toHaveLength(1);
    expect(readFileSync(join(home, "c.json"), "utf8")).toBe("{");
  });

  test("a file made by a later version is refused by name", async () => {
    const home = freshHome();
    const { code, talk } = await run(home, ["size", "-"], brief(whole, { schemaVersion: 99 }));
    expect(code).toBe(2);
    expect(talk).toContain("later Mastwright (its version 99)");
  });

  test("a saved brief by its name, in any format", async () => {
    const home = freshHome();
    await run(home, ["new", "Hill Gate", "--plain"], "Tromsø\nfixed\n1 km\nquit\n");
    for (const format of ["md", "text", "html", "csv"]) {
      const { code, out } = await run(home, ["checklist", "hill-gate", "--to", format]);
      expect(code).toBe(0);
      expect(out).toContain(`Camera post: Hill Gate (${format})`);
    }
    expect((await run(home, ["show", "Hill Gate", "--to", "pdf"])).code).toBe(2);
  });

  test("answers that this version does not know stay in the file", async () => {
    const home = freshHome();
    await run(home, ["new", "gate", "--plain"], "Tromsø\n");
    const path = join(home, "briefs", "gate.json");
    const file = JSON.parse(readFileSync(path, "utf8"));
    writeFileSync(path, JSON.stringify({ ...file, answers: { ...file.answers, "view.gone": "kept" } }));
    const { talk } = await run(home, ["resume", "gate", "--plain"], "fixed\n");
    expect(talk).toContain("Not understood: view.gone");
    expect(JSON.parse(readFileSync(path, "utf8")).answers).toMatchObject({
      "view.gone": "kept",
      "view.kind": { typed: "fixed" },
    });
  });

  test("a damaged saved brief is set aside by resuming, and said", async () => {
    const home = freshHome();
    await run(home, ["new", "gate", "--plain"], "Tromsø\n");
    writeFileSync(join(home, "briefs", "gate.json"), "{");
    const { code, talk } = await run(home, ["resume", "gate", "--plain"]);
    expect(code).toBe(2);
    expect(talk).toMatch(/gate could not be read: .*\. It was kept as .*gate\.json\.bad-1\./);
  });

  test("where nothing can be saved the interview goes on, and says so once", async () => {
    const home = freshHome();
    writeFileSync(join(home, "briefs"), "a file where the folder should be");
    const { code, out } = await run(home, ["new", "gate", "--plain"], "Tromsø\nfixed\n1 km\nquit\n");
    expect(code).toBe(0);
    expect(out.match(/cannot be saved/g)).toHaveLength(1);
    expect(out).not.toContain("Saved. Come back");
  });
});

test("a reader that goes away early is no error", async () => {
  const home = freshHome();
  const child = spawn(process.execPath, [programs.tiny.file, "help"], { env: shellEnv(home) });
  child.stdout.destroy();
  let talk = "";
  child.stderr.setEncoding("utf8").on("data", (text: string) => {
    talk += text;
  });
  const [code] = await once(child, "close");
  expect(code).toBe(0);
  expect(talk).toBe("");
});
