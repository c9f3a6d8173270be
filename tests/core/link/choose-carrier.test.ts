import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  CHECK_RULES,
  carrierChoices,
  minimumSensitivityDbm,
  type RadioNeed,
  radioCandidates,
} from "../../../src/core/link/index.ts";
import { near } from "../../helpers/near.ts";

const need: RadioNeed = {
  path: {
    distanceM: 600,
    nearHeightM: 12,
    farHeightM: 12,
    frequencyMHz: 5800,
    k: 4 / 3,
    obstacles: [],
  },
  region: "EU",
  streamsMbps: [4, 4],
  wantedMarginDb: 15,
  wantedAvailabilityFrac: 0.999,
  rainMmPerH: 30,
  latitudeDeg: 50,
  gradientNPerKm: -150,
  roughnessM: 40,
};

const at = (distanceM: number, more: Partial<RadioNeed> = {}): RadioNeed => ({
  ...need,
  ...more,
  path: { ...need.path, distanceM, nearHeightM: 40, farHeightM: 40 },
});

const byId = (asked: RadioNeed, id: string) => radioCandidates(asked).find((one) => one.id === id)!;

describe("which radio", () => {
  it("at 600 m in the open a small 5 GHz antenna does, within the law and with the standard's worst sensitivity", () => {
    const best = radioCandidates(need)[0]!;
    expect(best).toMatchObject({ id: "5 GHz", suits: true });
    const spec = best.specification!;
    // ECC Decision (04)08 as read: 30 dBm EIRP, 27 without power control; weather radar range avoided
    expect(spec.eirpDbm).toBeLessThanOrEqual(27);
    expect(best.band!.silenceAfterPowerCutS).toBe(60);
    expect(spec.leastSensitivityDbm).toBe(
      minimumSensitivityDbm({ standard: spec.standard, widthMHz: spec.widthMHz, mcs: spec.mcs }),
    );
    expect(best.marginDb).toBeGreaterThanOrEqual(15);
    near(best.marginDb!, best.rxLevelDbm! - spec.leastSensitivityDbm, { within: 1e-9 });
    expect(spec.feed).toContain("90 m");
    expect(best.band!.caution).toBe(CHECK_RULES);
  });

  it("of two bands that both do, the one without a radar wait is taken", () => {
    const found = byId(at(200, { region: "CA" }), "5 GHz");
    expect(found.band!.id).toBe("ca-5725");
    expect(found.band!.silenceAfterPowerCutS).toBe(0);
  });

  it("a longer path asks for more gain or is refused with what it lacks", () => {
    const gains = [600, 2000, 5000].map(
      (m) => byId(at(m, { region: "US" }), "5 GHz").specification!.leastGainDbi,
    );
    expect(gains).toEqual(gains.toSorted((a, b) => a - b));
    expect(gains.at(-1)).toBeGreaterThan(gains[0]!);
    const farther = byId(at(40_000), "5 GHz");
    expect(farther.suits).toBe(false);
    expect(farther.reason).toMatch(/^Its best leaves -?[\d.]+ dB of margin; 15 dB are wanted\.$/);
  });

  it("60 GHz takes the channel that loses least to oxygen", () => {
    const { specification, loss } = byId(at(400), "60 GHz");
    expect(specification!.standard).toBe("802.11ad");
    // channel 4, 64.80 GHz, loses about 5 dB/km where channel 2 loses 15
    expect(loss!.gasDb / 0.4).toBeLessThan(6);
  });

  it("rain takes 60 GHz away long before 5 GHz", () => {
    const wet = at(1500, { rainMmPerH: 90, region: "US", wantedMarginDb: 10 });
    expect(byId(wet, "5 GHz").availability!.availabilityFrac).toBeGreaterThan(
      byId(wet, "60 GHz").availability!.availabilityFrac,
    );
  });

  it("a need beyond every rate is told so", () => {
    expect(byId({ ...need, streamsMbps: [60] }, "2.4 GHz").reason).toBe(
      "Its fastest rate does not carry the pictures with room to spare.",
    );
  });

  it("in a country that is not known the band must be asked for", () => {
    const first = radioCandidates({ ...need, region: "other" })[0]!;
    expect(first.band!.outdoorAllowed).toBe("ask");
    expect(first.reason).toContain("must be asked");
  });

  it("never breaks the law's power nor promises less margin for a shorter path", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("US", "CA", "EU", "UK", "AU", "NZ", "other"),
        fc.double({ min: 100, max: 6000, noNaN: true }),
        (region, distanceM) => {
          for (const one of radioCandidates(at(distanceM, { region }))) {
            if (!one.specification || one.band!.limit.form !== "eirp") continue;
            expect(one.specification.eirpDbm).toBeLessThanOrEqual(one.band!.limit.eirpDbm + 1e-9);
            expect(one.suits).toBe(
              one.marginDb! >= 15 &&
                one.availability!.availabilityFrac >= 0.999 &&
                !one.reason.includes("does not carry"),
            );
          }
        },
      ),
      { numRuns: 30 },
    );
  });
});

describe("which carrier", () => {
  const order = (asked: RadioNeed & { readonly wireRouteM?: number }) =>
    carrierChoices(asked).map((one) => [one.carrier, one.suits]);

  it("a cable of up to 90 m goes before every radio, with its caution", () => {
    const [first] = carrierChoices({ ...need, path: { ...need.path, distanceM: 80 } });
    expect(first).toMatchObject({ carrier: "cable", suits: true });
    expect(first!.caution).toContain("Lightning");
    expect(order({ ...at(80), wireRouteM: 90 })[0]).toEqual(["cable", true]);
    expect(order({ ...at(80), wireRouteM: 91 })[0]).toEqual(["radio", true]);
  });

  it("then what surely suits, then what must be asked, then what does not", () => {
    const ranks = order(at(3000)).map(([, suits]) => [true, "ask", false].indexOf(suits as boolean));
    expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
    expect(order(at(3000)).at(-1)![1]).toBe(false);
  });

  it("beyond 60 km no radio is named, and no common fibre", () => {
    const far = carrierChoices({ ...need, path: { ...need.path, distanceM: 70_000 } });
    expect(far.map((one) => [one.carrier, one.suits])).toEqual([
      ["cellular", "ask"],
      ["cable", false],
      ["fibre", false],
    ]);
  });

  /** How: 8 Mbit/s with 15 % overhead x 328.5 GB a month for each Mbit/s (30.42 days). */
  it("says what the cellular network would carry a month", () => {
    expect(carrierChoices(need).find((one) => one.carrier === "cellular")!.reason).toContain("3022 GB");
  });

  it("puts the caution of digging and of laser light with the fibre", () => {
    const fibre = carrierChoices(need).find((one) => one.carrier === "fibre")!;
    expect(fibre.caution).toMatch(/Before digging.*Never look into a fibre/);
  });
});
