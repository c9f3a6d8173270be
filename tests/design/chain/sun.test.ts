import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { monthlyPoa } from "../../../src/core/sun/index.ts";
import type { Brief } from "../../../src/design/brief.ts";
import { climateStage } from "../../../src/design/chain/climate.ts";
import { sunStage } from "../../../src/design/chain/sun.ts";
import type { Sun } from "../../../src/design/design.ts";
import { snowFracByMonth } from "../../../src/design/practice/sun.ts";
import { near } from "../../helpers/near.ts";
import { at, changed, given, sites, syntheticWorld, typicalBrief } from "../fixtures.ts";

const sun = (brief: Brief): Sun => sunStage(brief, climateStage(brief, syntheticWorld), syntheticWorld)!;

describe("where the panel looks", () => {
  it("to the equator: south at 40 N, north at 5 S", () => {
    expect(sun(typicalBrief)).toMatchObject({ azimuthDeg: 180, facing: "south" });
    expect(sun(at(sites.south5))).toMatchObject({ azimuthDeg: 0, facing: "north" });
  });
  it("steeper than the latitude where winter decides, never flatter than 15 degrees", () => {
    const { tiltDeg, latitudeTiltDeg, designMonth } = sun(typicalBrief);
    expect(latitudeTiltDeg).toBe(40);
    expect(tiltDeg).toBeGreaterThan(latitudeTiltDeg + 9);
    expect(designMonth).toBe(11);
    expect(sun(at(sites.south5)).tiltDeg).toBeGreaterThanOrEqual(15);
  });
  it("no place, no sun", () => {
    expect(sunStage(at(null), null, syntheticWorld)).toBeNull();
  });
});

describe("the design month", () => {
  it("is sought among the months in which the post runs", () => {
    const summer = given<readonly boolean[]>(Array.from({ length: 12 }, (_, m) => m >= 3 && m <= 8));
    const { designMonth, tiltDeg } = sun(changed({ hours: { runsInMonth: summer } }));
    expect([3, 8]).toContain(designMonth);
    expect(tiltDeg).toBeLessThan(sun(typicalBrief).tiltDeg);
  });
  it("a second tilt for the light half-year flattens it and never takes sun from the worst month", () => {
    const twice = sun(changed({ power: { isTiltChanged: given(true) } }));
    const once = sun(typicalBrief);
    expect(twice.summerTiltDeg!).toBeLessThan(twice.tiltDeg);
    expect(twice.poaDailyKWhPerM2ByMonth[once.designMonth]!).toBeGreaterThanOrEqual(
      once.poaDailyKWhPerM2ByMonth[once.designMonth]! - 1e-9,
    );
    expect(twice.poaDailyKWhPerM2ByMonth[5]!).toBeGreaterThan(once.poaDailyKWhPerM2ByMonth[5]!);
  });
});

describe("snow", () => {
  it("four weeks over the five months below 1 degree C: 28 / 151 = 0.185 of each", () => {
    const meanTempCByMonth = [-5, -4, 0, 6, 12, 16, 18, 17, 12, 7, 0.5, -3];
    const frac = snowFracByMonth({ snowWeeks: 4, meanTempCByMonth });
    // January 31, February 28, March 31, November 30, December 31
    near(frac[0]!, 28 / 151, { within: 1e-9 });
    expect(frac.map((share) => share > 0)).toEqual([
      true,
      true,
      true,
      false,
      false,
      false,
      false,
      false,
      false,
      false,
      true,
      true,
    ]);
  });
  it("never covers more than nine tenths, and is taken off the sun", () => {
    const deep = sun(changed({ place: { snowWeeks: given(26) } }));
    expect(Math.max(...deep.snowFracByMonth)).toBeLessThanOrEqual(0.9);
    const climate = climateStage(typicalBrief, syntheticWorld)!;
    const bare = monthlyPoa({
      ghiDailyKWhPerM2ByMonth: climate.ghiDailyKWhPerM2ByMonth,
      latitudeDeg: 40,
      albedoByMonth: climate.ghiDailyKWhPerM2ByMonth.map(() => 0.2),
      tiltDeg: deep.tiltDeg,
      azimuthDeg: 180,
    }).poaDailyKWhPerM2ByMonth;
    near(deep.poaDailyKWhPerM2ByMonth[0]!, bare[0]! * (1 - deep.snowFracByMonth[0]!), { within: 1e-9 });
  });
});

describe("laws", () => {
  it("a higher horizon or more snow never more sun in the design month", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 40, noNaN: true }),
        fc.double({ min: 0, max: 12, noNaN: true }),
        (horizonDeg, snowWeeks) => {
          const worst = (horizon: number, weeks: number) => {
            const found = sun(
              changed({
                place: {
                  horizon: given([{ azimuthDeg: 0, elevationDeg: horizon }]),
                  snowWeeks: given(weeks),
                },
              }),
            );
            return found.poaDailyKWhPerM2ByMonth[found.designMonth]!;
          };
          const here = worst(horizonDeg, snowWeeks);
          expect(worst(horizonDeg + 5, snowWeeks)).toBeLessThanOrEqual(here + 1e-6);
          expect(worst(horizonDeg, snowWeeks + 2)).toBeLessThanOrEqual(here + 1e-6);
        },
      ),
      { numRuns: 20 },
    );
  });
});

describe("what stands round the panel", () => {
  const around = (elevationDeg: number) =>
    sun(changed({ place: { horizon: given([{ azimuthDeg: 0, elevationDeg }]) } }));

  it("takes nothing where nothing stands", () => {
    const open = sun(changed({ place: { horizon: given([]) } }));
    expect(open.shadeFracByMonth).toEqual(Array(12).fill(0));
    expect(open.diffuseShadeFrac).toBe(0);
  });

  it("takes from the sky what a ring hides of it: sine squared of its height on level ground, more on a steep panel", () => {
    // An evenly bright sky above a ring at h lights level ground with cos^2 h of itself: sin^2 20 deg = 0.117 is lost.
    expect(around(20).diffuseShadeFrac).toBeGreaterThan(0.117);
    expect(around(20).diffuseShadeFrac).toBeLessThan(0.5);
  });

  it("takes more the higher it is, most when the sun is lowest", () => {
    const [low, high] = [around(10), around(20)];
    for (let month = 0; month < 12; month++)
      expect(high.shadeFracByMonth[month]).toBeGreaterThanOrEqual(low.shadeFracByMonth[month]! - 1e-9);
    expect(high.shadeFracByMonth[11]).toBeGreaterThan(high.shadeFracByMonth[5]!);
  });
});

describe("where snow lies", () => {
  it("the panel stands at 45 degrees at least, so that it slides", () => {
    const tiltAt5South = (snowWeeks: number) =>
      sun(changed({ place: { snowWeeks: given(snowWeeks) } }, at(sites.south5))).tiltDeg;
    expect(tiltAt5South(0)).toBeLessThan(30);
    expect(tiltAt5South(6)).toBe(45);
  });
});
