// The monthly method for five cities, tilt = latitude + 15, albedo 0.2: computed by a separate script from
// the same equations (Klein, Liu-Jordan, Erbs monthly) and typical-year global irradiation. An independent
// re-derivation, not published values; within one method 1 %, plus half a unit of the two printed decimals.
import { expect, it } from "vitest";
import { monthlyPoa } from "../../../src/core/sun/index.ts";
import { near } from "../../helpers/near.ts";

const CITIES = [
  {
    name: "Phoenix",
    latitudeDeg: 33.45,
    ghi: [3.29, 4.16, 5.34, 7.09, 7.84, 8.32, 7.62, 7.13, 6.34, 4.82, 3.77, 3.07],
    poa: [5.6, 5.92, 6.1, 6.58, 6.14, 6.01, 5.75, 6.15, 6.74, 6.42, 6.29, 5.53],
  },
  {
    name: "Boston",
    latitudeDeg: 42.37,
    ghi: [1.79, 2.78, 3.61, 4.51, 5.57, 5.76, 6.07, 5.35, 4.26, 2.98, 2.01, 1.53],
    poa: [3.46, 4.43, 4.26, 4.19, 4.42, 4.28, 4.62, 4.66, 4.62, 4.29, 3.69, 3.11],
  },
  {
    name: "Miami",
    latitudeDeg: 25.82,
    ghi: [3.48, 4.24, 5.16, 5.92, 5.81, 5.54, 6.01, 5.49, 4.88, 4.32, 3.55, 3.22],
    poa: [4.87, 5.18, 5.47, 5.37, 4.72, 4.32, 4.73, 4.75, 4.82, 5.0, 4.78, 4.65],
  },
  {
    name: "Denver",
    latitudeDeg: 39.83,
    ghi: [2.5, 3.17, 4.66, 4.79, 6.33, 7.27, 6.72, 5.99, 5.18, 3.68, 2.46, 2.08],
    poa: [4.95, 4.89, 5.63, 4.43, 5.02, 5.31, 5.1, 5.22, 5.67, 5.19, 4.41, 4.25],
  },
  {
    name: "New Delhi",
    latitudeDeg: 28.57,
    ghi: [3.65, 4.75, 5.97, 6.76, 7.37, 6.48, 5.05, 5.03, 5.28, 5.22, 4.32, 3.51],
    poa: [5.54, 6.23, 6.6, 6.17, 5.83, 4.91, 4.02, 4.35, 5.31, 6.51, 6.54, 5.61],
  },
];

it.each(CITIES)("$name", ({ latitudeDeg, ghi, poa }) => {
  const { poaDailyKWhPerM2ByMonth } = monthlyPoa({
    ghiDailyKWhPerM2ByMonth: ghi,
    latitudeDeg,
    tiltDeg: latitudeDeg + 15,
    azimuthDeg: 180,
    albedoByMonth: Array.from({ length: 12 }, () => 0.2),
  });
  expect(poaDailyKWhPerM2ByMonth).toHaveLength(12);
  poaDailyKWhPerM2ByMonth.forEach((got, month) => {
    near(got, poa[month]!, { within: 0.01 * poa[month]! + 0.005 });
  });
});
