import { describe, it } from "vitest";
import { outageHPerYear } from "../../../src/core/link/index.ts";
import { near } from "../../helpers/near.ts";

/** How: worked by hand from 8760 hours; the figures every textbook prints. */
describe("hours a year that an availability leaves dark", () => {
  it.each([
    [0.99, 87.6, 0.05],
    [0.999, 8.76, 0.005],
    [0.9999, 52.6 / 60, 0.05 / 60],
    [0.99999, 5.3 / 60, 0.05 / 60],
  ])("%d", (availabilityFrac, hours, within) => {
    near(outageHPerYear(availabilityFrac), hours, { within });
  });
});
