/** What the weather years make of answers that touch pairs, controllers and months of rest. */
import { describe, expect, it } from "vitest";
import { meaningsOf } from "../../../src/design/chain/meanings.ts";
import { type Brief, type Design, type Device, designOf } from "../../../src/design/index.ts";
import { at, camera, changed, given, radio, simulatedWorld, sites } from "../fixtures.ts";

const design = (brief: Brief): Design => designOf(brief, simulatedWorld);
const careful = (brief: Brief): number => design(brief).reliability!.yearly.carefulDarkHours;

describe("what each answer about darkness would come to", () => {
  const brief = at(sites.north40);
  const meanings = meaningsOf(design(brief), simulatedWorld);

  it("is what is built once it is given, volts and all", () => {
    expect(meanings.map(({ consequence }) => consequence)).toEqual(["nuisance", "worry", "disaster", "days"]);
    for (const { consequence, installedW, bankAh, bankV, isReached } of meanings) {
      const given_ = design(changed({ autonomy: { consequence: given(consequence) } }, brief));
      expect(given_.array!.installedW).toBe(installedW);
      expect(given_.battery!.bankAh).toBe(bankAh);
      expect(given_.battery!.bankV).toBe(bankV);
      expect(given_.reliability!.isReached).toBe(isReached);
    }
  });

  it("costs no less where the picture may be dark less", () => {
    const costs = meanings
      .filter(({ askedDarkHours }) => askedDarkHours !== null)
      .map(({ installedW, bankAh, bankV }) => installedW + (bankAh * bankV) / 3);
    expect(costs[0]).toBeLessThan(costs[2]!);
  });

  it("does not change with the questions that follow: what was said stays true", () => {
    const open = design({ ...brief, openTopics: ["power", "mounting", "link", "parts", "money"] });
    expect(open.array!.installedW).toBe(design(brief).array!.installedW);
    expect(open.battery!.bankAh).toBe(design(brief).battery!.bankAh);
  });
});

describe("pairs", () => {
  it("also stand beside days of autonomy, none darker than what the days give", () => {
    const { reliability } = design(
      changed({ autonomy: { consequence: given("days"), askedDays: given(5) } }, at(sites.north40)),
    );
    expect(reliability!.chosenMethod).toBe("handbook");
    expect(reliability!.pairs.length).toBeGreaterThan(2);
    for (const { darkHours } of reliability!.pairs)
      expect(darkHours).toBeLessThanOrEqual(reliability!.handbook.darkHours);
  });

  it("are weakly charged ones where visits ask for a bank that no array of these fills briskly", () => {
    const { reliability } = design(changed({ autonomy: { visitDays: given(14) } }));
    expect(reliability!.pairs.length).toBeGreaterThan(0);
  });
});

describe("the controller", () => {
  const owned = (maxChargeA: number): Brief =>
    changed(
      {
        power: { sizing: given("handbook") },
        parts: { controller: given({ kind: "mppt", maxInputV: 150, maxChargeA, chargesLifepo4: true }) },
      },
      at(sites.north40),
    );

  it("of one's own lets no more through than it can", () => {
    const free = careful(owned(100));
    // 12.8 W a day round the clock ask for far more than an hour of it: at 0.3 A nothing can be kept full
    expect(careful(owned(0.3))).toBeGreaterThan(free + 1000);
    expect(careful(owned(3))).toBeGreaterThanOrEqual(free);
  });
});

describe("a heater by the thermostat", () => {
  const heater: Device = {
    ...radio,
    name: "Heater",
    kind: "heater",
    dayW: given(12),
    nightExtraW: given(0),
    feed: "dc",
    schedule: { kind: "cold", belowC: -5 },
    priority: 2,
  };
  const runs = (months: readonly boolean[]): Brief =>
    changed(
      {
        loads: { devices: [camera, heater] },
        hours: { runsInMonth: given(months) },
        power: { sizing: given("handbook") },
      },
      at(sites.north60),
    );
  const darkIn = (brief: Brief) => design(brief).reliability!.yearly.darkHoursByMonth;

  // a July off, far from any frost, must leave the winter as it was but for what the summer leaves in the bank
  it("warms by the hour's cold although July is laid up", () => {
    const allYear = darkIn(runs(Array(12).fill(true)));
    const julyOff = darkIn(runs(Array.from({ length: 12 }, (_, month) => month !== 6)));
    expect(allYear[0]).toBeGreaterThan(1);
    expect(julyOff[0]).toBeCloseTo(allYear[0]!, 6);
    expect(julyOff[11]).toBeCloseTo(allYear[11]!, 6);
  });
});
