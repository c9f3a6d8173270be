// Laws of the sizes under more and more snow, on the real grids: no outside value. Each broke before dim months held the array.
import { describe, expect, it } from "vitest";
import { remembering } from "../../src/commands/remember.ts";
import { climateAt, climateOfOwn } from "../../src/core/climate/index.ts";
import { chainOf } from "../../src/design/chain/chain.ts";
import { type Brief, type Design, designOf, type World } from "../../src/design/index.ts";
import { grids } from "../core/climate/grids.ts";
import { at, changed, given } from "./fixtures.ts";

const handbookWorld: World = {
  climateAt: ({ latitudeDeg, longitudeDeg, elevationM }) =>
    climateAt({ grids, latitudeDeg, longitudeDeg, elevationM: elevationM ?? undefined }),
  climateOfOwn: ({ longitudeDeg, elevationM }, own) =>
    climateOfOwn({ grids, longitudeDeg, elevationM: elevationM ?? undefined, own }),
  clockMinusSolarH: () => 0,
  simulation: null,
};
const realWorld: World = { ...handbookWorld, simulation: { remember: remembering() } };

const WEEKS = [0, 2, 4, 8, 12, 20];
/** Thirty weather years for each of many pairs take their time. */
const FEW_WEEKS = [0, 8, 20];
type Consequence = "nuisance" | "worry" | "disaster" | "days";
const briefsAt = (
  [latitudeDeg, longitudeDeg]: readonly [number, number],
  consequence: Consequence,
  weeks: readonly number[],
): readonly Brief[] =>
  weeks.map((snowWeeks) =>
    at(
      { label: "", latitudeDeg, longitudeDeg, elevationM: null, countryCode: null },
      changed({ place: { snowWeeks: given(snowWeeks) }, autonomy: { consequence: given(consequence) } }),
    ),
  );
const byHandbook = (place: readonly [number, number], consequence: Consequence): readonly Design[] =>
  briefsAt(place, consequence, WEEKS).map((brief) => designOf(brief, handbookWorld));
const inPairs = <T>(all: readonly T[]) => all.slice(1).map((more, i) => [all[i]!, more] as const);
const bankWh = ({ battery }: Pick<Design, "battery">, ah: "requiredAh" | "bankAh") =>
  battery![ah] * battery!.bankNominalV;
const ROUNDING = 1e-9;

describe("more snow, by the handbook", () => {
  const places = [
    [52, 10],
    [60.2, 25],
    [63.1, 21.6],
    [65, 25.5],
    [69.65, 18.95],
  ] as const;
  it.each(
    places.flatMap((place) =>
      (["nuisance", "worry", "disaster", "days"] as const).map((c) => [place, c] as const),
    ),
  )(
    "at %j, a %s: asks for no less panel, but where the bank begins to carry whole months; then for more bank",
    (place, consequence) => {
      for (const [less, more] of inPairs(byHandbook(place, consequence))) {
        expect(bankWh(more, "requiredAh")).toBeGreaterThan(bankWh(less, "requiredAh") * (1 - ROUNDING));
        const [before, after] = [less, more].map(({ array }) => array!.darkMonths.length);
        if (before === 0 && after! > 0) {
          if (consequence !== "days")
            expect(bankWh(more, "requiredAh")).toBeGreaterThan(1.5 * bankWh(less, "requiredAh"));
          const dark = more.findings.find(({ id }) => id === "sun.dark")!;
          expect(dark.says).toContain("it is the snow on the panels");
          expect(dark.says).toContain("more snow can ask for fewer");
        } else expect(more.array!.requiredW).toBeGreaterThan(less.array!.requiredW * (1 - ROUNDING));
      }
    },
  );
  it("without any snow it is not blamed for the dark", () => {
    const [bare] = byHandbook([69.65, 18.95], "worry");
    expect(bare!.findings.find(({ id }) => id === "sun.dark")!.says).not.toContain("snow");
  });
});

describe("more snow, by the weather years", () => {
  it.each([
    [[60.2, 25], "worry"],
    [[66.5, 25.7], "worry"],
  ] as const)("at %j, a %s: never fewer panels and fewer batteries together", (place, consequence) => {
    for (const [less, more] of inPairs(
      briefsAt(place, consequence, FEW_WEEKS).map((brief) => chainOf(brief, realWorld)),
    )) {
      const hasLessPanel = more.array!.installedW < less.array!.installedW;
      const hasLessBank = bankWh(more, "bankAh") < bankWh(less, "bankAh");
      expect(hasLessPanel && hasLessBank).toBe(false);
    }
  });
});
