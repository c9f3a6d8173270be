import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { freshHome, inTerminal, piped } from "./start.ts";

/** The faces and commands in a real pseudo-terminal, over the tiny three-question conversation. */
const start = (
  about: { readonly home?: string; readonly args?: readonly string[] } & Partial<
    Parameters<typeof inTerminal>[0]
  > = {},
) =>
  inTerminal({
    program: "tiny",
    args: ["new", "hill gate", "--currency", "EUR", "--units", "metric"],
    home: freshHome(),
    ...about,
  });

describe("a conversation on the chat screen", () => {
  test("from the first question to the last, saved after each answer, and out by quit", async () => {
    const home = freshHome();
    const terminal = start({ home });
    await terminal.waitFor("What is the nearest town?");
    terminal.send("Tromsø\r");
    await terminal.waitFor("Noted Tromsø as answer 1.");
    const saved = JSON.parse(readFileSync(join(home, "briefs", "hill-gate.json"), "utf8"));
    expect(saved).toMatchObject({
      name: "hill gate",
      currency: "EUR",
      answers: { "place.name": { typed: "Tromsø" } },
    });
    terminal.send("fixed\r");
    await terminal.waitFor("How far is the other end?");
    terminal.send("1.2 km\r");
    await terminal.waitFor("Everything is answered.");
    terminal.send("quit\r");
    expect(await terminal.end()).toBe(0);
    await terminal.waitFor("Saved. Come back with: mastwright resume hill-gate");
  });

  test("text and Enter in one chunk, and three answers in one chunk", async () => {
    const terminal = start();
    await terminal.waitFor("nearest town?");
    terminal.send("Tromsø\rfixed\r1.2 km\r");
    await terminal.waitFor("Noted 1.2 km as answer 3.");
    expect(terminal.everything()).toContain("Answer │ Tromsø");
  });

  test("what is typed before the screen is there is not lost and not echoed as junk", async () => {
    const terminal = start();
    await terminal.waitFor("Mastwright: hill gate.");
    terminal.send("Tromsø\r");
    await terminal.waitFor("Noted Tromsø as answer 1.");
    expect(terminal.everything().match(/Tromsø/g)).toHaveLength(2);
  });

  test("Ctrl-C in the middle of a line: saved, 130, terminal sane; resume goes on where it was", async () => {
    const home = freshHome();
    const first = start({ home });
    await first.waitFor("nearest town?");
    first.send("Tromsø\r");
    await first.waitFor("fixed or does it turn?");
    first.send("half an ans\x03");
    expect(await first.end()).toBe(130);
    expect(first.everything()).toContain("Saved. Come back with: mastwright resume hill-gate");
    // Cursor shown, bracketed paste off: DECTCEM and xterm private mode 2004.
    expect(first.sent().lastIndexOf("\x1b[?25h")).toBeGreaterThan(first.sent().lastIndexOf("\x1b[?25l"));
    expect(first.sent().lastIndexOf("\x1b[?2004l")).toBeGreaterThan(first.sent().lastIndexOf("\x1b[?2004h"));
    const second = start({ home, args: ["resume", "hill-gate"] });
    await second.waitFor("Is the camera fixed or does it turn?");
    expect(second.everything()).not.toContain("nearest town?");
  });

  test("Ctrl-D on an empty line ends with answers missing; in a line it deletes", async () => {
    const terminal = start();
    await terminal.waitFor("nearest town?");
    terminal.send("ab\x1b[D\x04");
    await terminal.waitFor("Place: a");
    terminal.send("\x15\x04");
    expect(await terminal.end()).toBe(3);
  });

  test("a signal to end saves and leaves with 143", async () => {
    const home = freshHome();
    const terminal = start({ home });
    await terminal.waitFor("nearest town?");
    terminal.send("Tromsø\r");
    await terminal.waitFor("answer 1.");
    terminal.signal("SIGTERM");
    expect(await terminal.end()).toBe(143);
    expect(readFileSync(join(home, "briefs", "hill-gate.json"), "utf8")).toContain("Tromsø");
    expect(terminal.sent().lastIndexOf("\x1b[?25h")).toBeGreaterThan(
      terminal.sent().lastIndexOf("\x1b[?25l"),
    );
  });

  test("killed outright, it is taken up again: the brief is whole, the lock is stale", async () => {
    const home = freshHome();
    const first = start({ home });
    await first.waitFor("nearest town?");
    first.send("Tromsø\r");
    await first.waitFor("answer 1.");
    first.signal("SIGKILL");
    await first.end();
    const second = start({ home, args: ["resume", "hill-gate"] });
    await second.waitFor("fixed or does it turn?");
  });

  test("an error of ours: one sentence, the brief saved, no trace unless asked for", async () => {
    const home = freshHome();
    const terminal = start({ home });
    await terminal.waitFor("nearest town?");
    terminal.send("Tromsø\rcrash\r");
    expect(await terminal.end()).toBe(1);
    expect(terminal.everything()).toContain("Something went wrong on our side. Your answers are saved.");
    expect(terminal.everything()).not.toMatch(/planted|at .*\.js/);
    expect(readFileSync(join(home, "briefs", "hill-gate.json"), "utf8")).toContain("Tromsø");
    const debugging = start({ home, args: ["resume", "hill-gate"], env: { MASTWRIGHT_DEBUG: "1" } });
    await debugging.waitFor("fixed or does it turn?");
    debugging.send("crash\r");
    expect(await debugging.end()).toBe(1);
    expect(debugging.everything()).toContain("planted");
  });

  test("a paste with line ends is one line and submits nothing", async () => {
    const terminal = start();
    await terminal.waitFor("nearest town?");
    expect(terminal.sent()).toContain("\x1b[?2004h");
    terminal.send("\x1b[200~Trom\rsø\n\x1b[201~");
    await terminal.waitFor("Place: Trom sø");
    terminal.send("\r");
    await terminal.waitFor("Noted Trom sø as answer 1.");
  });

  test("Backspace, arrows, Home and Up edit the line; the cursor stands where one types", async () => {
    const terminal = start();
    await terminal.waitFor("nearest town?");
    terminal.send("Trx\x7fomso\x1b[D\x1b[D");
    await terminal.waitFor("Place: Tromso");
    await terminal.settled();
    const row = terminal.screen()[terminal.cursor().y]!;
    expect(row.slice(0, terminal.cursor().x)).toMatch(/Place: Trom$/);
    terminal.send("\x05\r");
    await terminal.waitFor("fixed or does it turn?");
    terminal.send("\x1b[A");
    await terminal.waitFor("Number: Tromso");
    terminal.send("\x1b");
    await terminal.settled();
    expect(terminal.screen()[terminal.cursor().y]).toMatch(/Number:$/);
  });

  test("names are suggested under a place being typed; Tab takes the first, and elsewhere is a blank", async () => {
    const terminal = start();
    await terminal.waitFor("nearest town?");
    terminal.send("tr");
    await terminal.settled();
    expect(terminal.everything()).not.toContain("Norway");
    terminal.send("o");
    await terminal.waitFor("       Tab │ Tromsø, Norway\n           │ Trondheim, Norway\n");
    expect(terminal.everything()).not.toContain("Trier");
    terminal.send("\t");
    await terminal.waitFor("Answer │ Place: Tromsø, Norway");
    await terminal.settled();
    expect(terminal.everything()).not.toMatch(/Tab │|Trondheim/);
    terminal.send("\r");
    await terminal.waitFor("Noted Tromsø, Norway as answer 1.");
    terminal.send("tro\tx\r");
    await terminal.waitFor("Noted tro x as answer 2.");
  });

  test("going back offers the earlier answer, and Enter keeps nothing that is not there", async () => {
    const terminal = start();
    await terminal.waitFor("nearest town?");
    terminal.send("Tromsø\r");
    await terminal.waitFor("fixed or does it turn?");
    terminal.send("back\r");
    await terminal.waitFor("(Enter alone keeps Tromsø)");
  });

  test("a second window on the same brief is told so", async () => {
    const home = freshHome();
    const first = start({ home });
    await first.waitFor("nearest town?");
    first.send("Tromsø\r");
    await first.waitFor("answer 1.");
    const second = start({ home, args: ["resume", "hill-gate"] });
    expect(await second.end()).toBe(2);
    expect(second.everything()).toMatch(/hill-gate is open in another window \(process \d+\)/);
  });
});

describe("the screen itself", () => {
  test.each([
    [60, 24],
    [100, 35],
    [160, 50],
    [200, 24],
    [40, 12],
  ])(
    "at %i x %i nothing is lost, no row is too long, the drawing only where there is room",
    async (columns, rows) => {
      const terminal = start({ columns, rows });
      await terminal.waitFor("nearest town?");
      terminal.send("Tromsø\rfixed\r1.2 km\r");
      await terminal.waitFor("Everything is answered.");
      const text = terminal.everything();
      for (const said of ["Noted Tromsø as answer 1.", "Stop", "200 Ah at 12 V"])
        expect(text).toContain(said);
      expect(text.includes("/_____/")).toBe(columns >= 90);
      // The line to come back with is left to the terminal to wrap, so that it can be copied whole.
      const page = text.slice(text.indexOf("Come back with:")).split("\n").slice(1);
      for (const line of page) expect(line.length).toBeLessThan(columns);
    },
  );

  test("the scrollback is never wiped, also in a very low window", async () => {
    for (const rows of [24, 8, 6]) {
      const terminal = start({ rows });
      await terminal.waitFor("Place:");
      terminal.send("Tromsø\rwhy\rbad\rfixed\r1.2 km\rquit\r");
      await terminal.end();
      expect(terminal.sent()).not.toContain("\x1b[3J");
      expect(terminal.sent()).not.toContain("\x1b[2J");
      expect(terminal.sent()).not.toContain("\x1b[?1049h");
      expect(terminal.everything().split("\n")[0]).toContain("Mastwright works out");
      for (const said of ["nearest town?", "Why we ask", "Once more", "1.2 km = 1200 m"]) {
        expect(terminal.everything()).toContain(said);
      }
    }
  });

  test("shrinking and growing the window in the middle of a question leaves one question", async () => {
    const terminal = start({ columns: 120, rows: 30 });
    await terminal.waitFor("nearest town?");
    terminal.send("Tromsø\r");
    await terminal.waitFor("fixed or does it turn?");
    terminal.send("half");
    await terminal.waitFor("Number: half");
    for (const [columns, rows] of [
      [70, 30],
      [50, 12],
      [44, 8],
      [100, 30],
      [120, 10],
      [60, 24],
    ] as const) {
      terminal.resize(columns, rows);
      await terminal.settled();
      expect(terminal.everything().match(/Number: half/g), `${columns}x${rows}`).toHaveLength(1);
    }
    terminal.send("\x15fixed\r");
    await terminal.waitFor("Noted fixed as answer 2.");
    expect(terminal.sent()).not.toContain("\x1b[3J");
    expect(terminal.everything().split("\n")[0]).toContain("Mastwright works out");
  });

  test("with CI set it asks all the same", async () => {
    const terminal = start({ env: { CI: "true" } });
    await terminal.waitFor("nearest town?");
    terminal.send("Tromsø\r");
    await terminal.waitFor("Noted Tromsø as answer 1.");
  });

  test("colour is used where it may be, and NO_COLOR and --no-color switch off every attribute", async () => {
    // SGR: select graphic rendition, ECMA-48 8.3.117.
    const sgr = /\x1b\[[0-9;]*m/;
    const play = async (more: Parameters<typeof start>[0]): Promise<string> => {
      const terminal = start(more);
      await terminal.waitFor("nearest town?");
      terminal.send("Tromsø\rfixed\r1 km\rquit\r");
      await terminal.end();
      expect(terminal.everything()).toContain("Stop │ An overhead line is 4 m from the mast.");
      return terminal.sent();
    };
    expect(await play({})).toMatch(sgr);
    expect(await play({ env: { NO_COLOR: "1" } })).not.toMatch(sgr);
    expect(
      await play({ args: ["new", "hill gate", "--currency", "EUR", "--units", "metric", "--no-color"] }),
    ).not.toMatch(sgr);
  });

  test("in a locale without UTF-8 only ASCII is sent", async () => {
    const terminal = start({ env: { LANG: "C" } });
    await terminal.waitFor("nearest town?");
    expect(terminal.everything()).toContain("Example: Tromso");
    terminal.send("Oslo\rfixed\r1 km\r");
    await terminal.waitFor("Everything is answered.");
    expect(terminal.sent()).toMatch(/^[\x00-\x7e]*$/);
  });
});

describe("the short questions before it, in a process of their own", () => {
  test("first use: a name and a currency by prompts, then the chat screen has the keyboard", async () => {
    const home = freshHome();
    const terminal = start({ home, args: [] });
    await terminal.waitFor("What do you call this post?");
    expect(terminal.everything()).toMatch(/^Mastwright works out a camera post/);
    terminal.send("boat ramp");
    await terminal.waitFor("boat ramp");
    terminal.send("\r");
    await terminal.waitFor("Which currency");
    terminal.send("\r");
    await terminal.waitFor("Which units do you think in?");
    terminal.send("\r");
    await terminal.waitFor("What is the nearest town?");
    terminal.send("Tromsø\r");
    await terminal.waitFor("Noted Tromsø as answer 1.");
    terminal.send("\x03");
    expect(await terminal.end()).toBe(130);
    const saved = JSON.parse(readFileSync(join(home, "briefs", "boat-ramp.json"), "utf8"));
    expect(saved).toMatchObject({ name: "boat ramp", currency: "GBP", units: "metric" });
    // Said before the first prompt, and not again by the process that draws the screen.
    expect(terminal.everything().match(/Mastwright works out/g)).toHaveLength(1);
    const again = start({ home, args: [] });
    await again.waitFor("Which post is it about?");
    expect(again.everything()).toContain("Go on with boat ramp (1 answer)");
    expect(again.everything()).not.toContain("Mastwright works out");
    again.send("\r");
    await again.waitFor("fixed or does it turn?");
    again.send("quit\r");
    expect(await again.end()).toBe(0);
  });

  test("units are suggested by the locale and kept for the next post; --units goes before both", async () => {
    const home = freshHome();
    const unitsOf = (id: string): string =>
      JSON.parse(readFileSync(join(home, "briefs", `${id}.json`), "utf8")).units;
    const american = start({ home, args: ["new", "barn"], env: { LC_MEASUREMENT: "en_US.UTF-8" } });
    await american.waitFor("Which currency");
    american.send("\r");
    await american.waitFor("═ US (ft, lb)");
    american.send("\r");
    await american.waitFor("nearest town?");
    american.send("Tromsø\rquit\r");
    expect(await american.end()).toBe(0);
    expect(unitsOf("barn")).toBe("us");
    for (const [id, args, units] of [
      ["gate", [], "us"],
      ["ramp", ["--units", "metric"], "metric"],
    ] as const) {
      const next = start({ home, args: ["new", id, ...args] });
      await next.waitFor("nearest town?");
      expect(next.everything()).not.toContain("Which units");
      next.send("Tromsø\rquit\r");
      expect(await next.end()).toBe(0);
      expect(unitsOf(id), id).toBe(units);
    }
  });

  test("of two saved posts the one chosen by its arrow is gone on with", async () => {
    const home = freshHome();
    await piped({ program: "tiny", args: ["new", "boat ramp", "--plain"], home, input: "Tromsø\n" });
    await piped({ program: "tiny", args: ["new", "hill gate", "--plain"], home, input: "Tromsø\nfixed\n" });
    const terminal = start({ home, args: [] });
    await terminal.waitFor("Which post is it about?");
    // The latest saved stands first.
    await terminal.waitFor("═ Go on with hill gate (2 answers)");
    terminal.send("\x1b[B");
    await terminal.waitFor("═ Go on with boat ramp (1 answer)");
    terminal.send("\r");
    await terminal.waitFor("Mastwright: boat ramp.");
    await terminal.waitFor("fixed or does it turn?");
    expect(terminal.everything()).not.toContain("Mastwright works out");
  });

  test("Ctrl-C at a prompt begins nothing", async () => {
    const terminal = start({ args: [] });
    await terminal.waitFor("What do you call this post?");
    terminal.send("\x03");
    expect(await terminal.end()).toBe(130);
    expect(terminal.everything()).not.toMatch(/at .*\.js|ExitPromptError/);
  });

  test("removing asks first", async () => {
    const home = freshHome();
    await piped({ program: "tiny", args: ["new", "boat ramp", "--plain"], home, input: "Tromsø\n" });
    const kept = start({ home, args: ["remove", "boat-ramp"] });
    await kept.waitFor("Remove boat-ramp with all its answers? (type yes or no)");
    kept.send("\r");
    expect(await kept.end()).toBe(0);
    expect(kept.everything()).toContain("Kept.");
    const removed = start({ home, args: ["remove", "boat-ramp"] });
    await removed.waitFor("with all its answers?");
    removed.send("y\r");
    expect(await removed.end()).toBe(0);
    expect((await piped({ program: "tiny", args: ["list"], home })).out).toBe("");
  });
});

describe("the plain face on a terminal", () => {
  test.each([[{ TERM: "dumb" }], [{ ACCESSIBLE: "1" }]])(
    "chosen by %j, sends no escape sequence from first to last",
    async (env) => {
      const home = freshHome();
      const terminal = start({ home, args: [], env });
      await terminal.waitFor("What do you call this post?");
      terminal.send("boat ramp\r");
      await terminal.waitFor("Which currency");
      terminal.send("EUR\r");
      await terminal.waitFor("Number. Enter alone takes 1. ");
      terminal.send("\r");
      await terminal.waitFor("Place, question 1 of 3. What is the nearest town?");
      terminal.send("Tromsø\r");
      await terminal.waitFor("So: Noted Tromsø as answer 1.");
      terminal.send("\x03");
      expect(await terminal.end()).toBe(130);
      expect(terminal.everything()).toContain("Saved. Come back with: mastwright resume boat-ramp");
      expect(terminal.sent()).not.toContain("\x1b");
    },
  );
});
