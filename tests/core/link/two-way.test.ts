import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  freeSpaceLossDb,
  type RadioEnd,
  type TwoWayLink,
  twoWayAvailability,
  twoWayBudget,
} from "../../../src/core/link/index.ts";
import { near } from "../../helpers/near.ts";

const air = { standard: "802.11n", widthMHz: 20, streams: 1 } as const;
const pathLossDb = freeSpaceLossDb({ distanceM: 5000, frequencyMHz: 2400 });

/**
 * Source: Wireless Networking in the Developing World, 3rd edition, "Deployment planning": access point 10 dBi, 100 mW,
 * -89 dBm; client 14 dBi, 30 mW, -82 dBm; 2 dB of cable each, 5 km. How: printed levels; margins of both ways by hand.
 */
describe("the open textbook's link, both ways at once", () => {
  const accessPoint: RadioEnd = {
    name: "access point",
    txPowerDbm: 20,
    gainDbi: 10,
    feedLossDb: 2,
    radioRows: [{ mcs: 0, sensitivityDbm: -89 }],
  };
  const client: RadioEnd = {
    name: "client",
    txPowerDbm: 15,
    gainDbi: 14,
    feedLossDb: 2,
    radioRows: [{ mcs: 0, sensitivityDbm: -82 }],
  };
  const found = twoWayBudget({ near: accessPoint, far: client, air, pathLossDb, fadeMarginDb: 5 });

  it("-74 dBm and 8 dB there, -79 dBm and 10 dB back: the way there is the weaker", () => {
    near(found.nearToFar.rxLevelDbm, -74, { within: 0.1 });
    near(found.nearToFar.marginDb, 8, { within: 0.1 });
    near(found.farToNear.rxLevelDbm, -79, { within: 0.1 });
    near(found.farToNear.marginDb, 10, { within: 0.1 });
    expect(found.weaker).toBe(found.nearToFar);
    expect([found.weaker.from, found.weaker.to]).toEqual(["access point", "client"]);
  });
});

const end: RadioEnd = { name: "a", txPowerDbm: 20, gainDbi: 16, feedLossDb: 0.5 };
const link: TwoWayLink = { near: end, far: { ...end, name: "b" }, air, pathLossDb, fadeMarginDb: 10 };

describe("what each end brings", () => {
  it("is the same both ways for like ends", () => {
    const { nearToFar, farToNear } = twoWayBudget(link);
    near(farToNear.rxLevelDbm, nearToFar.rxLevelDbm, { within: 1e-12 });
    expect(farToNear.rate).toEqual(nearToFar.rate);
  });

  /** How: 12 (theta/theta3)^2 of the main lobe: half the half-power width loses 3 dB; cos 45 degrees 3.01 dB. */
  it("loses by antennas that look past each other or are turned", () => {
    const straight = twoWayBudget(link).nearToFar.rxLevelDbm;
    const past = twoWayBudget({ ...link, far: { ...link.far, offAxisDeg: 5, beamwidthDeg: 10 } });
    near(past.nearToFar.rxLevelDbm, straight - 3, { within: 1e-9 });
    near(past.farToNear.rxLevelDbm, straight - 3, { within: 1e-9 });
    const turned = twoWayBudget({ ...link, polarisationTwistDeg: 45 });
    near(turned.nearToFar.rxLevelDbm, straight - 3.01, { within: 0.001 });
    expect(() => twoWayBudget({ ...link, far: { ...link.far, offAxisDeg: 5 } })).toThrow("beamwidthDeg");
  });

  /** IEEE 802.11 derives its minima with a noise figure of 10 dB (read for 802.11ad). How: worked by hand. */
  it("hears 4 dB better with a noise figure of 6 dB, in its own direction only", () => {
    const far = { ...link, pathLossDb: 126, fadeMarginDb: 0 };
    const quiet = twoWayBudget({ ...far, far: { ...link.far, noiseFigureDb: 6 } });
    const same = twoWayBudget(far);
    const rows = (b: typeof same) => [b.nearToFar, b.farToNear].map((d) => d.rate!.mcs);
    expect(rows(quiet)[0]).toBeGreaterThan(rows(same)[0]!);
    expect(rows(quiet)[1]).toBe(rows(same)[1]);
    const step = quiet.nearToFar;
    near(step.sensitivityDbm, [-82, -79, -77, -74, -70, -66, -65, -64][step.rate!.mcs]! - 4, {
      within: 1e-9,
    });
  });

  it("pairs the receiver's sensitivity with the SENDER's back-off, row by row", () => {
    const sender: RadioEnd = {
      ...end,
      radioRows: [
        { mcs: 0, sensitivityDbm: -95 },
        { mcs: 3, sensitivityDbm: -85, powerBackoffDb: 6 },
      ],
    };
    const found = twoWayBudget({ ...link, near: sender, pathLossDb: 126, fadeMarginDb: 0 });
    expect(found.nearToFar.rate).toMatchObject({ mcs: 0, sensitivityDbm: -82 });
    expect(found.farToNear.rate).toMatchObject({ mcs: 3, sensitivityDbm: -85, powerBackoffDb: 0 });
  });

  it("names a direction without any rate, with what it lacks to the slowest", () => {
    const found = twoWayBudget({ ...link, far: { ...link.far, txPowerDbm: -5 } });
    expect(found.farToNear.rate).toBeUndefined();
    expect(found.weaker).toBe(found.farToNear);
    near(found.farToNear.marginDb, found.farToNear.rxLevelDbm + 82, { within: 1e-9 });
  });

  it("widens the tolerance by what is not known of the path", () => {
    const known = twoWayBudget(link).nearToFar.toleranceDb;
    near(known, Math.sqrt(1.5 ** 2 + 3), { within: 1e-12 });
    near(twoWayBudget({ ...link, pathToleranceDb: 10 }).nearToFar.toleranceDb, Math.hypot(known, 10), {
      within: 1e-9,
    });
  });

  it("refuses an air interface that the standard does not have", () => {
    expect(() => twoWayBudget({ ...link, air: { ...air, widthMHz: 80 } })).toThrow("air interface");
  });
});

describe("over the year", () => {
  const climate = {
    frequencyMHz: 24_125,
    rainMmPerH: 42,
    polarisationTiltDeg: 90,
    nearAntennaM: 30,
    farAntennaM: 30,
    latitudeDeg: 50,
    gradientNPerKm: -120,
    roughnessM: 40,
  };

  it("is that of the direction with less margin, whichever it is", () => {
    const weak = { ...end, txPowerDbm: 5 };
    const there = { climate: { ...climate, distanceM: 1500 } };
    const of = (near2: RadioEnd, far2: RadioEnd) =>
      twoWayAvailability({
        ...there,
        budget: twoWayBudget({ ...link, near: near2, far: far2, pathLossDb: 126 }),
      }).availabilityFrac;
    expect(of(end, weak)).toBe(of(weak, weak));
    expect(of(weak, end)).toBe(of(weak, weak));
    expect(of(weak, weak)).toBeLessThan(of(end, end));
  });

  it("a faster rate that must be kept is lost for longer", () => {
    const budget = twoWayBudget({ ...link, pathLossDb: 126 });
    const at = (leastPhyMbps: number) =>
      twoWayAvailability({ budget, climate: { ...climate, distanceM: 1500 }, leastPhyMbps }).availabilityFrac;
    expect(at(13)).toBeLessThan(at(6.5));
    expect(at(65)).toBe(0);
    expect(at(200)).toBe(0);
  });

  it("availability of the weaker direction falls with distance", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 300, max: 20_000, noNaN: true }),
        fc.double({ min: 1.05, max: 3, noNaN: true }),
        (distanceM, by) => {
          const at = (m: number) =>
            twoWayAvailability({
              budget: twoWayBudget({
                ...link,
                near: { ...end, gainDbi: 35 },
                far: { ...end, gainDbi: 35, txPowerDbm: 15 },
                pathLossDb: freeSpaceLossDb({ distanceM: m, frequencyMHz: 24_125 }),
              }),
              climate: { ...climate, distanceM: m },
            }).availabilityFrac;
          expect(at(distanceM * by)).toBeLessThanOrEqual(at(distanceM) + 1e-12);
        },
      ),
    );
  });
});
