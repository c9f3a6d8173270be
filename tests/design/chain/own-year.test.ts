/** The hours of the builder's own file, run through the post that is built. */
import { describe, expect, it } from "vitest";
import { packHours } from "../../../src/core/weather/index.ts";
import type { Brief } from "../../../src/design/brief.ts";
import { designOf } from "../../../src/design/index.ts";
import { changed, given, simulatedWorld, typicalBrief } from "../fixtures.ts";

const DAYS = 365;
/** A bright half sine from six to six, each day times `share`. */
const hoursOf = (share: (day: number) => number): string => {
  const ghiWPerM2 = Float64Array.from({ length: DAYS * 24 }, (_, hour) => {
    const clock = (hour % 24) + 0.5;
    return clock < 6 || clock > 18
      ? 0
      : 500 * Math.sin(((clock - 6) * Math.PI) / 12) * share(Math.floor(hour / 24));
  });
  return packHours({ ghiWPerM2, dhiWPerM2: ghiWPerM2, tempC: new Float64Array(DAYS * 24).fill(20) });
};

const map = designOf(typicalBrief, simulatedWorld);
const withHours = (packed: string | null): Brief =>
  changed({
    place: {
      ownSun: given({
        ghiDailyKWhPerM2ByMonth: map.climate!.ghiDailyKWhPerM2ByMonth,
        meanTempCByMonth: null,
        dailyQuantilesByMonth: null,
        lag1ByMonth: null,
        hours: packed === null ? null : { latitudeDeg: 40, longitudeDeg: -105, utcOffsetH: -7, packed },
        source: "gate.epw",
      }),
      trustedSun: given("map"),
    },
  });
const yearly = (share: (day: number) => number) =>
  designOf(withHours(hoursOf(share)), simulatedWorld).reliability!.yearly;

describe("the hours of one's own file", () => {
  it("are run as they stand: bright all year is never dark, no sun is always dark", () => {
    const bright = yearly(() => 1).ownYear!;
    expect(bright.source).toBe("gate.epw");
    expect(bright.darkHours).toBe(0);
    expect(bright.lowestSocFrac).toBeGreaterThan(0.5);
    expect(yearly(() => 0).ownYear!.darkHours).toBeCloseTo(8760, 6);
  });

  // by hand: from full the bank carries the post for its days without sun, an old one in mild air; the rest of the gap is dark,
  // and after it a bright sun brings the loads back within two days
  it("a gap of forty days is dark for as long as the bank falls short of it", () => {
    const { ownYear } = yearly((day) => (day >= 100 && day < 140 ? 0 : 1));
    const { battery } = designOf(withHours(null), simulatedWorld);
    const shortH = (40 - battery!.lastsDays) * 24;
    expect(shortH).toBeGreaterThan(10 * 24);
    expect(ownYear!.darkHours).toBeGreaterThan(shortH - 72);
    expect(ownYear!.darkHours).toBeLessThan(shortH + 72);
  });

  it("stand beside the drawn years and change neither them nor the size", () => {
    const without = designOf(withHours(null), simulatedWorld).reliability!;
    const dull = designOf(withHours(hoursOf(() => 0.1)), simulatedWorld).reliability!;
    expect(without.yearly.ownYear).toBeNull();
    expect(dull.yearly.ownYear!.darkHours).toBeGreaterThan(0);
    expect({ ...dull.yearly, ownYear: null }).toEqual(without.yearly);
    expect(dull.chosen).toEqual(without.chosen);
  });
});
