import { expect } from "vitest";

/** Asserts that two numbers agree within a named absolute tolerance, in the unit of the numbers themselves. */
export function near(actual: number, expected: number, tolerance: { readonly within: number }): void {
  expect(Number.isFinite(actual), `got ${actual}, expected ${expected}`).toBe(true);
  expect(
    Math.abs(actual - expected),
    `got ${actual}, expected ${expected} within ${tolerance.within}`,
  ).toBeLessThanOrEqual(tolerance.within);
}

/** Asserts that two numbers agree within a fraction of the expected one. */
export function nearRatio(
  actual: number,
  expected: number,
  tolerance: { readonly withinFrac: number },
): void {
  near(actual, expected, { within: Math.abs(expected) * tolerance.withinFrac });
}
