import { describe, expect, it } from "vitest";
import { type SectorPost, sectorLoad } from "../../../src/core/link/index.ts";
import { near } from "../../helpers/near.ts";

const post: SectorPost = {
  name: "gate",
  bearingDeg: 10,
  distanceM: 500,
  neededMbps: 4,
  netMbps: 80,
  gainDbi: 16,
  beamwidthDeg: 25,
  txPowerDbm: 20,
};
const sector = { bearingDeg: 0, beamwidthDeg: 90, frequencyMHz: 5800 };

describe("posts on one sector", () => {
  /** How: air time = need/rate, worked by hand. */
  it("a far slow post costs the near fast ones more air than they use themselves", () => {
    const posts = [post, { ...post, name: "yard", bearingDeg: 350 }, { ...post, name: "pond", netMbps: 10 }];
    const found = sectorLoad({ posts, sector });
    near(found.airtimeFrac!, 0.05 + 0.05 + 0.4, { within: 1e-12 });
    expect(found.isEnough).toBe(true);
    near(found.posts[2]!.slownessFrac, 0.35, { within: 1e-12 });
    near(found.posts[0]!.slownessFrac, 0, { within: 1e-12 });
  });

  it("the one that takes most is left out when the air is full, and is told why", () => {
    const posts = [post, { ...post, name: "pond", netMbps: 8.5 }, { ...post, name: "yard" }];
    const found = sectorLoad({ posts, sector });
    expect(found.posts.map((one) => one.fits)).toEqual([true, false, true]);
    expect(found.posts[1]!.reason).toBe(
      "With the others pond, which takes 47 % of the time, would fill more than 50 %.",
    );
    expect(found.isEnough).toBe(false);
  });

  it("a post too slow even alone, one without any rate, and one outside the beam", () => {
    const posts = [
      { ...post, name: "slow", netMbps: 5 },
      { ...post, name: "deaf", netMbps: 0 },
      { ...post, name: "aside", bearingDeg: 60 },
    ];
    const found = sectorLoad({ posts, sector });
    expect(found.posts.map((one) => one.reason)).toEqual([
      "slow alone would keep the air busy 80 % of the time; 50 % may be filled.",
      "deaf has no rate that leaves the wanted margin.",
      "aside lies 60° off the middle of a beam that reaches 45° either way.",
    ]);
    expect(found.airtimeFrac).toBeUndefined();
    expect(found.posts[2]!.isInBeam).toBe(false);
  });

  it("counts angles over north", () => {
    const found = sectorLoad({
      posts: [
        { ...post, bearingDeg: 350 },
        { ...post, name: "b", bearingDeg: 20 },
      ],
      sector: { ...sector, bearingDeg: 355 },
    });
    expect(found.posts.map((one) => one.offAxisDeg)).toEqual([5, 25]);
    near(found.arc.bearingDeg, 5, { within: 1e-9 });
    near(found.arc.widthDeg, 30, { within: 1e-9 });
  });
});

describe("hidden posts", () => {
  const apart = (distanceM: number, otherDeg: number, beamwidthDeg = 25) =>
    sectorLoad({
      posts: [
        { ...post, bearingDeg: 0, distanceM, beamwidthDeg },
        { ...post, name: "far side", bearingDeg: otherDeg, distanceM, beamwidthDeg },
      ],
      sector: { ...sector, beamwidthDeg: 360 },
    }).hiddenPairs;

  it("side by side hear each other; across the sector and looking away they do not", () => {
    expect(apart(100, 5)).toEqual([]);
    expect(apart(2000, 90)).toEqual([["gate", "far side"]]);
  });

  /**
   * How: worked by hand. Two posts 3000 m from the sector in opposite directions look straight at each other, 6000 m:
   * 20 + 16 + 16 - 123.28 = -71.3 dBm, heard; at 90 degrees each looks 45 degrees past the other: 25 dB less at each end.
   */
  it("straight across they hear each other over twice the distance", () => {
    expect(apart(3000, 180)).toEqual([]);
    expect(apart(3000, 90)).toHaveLength(1);
    // antennas that see all round hear each other at that angle too
    expect(apart(1000, 90, 180)).toEqual([]);
  });

  /** How: 15 km each in opposite directions are 30 km: 52 - 137.3 = -85.3 dBm, below -82; 9 km each: -80.8, above. */
  it("straight across, but too far to hear each other", () => {
    expect(apart(15_000, 180)).toHaveLength(1);
    expect(apart(9000, 180)).toEqual([]);
  });

  /**
   * How: worked by hand. From 3000 m a narrow beam on the sector passes 1.7 degrees from a post 100 m beside it; that post
   * looks 118 degrees past the far one through a beam of 180: 52 - 5.2 - 1.3 - 117.1 = -71.6 dBm.
   */
  it("each antenna loses by the angle at its own post", () => {
    const near100 = { ...post, bearingDeg: 0, distanceM: 100, beamwidthDeg: 180 };
    const far3000 = { ...post, name: "b", bearingDeg: 60, distanceM: 3000, beamwidthDeg: 5 };
    const pairs = (posts: readonly SectorPost[]) => sectorLoad({ posts, sector }).hiddenPairs;
    expect(pairs([near100, far3000])).toEqual([]);
    expect(
      pairs([
        { ...near100, beamwidthDeg: 5 },
        { ...far3000, beamwidthDeg: 180 },
      ]),
    ).toHaveLength(1);
  });

  it("is symmetrical in the order of the posts", () => {
    const a = { ...post, bearingDeg: 0, distanceM: 2500, txPowerDbm: 5 };
    const b = { ...post, name: "b", bearingDeg: 90, distanceM: 400 };
    const pairs = (posts: readonly SectorPost[]) => sectorLoad({ posts, sector }).hiddenPairs.length;
    expect(pairs([a, b])).toBe(pairs([b, a]));
  });
});
