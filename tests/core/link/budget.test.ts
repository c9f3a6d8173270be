import { describe, expect, it } from "vitest";
import {
  bestRate,
  dishGainDbi,
  freeSpaceLossDb,
  gasDbPerKm,
  linkBudget,
  rainPathLossDb,
  rateSteps,
} from "../../../src/core/link/index.ts";
import { near } from "../../helpers/near.ts";

/** How: worked by hand from the sums of ITU-R P.525 with the constant 32.45 and the sensitivity table of 802.11. */
describe("three whole budgets", () => {
  const both = { txGainDbi: 23, rxGainDbi: 23, txLossDb: 0.5, rxLossDb: 0.5, otherLossDb: 0 };

  it("5.8 GHz, 3 km, 20 dBm, two 23 dBi: -52.21 dBm, and the honest rate with 15 dB in hand is row 3", () => {
    const pathLossDb = freeSpaceLossDb({ distanceM: 3000, frequencyMHz: 5800 });
    const { rxLevelDbm, eirpDbm } = linkBudget({ ...both, txPowerDbm: 20, pathLossDb });
    // the worked figure uses the rounded constant 32.4; the exact one is 0.048 dB more
    near(rxLevelDbm + 0.048, -52.21, { within: 0.006 });
    near(eirpDbm, 42.5, { within: 1e-9 });

    const air = { standard: "802.11ac", widthMHz: 40, streams: 2, rxLevelDbm } as const;
    const best = bestRate({ ...air, fadeMarginDb: 15 })!;
    expect(best.mcs).toBe(3);
    near(best.phyMbps, 108, { within: 1e-9 });
    near(best.marginDb, 18.79, { within: 0.06 });
    const margins = new Map(rateSteps(air).map((step) => [step.mcs, rxLevelDbm - step.sensitivityDbm]));
    near(margins.get(9)!, 1.79, { within: 0.06 });
    near(margins.get(7)!, 8.79, { within: 0.06 });
    near(margins.get(4)!, 14.79, { within: 0.06 });
  });

  it("5.5 GHz, 3 km, 30 dBm EIRP: -64.25 dBm", () => {
    const pathLossDb = freeSpaceLossDb({ distanceM: 3000, frequencyMHz: 5500 });
    const { rxLevelDbm } = linkBudget({ ...both, txPowerDbm: 7.5, pathLossDb });
    near(rxLevelDbm + 0.048, -64.25, { within: 0.006 });
  });

  it("61 GHz, 1 km, 40 dBm EIRP into 38 dBi: -65.27 dBm under a clear sky, 14.4 or 19.6 dB less in rain", () => {
    const path = { distanceM: 1000, frequencyMHz: 61_000 };
    const gas = gasDbPerKm({ frequencyMHz: 61_000 });
    const otherLossDb = gas.oxygenDbPerKm + gas.vapourDbPerKm;
    near(otherLossDb, 15.17, { within: 0.005 });
    const { rxLevelDbm } = linkBudget({
      txPowerDbm: 2,
      txGainDbi: 38,
      txLossDb: 0,
      rxGainDbi: 38,
      rxLossDb: 0,
      pathLossDb: freeSpaceLossDb(path),
      otherLossDb,
    });
    near(rxLevelDbm + 0.048, -65.27, { within: 0.011 });
    near(rainPathLossDb({ ...path, rainMmPerH: 26.48, polarisationTiltDeg: 90 }), 14.4, { within: 0.05 });
    near(rainPathLossDb({ ...path, rainMmPerH: 42, polarisationTiltDeg: 90 }), 19.6, { within: 0.1 });
  });

  it("two dishes of the same size gain 6 dB net from 2.4 to 4.8 GHz: 6 each, less 6 of path", () => {
    const net = (frequencyMHz: number) =>
      2 * dishGainDbi({ diameterM: 0.4, frequencyMHz }) - freeSpaceLossDb({ distanceM: 1000, frequencyMHz });
    near(net(4800) - net(2400), 20 * Math.log10(2), { within: 1e-9 });
  });
});

describe("the fastest rate that keeps a margin", () => {
  const air = { standard: "802.11ac", widthMHz: 80, streams: 2, fadeMarginDb: 10 } as const;

  it("there is none when the level is too low even for the slowest", () => {
    expect(bestRate({ ...air, rxLevelDbm: -66.1 })).toBeUndefined();
    expect(bestRate({ ...air, rxLevelDbm: -66 })!.mcs).toBe(0);
  });

  it("a data sheet replaces the standard's minimum, power and sensitivity row by row", () => {
    const radioRows = [
      { mcs: 0, sensitivityDbm: -90, powerBackoffDb: 0 },
      { mcs: 7, sensitivityDbm: -72, powerBackoffDb: 5 },
    ];
    const strong = bestRate({ ...air, rxLevelDbm: -57, radioRows })!;
    expect(strong).toMatchObject({
      mcs: 7,
      sensitivityDbm: -72,
      marginDb: 10,
      sensitivityFrom: "data sheet",
    });
    expect(bestRate({ ...air, rxLevelDbm: -57.1, radioRows })!.mcs).toBe(0);
  });

  it("every row of a standard is on offer, slowest first", () => {
    const rows = (standard: "802.11n" | "802.11ac" | "802.11ax") =>
      rateSteps({ standard, widthMHz: 40, streams: 1 }).map((step) => step.mcs);
    expect(rows("802.11n")).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
    expect(rows("802.11ac")).toHaveLength(10);
    expect(rows("802.11ax")).toHaveLength(12);
    const single = rateSteps({ standard: "802.11ad", widthMHz: 2160, streams: 1 });
    expect(single).toHaveLength(12);
    expect(single.at(-1)!.phyMbps).toBe(4620);
  });

  it("in 802.11ad row 6 beats row 5, which needs more and carries less", () => {
    const single = { standard: "802.11ad", widthMHz: 2160, streams: 1, fadeMarginDb: 0 } as const;
    expect(bestRate({ ...single, rxLevelDbm: -63 })!.mcs).toBe(6);
  });
});
