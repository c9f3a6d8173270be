import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { comeBackLine } from "../../src/commands/comeback.ts";
import { commandForms } from "../../src/commands/command-line.ts";
import type { Context } from "../../src/commands/context.ts";
import {
  freeName,
  freshBrief,
  idOfName,
  nameRefusal,
  readUnits,
  suggestedCurrency,
  suggestedUnits,
} from "../../src/commands/fresh-brief.ts";
import { run as help } from "../../src/commands/help.ts";
import type { Finding, Opened } from "../../src/commands/program.ts";
import { verdictOn } from "../../src/commands/verdict.ts";
import { welcome, welcomeLines } from "../../src/commands/welcome.ts";
import { interview } from "../../src/commands/wiring.ts";
import { runScript } from "../../src/interview/index.ts";
import { openBriefs } from "../../src/store/index.ts";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "mastwright-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

describe("names", () => {
  test("an id keeps what a person recognises", () => {
    expect(idOfName("Tromsø, Nord 2!")).toBe("tromso-nord-2");
    expect(idOfName("Łódź")).toBe("lodz");
    expect(idOfName("東京")).toBe(null);
  });

  test("a name that is taken or has no letters is refused with what to type", () => {
    const briefs = openBriefs(folder);
    const file = freshBrief({
      name: "Gate",
      currency: "EUR",
      units: "metric",
      startedUtc: "2026-11-24T00:00:00Z",
      topicVersions: {},
    });
    briefs.save("gate", file);
    expect(nameRefusal(briefs, "barn")).toBe(null);
    expect(nameRefusal(briefs, "GATE")).toContain("There is already a brief gate.");
    expect(nameRefusal(briefs, "東京")).toContain("at least one Latin letter");
    expect(nameRefusal(briefs, "x".repeat(81))).not.toBe(null);
  });

  test("the suggested name is free", () => {
    const briefs = openBriefs(folder);
    expect(freeName(briefs)).toBe("my post");
    const file = freshBrief({
      name: "my post",
      currency: "EUR",
      units: "metric",
      startedUtc: "2026-11-24T00:00:00Z",
      topicVersions: {},
    });
    briefs.save("my-post", file);
    expect(freeName(briefs)).toBe("my post 2");
  });
});

test("the currency suggested is the locale's", () => {
  // ISO 4217 list of currencies by country, from memory.
  expect(suggestedCurrency("en_GB.UTF-8")).toBe("GBP");
  expect(suggestedCurrency("de_AT.UTF-8")).toBe("EUR");
  expect(suggestedCurrency("C")).toBe("USD");
  expect(suggestedCurrency("")).toBe("USD");
  // Language tags as Windows and macOS have them: BCP 47, a script may stand before the region.
  expect(suggestedCurrency("de-AT")).toBe("EUR");
  expect(suggestedCurrency("sr-Latn-SI")).toBe("EUR");
});

test("units go by their name, and those suggested are the locale's", () => {
  expect(readUnits(" US ")).toBe("us");
  expect(readUnits("Metric")).toBe("metric");
  for (const none of ["imperial", "m", ""]) expect(readUnits(none), none).toBe(null);
  // Unicode CLDR, supplemental data on measurement systems, from memory.
  for (const locale of ["en_US.UTF-8", "es-US", "en_LR.UTF-8", "my_MM.UTF-8"])
    expect(suggestedUnits(locale), locale).toBe("us");
  for (const locale of ["en_GB.UTF-8", "en-CA", "de_DE.UTF-8", "us_DE", "C", "POSIX", ""])
    expect(suggestedUnits(locale), locale).toBe("metric");
});

test("how to come back, as it was started", () => {
  expect(comeBackLine("hill-gate", { isFromNpm: false, isPlain: false })).toBe("mastwright resume hill-gate");
  expect(comeBackLine("hill-gate", { isFromNpm: true, isPlain: true })).toContain(
    "npm start -- resume hill-gate --plain",
  );
});

describe("help", () => {
  const page = (...args: string[]): string => {
    let text = "";
    const context = {
      args,
      out: (written: string) => {
        text += written;
      },
      talk: (written: string) => {
        text += written;
      },
    };
    help(context as unknown as Context);
    return text;
  };

  test("begins with examples and names every command, exit code and everywhere-option", () => {
    const text = page();
    expect(text.indexOf("Examples")).toBeLessThan(text.indexOf("Commands"));
    for (const name of Object.keys(commandForms)) {
      if (name !== "interview") expect(text).toMatch(new RegExp(`^  ${name} `, "m"));
    }
    for (const code of ["0", "1", "2", "3", "4", "130", "143"])
      expect(text).toMatch(new RegExp(`^  ${code} `, "m"));
  });

  test("every command has a page that shows the options it takes, and no line is too long", () => {
    for (const [name, { takes }] of Object.entries(commandForms)) {
      const text = page(name);
      for (const option of takes) expect(text, name).toContain(`--${option}`);
    }
    for (const line of page().split("\n")) expect(line.length).toBeLessThanOrEqual(80);
  });

  test("an unknown one is named", () => {
    expect(page("nonsense")).toContain('There is no command "nonsense".');
  });
});

describe("the first words", () => {
  const said = (more: Partial<Context["surroundings"]>): readonly string[] => {
    let text = "";
    const surroundings = { face: "chat", columns: 60, isWelcomed: false, ...more };
    const out = (written: string): void => {
      text += written;
    };
    welcome({ surroundings, out } as unknown as Context);
    return text.split("\n").slice(0, -1);
  };

  test("say as many questions as come up where somebody is unsure throughout", () => {
    const everything = new Proxy({} as Record<string, string>, {
      get: () => "unsure",
      getOwnPropertyDescriptor: () => ({ configurable: true, enumerable: true, value: "unsure" }),
    });
    const { asked } = runScript(interview, { name: "x", currency: "EUR" }, everything);
    const promised = Number(/about (\d+) questions/i.exec(said({}).join(" "))![1]);
    expect(asked.length).toBeGreaterThanOrEqual(promised - 3);
    expect(asked.length).toBeLessThanOrEqual(promised + 3);
  });

  test("stay within the window, and stand in four lines of a wider one", () => {
    for (const columns of [30, 60, 80, 200]) {
      for (const line of said({ columns })) expect(line.length, line).toBeLessThan(columns);
    }
    expect(said({ columns: 80 }).filter((line) => line !== "")).toHaveLength(4);
  });

  test("are not wrapped line by line, and not said twice", () => {
    expect(said({ face: "plain", columns: 30 })).toEqual([...welcomeLines, ""]);
    expect(said({ isWelcomed: true })).toEqual([]);
  });
});

describe("the verdict on a brief from a file", () => {
  const opened: Opened = { state: {} as Opened["state"], refused: [], missing: [], untouched: {} };
  const stop: Finding = {
    id: "x",
    severity: "stop",
    says: "A line is overhead.",
    change: "",
    numbers: {},
    topics: [],
  };
  const caution: Finding = { ...stop, severity: "caution" };

  test("done, stop, missing, unusable: the gravest first", () => {
    const missing = [{ id: "place.site", ask: "Where is it?" }];
    const refused = [{ id: "link.distance", says: "fx is no unit." }];
    expect(verdictOn("gate", opened, []).code).toBe(0);
    expect(verdictOn("gate", opened, [caution]).code).toBe(0);
    expect(verdictOn("gate", opened, [caution, stop]).code).toBe(4);
    expect(verdictOn("gate", { ...opened, missing }, [caution]).code).toBe(3);
    // a stop holds whatever else is missing, unless it rests on the very answer that is missing
    expect(verdictOn("gate", { ...opened, missing }, [stop]).code).toBe(4);
    expect(verdictOn("gate", { ...opened, missing }, [{ ...stop, topics: ["place.site"] }]).code).toBe(3);
    expect(verdictOn("gate", { ...opened, missing }, [{ ...stop, topics: ["place.sit"] }]).code).toBe(4);
    const ofBlock = [{ id: "parts.owned.1.panelVolts", ask: "Voc?" }];
    expect(
      verdictOn("gate", { ...opened, missing: ofBlock }, [{ ...stop, topics: ["parts.owned"] }]).code,
    ).toBe(3);
    expect(verdictOn("gate", { ...opened, missing, refused }, [stop])).toEqual({
      code: 2,
      says: [
        "gate: link.distance was not understood: fx is no unit.",
        "gate: not answered: place.site (Where is it?)",
        "gate: Stop: A line is overhead.",
      ],
    });
  });
});
