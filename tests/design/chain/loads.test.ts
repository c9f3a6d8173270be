import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Device } from "../../../src/design/brief.ts";
import { batteryWByMonthAndHour, feedOf } from "../../../src/design/chain/demand.ts";
import { loadsStage } from "../../../src/design/chain/loads.ts";
import { darkSpans, lightSpans, overlapH, runningSpans } from "../../../src/design/chain/spans.ts";
import type { Climate, Sun } from "../../../src/design/design.ts";
import { near } from "../../helpers/near.ts";
import { camera, changed, given, radio, typicalBrief } from "../fixtures.ts";

/** Days of nine hours in December and fifteen in June; only what the load stage reads of it. */
const sun = {
  daylightHByMonth: [9, 10, 12, 13, 14, 15, 15, 14, 12, 11, 10, 9],
  clockMinusSolarH: 0,
  designMonth: 11,
} as unknown as Sun;

describe("loads, worked by hand", () => {
  const loads = loadsStage(typicalBrief, sun);
  const line = (name: string) => loads.lines.find((one) => one.name === name)!;

  it("a 5 + 4 W camera on a day of nine hours: (5 x 9 + 9 x 15) / 0.88 / 0.98 = 180 / 0.8624 = 208.7 Wh", () => {
    near(line("Camera").dailyWh, 208.72, { within: 0.01 });
  });
  it("a 7 W radio: 168 / 0.8624 = 194.8 Wh", () => {
    near(line("Radio").dailyWh, 194.81, { within: 0.01 });
  });
  it("the switch's own 3 W: 72 / 0.98 = 73.5 Wh; the controller's 0.5 W: 12 Wh", () => {
    near(line("PoE switch").dailyWh, 73.47, { within: 0.01 });
    near(line("Charge controller").dailyWh, 12, { within: 1e-9 });
  });
  it("together 489.0 Wh in December", () => {
    near(loads.designDailyWh, 489.0, { within: 0.01 });
    near(loads.dailyWhByMonth[11]!, 489.0, { within: 0.01 });
    near(loads.largestDailyWh, 489.0, { within: 0.01 });
  });
  it("in June the infrared burns nine hours: 4 x 6 / 0.8624 = 27.8 Wh less", () => {
    near(loads.dailyWhByMonth[5]!, 489.0 - 27.83, { within: 0.02 });
  });
  it("fifteen dark hours of 9 + 7 W by night: (16 x 15 / 0.8624 + 3 x 15 / 0.98 + 7.5) / 489.0 = 0.679", () => {
    near(loads.nightShareFrac, (278.29 + 45.92 + 7.5) / 489.0, { within: 0.001 });
    near(loads.longestNightH, 15, { within: 1e-9 });
  });
  it("at midnight 16 / 0.8624 + 3 / 0.98 + 0.5 = 22.11 W, at noon 12 / 0.8624 + 3.06 + 0.5 = 17.48 W", () => {
    near(loads.batteryWByMonthAndHour[11]![0]!, 22.11, { within: 0.01 });
    near(loads.batteryWByMonthAndHour[11]![12]!, 17.48, { within: 0.01 });
  });
  it("says twelve-hour days where the place is unknown: (60 + 108) / 0.8624 = 194.8 Wh for the camera", () => {
    const guessed = loadsStage(typicalBrief, null);
    near(guessed.lines[0]!.dailyWh, 194.81, { within: 0.01 });
    near(guessed.longestNightH, 12, { within: 1e-9 });
  });
});

describe("how a device is fed", () => {
  const dcRadio: Device = { ...radio, feed: "dc" };
  it("a DC device goes through one regulated converter: 168 / 0.8624, and 0.5 W x 24 h / 0.98 idle", () => {
    const loads = loadsStage(changed({ loads: { devices: [dcRadio] } }), sun);
    near(loads.lines.find(({ kind }) => kind === "converter")!.dailyWh, 12.24, { within: 0.01 });
    expect(loads.lines.some(({ kind }) => kind === "switch")).toBe(false);
  });
  it("an owned radio that bears the bank's whole swing is fed straight from it", () => {
    const wide = given({ feed: "dc" as const, minInputV: 10, maxInputV: 32 });
    const narrow = given({ feed: "dc" as const, minInputV: 10, maxInputV: 15 });
    expect(feedOf(dcRadio, changed({ parts: { radio: wide } }))).toBe("direct");
    expect(feedOf(dcRadio, changed({ parts: { radio: narrow } }))).toBe("converter");
    const loads = loadsStage(changed({ parts: { radio: wide }, loads: { devices: [dcRadio] } }), sun);
    near(loads.lines[0]!.dailyWh, 168 / 0.98, { within: 0.01 });
  });
});

describe("when a device runs", () => {
  it("infrared burns only in the dark hours of the schedule", () => {
    // 20:00 to 22:00 by the clock, clock one hour ahead of the sun: 19 to 21 h solar, all dark on a nine-hour day
    const evening: Device = { ...camera, schedule: { kind: "clock", fromMin: 1200, toMin: 1320 } };
    const day: Device = { ...camera, schedule: { kind: "daylight", marginH: 0 } };
    const wh = (device: Device) =>
      loadsStage(changed({ loads: { devices: [device] } }), { ...sun, clockMinusSolarH: 1 }).lines[0]!
        .dailyWh;
    near(wh(evening), (9 * 2) / 0.8624, { within: 1e-6 });
    near(wh(day), (5 * 9) / 0.8624, { within: 1e-6 });
  });
  it("without infrared wanted, a camera's infrared figure counts for nothing", () => {
    const loads = loadsStage(changed({ view: { night: given("ambient") } }), sun);
    near(loads.lines[0]!.dailyWh, (5 * 24) / 0.8624, { within: 1e-6 });
  });
  it("in a month laid up only the controller draws: 12 Wh", () => {
    const runs = Array.from({ length: 12 }, (_, month) => month > 2 && month < 10);
    const loads = loadsStage(changed({ hours: { runsInMonth: given(runs) } }), { ...sun, designMonth: 3 });
    near(loads.dailyWhByMonth[0]!, 12, { within: 1e-9 });
    expect(loads.dailyWhByMonth[4]!).toBeGreaterThan(400);
  });
  it("a stretch of the clock over midnight is one stretch, and one of no length is the whole day", () => {
    const spans = (fromMin: number, toMin: number) =>
      runningSpans({ schedule: { kind: "clock", fromMin, toMin }, daylightH: 12, clockMinusSolarH: 0 });
    near(overlapH(spans(22 * 60, 4 * 60), [[0, 24]]), 6, { within: 1e-9 });
    near(overlapH(spans(0, 24 * 60 - 1), [[0, 24]]), 24 - 1 / 60, { within: 1e-9 });
    near(overlapH(spans(300, 300), [[0, 24]]), 24, { within: 1e-9 });
  });
  it("light and dark make the day, at any length of it", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 24, noNaN: true }), (daylightH) => {
        near(overlapH(lightSpans(daylightH), [[0, 24]]) + overlapH(darkSpans(daylightH), [[0, 24]]), 24, {
          within: 1e-9,
        });
      }),
    );
  });
});

describe("laws", () => {
  it("hours add up to the day, and lines to the design day", () => {
    const loads = loadsStage(typicalBrief, sun);
    loads.batteryWByMonthAndHour.forEach((hours, month) => {
      near(
        hours.reduce((total, watts) => total + watts, 0),
        loads.dailyWhByMonth[month]!,
        { within: 1e-9 },
      );
    });
  });
  it("more watts, or more hours, never ask for less in any hour", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 30, noNaN: true }),
        fc.double({ min: 0, max: 30, noNaN: true }),
        fc.integer({ min: 0, max: 1439 }),
        fc.integer({ min: 0, max: 1439 }),
        (dayW, extraW, fromMin, toMin) => {
          const one = (device: Device) =>
            batteryWByMonthAndHour(changed({ loads: { devices: [device] } }), sun);
          const base: Device = {
            ...camera,
            dayW: given(dayW),
            nightExtraW: given(extraW),
            schedule: { kind: "clock", fromMin, toMin },
          };
          const least = one(base).flat();
          const stronger = one({ ...base, dayW: given(dayW + 1) }).flat();
          const longer = one({ ...base, schedule: { kind: "always" } }).flat();
          least.forEach((watts, i) => {
            expect(stronger[i]!).toBeGreaterThanOrEqual(watts - 1e-9);
            expect(longer[i]!).toBeGreaterThanOrEqual(watts - 1e-9);
          });
        },
      ),
    );
  });
});

describe("what runs by a thermostat", () => {
  // coldest month -5, lowest hour of the year -29: eight kelvin to one standard deviation
  const climate = {
    meanTempCByMonth: [-5, -3, 2, 8, 13, 17, 19, 18, 13, 8, 2, -3],
    designColdTempC: -29,
    designHotTempC: 35,
  } as unknown as Climate;
  const heater: Device = {
    ...camera,
    name: "Heater",
    kind: "heater",
    feed: "dc",
    dayW: given(12),
    nightExtraW: given(0),
    schedule: { kind: "cold", belowC: -13 },
  };
  const brief = changed({ loads: { devices: [heater] } });

  it("a heater set one standard deviation below January's mean is on for 15.87 % of it", () => {
    // standard normal table: 0.1587 below -1
    const loads = loadsStage(brief, { ...sun, designMonth: 0 }, climate);
    near(loads.lines[0]!.hoursPerDay, 24 * 0.1587, { within: 0.01 });
    near(loads.lines[0]!.dailyWh, (12 * 24 * 0.1587) / 0.8624, { within: 0.05 });
    near(loads.dailyWhByMonth[6]! - loads.dailyWhByMonth[5]!, 0, { within: 0.1 });
  });
  it("a fan runs in the rest of the hours", () => {
    const fan: Device = { ...heater, name: "Fan", kind: "fan", schedule: { kind: "heat", aboveC: -13 } };
    const loads = loadsStage(changed({ loads: { devices: [heater, fan] } }), sun, climate);
    near(loads.lines[0]!.hoursPerDay + loads.lines[1]!.hoursPerDay, 24, { within: 1e-9 });
  });
  it("where the climate is not known it is taken as always on", () => {
    near(loadsStage(brief, sun).lines[0]!.hoursPerDay, 24, { within: 1e-9 });
  });
});

describe("a lithium battery's heater", () => {
  // ten months far above its warmth, January at -5 with no spread to speak of
  const climate = {
    meanTempCByMonth: [-5, 20, 20, 20, 20, 20, 20, 20, 20, 20, 20, 20],
    designColdTempC: -8,
    designHotTempC: 23,
  } as unknown as Climate;
  const heated = (heaterW: number) =>
    changed({ power: { batteryHeaterW: given(heaterW) }, loads: { devices: [] } });
  // a block of 12.8 V and 100 Ah: 0.81 W/K by hand, see tests/design/battery-heater.test.ts
  const januaryWh = (heaterW: number, bankWh = 1280) =>
    loadsStage(heated(heaterW), sun, climate, bankWh).dailyWhByMonth[0]!;
  it("makes up the heat that the box loses: 0.81 W/K x 10 K x 24 h = 195 Wh a day at -5 degrees C", () => {
    near(januaryWh(30) - januaryWh(0), 195, { within: 1 });
  });
  it("of a larger bank draws more, by less than the bank is larger", () => {
    const ratio = (januaryWh(100, 8 * 1280) - januaryWh(0)) / (januaryWh(100) - januaryWh(0));
    expect(ratio).toBeGreaterThan(3.5);
    expect(ratio).toBeLessThan(4);
  });
  it("gives no more than it has, and nothing in warm months", () => {
    near(januaryWh(3) - januaryWh(0), 72, { within: 0.5 });
    near(loadsStage(heated(30), sun, climate).dailyWhByMonth[6]!, 12, { within: 0.01 });
  });
});
