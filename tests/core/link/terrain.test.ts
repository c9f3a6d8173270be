import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  groundAtM,
  meanTerrainM,
  type ProfilePoint,
  profileObstacles,
  terrainRoughnessM,
  thinnedProfile,
} from "../../../src/core/link/index.ts";
import { near } from "../../helpers/near.ts";

const profiles = fc
  .array(
    fc.tuple(fc.double({ min: 1, max: 500, noNaN: true }), fc.double({ min: -100, max: 900, noNaN: true })),
    {
      minLength: 2,
      maxLength: 60,
    },
  )
  .map((pairs): readonly ProfilePoint[] => {
    let atM = 0;
    return pairs.map(([gapM, groundM], i) => {
      if (i > 0) atM += gapM;
      return { distanceFromNearM: atM, groundM };
    });
  });

const hill: readonly ProfilePoint[] = [
  { distanceFromNearM: 0, groundM: 10 },
  { distanceFromNearM: 100, groundM: 10 },
  { distanceFromNearM: 200, groundM: 30 },
  { distanceFromNearM: 400, groundM: 10 },
];

describe("the ground under a path", () => {
  /** How: areas worked by hand: (100 x 10 + 100 x 20 + 200 x 20)/400. */
  it("has a mean weighted by distance", () => {
    near(meanTerrainM(hill), 17.5, { within: 1e-12 });
  });

  /** How: a straight ramp of height h has the standard deviation h/sqrt(12) of a uniform spread. */
  it("has the roughness of a ramp", () => {
    const ramp = [
      { distanceFromNearM: 0, groundM: 0 },
      { distanceFromNearM: 1000, groundM: 60 },
    ];
    near(terrainRoughnessM(ramp), 60 / Math.sqrt(12), { within: 1e-9 });
    near(terrainRoughnessM(hill.slice(0, 2)), 0, { within: 1e-12 });
  });

  it("is read straight between the points", () => {
    near(groundAtM({ profile: hill, distanceFromNearM: 150 }), 20, { within: 1e-12 });
    near(groundAtM({ profile: hill, distanceFromNearM: 400 }), 10, { within: 1e-12 });
    expect(() => groundAtM({ profile: hill, distanceFromNearM: 401 })).toThrow("distanceFromNearM");
  });

  it("gives its inner points as obstacles", () => {
    expect(profileObstacles(hill).map((one) => [one.distanceFromNearM, one.topM, one.kind])).toEqual([
      [100, 10, "ground"],
      [200, 30, "ground"],
    ]);
  });

  it("reversed has the same mean and roughness", () => {
    fc.assert(
      fc.property(profiles, (profile) => {
        const endM = profile.at(-1)!.distanceFromNearM;
        const back = profile
          .map((point) => ({ ...point, distanceFromNearM: endM - point.distanceFromNearM }))
          .toReversed();
        near(meanTerrainM(back), meanTerrainM(profile), { within: 1e-6 });
        near(terrainRoughnessM(back), terrainRoughnessM(profile), { within: 1e-5 });
      }),
    );
  });
});

describe("thinning", () => {
  it("keeps every point left out within the tolerance of what stays", () => {
    fc.assert(
      fc.property(profiles, fc.double({ min: 0, max: 100, noNaN: true }), (profile, toleranceM) => {
        const thin = thinnedProfile({ profile, toleranceM });
        expect(thin[0]).toBe(profile[0]);
        expect(thin.at(-1)).toBe(profile.at(-1));
        for (const point of profile) {
          const { distanceFromNearM } = point;
          near(groundAtM({ profile: thin, distanceFromNearM }), point.groundM, { within: toleranceM + 1e-6 });
        }
      }),
    );
  });

  it("drops what lies on a straight line and holds up three thousand points of a sawtooth", () => {
    expect(thinnedProfile({ profile: hill, toleranceM: 0 })).toHaveLength(4);
    expect(thinnedProfile({ profile: hill, toleranceM: 25 })).toHaveLength(2);
    const saw = Array.from({ length: 3000 }, (_, i) => ({ distanceFromNearM: i * 10, groundM: (i % 2) * 5 }));
    expect(thinnedProfile({ profile: saw, toleranceM: 1 }).length).toBeGreaterThan(1500);
  });
});
