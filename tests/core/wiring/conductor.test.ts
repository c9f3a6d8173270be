import { describe, expect, it } from "vitest";
import {
  awgDiameterMm,
  conductorOhmPerKm,
  conductors,
  copperOhmPerKm,
  copperResistanceRatio,
} from "../../../src/core/wiring/index.ts";

describe.each(["mm2", "awg"] as const)("%s conductors", (family) => {
  it("come thinnest first: area and ampacity rise, resistance falls", () => {
    const all = conductors(family);
    expect(all).toHaveLength(15);
    for (let i = 1; i < all.length; i++) {
      const [thin, thick] = [all[i - 1]!, all[i]!];
      expect(thick.areaMm2).toBeGreaterThan(thin.areaMm2);
      expect(thick.ohmPerKm20).toBeLessThan(thin.ohmPerKm20);
      expect(thick.tinnedOhmPerKm20).toBeLessThan(thin.tinnedOhmPerKm20);
      thick.ampacityByTempC.forEach(([, carriesA], column) => {
        expect(carriesA).toBeGreaterThan(thin.ampacityByTempC[column]![1]);
      });
    }
  });
  it("lie above pure copper of their section at any temperature", () => {
    for (const conductor of conductors(family)) {
      for (const conductorTempC of [-20, 20, 75]) {
        expect(conductorOhmPerKm({ conductor, conductorTempC })).toBeGreaterThan(
          copperOhmPerKm({ areaMm2: conductor.areaMm2, conductorTempC }),
        );
      }
    }
  });
});

describe("names", () => {
  it("read as on the reel", () => {
    const names = [...conductors("awg"), ...conductors("mm2")].map(({ name }) => name);
    for (const name of ["10 AWG", "1 AWG", "1/0 AWG", "4/0 AWG", "2.5 mm2"]) expect(names).toContain(name);
  });
});

describe("copper", () => {
  it("has one resistance at 20 degrees", () => expect(copperResistanceRatio(20)).toBe(1));
  it("refuses what is no gauge and no working temperature", () => {
    expect(() => awgDiameterMm(41)).toThrow(/gauge is 41/);
    expect(() => copperResistanceRatio(151)).toThrow(/conductorTempC is 151/);
  });
});
