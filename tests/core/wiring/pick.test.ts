import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type ConductorPick,
  conductorFit,
  conductors,
  pickConductor,
  type WireRun,
} from "../../../src/core/wiring/index.ts";
import { nearRatio } from "../../helpers/near.ts";

const anyRun: fc.Arbitrary<WireRun> = fc.record({
  family: fc.constantFrom("mm2" as const, "awg" as const),
  currentA: fc.double({ min: 0.05, max: 60, noNaN: true }),
  lengthM: fc.double({ min: 0.2, max: 60, noNaN: true }),
  systemV: fc.constantFrom(12, 24, 48),
  maxDropFrac: fc.double({ min: 0.005, max: 0.1, noNaN: true }),
  ambientTempC: fc.double({ min: -30, max: 70, noNaN: true }),
  terminalTempC: fc.constantFrom(60, 75),
});

const areaMm2 = (pick: ConductorPick): number =>
  pick.kind === "picked" ? pick.conductor.areaMm2 : Number.POSITIVE_INFINITY;

describe("pickConductor", () => {
  it("picks a wire that serves, and the next thinner one does not", () => {
    fc.assert(
      fc.property(anyRun, (run) => {
        const pick = pickConductor(run);
        if (pick.kind === "none-fits") {
          for (const conductor of conductors(run.family)) {
            expect(conductorFit({ ...run, conductor }).failsOn).not.toEqual([]);
          }
          return;
        }
        expect(pick.dropFrac).toBeLessThanOrEqual(run.maxDropFrac);
        expect(pick.ampacityA).toBeGreaterThanOrEqual(run.currentA);
        const sold = conductors(run.family).filter((c) => c.areaMm2 >= 1.5);
        const thinner = sold[sold.indexOf(pick.conductor) - 1];
        if (thinner) expect(conductorFit({ ...run, conductor: thinner }).failsOn).toEqual(pick.decidedBy);
        else expect(pick.decidedBy).toEqual([]);
      }),
    );
  });

  it("thicker wire never drops more", () => {
    fc.assert(
      fc.property(anyRun, (run) => {
        const drops = conductors(run.family).map((conductor) => conductorFit({ ...run, conductor }).dropV);
        for (let i = 1; i < drops.length; i++) expect(drops[i]!).toBeLessThanOrEqual(drops[i - 1]!);
      }),
    );
  });

  it("a longer run, more current, a hotter place or a stricter limit never picks thinner wire", () => {
    fc.assert(
      fc.property(anyRun, fc.double({ min: 1, max: 3, noNaN: true }), (run, by) => {
        const before = areaMm2(pickConductor(run));
        for (const harder of [
          { ...run, lengthM: run.lengthM * by },
          { ...run, currentA: run.currentA * by },
          { ...run, ambientTempC: Math.min(95, run.ambientTempC + 10 * by) },
          { ...run, maxDropFrac: Math.max(0.001, run.maxDropFrac / by) },
          { ...run, fuseFamily: "blade" as const },
        ]) {
          expect(areaMm2(pickConductor(harder))).toBeGreaterThanOrEqual(before);
        }
      }),
    );
  });

  it("takes a fuse that protects the wire where one is asked for", () => {
    // 13 A needs a fuse of 16.25 A or more. 14 AWG may have 15 A at most, so 12 AWG with 20 A.
    const run = { currentA: 13, lengthM: 1, systemV: 48, maxDropFrac: 0.05, ambientTempC: 30 };
    const pick = pickConductor({ ...run, family: "awg", terminalTempC: 75, fuseFamily: "breaker" });
    expect(pick).toMatchObject({
      kind: "picked",
      conductor: { name: "12 AWG" },
      fuseLimitA: 20,
      fuse: { kind: "picked", ratingA: 20 },
      decidedBy: ["ampacity", "fuse"],
    });
  });

  it("worst case: 30 A over 60 m at 12 V within 1 % fits no wire, and says what the thickest would do", () => {
    const pick = pickConductor({
      family: "awg",
      currentA: 30,
      lengthM: 60,
      systemV: 12,
      maxDropFrac: 0.01,
      ambientTempC: 40,
    });
    if (pick.kind !== "none-fits") throw new Error("something fitted");
    expect(pick.thickest).toMatchObject({ conductor: { name: "4/0 AWG" }, failsOn: ["voltage-drop"] });
    // Worked by hand: 2 x 60 m x 0.0608 ohm/kft x 3.28084 / 1000 x 30 A = 0.718 V of 12 V.
    nearRatio(pick.thickest.dropFrac, 0.0598, { withinFrac: 0.002 });
  });

  it("starts at 1.5 mm2 and 14 AWG unless told otherwise", () => {
    const easy = { currentA: 0.1, lengthM: 1, systemV: 12, maxDropFrac: 0.05, ambientTempC: 30 };
    expect(pickConductor({ ...easy, family: "mm2" })).toMatchObject({ conductor: { name: "1.5 mm2" } });
    expect(pickConductor({ ...easy, family: "awg" })).toMatchObject({ conductor: { name: "14 AWG" } });
    expect(pickConductor({ ...easy, family: "awg", minAreaMm2: 0.5 })).toMatchObject({
      conductor: { name: "18 AWG" },
    });
  });

  it("refuses a drop limit of nothing and a voltage of none", () => {
    const run = { family: "mm2", currentA: 1, lengthM: 1, ambientTempC: 30 } as const;
    expect(() => pickConductor({ ...run, systemV: 12, maxDropFrac: 0 })).toThrow(/maxDropFrac is 0/);
    expect(() => pickConductor({ ...run, systemV: 0, maxDropFrac: 0.03 })).toThrow(/systemV is 0/);
  });
});
