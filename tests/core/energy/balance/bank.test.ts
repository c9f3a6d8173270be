// What a bank is, apart from the run: its temperature, what its voltage says, how long it lasts.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  bankLifeYears,
  bankTempC,
  type Chemistry,
  chargeSettings,
  chargingVFromSoc,
  restVFromSoc,
  socFromRestVoltage,
} from "../../../../src/core/energy/index.ts";
import { RangeFault } from "../../../../src/core/numerics/index.ts";
import { near, nearRatio } from "../../../helpers/near.ts";

const CHEMISTRIES: readonly Chemistry[] = ["lead-vented", "lead-agm", "lead-gel", "lifepo4"];

describe("bankTempC", () => {
  it("follows a step as 1 - exp(-t / lag), worked by hand", () => {
    const air = Float64Array.from({ length: 72 }, (_, hour) => (hour < 24 ? 20 : 0));
    const bank = bankTempC({ ambientTempC: air, timeConstantH: 12 });
    near(bank[23]!, 20, { within: 1e-12 });
    near(bank[35]!, 20 * Math.exp(-1), { within: 1e-9 });
    near(bank[47]!, 20 * Math.exp(-2), { within: 1e-9 });
  });
  it("damps a daily swing by 1 / sqrt(1 + (2 pi lag / 24 h)^2), as any first-order lag", () => {
    const air = Float64Array.from({ length: 24 * 40 }, (_, hour) => 8 * Math.sin((2 * Math.PI * hour) / 24));
    const bank = bankTempC({ ambientTempC: air, timeConstantH: 24 }).slice(24 * 20);
    // an hour's step makes it differ a little
    nearRatio(Math.max(...bank), 8 / Math.sqrt(1 + (2 * Math.PI) ** 2), { withinFrac: 0.03 });
  });
  it("without a lag is the air, and refuses what it cannot be", () => {
    const air = Float64Array.of(1, 2, 3);
    expect(bankTempC({ ambientTempC: air, timeConstantH: 0 })).toEqual(air);
    expect(() => bankTempC({ ambientTempC: new Float64Array(0), timeConstantH: 1 })).toThrow(RangeFault);
    expect(() => bankTempC({ ambientTempC: Float64Array.of(Number.NaN), timeConstantH: 1 })).toThrow(
      RangeFault,
    );
  });
});

describe("socFromRestVoltage", () => {
  it("reads a 12 V lead-acid block as common practice does (from memory)", () => {
    for (const [restV, socFrac] of [
      [12.7, 1],
      [12.45, 0.75],
      [12.2, 0.5],
      [11.9, 0.25],
    ] as const) {
      const reading = socFromRestVoltage({ chemistry: "lead-agm", restV, nominalV: 12 });
      near(reading.socFrac, socFrac, { within: 1e-9 });
      expect(reading.isBlind).toBe(false);
      near(
        socFromRestVoltage({ chemistry: "lead-vented", restV: 2 * restV, nominalV: 24 }).socFrac,
        socFrac,
        {
          within: 1e-9,
        },
      );
    }
  });
  it("is blind in the middle of lithium iron phosphate, and sees both ends", () => {
    const reading = (socFrac: number) =>
      socFromRestVoltage({
        chemistry: "lifepo4",
        restV: restVFromSoc({ chemistry: "lifepo4", socFrac, nominalV: 12.8 }),
        nominalV: 12.8,
      });
    for (const socFrac of [0.45, 0.5, 0.6, 0.75, 0.8]) expect(reading(socFrac).isBlind).toBe(true);
    expect(reading(0.05).highestSocFrac).toBeLessThan(0.12);
    expect(reading(1).lowestSocFrac).toBeGreaterThan(0.9);
  });
  it("is undone by restVFromSoc, and rises with the voltage", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...CHEMISTRIES),
        fc.constantFrom(12, 24, 48),
        fc.integer({ min: 0, max: 1000 }),
        (chemistry, nominalV, thousandths) => {
          const socFrac = thousandths / 1000;
          const restV = restVFromSoc({ chemistry, socFrac, nominalV });
          const reading = socFromRestVoltage({ chemistry, restV, nominalV });
          near(reading.socFrac, socFrac, { within: 1e-9 });
          expect(reading.lowestSocFrac).toBeLessThanOrEqual(reading.socFrac);
          expect(reading.highestSocFrac).toBeGreaterThanOrEqual(reading.socFrac);
        },
      ),
    );
  });
});

describe("chargingVFromSoc", () => {
  it("rests without current, rises with current and charge, and ends at absorption", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...CHEMISTRIES),
        fc.constantFrom(12, 24, 48),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        (chemistry, nominalV, socFrac, chargeCRate) => {
          const at = (soc: number, rate: number) =>
            chargingVFromSoc({ chemistry, nominalV, socFrac: soc, chargeCRate: rate });
          expect(at(socFrac, 0)).toBe(restVFromSoc({ chemistry, nominalV, socFrac }));
          expect(at(socFrac, chargeCRate)).toBeGreaterThanOrEqual(at(socFrac, 0));
          expect(at(socFrac, chargeCRate)).toBeGreaterThanOrEqual(at(socFrac / 2, chargeCRate));
          expect(at(socFrac, chargeCRate)).toBeLessThanOrEqual(
            chargeSettings({ chemistry, nominalV, tempC: 25 }).absorptionAt25V,
          );
        },
      ),
    );
  });
  it("refuses a current beyond C/2", () => {
    expect(() =>
      chargingVFromSoc({ chemistry: "lifepo4", nominalV: 12.8, socFrac: 0.5, chargeCRate: 0.6 }),
    ).toThrow(RangeFault);
  });
});

describe("bankLifeYears", () => {
  const cycles = (depthBin: number, perYear: number): Float64Array => {
    const byDepth = new Float64Array(20);
    byDepth[depthBin] = perYear;
    return byDepth;
  };
  it("halves the calendar for each 10 K above 25 deg C, and gives nothing for cold", () => {
    const idle = { chemistry: "lead-gel" as const, cyclesPerYearByDepth: new Float64Array(20) };
    expect(bankLifeYears({ ...idle, tempC: 25 })).toMatchObject({ years: 10, ruledBy: "calendar" });
    near(bankLifeYears({ ...idle, tempC: 35 }).years, 5, { within: 1e-9 });
    near(bankLifeYears({ ...idle, tempC: 45 }).years, 2.5, { within: 1e-9 });
    expect(bankLifeYears({ ...idle, tempC: -10 }).years).toBe(10);
  });
  it("spends 500 cycles of 0.8 (from memory) in 500 days of one such cycle a day", () => {
    const bins = new Float64Array(1);
    bins[0] = 365;
    // one bin has its middle at 0.5: 1000 cycles
    nearRatio(
      bankLifeYears({ chemistry: "lead-agm", cyclesPerYearByDepth: bins, tempC: 20 }).years,
      1000 / 365,
      {
        withinFrac: 1e-9,
      },
    );
    // bin 15 of 20 has its middle at 0.775: on the line between the logarithms of 0.5 and 0.8
    const slope = Math.log(500 / 1000) / Math.log(0.8 / 0.5);
    const expected = 1000 * (0.775 / 0.5) ** slope;
    const deep = bankLifeYears({ chemistry: "lead-agm", cyclesPerYearByDepth: cycles(15, 365), tempC: 20 });
    nearRatio(deep.cycleYears, expected / 365, { withinFrac: 1e-9 });
    expect(deep.ruledBy).toBe("cycles");
  });
  it("adds wear: two kinds of cycle wear as the sum of both", () => {
    const life = (byDepth: Float64Array): number =>
      bankLifeYears({ chemistry: "lifepo4", cyclesPerYearByDepth: byDepth, tempC: 25 }).cycleYears;
    const a = cycles(4, 300);
    const b = cycles(12, 200);
    const both = a.map((one, i) => one + b[i]!);
    nearRatio(1 / life(both), 1 / life(a) + 1 / life(b), { withinFrac: 1e-9 });
  });
  it("never rises with depth, number or heat, and stays a number", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...CHEMISTRIES),
        fc.integer({ min: 0, max: 18 }),
        fc.integer({ min: 0, max: 5000 }),
        fc.integer({ min: -60, max: 60 }),
        (chemistry, bin, perYear, tempC) => {
          const base = bankLifeYears({ chemistry, cyclesPerYearByDepth: cycles(bin, perYear), tempC }).years;
          expect(Number.isFinite(base)).toBe(true);
          for (const harder of [
            { chemistry, cyclesPerYearByDepth: cycles(bin + 1, perYear), tempC },
            { chemistry, cyclesPerYearByDepth: cycles(bin, perYear * 1.5), tempC },
            { chemistry, cyclesPerYearByDepth: cycles(bin, perYear), tempC: tempC + 10 },
          ]) {
            expect(bankLifeYears(harder).years).toBeLessThanOrEqual(base * (1 + 1e-12));
          }
        },
      ),
    );
  });
});
