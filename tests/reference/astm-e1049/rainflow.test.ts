/**
 * The standard's own example of a rainflow count.
 *
 * @source ASTM E1049-85 section 5.4.4 and its figure 6: loads -2, 1, -3, 5, -1, 3, -4, 4, -2 give ranges of 3 (0.5), 4 (1.5),
 *         6 (0.5), 8 (1), 9 (0.5); from memory, and followed by hand by the standard's rules
 */
import { expect, it } from "vitest";
import { rainflow } from "../../../src/core/energy/index.ts";

it("counts the example of the standard", () => {
  const loads = Float64Array.of(-2, 1, -3, 5, -1, 3, -4, 4, -2);
  // in tenths, so that each whole range has a bin; a nudge keeps 0.3 from the edge of its bin
  const counts = rainflow(
    loads.map((load) => load * 0.1001),
    10,
  );
  expect(Array.from(counts)).toEqual([0, 0, 0, 0.5, 1.5, 0, 0.5, 0, 1, 0.5]);
});
it("leaves out what is no turning point", () => {
  const straight = Float64Array.of(1, 0.9, 0.6, 0.6, 0.3, 0.3, 0.7, 0.7, 1);
  expect(Array.from(rainflow(straight, 4))).toEqual([0, 0, 1, 0]);
  expect(Array.from(rainflow(Float64Array.of(0.5, 0.5), 4))).toEqual([0, 0, 0, 0]);
});
