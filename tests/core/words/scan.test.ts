import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Form, PARTINGS, type Parting, scan } from "../../../src/core/words/index.ts";

const say = (word: string): Form<string> => ({
  form: new RegExp(`^${word}(?!\\w)`, "i"),
  fact: ([said]) => said!,
});

describe("a text gone through word by word", () => {
  it("gives what its forms say, in the order of the text", () => {
    expect(scan("a wall by the sea, then a Hill", [say("hill"), say("wall")])).toEqual(["wall", "Hill"]);
  });
  it("reads nothing out of the middle of a word, and goes on after it", () => {
    expect(scan("feast of wallpaper, o'wall and re-wall", [say("east"), say("wall")])).toEqual([]);
    expect(scan("feast east", [say("east")])).toEqual(["east"]);
    expect(scan("12wall -wall", [say("wall")])).toEqual(["wall", "wall"]);
  });
  it("takes the first form that says something: one that declines leaves the words to the next", () => {
    const declines: Form<string> = { form: /^stone wall/, fact: () => null };
    const longer: Form<string> = { form: /^stone wall/, fact: () => "both" };
    expect(scan("stone wall", [declines, say("stone"), say("wall")])).toEqual(["stone", "wall"]);
    expect(scan("stone wall", [longer, say("stone"), say("wall")])).toEqual(["both"]);
  });
  it("comes to an end on any text, with a form that matches nothing too", () => {
    const empty: Form<string> = { form: /^x*/, fact: () => "x" };
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 60 }), (text) => {
        expect(scan(text, [empty]).length).toBeLessThanOrEqual(text.length);
      }),
    );
  });
});

describe("words that part or deny", () => {
  const kinds = (text: string) =>
    scan<Parting>(text, PARTINGS).map((each) =>
      each.kind === "negation" ? each.word : each.isFull ? "full" : "light",
    );
  it("are told apart, and not found in other words or in figures", () => {
    expect(kinds("not here, and there; nothing.\nbut 2.5 m")).toEqual([
      "not",
      "light",
      "light",
      "full",
      "nothing",
      "full",
      "full",
      "but",
    ]);
    expect(kinds("notable butter, thence 3.5 and 4.5")).toEqual(["light", "light"]);
    expect(kinds("northern sandy nonesuch")).toEqual([]);
  });
});
