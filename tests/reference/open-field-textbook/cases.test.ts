import { describe, expect, it } from "vitest";
import { freeSpaceLossDb, levelV, linkBudget } from "../../../src/core/link/index.ts";
import { near } from "../../helpers/near.ts";

/**
 * Source: Wireless Networking in the Developing World, 3rd edition, chapter "Deployment planning": an access point of
 * 10 dBi and 100 mW (sensitivity -89 dBm), a client of 14 dBi and 30 mW (-82 dBm), 2 dB of cable each, 5 km at 2.4 GHz.
 * How: printed values; the way back worked by hand from the same figures.
 */
const pathLossDb = freeSpaceLossDb({ distanceM: 5000, frequencyMHz: 2400 });
const accessPoint = { powerDbm: 20, gainDbi: 10, sensitivityDbm: -89 };
const client = { powerDbm: 15, gainDbi: 14, sensitivityDbm: -82 };

function levelDbm(from: typeof client, to: typeof client): number {
  return linkBudget({
    txPowerDbm: from.powerDbm,
    txGainDbi: from.gainDbi,
    txLossDb: 2,
    rxGainDbi: to.gainDbi,
    rxLossDb: 2,
    pathLossDb,
    otherLossDb: 0,
  }).rxLevelDbm;
}

describe("the open textbook's link", () => {
  it("access point to client: -74 dBm, 8 dB of margin", () => {
    expect(Math.round(levelDbm(accessPoint, client))).toBe(-74);
    expect(Math.round(levelDbm(accessPoint, client) - client.sensitivityDbm)).toBe(8);
  });

  it("client to access point: 5 dB less power, and the OTHER end's sensitivity", () => {
    expect(Math.round(levelDbm(client, accessPoint))).toBe(-79);
    expect(Math.round(levelDbm(client, accessPoint) - accessPoint.sensitivityDbm)).toBe(10);
  });

  /** Same chapter, level and voltage in 50 ohm. How: printed values, the second digit worked by hand. */
  it.each([
    [-90, 7.07],
    [-85, 12.57],
    [-80, 22.36],
    [-75, 39.76],
    [-70, 70.71],
  ])("%d dBm is %d microvolt", (level, microvolt) => {
    near(levelV(level) * 1e6, microvolt, { within: 0.0051 });
  });
});
