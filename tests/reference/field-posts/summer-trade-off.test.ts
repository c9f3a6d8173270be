/**
 * What a little loss of load is worth: a post that runs in summer only, against a published trade-off. Neither its place nor its
 * sizes stand in the abstract, so only the shape is compared: cheapest pairs at three places of ours.
 *
 * @source Energies 2025, 18(19), 5174, abstract: loss-of-load probability 0 %: 11 modules and 11 batteries; 1 %: 10 and 7, cost
 *         24.9 % less; 5 %: 39.3 % less; 10 %: 49.5 % less (printed). A battery costs 1.38 modules (worked by hand: 11 modules and
 *         11 batteries less 24.9 % are 10 and 7)
 */
import { describe, expect, it } from "vitest";
import { equalReliabilityPairs, simulateBalance } from "../../../src/core/energy/index.ts";
import { planeYield, weatherYears } from "../../../src/core/weather/index.ts";
import { tier } from "../../core/energy/balance/weather.ts";
import { placeAt } from "../../core/weather/places.ts";

const YEARS = 8;
const JUNE_1 = 151;
const SEPTEMBER_1 = 243;
const SUMMER_H = 24 * (SEPTEMBER_1 - JUNE_1);
const LOAD_W = 10;
const BATTERY_PER_MODULE = (11 * 0.751 - 10) / (7 - 11 * 0.751);
const isSummer = (hour: number): boolean => hour >= 24 * JUNE_1 && hour < 24 * SEPTEMBER_1;
const summerW = Float64Array.from({ length: 8760 }, (_, hour) => (isSummer(hour) ? LOAD_W : 0));

it("the cost of a battery follows from the printed saving", () => {
  expect(BATTERY_PER_MODULE).toBeCloseTo(1.38, 2);
});

describe.each([
  ["the Alps", 46.5, 10],
  ["Bulgaria", 43, 25],
  ["southern Finland", 60, 25],
] as const)("a summer post in %s", (_, latitudeDeg, longitudeDeg) => {
  it("1 % of loss takes batteries away first, as printed, and saves two fifths and more of what 10 % would", () => {
    const weather = weatherYears({ ...placeAt(latitudeDeg, longitudeDeg), seed: 1, years: YEARS });
    const { powerWPerRatedW } = planeYield({
      weather,
      tiltDeg: latitudeDeg - 15,
      azimuthDeg: 180,
      horizon: [],
      albedoByMonth: Array.from({ length: 12 }, () => 0.2),
    });
    const tempC = new Float64Array(YEARS * 8760).fill(20);
    const loss = (arrayW: number, bankWh: number): number =>
      simulateBalance({
        years: YEARS,
        pv: { kind: "mppt", outputRatio: powerWPerRatedW, ratedW: arrayW },
        bank: { chemistry: "lead-agm", nominalV: 12, ratedAh: bankWh / 12, healthFrac: 1, tempC },
        controller: { efficiencyFrac: 0.95, maxOutputA: 1e4, ownW: 0 },
        loads: [tier({ wattsByHourOfYear: summerW })],
      }).tiers[0]!.lossOfLoadEnergyFrac;
    // eleven modules give 1.6 times the load of a mean summer day; eleven batteries are then enough for no loss
    const outputHours =
      powerWPerRatedW.reduce((all, ratio, hour) => all + (isSummer(hour % 8760) ? ratio : 0), 0) /
      (YEARS * (SEPTEMBER_1 - JUNE_1));
    const moduleW = (1.6 * 24 * LOAD_W) / outputHours / 11;
    let [low, high] = [50, 5000];
    while (high / low > 1.02) {
      const middle = Math.sqrt(low * high);
      if (loss(11 * moduleW, middle) > 1e-6) low = middle;
      else high = middle;
    }
    const batteryWh = high / 11;

    const [none, one, five, ten] = [0, 0.01, 0.05, 0.1].map((lossFrac) => {
      const { pairs } = equalReliabilityPairs({
        panelCounts: [6, 7, 8, 9, 10, 11, 12, 13, 14, 16],
        mostStrings: 40,
        targetDarkHours: lossFrac * SUMMER_H + 1e-3,
        darkHoursOf: ({ panels, strings }) => loss(panels * moduleW, strings * batteryWh) * SUMMER_H,
      });
      const costs = pairs.flatMap(({ panels, strings }) =>
        strings === null ? [] : [{ panels, strings, cost: panels + BATTERY_PER_MODULE * strings }],
      );
      return costs.reduce((best, pair) => (pair.cost < best.cost ? pair : best));
    }) as [Pair, Pair, Pair, Pair];

    // printed: from eleven and eleven to ten modules and seven batteries. Where the cheapest pair for no loss lies is no law: 14
    // and 6, 16 and 5 cost the same within 3 %, and a little more dull days move it from one to the other
    let batteriesWithTen = 1;
    while (loss(10 * moduleW, batteriesWithTen * batteryWh) > 0.01) batteriesWithTen += 1;
    expect(batteriesWithTen).toBeLessThanOrEqual(7);
    expect(batteriesWithTen).toBeGreaterThan(7 / 2);
    const saving = (pair: Pair): number => 1 - pair.cost / none.cost;
    const printed = [
      [one, 0.249],
      [five, 0.393],
      [ten, 0.495],
    ] as const;
    // parts are whole: one battery more or less is 0.06 of the whole cost. Found: within 0.073 of the printed, a battery and a
    // quarter, in Bulgaria, where what no loss at all costs hangs on the dullest fortnight of eight summers
    const step = (1.25 * BATTERY_PER_MODULE) / none.cost;
    expect(step).toBeLessThan(0.08);
    for (const [pair, of] of printed) {
      expect(saving(pair)).toBeGreaterThan(of - step);
      expect(saving(pair)).toBeLessThan(of + step);
    }
    // the first of ten parts of loss is worth about half of the whole saving (printed: 0.50; found: 0.45 to 0.61)
    expect(saving(one) / saving(ten)).toBeGreaterThan(0.4);
    expect(saving(one) / saving(ten)).toBeLessThan(0.65);
    expect(saving(five)).toBeGreaterThan(saving(one));
    expect(saving(ten)).toBeGreaterThan(saving(five));
  });
});
interface Pair {
  readonly panels: number;
  readonly strings: number;
  readonly cost: number;
}
