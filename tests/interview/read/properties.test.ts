import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { convert, type Dimension, formatQuantity, unitsOf } from "../../../src/core/units/index.ts";
import {
  forcedText,
  type QuantitySpec,
  readChoice,
  readChoices,
  readClock,
  readClockRange,
  readCommand,
  readCount,
  readQuantity,
  refusalText,
} from "../../../src/interview/read/index.ts";
import { near } from "../../helpers/near.ts";

const DIMENSIONS: readonly Dimension[] = [
  "length",
  "area",
  "angle",
  "speed",
  "power",
  "energy",
  "charge",
  "voltage",
  "current",
  "frequency",
  "gain",
  "level",
  "loss",
  "bitrate",
  "frameRate",
  "duration",
  "mass",
  "pressure",
  "temperature",
  "temperatureDifference",
  "temperatureCoefficient",
  "irradiation",
  "share",
  "count",
];
const WIDE = { min: -1e15, max: 1e15 };

const pairOfUnits = fc
  .constantFrom(...DIMENSIONS)
  .chain((dimension) =>
    fc.tuple(fc.constantFrom(...unitsOf(dimension)), fc.constantFrom(...unitsOf(dimension))),
  );
const spec = fc
  .constantFrom(...DIMENSIONS)
  .chain((dimension) => fc.constantFrom(...unitsOf(dimension)))
  .map((unit): QuantitySpec => ({ dimension: unit.dimension, unit: unit.symbol, possible: WIDE }));
const figure = fc.integer({ min: -99999, max: 99999 }).map((whole) => whole / 100);

/** Texts that look nearly like answers: words the reader knows, in any order. */
const WORDS =
  "5 12 1,500 9,1 1.5 1/2 half a an one and to - -- +- ~ about at least under or between from ft in m ' \" W V kWh % ° C F h min d " +
  "ish + ( ) measured label guess noon past quarter six pm am : . .. , none all but yes no why change 7 dozen couple of below zero";
const almost = fc
  .array(fc.tuple(fc.constantFrom(...WORDS.split(" ")), fc.constantFrom(" ", "")), { maxLength: 12 })
  .map((parts) => parts.map(([word, space]) => word + space).join(""));
const anyText = fc.oneof(almost, fc.string({ unit: "binary", maxLength: 300 }), fc.string({ maxLength: 60 }));

describe("laws of reading", () => {
  it("what is shown can be typed back: in its own unit", () => {
    fc.assert(
      fc.property(pairOfUnits, figure, ([unit], value) => {
        const text = formatQuantity({ value, unit: unit.symbol, digits: 12 });
        const read = readQuantity(text, { dimension: unit.dimension, unit: unit.symbol, possible: WIDE });
        if (!read.ok) throw new Error(`${text}: ${JSON.stringify(read.refusal)}`);
        expect(read.best, text).toBe(value);
      }),
    );
  });

  it("what is shown can be typed back: with another unit on the screen, and rounded as it is shown", () => {
    fc.assert(
      fc.property(pairOfUnits, figure, ([typed, shown], value) => {
        const text = formatQuantity({ value, unit: typed.symbol, digits: 3 });
        const read = readQuantity(text, { dimension: shown.dimension, unit: shown.symbol, possible: WIDE });
        if (!read.ok) throw new Error(`${text}: ${JSON.stringify(read.refusal)}`);
        const back = convert({ value: read.best, from: shown.symbol, to: typed.symbol });
        near(back, value, { within: 0.006 * Math.abs(value) + 1e-8 });
      }),
    );
  });

  it("a bare number means the unit shown", () => {
    fc.assert(
      fc.property(spec, figure, (about, value) => {
        const read = readQuantity(String(value), about);
        expect(read).toMatchObject({ ok: true, best: value, low: value, high: value, typedUnit: about.unit });
      }),
    );
  });

  it("low <= best <= high, inside what is possible, whatever the doubt", () => {
    const doubts = ["", "about ", "at least ", "under ", "~"];
    const tails = ["", " or so", " +- 10 %", " +- 3", " to 40", "-50"];
    const possible = fc
      .tuple(fc.integer({ min: -100, max: 50 }), fc.integer({ min: 1, max: 200 }))
      .map(([min, span]) => ({ min, max: min + span }));
    fc.assert(
      fc.property(
        spec,
        possible,
        figure,
        fc.constantFrom(...doubts),
        fc.constantFrom(...tails),
        fc.boolean(),
        (about, limits, value, doubt, tail, isWhole) => {
          const read = readQuantity(`${doubt}${value}${tail}`, { ...about, possible: limits, isWhole });
          if (!read.ok) return;
          expect(read.low).toBeLessThanOrEqual(read.best);
          expect(read.best).toBeLessThanOrEqual(read.high);
          const room = 1e-6;
          expect(read.low).toBeGreaterThanOrEqual(limits.min - room);
          expect(read.high).toBeLessThanOrEqual(limits.max + room);
        },
      ),
      { numRuns: 500 },
    );
  });

  it("what is heard can be typed again and means the same", () => {
    const texts = [
      "30 ft",
      "5'6\"",
      "about 25 ft",
      "20-30 ft",
      "at least 20 ft",
      "under 40",
      "25 +- 5 ft",
      "12 steps",
    ];
    const about: QuantitySpec = { dimension: "length", unit: "m", possible: { min: 0.1, max: 200 } };
    for (const text of texts) {
      const first = readQuantity(text, about);
      if (!first.ok) throw new Error(text);
      const again = readQuantity(first.heard.replace(/ = .*| \(.*/, ""), about);
      expect(again).toEqual(first);
    }
  });

  it("never throws and never returns a number that is none, whatever is typed", () => {
    const options = [
      { id: "yes", label: "Yes" },
      { id: "no", label: "No, never" },
      { id: "v12", label: "12 V" },
    ];
    const question = { label: "Distance", example: "30 ft" };
    fc.assert(
      fc.property(anyText, spec, (text, about) => {
        const quantity = readQuantity(text, about);
        if (quantity.ok) {
          for (const value of [quantity.low, quantity.best, quantity.high])
            expect(Number.isFinite(value)).toBe(true);
        }
        const narrow = readQuantity(text, { ...about, possible: { min: 1, max: 2 }, isWhole: true });
        const reads = [
          quantity,
          narrow,
          readChoice(text, options),
          readChoice(text, []),
          readChoices(text, options),
          readClock(text),
          readClockRange(text),
          readCount(text),
        ];
        for (const read of reads) {
          if (read.ok) continue;
          const says = refusalText(read.refusal, question);
          expect(says).toMatch(/[.?]$/);
          expect(says).not.toMatch(/NaN|Infinity|undefined|null|\p{Cc}/u);
        }
        readCommand(text, options);
        forcedText(text);
      }),
      { numRuns: 2000 },
    );
  });

  it("every minute of the day can be typed in two ways, and is read as itself", () => {
    for (let minutes = 0; minutes < 1440; minutes++) {
      const hour = Math.floor(minutes / 60);
      const minute = String(minutes % 60).padStart(2, "0");
      const onDial = `${hour % 12 === 0 ? 12 : hour % 12}:${minute} ${hour < 12 ? "am" : "pm"}`;
      for (const text of [
        `${hour}:${minute}`,
        `${String(hour).padStart(2, "0")}.${minute}`,
        `${hour}h${minute}`,
        onDial,
      ]) {
        expect(readClock(text), text).toMatchObject({ ok: true, minutesAfterMidnight: minutes });
      }
    }
  });

  it("a clock range that is heard can be typed again and means the same", () => {
    const minute = fc.integer({ min: 0, max: 1439 });
    const clock = (minutes: number): string =>
      `${String(Math.floor(minutes / 60)).padStart(2, "0")}:${String(minutes % 60).padStart(2, "0")}`;
    fc.assert(
      fc.property(minute, minute, (from, to) => {
        fc.pre(from !== to);
        const isNextDay = to !== 0 && to < from;
        const read = readClockRange(`${clock(from)} to ${clock(to)}${isNextDay ? " the next day" : ""}`);
        if (!read.ok) throw new Error(JSON.stringify(read.refusal));
        expect(read).toMatchObject({ fromMin: from, toMin: to === 0 ? 1440 : to });
        expect(readClockRange(read.heard.replace(/,.*/, ""))).toEqual(read);
      }),
    );
  });

  it("every whole number is a count", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e6 }), (count) => {
        expect(readCount(String(count))).toMatchObject({ ok: true, count });
      }),
    );
  });
});
