import { describe, expect, it } from "vitest";
import { type ChoiceOption, readChoice, readChoices } from "../../../src/interview/read/index.ts";

const WINTER: readonly ChoiceOption[] = [
  { id: "always", label: "Yes, all year" },
  { id: "pause", label: "It may pause" },
];
const PURPOSE: readonly ChoiceOption[] = [
  { id: "notice", label: "Notice that something is there" },
  { id: "recognise", label: "Recognise who is known", aliases: ["recognize", "known people"] },
  { id: "record", label: "Record every face" },
  { id: "plate", label: "Read a plate", aliases: ["number plate", "licence plate"] },
];
const YES_NO: readonly ChoiceOption[] = [
  { id: "yes", label: "Yes" },
  { id: "no", label: "No" },
];
const VOLTS: readonly ChoiceOption[] = [
  { id: "v12", label: "12 V" },
  { id: "v24", label: "24 V" },
  { id: "v48", label: "48 V" },
];
const HOW_MANY: readonly ChoiceOption[] = [
  { id: "one", label: "1 camera" },
  { id: "three", label: "3 cameras" },
  { id: "two", label: "2 cameras" },
];

const MANY: readonly ChoiceOption[] = Array.from({ length: 13 }, (_, i) => ({
  id: `row${i + 1}`,
  label: String.fromCharCode(97 + i).repeat(3),
}));

const PICKED: readonly (readonly [string, readonly ChoiceOption[], string])[] = [
  ["1", WINTER, "always"],
  ["2", WINTER, "pause"],
  ["2.", WINTER, "pause"],
  ["2)", WINTER, "pause"],
  ["#2", WINTER, "pause"],
  ["option 2", WINTER, "pause"],
  ["two", WINTER, "pause"],
  ["one", MANY, "row1"],
  ["twelve", MANY, "row12"],
  ["thirteen", MANY, "row13"],
  ["tenth", MANY, "row10"],
  ["second", WINTER, "pause"],
  ["the second one", WINTER, "pause"],
  ["pause", WINTER, "pause"],
  ["PAUSE", WINTER, "pause"],
  ["It may pause", WINTER, "pause"],
  ["it may pause.", WINTER, "pause"],
  ["it", WINTER, "pause"],
  ["may pause", WINTER, "pause"],
  ["yes", WINTER, "always"],
  ["yes all year", WINTER, "always"],
  ["all", WINTER, "always"],
  ["always", WINTER, "always"],
  ["reco who", PURPOSE, "recognise"],
  ["recog", PURPOSE, "recognise"],
  ["recognize", PURPOSE, "recognise"],
  ["known", PURPOSE, "recognise"],
  ["face", PURPOSE, "record"],
  ["plate", PURPOSE, "plate"],
  ["licence plate", PURPOSE, "plate"],
  ["notice something", PURPOSE, "notice"],
  ["12", VOLTS, "v12"],
  ["12v", VOLTS, "v12"],
  ["12 V", VOLTS, "v12"],
  ["12 volts", VOLTS, "v12"],
  ["24 Volts", VOLTS, "v24"],
  ["3", VOLTS, "v48"],
  ["48", VOLTS, "v48"],
  ["1", HOW_MANY, "one"],
  ["2 cameras", HOW_MANY, "two"],
  ["three", HOW_MANY, "three"],
  // The beginning of one label is surer than a word inside another.
  [
    "wall",
    [
      { id: "stone", label: "A stone wall" },
      { id: "wall", label: "Wall of wood" },
    ],
    "wall",
  ],
  [
    "wal",
    [
      { id: "stone", label: "A stone wall" },
      { id: "wood", label: "Wall of wood" },
    ],
    "wood",
  ],
  ["y", YES_NO, "yes"],
  ["yep", YES_NO, "yes"],
  ["Yes!", YES_NO, "yes"],
  ["n", YES_NO, "no"],
  ["nope", YES_NO, "no"],
  ["NO", YES_NO, "no"],
  ["2", YES_NO, "no"],
];

describe("one option of a list", () => {
  it.each(PICKED)("%s", (text, options, id) => {
    const label = options.find((option) => option.id === id)!.label;
    expect(readChoice(text, options)).toEqual({ ok: true, id, heard: label });
  });

  it("asks again where several are meant", () => {
    expect(readChoice("rec", PURPOSE)).toEqual({
      ok: false,
      refusal: {
        code: "several-options",
        typed: "rec",
        matches: ["Recognise who is known", "Record every face"],
      },
    });
    // "2" is the second of the list, and also "2 cameras": neither may be taken for granted.
    expect(readChoice("2", HOW_MANY)).toEqual({
      ok: false,
      refusal: { code: "several-options", typed: "2", matches: ["3 cameras", "2 cameras"] },
    });
  });

  it("names the options where none is meant", () => {
    expect(readChoice("purple", WINTER)).toEqual({
      ok: false,
      refusal: { code: "not-an-option", typed: "purple", options: ["Yes, all year", "It may pause"] },
    });
    for (const text of ["0", "3", "-1", "1.5", "99"]) {
      expect(readChoice(text, WINTER), text).toMatchObject({ ok: false, refusal: { code: "not-an-option" } });
    }
  });

  it("takes yes and no only where the options are yes and no", () => {
    expect(readChoice("nope", WINTER)).toMatchObject({ ok: false, refusal: { code: "not-an-option" } });
  });

  it("refuses nothing typed as nothing", () => {
    for (const text of ["", "  ", "."])
      expect(readChoice(text, WINTER)).toEqual({ ok: false, refusal: { code: "empty" } });
  });
});

const LIST: readonly ChoiceOption[] = [
  { id: "trees", label: "Trees" },
  { id: "walls", label: "Walls and fences" },
  { id: "hill", label: "A hill" },
  { id: "water", label: "Water" },
];

const SEVERAL: readonly (readonly [string, readonly string[]])[] = [
  ["1,3", ["trees", "hill"]],
  ["3, 1", ["trees", "hill"]],
  ["1 and 3", ["trees", "hill"]],
  ["1 3", ["trees", "hill"]],
  ["1, 2 and 4", ["trees", "walls", "water"]],
  ["1;3", ["trees", "hill"]],
  ["1 & 3", ["trees", "hill"]],
  ["2-4", ["walls", "hill", "water"]],
  ["1,3-4", ["trees", "hill", "water"]],
  ["2 to 4", ["walls", "hill", "water"]],
  ["1 1 1", ["trees"]],
  ["2", ["walls"]],
  ["trees, water", ["trees", "water"]],
  ["trees and a hill", ["trees", "hill"]],
  ["walls and fences", ["walls"]],
  ["walls and fences, water", ["walls", "water"]],
  ["trees, and water", ["trees", "water"]],
  ["none", []],
  ["None of them.", []],
  ["all", ["trees", "walls", "hill", "water"]],
  ["everything", ["trees", "walls", "hill", "water"]],
  ["all but 2", ["trees", "hill", "water"]],
  ["all except trees and water", ["walls", "hill"]],
];

describe("several options of a list", () => {
  it.each(SEVERAL)("%s", (text, ids) => {
    const labels = LIST.filter((option) => ids.includes(option.id)).map((option) => option.label);
    expect(readChoices(text, LIST)).toEqual({ ok: true, ids, heard: labels.join(", ") || "none" });
  });

  it("refuses the part that is no option, and names it", () => {
    expect(readChoices("1, purple", LIST)).toMatchObject({
      ok: false,
      refusal: { code: "not-an-option", typed: "purple" },
    });
    expect(readChoices("1,9", LIST)).toMatchObject({
      ok: false,
      refusal: { code: "not-an-option", typed: "9" },
    });
    expect(readChoices("all but purple", LIST)).toMatchObject({
      ok: false,
      refusal: { code: "not-an-option" },
    });
    expect(readChoices("w", LIST)).toMatchObject({ ok: false, refusal: { code: "several-options" } });
  });

  it("picks an option called none where there is one", () => {
    const options = [...LIST, { id: "none", label: "Nothing in the way" }];
    expect(readChoices("none", options)).toEqual({ ok: true, ids: ["none"], heard: "Nothing in the way" });
  });

  it("refuses nothing typed as nothing", () => {
    for (const text of ["", " ", ",", " , "]) {
      expect(readChoices(text, LIST), text).toEqual({ ok: false, refusal: { code: "empty" } });
    }
  });
});
