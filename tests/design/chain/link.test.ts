import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Brief } from "../../../src/design/brief.ts";
import { linkStage } from "../../../src/design/chain/link.ts";
import { viewStage } from "../../../src/design/chain/view.ts";
import type { RadioPath } from "../../../src/design/design.ts";
import { near } from "../../helpers/near.ts";
import { at, changed, given, sites, typicalBrief } from "../fixtures.ts";
import { evenClimate } from "./stubs.ts";

const link = (brief: Brief) => linkStage(brief, evenClimate, viewStage(brief))!;
const path = (changes: Partial<Brief["link"]>, brief = typicalBrief): RadioPath =>
  link(changed({ link: changes }, brief)).radio!;

describe("a bridge in the United States, worked by hand", () => {
  const radio = path({ distanceM: given(3000), farHeightM: given(12) });
  it("takes 5725 to 5850 MHz: no radar wait, any gain", () => {
    expect(radio.bandName).toBe("5725 to 5850 MHz");
    expect(radio.needsRadarCheck).toBe(false);
    near(radio.frequencyMHz, 5787.5, { within: 1e-6 });
  });
  it("3 km of free space at 5787.5 MHz: 32.45 + 75.25 + 9.54 = 117.24 dB", () => {
    near(radio.freeSpaceLossDb, 117.24, { within: 0.02 });
  });
  it("24 dBm + 23 + 23 - 117.2 - 3 aiming - 1 feeders - 0.6 rain = -51.9 dBm", () => {
    near(radio.rxLevelDbm, 24 + 46 - 117.24 - 3 - 1 - radio.rainLossDb, { within: 0.02 });
    expect(radio.rainLossDb).toBeLessThan(1);
  });
  it("15 dB above the 20 MHz sensitivities: -51.9 - 15 = -66.9, row 4 (-70 dBm, 39 x 2 = 78 Mbit/s), half of it payload", () => {
    // row 5 (-66 dBm) would leave 14.1 dB
    near(radio.sensitivityDbm, -70, { within: 1e-9 });
    near(radio.phyMbps, 78, { within: 1e-9 });
    near(radio.availableMbps, 39, { within: 1e-9 });
    expect(radio.channelWidthMHz).toBe(20);
    expect(radio.carriesPicture).toBe(true);
  });
  it("Fresnel zone in the middle of 3 km: 17.3 sqrt(1.5 x 1.5 / (5.7875 x 3)) = 6.23 m", () => {
    near(radio.fresnelRadiusM, 6.23, { within: 0.02 });
  });
});

describe("rules of other regions", () => {
  it("Europe: 5470 to 5725 MHz, 27 dBm without power control, a minute of silence, never the ten of weather radar", () => {
    const radio = path({}, at(sites.north40));
    near(radio.maxEirpDbm, 27, { within: 1e-9 });
    near(radio.txPowerDbm, 4, { within: 1e-9 });
    expect(radio.needsRadarCheck).toBe(true);
    expect(radio.silenceAfterPowerCutS).toBe(60);
  });
  it("a country without known rules is sized with the lowest figure, and says 'ask'", () => {
    const radio = path({}, at(sites.south5));
    expect(radio.region).toBe("other");
    expect(radio.outdoorAllowed).toBe("ask");
    near(radio.maxEirpDbm, 27, { within: 1e-9 });
  });
});

describe("what stands in the way", () => {
  it("the radio is raised until 0.6 of the zone is free, up to 6 m", () => {
    // half way along 5 km: 0.6 x 8.05 + 0.37 m of bulge = 5.20 m of line, so about 2 x 5.20 - 6 = 4.4 m at the post
    const level = path({ distanceM: given(5000), farHeightM: given(6) });
    near(level.nearHeightM, 4.4, { within: 0.1 });
    expect(level.clearanceFrac).toBeGreaterThanOrEqual(0.6);
    expect(level.clearingNearHeightM).toBeNull();
  });
  it("trees of 10 m half way along 800 m: 12 m with growth, and 0.6 x 3.22 m must be free above: line at 13.9 m", () => {
    const radio = path({
      sight: given("trees"),
      obstacleDistanceM: given(400),
      obstacleTopM: given(10),
      obstacleDepthM: given(0),
    });
    expect(radio.nearHeightM).toBe(6);
    // half way the line is the mean of both ends: far end at 2 x (12 + 1.93 + bulge 0.01) - 6 = 21.9 m
    near(radio.clearingFarHeightM!, 21.9, { within: 0.1 });
    expect(radio.clearanceM).toBeLessThan(0);
    expect(radio.diffractionLossDb).toBeGreaterThan(6);
  });
});

describe("other carriers", () => {
  it("3.73 Mbit/s x 1.15 = 4.29 Mbit/s; a month of it x 10.8 x 30.44 = 1410 GB", () => {
    const { needMbps, monthlyGB, radio } = link(changed({ link: { carrier: given("cellular") } }));
    near(needMbps, 4.292, { within: 0.001 });
    near(monthlyGB, 1411, { within: 3 });
    expect(radio).toBeNull();
  });
  it("none at all where the picture stays at the post", () => {
    const silent = changed({ link: { carrier: given("none") } });
    expect(linkStage(silent, evenClimate, viewStage(silent))).toBeNull();
  });
});

describe("laws", () => {
  it("farther never stronger, more posts never more air time left, higher far end never less clearance", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 50, max: 12_000, noNaN: true }),
        fc.integer({ min: 0, max: 20 }),
        fc.double({ min: 4, max: 40, noNaN: true }),
        (distanceM, posts, farM) => {
          const base = { distanceM: given(distanceM), otherPosts: given(posts), farHeightM: given(farM) };
          const here = path(base);
          const high = { farHeightM: given(80) };
          expect(path({ ...base, ...high, distanceM: given(distanceM * 2) }).freeSpaceLossDb).toBeGreaterThan(
            path({ ...base, ...high }).freeSpaceLossDb,
          );
          const more = path({ ...base, otherPosts: given(posts + 1) });
          expect(!here.carriesPicture && more.carriesPicture).toBe(false);
          expect(path({ ...base, farHeightM: given(farM + 5) }).clearanceFrac).toBeGreaterThanOrEqual(
            Math.min(here.clearanceFrac, 0.6),
          );
        },
      ),
      { numRuns: 60 },
    );
  });
});
