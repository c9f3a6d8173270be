import { describe, expect, test } from "vitest";
import { prepareDrawing, surroundingsFrom } from "../../src/commands/surroundings.ts";

const about = (more: Partial<Parameters<typeof surroundingsFrom>[0]> = {}) =>
  surroundingsFrom({
    env: { LANG: "en_GB.UTF-8" },
    options: {},
    platform: "linux",
    isInputTerminal: true,
    isOutputTerminal: true,
    systemLocale: "en-US",
    columns: 100,
    ...more,
  });

describe("which face", () => {
  test("the chat screen needs a terminal on both sides", () => {
    expect(about().face).toBe("chat");
    expect(about({ isOutputTerminal: false }).face).toBe("plain");
    expect(about({ isInputTerminal: false }).face).toBe("none");
    expect(about({ isInputTerminal: false, isOutputTerminal: false }).face).toBe("none");
  });

  test("line by line by --plain, ACCESSIBLE or a dumb terminal", () => {
    expect(about({ options: { plain: true } }).face).toBe("plain");
    expect(about({ env: { ACCESSIBLE: "1" } }).face).toBe("plain");
    expect(about({ env: { TERM: "dumb" } }).face).toBe("plain");
    expect(about({ env: { ACCESSIBLE: "0" } }).face).toBe("chat");
    expect(about({ env: { ACCESSIBLE: "" } }).face).toBe("chat");
  });

  test("from a pipe only where it was asked for in so many words", () => {
    expect(about({ isInputTerminal: false, options: { plain: true } }).face).toBe("plain");
    expect(about({ isInputTerminal: false, env: { ACCESSIBLE: "1" } }).face).toBe("none");
  });
});

describe("which signs", () => {
  // POSIX.1-2017, Base Definitions 8.2: LC_ALL, then LC_CTYPE, then LANG; an empty one counts as unset.
  test.each([
    [{}, true],
    [{ LANG: "C" }, true],
    [{ LANG: "en_GB.UTF-8" }, false],
    [{ LANG: "en_GB.utf8" }, false],
    [{ LANG: "en_GB.UTF-8", LC_ALL: "C" }, true],
    [{ LANG: "C", LC_CTYPE: "C.UTF-8" }, false],
    [{ LANG: "en_GB.UTF-8", LC_ALL: "" }, false],
    [{ LANG: "de_DE.ISO-8859-1" }, true],
  ])("%j", (env, isAscii) => {
    expect(about({ env }).isAscii).toBe(isAscii);
  });

  test("macOS and Windows terminals show Unicode; --ascii beats everything", () => {
    expect(about({ env: {}, platform: "darwin" }).isAscii).toBe(false);
    expect(about({ env: {}, platform: "win32" }).isAscii).toBe(false);
    expect(about({ options: { ascii: true } }).isAscii).toBe(true);
  });

  // no-color.org: present and not an empty string, regardless of its value.
  test("colour is off by NO_COLOR and by --no-color", () => {
    expect(about().isColourless).toBe(false);
    expect(about({ env: { NO_COLOR: "" } }).isColourless).toBe(false);
    expect(about({ env: { NO_COLOR: "0" } }).isColourless).toBe(true);
    expect(about({ options: { "no-color": true } }).isColourless).toBe(true);
  });
});

describe("whose money and measures are suggested", () => {
  // POSIX.1-2017, Base Definitions 8.2, for LC_MONETARY; glibc's LC_MEASUREMENT goes by the same rule (from memory).
  test.each([
    [{ LANG: "en_GB.UTF-8" }, "en_GB.UTF-8", "en_GB.UTF-8"],
    [{ LANG: "en_US.UTF-8", LC_MEASUREMENT: "de_DE.UTF-8" }, "en_US.UTF-8", "de_DE.UTF-8"],
    [{ LANG: "en_US.UTF-8", LC_MONETARY: "de_DE.UTF-8" }, "de_DE.UTF-8", "en_US.UTF-8"],
    [{ LC_ALL: "C", LC_MEASUREMENT: "en_US.UTF-8" }, "C", "C"],
    [{}, "", ""],
  ])("%j", (env, money, measures) => {
    expect(about({ env }).locale).toEqual({ money, measures });
  });

  test("where the environment says nothing, Windows and macOS say it themselves", () => {
    for (const platform of ["darwin", "win32"]) {
      expect(about({ env: {}, platform }).locale).toEqual({ money: "en-US", measures: "en-US" });
      expect(about({ env: { LANG: "de_AT.UTF-8" }, platform }).locale.money).toBe("de_AT.UTF-8");
    }
  });
});

test("the drawing library finds no trace of continuous integration, and everything else as it was", () => {
  const env: Record<string, string | undefined> = {
    CI: "true",
    CI_NAME: "x",
    CONTINUOUS_INTEGRATION: "1",
    CITY: "Tromsø",
    PATH: "/bin",
  };
  prepareDrawing(env, false);
  expect(env).toEqual({ CITY: "Tromsø", PATH: "/bin" });
  prepareDrawing(env, true);
  expect(env.FORCE_COLOR).toBe("0");
});
