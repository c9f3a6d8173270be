// What the handbook's bank of months promises, what it keeps, and how that is said. The grids are real: bounds, not digits.
import { describe, expect, it } from "vitest";
import { remembering } from "../../src/commands/remember.ts";
import { climateAt, climateOfOwn } from "../../src/core/climate/index.ts";
import { type Design, designOf, type World } from "../../src/design/index.ts";
import { grids } from "../core/climate/grids.ts";
import { at, changed, given, sites, typicalBrief } from "./fixtures.ts";

const realWorld: World = {
  climateAt: ({ latitudeDeg, longitudeDeg, elevationM }) =>
    climateAt({ grids, latitudeDeg, longitudeDeg, elevationM: elevationM ?? undefined }),
  climateOfOwn: ({ longitudeDeg, elevationM }, own) =>
    climateOfOwn({ grids, longitudeDeg, elevationM: elevationM ?? undefined, own }),
  clockMinusSolarH: () => 0,
  simulation: { remember: remembering() },
};
const designAt = (latitudeDeg: number, longitudeDeg: number, brief = typicalBrief): Design =>
  designOf(at({ label: "", latitudeDeg, longitudeDeg, elevationM: 20, countryCode: "NO" }, brief), realWorld);
const methodsOf = ({ findings }: Design) => findings.find(({ id }) => id === "reliability.methods")!;

describe("a handbook's bank that bridges months without sun", () => {
  const polar = designAt(69.65, 18.95);
  const { reliability } = polar;

  /**
   * @source UNAVCO knowledge base article 190 (2007), printed: the Ah of a latitude stand for 170 W (two panels) or 255 W (three)
   *         on 5 W of load
   */
  it.each([
    [66.5, 25.7],
    [68, 24],
    [69.65, 18.95],
  ])("at %d N stands beside an array of the polar table's own size", (latitudeDeg, longitudeDeg) => {
    const { array, loads } = designAt(latitudeDeg, longitudeDeg);
    const perW = array!.requiredW / (loads.largestDailyWh / 24);
    // with the array-to-load ratio of a worry (1.3) in it
    expect(perW).toBeGreaterThan(170 / 5);
    expect(perW).toBeLessThan(255 / 5);
  });
  it("keeps about what it promises while it is new, and far from it old with the margin used up", () => {
    expect(reliability!.handbookNewDarkHours!).toBeLessThan(2 * 87.6);
    expect(reliability!.handbook.darkHours).toBeGreaterThan(5 * reliability!.handbookNewDarkHours!);
    expect(polar.battery!.bridgesDarkMonths).toBe(true);
  });
  it("is said to fall short, by how much, and why", () => {
    const { says, numbers } = methodsOf(polar);
    expect(says).toContain("does not add the battery's age to it; here it comes every winter");
    expect(says).toContain(`about ${reliability!.handbookNewDarkHours!.toFixed(0)} dark hours a year`);
    expect(says).toContain(reliability!.carefulMeans);
    expect(numbers.handbookNewDarkHours).toBe(reliability!.handbookNewDarkHours);
  });
  it("chosen by the builder, is not called enough: days while new, and a caution with the dark hours", () => {
    const asked = changed({ power: { sizing: given("handbook") } });
    const { battery, findings } = designAt(69.65, 18.95, asked);
    expect(battery!.autonomyReason).toMatch(/days while it is new/);
    expect(findings.find(({ id }) => id === "reliability.missed")!.severity).toBe("caution");
  });
  it("elsewhere nothing of the kind is said", () => {
    const mild = designOf(at(sites.north40), realWorld);
    expect(mild.reliability!.handbookNewDarkHours).toBeNull();
    expect(methodsOf(mild).says).not.toContain("every winter");
  });
});

describe("the careful case", () => {
  // arithmetic: a sun duller by u asks 1 / (1 - u) of what panels would otherwise do
  it.each([
    [0.2, 40, -105],
    [0, 60.2, 25],
    [0.2, 69.65, 18.95],
    [0.5, 69.65, 18.95],
  ])(
    "with a margin of %d at %d N has sun over demand down by the larger of margin and uncertainty, demand by the margin alone",
    (margin, latitudeDeg, longitudeDeg) => {
      const { reliability, climate } = designAt(
        latitudeDeg,
        longitudeDeg,
        changed({ power: { marginFrac: given(margin) } }),
      );
      const { carefulRatio, carefulSunRatio, carefulMeans } = reliability!;
      expect(carefulRatio).toBeCloseTo(1 + margin, 12);
      expect(carefulSunRatio).toBeLessThanOrEqual(1);
      expect(carefulSunRatio / carefulRatio).toBeCloseTo(
        Math.min(1 / (1 + margin), 1 - climate!.ghiUncertaintyFrac),
        12,
      );
      expect(carefulMeans.includes("duller")).toBe(carefulSunRatio < 0.995);
    },
  );
});
