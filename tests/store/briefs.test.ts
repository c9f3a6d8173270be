import { spawn, spawnSync } from "node:child_process";
import { once } from "node:events";
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { type BriefFile, idOf, openBriefs, openSettings } from "../../src/store/index.ts";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "mastwright-"));
});
afterEach(() => {
  chmodSync(folder, 0o700);
  rmSync(folder, { recursive: true, force: true });
});

const file: BriefFile = {
  schemaVersion: 1,
  name: "Hill gate",
  currency: "EUR",
  units: "metric",
  savedUtc: "2026-11-24T12:00:00Z",
  topicVersions: { place: 1 },
  answers: {
    "place.site": "Tromsø",
    "link.distance": {
      typed: "30 ft",
      value: { kind: "quantity", low: 9, best: 9.1, high: 9.2, unit: "m" },
      origin: "measured",
    },
    "loads.device.1.kind": { typed: "1", value: { kind: "choice", option: "camera" }, origin: "estimate" },
  },
};

describe("a saved brief", () => {
  test("comes back as it was saved, ids with dots and all", () => {
    openBriefs(folder).save("hill-gate", file);
    expect(openBriefs(folder).load("hill-gate")).toEqual({ kind: "brief", file });
  });

  test("is readable by its owner only", () => {
    openBriefs(folder).save("hill-gate", file);
    expect(statSync(openBriefs(folder).pathOf("hill-gate")).mode & 0o777).toBe(0o600);
  });

  test("an answer taken back is gone from the file", () => {
    const briefs = openBriefs(folder);
    briefs.save("hill-gate", file);
    briefs.save("hill-gate", { ...file, answers: { "place.site": "Tromsø" } });
    expect(Object.keys(JSON.parse(readFileSync(briefs.pathOf("hill-gate"), "utf8")).answers)).toEqual([
      "place.site",
    ]);
  });

  test("a missing one is missing", () => {
    expect(openBriefs(folder).load("nowhere")).toEqual({ kind: "missing" });
  });

  test("no path can be made of an id", () => {
    for (const id of ["../evil", "a/b", "", ".", "A", "a".repeat(65)]) {
      expect(() => openBriefs(folder).pathOf(id)).toThrow("not an id");
    }
  });

  test("the list shows readable ones, latest saved first, and touches nothing", () => {
    const briefs = openBriefs(folder);
    briefs.save("a", { ...file, name: "A", savedUtc: "2026-11-01T00:00:00Z" });
    briefs.save("b", { ...file, name: "B", savedUtc: "2026-11-02T00:00:00Z" });
    writeFileSync(join(briefs.folder, "broken.json"), "{");
    writeFileSync(join(briefs.folder, "c.json.bad-1"), "{}");
    expect(briefs.list().map(({ id, name, answered }) => [id, name, answered])).toEqual([
      ["b", "B", 3],
      ["a", "A", 3],
    ]);
    expect(existsSync(join(briefs.folder, "broken.json"))).toBe(true);
  });

  test("a removed one is gone", () => {
    const briefs = openBriefs(folder);
    briefs.save("hill-gate", file);
    briefs.remove("hill-gate");
    expect(briefs.load("hill-gate").kind).toBe("missing");
  });
});

describe("files that are not right", () => {
  test.each([
    ["cut off", '{"schemaVersion": 1, "name": "x"'],
    ["empty", ""],
    ["an array", "[1, 2]"],
    ["of the wrong shape", '{"schemaVersion":1,"name":"x","answers":{"a":5}}'],
    ["with a misspelt field", '{"schemaVersion":1,"name":"x","answers":{},"curency":"EUR"}'],
  ])("one %s is renamed, said, and never overwritten", (_what, text) => {
    const briefs = openBriefs(folder);
    mkdirSync(briefs.folder, { recursive: true });
    for (const number of [1, 2]) {
      writeFileSync(briefs.pathOf("x"), text);
      const loaded = briefs.load("x");
      const keptAs = `${briefs.pathOf("x")}.bad-${number}`;
      expect(loaded).toMatchObject({ kind: "damaged", keptAs });
      expect(readFileSync(keptAs, "utf8")).toBe(text);
      expect(briefs.exists("x")).toBe(false);
    }
  });

  test("one made by a later version is refused and left alone", () => {
    const briefs = openBriefs(folder);
    mkdirSync(briefs.folder, { recursive: true });
    const text = '{"schemaVersion":99,"name":"x","wonder":true}';
    writeFileSync(briefs.pathOf("x"), text);
    expect(briefs.load("x")).toEqual({ kind: "newer", version: 99 });
    expect(readFileSync(briefs.pathOf("x"), "utf8")).toBe(text);
  });

  test("what interrupted writes left is removed after an hour, nothing else", () => {
    const briefs = openBriefs(folder);
    briefs.save("x", file);
    const old = join(briefs.folder, "x.json.tmp-1234567890abcdef");
    const fresh = join(briefs.folder, "x.json.tmp-1234567891abcdef");
    writeFileSync(old, "");
    writeFileSync(fresh, "");
    const twoHoursAgoS = Date.now() / 1000 - 7200;
    utimesSync(old, twoHoursAgoS, twoHoursAgoS);
    openBriefs(folder);
    expect(readdirSync(briefs.folder).sort()).toEqual(["x.json", "x.json.tmp-1234567891abcdef"]);
  });
});

describe("where nothing can be written", () => {
  test("it is said once, and the interview can go on", () => {
    // A file where the folder should be: refused for every user, also for root, whom no mode bit stops.
    writeFileSync(join(folder, "blocked"), "");
    const briefs = openBriefs(join(folder, "blocked"));
    expect(briefs.save("x", file)).toContain("cannot be saved");
    expect(briefs.save("x", file)).toBe("");
    expect(briefs.lock("x").kind).toBe("none");
    expect(briefs.list()).toEqual([]);
  });

  test("settings that cannot be kept say so and read as none", () => {
    writeFileSync(join(folder, "blocked"), "");
    const settings = openSettings(join(folder, "blocked"));
    expect(settings.write({ currency: "EUR" })).toBe(false);
    expect(settings.read()).toEqual({});
  });
});

describe("the lock", () => {
  test("one process at a time; released, it can be taken again", () => {
    const briefs = openBriefs(folder);
    const lock = briefs.lock("x");
    expect(lock.kind).toBe("held");
    expect(briefs.lock("x")).toEqual({ kind: "taken", byPid: process.pid });
    if (lock.kind === "held") lock.release();
    expect(briefs.lock("x").kind).toBe("held");
  });

  test("one left by a process that has ended is cleared away", () => {
    const briefs = openBriefs(folder);
    const { pid } = spawnSync(process.execPath, ["-e", ""]);
    mkdirSync(briefs.folder, { recursive: true });
    writeFileSync(join(briefs.folder, "x.lock"), JSON.stringify({ pid }));
    expect(briefs.lock("x").kind).toBe("held");
  });

  test("one written before the machine last started is cleared away, whoever has that number now", () => {
    const briefs = openBriefs(folder);
    mkdirSync(briefs.folder, { recursive: true });
    const path = join(briefs.folder, "x.lock");
    writeFileSync(path, JSON.stringify({ pid: process.pid }));
    utimesSync(path, 1_000_000_000, 1_000_000_000);
    expect(briefs.lock("x").kind).toBe("held");
  });

  test("an empty one is given ten seconds to be written", () => {
    const briefs = openBriefs(folder);
    mkdirSync(briefs.folder, { recursive: true });
    const path = join(briefs.folder, "x.lock");
    writeFileSync(path, "");
    expect(briefs.lock("x")).toEqual({ kind: "taken", byPid: null });
    const aMinuteAgoS = Date.now() / 1000 - 60;
    utimesSync(path, aMinuteAgoS, aMinuteAgoS);
    expect(briefs.lock("x").kind).toBe("held");
  });

  test("one held by a living process is respected", async () => {
    const other = spawn(process.execPath, ["-e", "process.stdin.resume(); console.log(1)"], {
      stdio: ["pipe", "pipe", "ignore"],
    });
    await once(other.stdout, "data");
    const briefs = openBriefs(folder);
    mkdirSync(briefs.folder, { recursive: true });
    writeFileSync(join(briefs.folder, "x.lock"), JSON.stringify({ pid: other.pid }));
    expect(briefs.lock("x")).toEqual({ kind: "taken", byPid: other.pid });
    other.stdin.end();
    await once(other, "exit");
    expect(briefs.lock("x").kind).toBe("held");
  });
});

test("names become ids that a person recognises", () => {
  expect(idOf("Hill gate")).toBe("hill-gate");
  expect(idOf("Café Élan")).toBe("cafe-elan");
  expect(idOf("東京")).toBe(null);
  expect(idOf("../..")).toBe(null);
  expect(idOf("x".repeat(200))).toHaveLength(64);
});

test("settings come back", () => {
  expect(openSettings(folder).read()).toEqual({});
  expect(openSettings(folder).write({ currency: "NOK", units: "us" })).toBe(true);
  expect(openSettings(folder).read()).toEqual({ currency: "NOK", units: "us" });
  writeFileSync(join(folder, "settings.json"), "{");
  expect(openSettings(folder).read()).toEqual({});
});
