import { describe, expect, it } from "vitest";
import { forcedText, readCommand } from "../../../src/interview/read/index.ts";

const SAID: Readonly<Record<string, readonly string[]>> = {
  why: [
    "why",
    "Why?",
    "?",
    "why do you ask",
    "Why do you ask?",
    "why does that matter?",
    "why is that needed",
    "what for?",
  ],
  how: [
    "how",
    "how?",
    "how do I find out",
    "How can I tell?",
    "how do i measure that",
    "where do I find it",
    "where can I see that?",
    "how to measure it",
  ],
  unsure: [
    "don't know",
    "dont know",
    "I don't know",
    "I don’t know.",
    "i dont know that",
    "not sure",
    "I'm not sure",
    "unsure",
    "no idea",
    "dunno",
    "idk",
    "n/a",
    "N/A",
    "can't tell",
    "skip",
    "pass",
  ],
  back: ["b", "B", "back", "go back", "<", "previous"],
  review: ["review", "list", "show answers", "show my answers", "answers", "summary", "check answers"],
  more: ["more", "tell me more", "details", "explain", "More."],
  help: ["help", "??", "commands", "what can I say?", "HELP"],
  save: ["save", "quit", "exit", "stop", "bye", "q", "save and quit", "Stop here.", "come back later"],
  undo: ["undo", "undo that", "take that back", "Undo!"],
};

describe("words that are no answer but a wish", () => {
  for (const [command, texts] of Object.entries(SAID)) {
    it.each(texts)(`${command}: %s`, (text) => {
      expect(readCommand(text)).toEqual({ command });
    });
  }

  it.each([
    ["change 7", { by: "number", number: 7 }],
    ["edit 7", { by: "number", number: 7 }],
    ["fix 7", { by: "number", number: 7 }],
    ["Change #7", { by: "number", number: 7 }],
    ["change answer 12", { by: "number", number: 12 }],
    ["go back to 7", { by: "number", number: 7 }],
    ["change distance", { by: "name", name: "distance" }],
    ["change the distance", { by: "name", name: "distance" }],
    ["fix the mast height", { by: "name", name: "mast height" }],
    ["change", { by: "nothing" }],
    ["edit.", { by: "nothing" }],
    ["change it", { by: "nothing" }],
  ] as const)("change: %s", (text, target) => {
    expect(readCommand(text)).toEqual({ command: "change", target });
  });

  it.each([
    "30 ft",
    "5",
    "yes",
    "no",
    "n",
    "y",
    "none",
    "all",
    "half",
    "12 V",
    "at least 20",
    "half past six",
    "6 to 18",
    "always",
    "'",
    "Why, Arizona",
    "Whyalla",
    "Howe",
    "Backa",
    "Stopford",
    "Helper, Utah",
    "Changeover Lake",
    "Moreton",
    "Savannah",
    "Listowel",
    "",
    "   ",
    "constructor",
    "__proto__",
    "backwards",
    "unsuredly",
    "some more",
    "I don't know, maybe 20 ft",
    "not sure, about 20",
    "it may pause",
    "pause",
  ])("an answer is no command: %s", (text) => {
    expect(readCommand(text)).toBeNull();
  });

  it("lets a quotation mark force any text to be an answer", () => {
    for (const text of ["'why", '"why"', "“back”", "‘list’", " 'help"])
      expect(readCommand(text), text).toBeNull();
    expect(forcedText("'why")).toBe("why");
    expect(forcedText('"Why"')).toBe("Why");
    expect(forcedText("“List, Sylt”")).toBe("List, Sylt");
    expect(forcedText(" 'help ")).toBe("help");
    expect(forcedText("5'6\"")).toBe("5'6\"");
  });

  it("leaves the whole name of an option to the choice", () => {
    const options = [
      { id: "stop", label: "Stop recording" },
      { id: "more", label: "More frames", aliases: ["details"] },
    ];
    for (const text of ["stop", "more", "Details"]) expect(readCommand(text, options), text).toBeNull();
    expect(readCommand("back", options)).toEqual({ command: "back" });
    expect(readCommand("stop")).toEqual({ command: "save" });
  });
});
