import { describe, it } from "vitest";
import { insulatedBoxLossWPerK } from "../../../src/core/energy/index.ts";
import { near } from "../../helpers/near.ts";

// Holman, Heat Transfer, example 3-2 (from memory): a cubical furnace, 50 cm inside, walls of fireclay brick 10 cm thick,
// 1.04 W/mK, 500 deg C inside and 50 deg C outside: shape factor 18.36 m, 8.592 kW. Printed to four digits.
describe("a cubical furnace", () => {
  it("loses 8.592 kW", () => {
    const lossWPerK = insulatedBoxLossWPerK({ insideM3: 0.5 ** 3, wallM: 0.1, conductivityWPerMK: 1.04 });
    near(lossWPerK / 1.04, 18.36, { within: 0.005 });
    near((lossWPerK * (500 - 50)) / 1000, 8.592, { within: 0.0005 });
  });
});
