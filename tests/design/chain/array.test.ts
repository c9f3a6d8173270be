import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Brief } from "../../../src/design/brief.ts";
import { arrayStage } from "../../../src/design/chain/array.ts";
import { batteryStage } from "../../../src/design/chain/battery.ts";
import { loadsStage } from "../../../src/design/chain/loads.ts";
import type { ArraySizing, Climate, Sun } from "../../../src/design/design.ts";
import { designOf } from "../../../src/design/index.ts";
import { leastArrayToLoadRatio } from "../../../src/design/practice/array.ts";
import { CONTROLLER_INPUT_V } from "../../../src/design/practice/sold.ts";
import { near } from "../../helpers/near.ts";
import { at, camera, changed, given, sites, syntheticWorld, typicalBrief } from "../fixtures.ts";
import { evenClimate, evenSun } from "./stubs.ts";

const array = (brief: Brief, climate: Climate = evenClimate, sun: Sun = evenSun): ArraySizing => {
  const loads = loadsStage(brief, sun);
  return arrayStage(brief, climate, sun, loads, batteryStage(brief, climate, sun, loads))!;
};
const lead = changed({
  autonomy: { consequence: given("days"), askedDays: given(6) },
  power: { chemistry: given("agm"), bankV: given(24) },
});

describe("the IEEE 1562 worksheet in watt-hours, worked by hand", () => {
  it("489.0 Wh, 3 sun hours, ratio 1.2: 275.0 W", () => {
    // 1 - losses: 0.95 dirt x 0.97 wire x 0.97 mismatch = 0.8939; x 0.90 battery x 0.95 controller = 0.7643;
    // heat: cells 25 + (219 + 832 x 0.5) x 25 / 800 = 44.8 degrees C, 0.0035 x 19.84 = 0.0695; 0.7643 x 0.9305 = 0.7112
    // 489.0 x 1.2 / (3 x 0.7112) = 275.0 W
    const { requiredW, systemLossFrac, arrayToLoadRatio } = array(lead);
    near(arrayToLoadRatio, 1.2, { within: 1e-9 });
    near(systemLossFrac, 1 - 0.7112, { within: 0.0005 });
    near(requiredW, 275, { within: 0.3 });
  });
  it("in whole panels: two of 150 W in series, because one of 19 V cannot charge 24 V", () => {
    const { panelW, panels, inSeries, inParallel, installedW } = array(lead);
    expect({ panelW, panels, inSeries, inParallel, installedW }).toEqual({
      panelW: 150,
      panels: 2,
      inSeries: 2,
      inParallel: 1,
      installedW: 300,
    });
  });
  it("the string at 0 degrees C: 2 x 23 x 1.10 by the table = 50.6 V, so a controller for 75 V", () => {
    // by coefficient 46 x (1 + 0.003 x 25) = 49.45 V is lower; 50.6 x 1.05 = 53.1 > 50
    const { coldOpenCircuitV, controllerMaxInputV } = array(lead);
    near(coldOpenCircuitV, 50.6, { within: 0.001 });
    expect(controllerMaxInputV).toBe(75);
  });
  it("300 W x 0.95 / 24 V = 11.9 A into the bank; x 1.25 = 14.8, so a controller of 15 A", () => {
    const { chargeCurrentA, controllerA } = array(lead);
    near(chargeCurrentA, 11.875, { within: 1e-6 });
    expect(controllerA).toBe(15);
  });
  it("supply over demand: 300 x 3 x 0.7112 / 489.0 = 1.309; six days back in 6 / 0.309 = 19.4 days", () => {
    const { supplyRatioByMonth, recoveryDays } = array(lead);
    near(supplyRatioByMonth[11]!, 1.309, { within: 0.001 });
    near(recoveryDays!, 19.4, { within: 0.1 });
  });
  it("a direct controller holds a 19 V panel at 13 V: 0.684 instead of 0.95 x 0.93", () => {
    const direct = array(changed({ power: { controller: given("pwm") } }, lead));
    near(1 - direct.systemLossFrac, 0.8939 * 0.9 * (13 / 19), { within: 0.001 });
    expect(direct.inSeries).toBe(2);
    expect(direct.controllerMaxInputV).toBe(75);
  });
});

describe("margin", () => {
  it("is the larger of the builder's and the standard's, never both", () => {
    const ratio = (marginFrac: number, consequence: "nuisance" | "worry" | "disaster") =>
      array(
        changed({ power: { marginFrac: given(marginFrac) }, autonomy: { consequence: given(consequence) } }),
      ).arrayToLoadRatio;
    near(ratio(0.2, "worry"), 1.3, { within: 1e-9 });
    near(ratio(0.5, "worry"), 1.5, { within: 1e-9 });
    near(ratio(0.2, "nuisance"), 1.2, { within: 1e-9 });
    near(ratio(0, "nuisance"), 1.1, { within: 1e-9 });
    near(ratio(0, "disaster"), 1.4, { within: 1e-9 });
  });
  it("for hours a year in the dark runs through the classes", () => {
    const hours = (askedDarkHours: number) =>
      leastArrayToLoadRatio({
        ...typicalBrief.autonomy,
        consequence: given("darkHours"),
        askedDarkHours: given(askedDarkHours),
      });
    near(hours(438), 1.1, { within: 1e-9 });
    near(hours(87.6), 1.3, { within: 1e-9 });
    near(hours(8.76), 1.4, { within: 1e-9 });
  });
});

describe("months without sun", () => {
  const dark: Sun = { ...evenSun, poaDailyKWhPerM2ByMonth: [0, 0.6, 2, 3, 4, 5, 5, 4, 3, 2, 0.3, 0] };
  const polar = changed({
    place: { site: given({ label: "", latitudeDeg: 70, longitudeDeg: 0, elevationM: 0, countryCode: null }) },
  });
  it("are named, and neither they nor the dim months beside them ask for more than a month of 1 kWh/m2 does", () => {
    const { darkMonths, requiredWByMonth, requiredW, recoveryDays } = array(polar, evenClimate, dark);
    expect(darkMonths).toEqual([0, 11]);
    const held = array(polar, evenClimate, {
      ...dark,
      poaDailyKWhPerM2ByMonth: dark.poaDailyKWhPerM2ByMonth.map((poa) => Math.max(1, poa)),
    });
    expect(requiredWByMonth).toEqual(held.requiredWByMonth);
    expect(requiredW).toBe(held.requiredW);
    expect(recoveryDays).toBeNull();
  });
  it("a whole year without sun gives no figure but an honest one", () => {
    const none = array(polar, evenClimate, {
      ...dark,
      poaDailyKWhPerM2ByMonth: dark.poaDailyKWhPerM2ByMonth.map(() => 0),
    });
    expect(none.darkMonths.length).toBe(12);
    expect(none.requiredW).toBe(0);
    expect(Number.isFinite(none.installedW)).toBe(true);
  });
});

describe("laws", () => {
  const anyLoad = fc.double({ min: 1, max: 60, noNaN: true });
  const withLoad = (dayW: number, marginFrac = 0.2) =>
    changed({
      loads: { devices: [{ ...camera, dayW: given(dayW) }] },
      power: { marginFrac: given(marginFrac), bankV: given(24) },
    });
  it("more load or more margin never fewer watts, and never more than two panels too many", () => {
    fc.assert(
      fc.property(anyLoad, fc.double({ min: 0, max: 1, noNaN: true }), (dayW, marginFrac) => {
        const base = array(withLoad(dayW, marginFrac));
        expect(array(withLoad(dayW + 1, marginFrac)).requiredW).toBeGreaterThan(base.requiredW);
        expect(array(withLoad(dayW, marginFrac + 0.5)).requiredW).toBeGreaterThan(base.requiredW);
        expect(base.installedW).toBeGreaterThanOrEqual(base.requiredW - 1e-6);
        expect(base.panels).toBe(base.inSeries * base.inParallel);
      }),
      { numRuns: 60 },
    );
  });
  it("every string charges the full bank when hot and stays within a sold input when cold", () => {
    fc.assert(
      fc.property(
        anyLoad,
        fc.double({ min: -50, max: 20, noNaN: true }),
        fc.constantFrom(20, 50, 100, 200, 300, 450),
        fc.constantFrom(12 as const, 24 as const, 48 as const),
        (dayW, recordColdTempC, largestPanelW, bankV) => {
          const brief = changed({
            loads: { devices: [{ ...camera, dayW: given(dayW) }] },
            power: { largestPanelW: given(largestPanelW), bankV: given(bankV), chemistry: given("agm") },
          });
          const found = array(brief, { ...evenClimate, recordColdTempC });
          expect(found.panelW).toBeLessThanOrEqual(largestPanelW);
          expect(found.hotMaxPowerV).toBeGreaterThan((bankV / 12) * 14.4);
          if (found.coldOpenCircuitV * 1.05 <= 150) {
            expect(found.controllerMaxInputV).toBeGreaterThanOrEqual(found.coldOpenCircuitV * 1.05);
          } else {
            expect(found.controllerMaxInputV).toBe(CONTROLLER_INPUT_V.at(-1));
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe("several controllers", () => {
  it("are each rated for the whole strings of the fullest: 1.25 times its share, never more controllers than strings", () => {
    let several = 0;
    for (const dayW of [20, 60, 120, 240]) {
      for (const kind of ["pwm", "mppt"] as const) {
        const brief = changed(
          {
            power: { controller: given(kind), bankV: given(12) },
            loads: { devices: [{ ...camera, dayW: given(dayW) }] },
          },
          at(sites.north60),
        );
        const array = designOf(brief, syntheticWorld).array!;
        const fullestA =
          (array.chargeCurrentA * Math.ceil(array.inParallel / array.controllers)) / array.inParallel;
        expect(array.controllers).toBeLessThanOrEqual(array.inParallel);
        if (array.controllerA < 60) expect(array.controllerA).toBeGreaterThanOrEqual(1.25 * fullestA - 1e-9);
        if (array.controllers > 1) several += 1;
      }
    }
    expect(several).toBeGreaterThan(1);
  });
});
