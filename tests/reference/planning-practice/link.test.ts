import { describe, expect, it } from "vitest";
import {
  capacityCheck,
  netThroughputMbps,
  PLANNING_FACTOR_FRAC,
  sharedAirtimeFrac,
  wiredPortMbps,
} from "../../../src/core/link/index.ts";
import { near } from "../../helpers/near.ts";

/** How: worked by hand, 1460 octets of payload in 1538 on the wire (IEEE 802.3 with IP and TCP). */
describe("Ethernet ports", () => {
  it("100 Mbit/s carries 94.9, a gigabit 949", () => {
    near(wiredPortMbps(100), 94.9, { within: 0.05 });
    near(wiredPortMbps(1000), 949, { within: 0.5 });
  });

  it("a slow port caps the link whatever the air carries", () => {
    near(netThroughputMbps({ phyMbps: 866.7, planningFactorFrac: 0.5, portMbps: 100 }), 94.9, {
      within: 0.05,
    });
    near(netThroughputMbps({ phyMbps: 108, planningFactorFrac: 0.5, portMbps: 100 }), 54, { within: 1e-9 });
    near(netThroughputMbps({ phyMbps: 108, planningFactorFrac: 0.4 }), 43.2, { within: 1e-9 });
  });
});

/** Source: an open field textbook: 22 of 54 Mbit/s. How: printed value; our factor with interference is not above it. */
describe("planning factors", () => {
  it("interference is planned no better than the textbook's 41 %", () => {
    expect(PLANNING_FACTOR_FRAC.interference).toBeLessThanOrEqual(22 / 54);
  });
});

/** Planning rule: judgement, no standard. How: worked by hand. */
describe("room for the pictures", () => {
  it("two streams of 3.629 Mbit/s need 8.35 with overhead: enough on 16.8, not on 16.6", () => {
    const streamsMbps = [3.629, 3.629];
    const wide = capacityCheck({ streamsMbps, netMbps: 16.8 });
    near(wide.neededMbps, 8.3467, { within: 0.0001 });
    near(wide.allowedMbps, 8.4, { within: 1e-9 });
    expect(wide.isEnough).toBe(true);
    expect(capacityCheck({ streamsMbps, netMbps: 16.6 }).isEnough).toBe(false);
    near(capacityCheck({ streamsMbps: [5], netMbps: 11.5 }).usedFrac, 0.5, { within: 1e-9 });
  });

  it("a slow post takes most of the air of the radio it shares", () => {
    const fast = { neededMbps: 4, netMbps: 100 };
    const slow = { neededMbps: 4, netMbps: 8 };
    near(sharedAirtimeFrac([fast, fast, slow]), 0.58, { within: 1e-9 });
  });

  it("no posts, no air", () => {
    expect(sharedAirtimeFrac([])).toBe(0);
    expect(capacityCheck({ streamsMbps: [], netMbps: 10 })).toMatchObject({ neededMbps: 0, isEnough: true });
  });
});
