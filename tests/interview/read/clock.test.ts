import { describe, expect, it } from "vitest";
import { readClock, readClockRange } from "../../../src/interview/read/index.ts";

/** Typed text and the time on a twenty-four-hour clock, worked by hand. */
const TIMES: readonly (readonly [string, string])[] = [
  ["6:30", "6:30"],
  ["06:30", "6:30"],
  ["06.30", "6:30"],
  ["6.30", "6:30"],
  ["6h30", "6:30"],
  ["18h30", "18:30"],
  ["18h", "18:00"],
  ["18", "18:00"],
  ["18:30", "18:30"],
  ["18:30:00", "18:30"],
  ["1830", "18:30"],
  ["0630", "6:30"],
  ["630", "6:30"],
  ["1830 hours", "18:30"],
  ["6", "6:00"],
  ["6pm", "18:00"],
  ["6 pm", "18:00"],
  ["6 PM", "18:00"],
  ["6 p.m.", "18:00"],
  ["6:30pm", "18:30"],
  ["6.30 p.m.", "18:30"],
  ["6am", "6:00"],
  ["12am", "0:00"],
  ["12:30 am", "0:30"],
  ["12pm", "12:00"],
  ["12:30 pm", "12:30"],
  ["noon", "12:00"],
  ["midday", "12:00"],
  ["12 noon", "12:00"],
  ["midnight", "0:00"],
  ["24:00", "0:00"],
  ["0:00", "0:00"],
  ["half past six", "6:30"],
  ["half past 6", "6:30"],
  ["half six", "6:30"],
  ["half past six pm", "18:30"],
  ["half past six in the evening", "18:30"],
  ["quarter to seven", "6:45"],
  ["a quarter to seven", "6:45"],
  ["quarter past seven", "7:15"],
  ["quarter to one", "0:45"],
  ["quarter to midnight", "23:45"],
  ["ten past six", "6:10"],
  ["twenty to seven", "6:40"],
  ["twenty-five past six", "6:25"],
  ["5 minutes to 6", "5:55"],
  ["six", "6:00"],
  ["six o'clock", "6:00"],
  ["6 o’clock", "6:00"],
  ["six thirty", "6:30"],
  ["six oh five", "6:05"],
  ["eighteen hundred", "18:00"],
  ["six in the morning", "6:00"],
  ["six in the evening", "18:00"],
  ["3 in the afternoon", "15:00"],
  ["ten at night", "22:00"],
  ["two at night", "2:00"],
  ["12 at night", "0:00"],
  ["about 6", "6:00"],
  ["at 6:30", "6:30"],
  ["18:30 pm", "18:30"],
];

const minutesOf = (clock: string): number => {
  const [hours, minutes] = clock.split(":");
  return Number(hours) * 60 + Number(minutes);
};

describe("a time of day", () => {
  it.each(TIMES)("%s is %s", (text, clock) => {
    expect(readClock(text)).toEqual({ ok: true, minutesAfterMidnight: minutesOf(clock), heard: clock });
  });

  it.each([
    "hello",
    "25:00",
    "6:60",
    "24:30",
    "18:30 am",
    "half to six",
    "6:3",
    "12345",
    "-6",
    "30 ft",
    "quarter past",
    "6 to",
  ])("%s is no time of day", (text) => {
    expect(readClock(text)).toEqual({ ok: false, refusal: { code: "not-a-time", typed: text } });
  });

  it("refuses nothing typed as nothing", () => {
    expect(readClock("  ")).toEqual({ ok: false, refusal: { code: "empty" } });
  });
});

const RANGES: readonly (readonly [string, string])[] = [
  ["from 6 to 18", "6:00 to 18:00, 12 h"],
  ["6-18", "6:00 to 18:00, 12 h"],
  ["6 - 18", "6:00 to 18:00, 12 h"],
  ["6–18", "6:00 to 18:00, 12 h"],
  ["6..18", "6:00 to 18:00, 12 h"],
  ["between 6 and 18", "6:00 to 18:00, 12 h"],
  ["6:00 until 18:30", "6:00 to 18:30, 12 h 30 min"],
  ["06.00-18.30", "6:00 to 18:30, 12 h 30 min"],
  ["0600-1830", "6:00 to 18:30, 12 h 30 min"],
  ["6am-8pm", "6:00 to 20:00, 14 h"],
  ["6 am to 8 pm", "6:00 to 20:00, 14 h"],
  ["half past six to ten at night", "18:30 to 22:00, 3 h 30 min"],
  ["half past six in the morning to ten at night", "6:30 to 22:00, 15 h 30 min"],
  ["quarter to seven to ten", "6:45 to 10:00, 3 h 15 min"],
  ["quarter to seven to quarter to ten", "6:45 to 9:45, 3 h"],
  ["6-8pm", "18:00 to 20:00, 2 h"],
  ["9-5pm", "9:00 to 17:00, 8 h"],
  ["9 to noon", "9:00 to 12:00, 3 h"],
  ["noon to six", "12:00 to 18:00, 6 h"],
  ["8pm to 6", "20:00 to 6:00 the next day, 10 h"],
  ["6am to 8", "6:00 to 8:00, 2 h"],
  ["6am to 6", "6:00 to 18:00, 12 h"],
  ["6 to 8", "6:00 to 8:00, 2 h"],
  ["18 to 6", "18:00 to 6:00 the next day, 12 h"],
  ["22:15 - 5:45", "22:15 to 5:45 the next day, 7 h 30 min"],
  ["22:00 to midnight", "22:00 to 24:00, 2 h"],
  ["midnight to 6", "0:00 to 6:00, 6 h"],
  ["0 to 24", "0:00 to 24:00, 24 h"],
  ["18 to 0", "18:00 to 24:00, 6 h"],
  ["06:00 to 05:30", "6:00 to 5:30 the next day, 23 h 30 min"],
  ["9 to 5 the next day", "9:00 to 5:00 the next day, 20 h"],
  ["six in the evening to six next morning", "18:00 to 6:00 the next day, 12 h"],
  ["all day", "0:00 to 24:00, 24 h"],
  ["always", "0:00 to 24:00, 24 h"],
  ["24 h", "0:00 to 24:00, 24 h"],
  ["round the clock", "0:00 to 24:00, 24 h"],
];

describe("a stretch of clock time", () => {
  it.each(RANGES)("%s is %s", (text, heard) => {
    const [from, to] = heard.replace(/ the next day|,.*/g, "").split(" to ");
    expect(readClockRange(text)).toEqual({
      ok: true,
      fromMin: minutesOf(from!),
      toMin: minutesOf(to!),
      heard,
    });
  });

  it("asks which half of the day is meant where the night and the day fit equally", () => {
    expect(readClockRange("9 to 5")).toEqual({
      ok: false,
      refusal: { code: "ambiguous-time", typed: "9 to 5", readings: ["09:00 to 17:00", "21:00 to 05:00"] },
    });
    expect(readClockRange("6 to 6")).toMatchObject({ ok: false, refusal: { code: "ambiguous-time" } });
  });

  it("offers readings that can be typed as they stand", () => {
    for (const text of ["9 to 5", "6 to 6", "12 to 12", "10:30-7:15", "12 to 1"]) {
      const read = readClockRange(text);
      if (read.ok || read.refusal.code !== "ambiguous-time") continue;
      for (const reading of read.refusal.readings) {
        expect(readClockRange(reading), `${text}: ${reading}`).toMatchObject({ ok: true });
      }
    }
    expect(readClockRange("12 to 1")).toMatchObject({
      ok: false,
      refusal: { readings: ["00:00 to 01:00", "12:00 to 13:00"] },
    });
  });

  it.each(["hello", "6", "6 to", "to 6", "6 to 25", "18 to 18", "6 to 8 to 10 to"])(
    "%s is no stretch of time",
    (text) => {
      expect(readClockRange(text)).toEqual({ ok: false, refusal: { code: "not-a-time", typed: text } });
    },
  );
});
