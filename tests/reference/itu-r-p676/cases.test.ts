import { describe, it } from "vitest";
import { gasDbPerKm, gasLossDb } from "../../../src/core/link/index.ts";
import { near } from "../../helpers/near.ts";
import { VALIDATION } from "./cases.ts";

/** Half a unit in the sixth significant digit, which is what the sheet prints; vapour at 1 GHz has three. */
function halfDigit(value: number): number {
  const digits = value === 0.0000509 ? 3 : 6;
  return 0.51 * 10 ** (Math.floor(Math.log10(value)) - digits + 1);
}

describe("ITU validation of P.676-13, to every printed digit", () => {
  it.each(VALIDATION)("$gigahertz GHz", (row) => {
    const found = gasDbPerKm({
      frequencyMHz: row.gigahertz * 1000,
      dryPressureHPa: 1013.25,
      tempC: 15,
      vapourGPerM3: 7.5,
    });
    near(found.oxygenDbPerKm, row.oxygenDbPerKm, { within: halfDigit(row.oxygenDbPerKm) });
    near(found.vapourDbPerKm, row.vapourDbPerKm, { within: halfDigit(row.vapourDbPerKm) });
    near(found.oxygenDbPerKm + found.vapourDbPerKm, row.totalDbPerKm, {
      within: halfDigit(row.totalDbPerKm),
    });
  });
});

/** How: worked from the same equations for the standard's own air; channel centres of 802.11ad read in published tables. */
describe("60 GHz channels", () => {
  it("channel 2 loses 14.96 dB/km to oxygen and 0.157 to vapour", () => {
    const found = gasDbPerKm({ frequencyMHz: 60_480 });
    near(found.oxygenDbPerKm, 14.9616, { within: 0.00006 });
    near(found.vapourDbPerKm, 0.1572, { within: 0.00006 });
  });

  it("channel 4 loses about 10 dB/km less", () => {
    const two = gasLossDb({ frequencyMHz: 60_480, distanceM: 1000 });
    const four = gasLossDb({ frequencyMHz: 64_800, distanceM: 1000 });
    near(two - four, 10, { within: 1 });
  });
});
