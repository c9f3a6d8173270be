import { describe, expect, it } from "vitest";
import { addressPlan, antennaAim, levelVerdict, misalignmentLossDb } from "../../../src/core/link/index.ts";
import { near } from "../../helpers/near.ts";

describe("aim", () => {
  const aim = { bearingDeg: 210, distanceM: 1000, ownHeightM: 3, otherHeightM: 20, k: 4 / 3, gainDbi: 23 };

  /** Source: main lobe of ITU-R F.699, from memory: 1 dB at 0.2887 of the width, 3 dB at half of it. */
  it("names the angles that lose 1 dB and 3 dB", () => {
    const found = antennaAim({ ...aim, beamwidthDeg: 10 });
    near(found.oneDbDeg, 2.887, { within: 0.0006 });
    near(found.threeDbDeg, 5, { within: 1e-9 });
    near(misalignmentLossDb({ offAxisDeg: found.oneDbDeg, beamwidthDeg: 10 }), 1, { within: 1e-9 });
    // worked by hand: 1000 m x tan 2.887 degrees
    near(found.oneDbAcrossM, 50.4, { within: 0.05 });
  });

  it("takes the width from the gain where no data sheet says it, and the tilt from the heights", () => {
    const found = antennaAim(aim);
    // worked by hand: sqrt(29 500 / 10^2.3)
    near(found.beamwidthDeg, 12.16, { within: 0.005 });
    near(found.tiltDeg, 0.97, { within: 0.005 });
    expect(found.bearingDeg).toBe(210);
  });

  /** How: a 60 GHz dish of 1.16 degrees loses 1 dB at 0.33 degrees, 5.8 mm for each metre of mast. */
  it("a 60 GHz dish must stand still", () => {
    const found = antennaAim({ ...aim, distanceM: 1, beamwidthDeg: 1.16 });
    near(found.oneDbDeg, 0.335, { within: 0.001 });
    near(found.oneDbAcrossM * 1000, 5.8, { within: 0.06 });
  });
});

describe("the level that is read", () => {
  const verdict = (readDbm: number) => levelVerdict({ readDbm, expectedDbm: -55, toleranceDb: 3 });

  it("is as expected within the tolerance, else high, low, or a side lobe", () => {
    expect(verdict(-57.9).finding).toBe("as expected");
    expect(verdict(-51)).toMatchObject({ finding: "high", offDb: 4 });
    expect(verdict(-60)).toMatchObject({ finding: "low", offDb: -5 });
    expect(verdict(-60).advice).toContain("swing slowly");
    expect(verdict(-70).advice).toContain("side lobe");
  });
});

/** Source: RFC 1918 and RFC 4632, from memory. How: worked by hand: 16 addresses, first and last not for devices. */
describe("addresses of a post", () => {
  it("sixteen for the first post", () => {
    expect(addressPlan({ devices: 3, site: 0 })).toEqual({
      network: "192.168.0.0/28",
      netmask: "255.255.255.240",
      gateway: "192.168.0.1",
      hosts: ["192.168.0.2", "192.168.0.3", "192.168.0.4"],
      broadcast: "192.168.0.15",
      spare: Array.from({ length: 10 }, (_, i) => `192.168.0.${5 + i}`),
    });
  });

  it("the next sixteen for the next, over the end of an octet, up to the last of the range", () => {
    expect(addressPlan({ devices: 1, site: 15 })).toMatchObject({
      network: "192.168.0.240/28",
      hosts: ["192.168.0.242"],
      broadcast: "192.168.0.255",
    });
    expect(addressPlan({ devices: 1, site: 16 }).network).toBe("192.168.1.0/28");
    expect(addressPlan({ devices: 13, site: 4095 })).toMatchObject({
      broadcast: "192.168.255.255",
      spare: [],
    });
  });

  it("no two posts share an address", () => {
    const all = Array.from({ length: 40 }, (_, site) => addressPlan({ devices: 13, site })).flatMap(
      ({ gateway, hosts, broadcast }) => [gateway, ...hosts, broadcast],
    );
    expect(new Set(all).size).toBe(all.length);
  });

  it("refuses more than fit, or a fraction", () => {
    expect(() => addressPlan({ devices: 14, site: 0 })).toThrow("devices");
    expect(() => addressPlan({ devices: 1, site: 4096 })).toThrow("site");
    expect(() => addressPlan({ devices: 1.5, site: 0 })).toThrow("whole");
  });
});
