import fc from "fast-check";
import { expect, it } from "vitest";
import { RangeFault } from "../../../src/core/numerics/index.ts";
import { bearingAndDistance, pointsAlong } from "../../../src/core/place/index.ts";
import { near } from "../../helpers/near.ts";

const way = { fromLatitudeDeg: 52.1, fromLongitudeDeg: -3.5, toLatitudeDeg: 52.4, toLongitudeDeg: -3.1 };

it("begins and ends at the ends, with equal steps of the whole distance", () => {
  const { distanceM } = bearingAndDistance(way);
  const points = pointsAlong({ ...way, samples: 5 });
  expect(points).toHaveLength(5);
  points.forEach((point, i) => {
    near(point.distanceFromNearM, (distanceM * i) / 4, { within: 1e-6 });
  });
  near(points[0]!.latitudeDeg, 52.1, { within: 1e-10 });
  near(points[4]!.latitudeDeg, 52.4, { within: 1e-10 });
  near(points[4]!.longitudeDeg, -3.1, { within: 1e-10 });
});

it("lies as far from the near end as it says, and on the way: the two parts add up", () => {
  const lat = fc.double({ min: -80, max: 80, noNaN: true });
  const lon = fc.double({ min: -180, max: 180, noNaN: true });
  fc.assert(
    fc.property(lat, lon, lat, lon, (fromLatitudeDeg, fromLongitudeDeg, toLatitudeDeg, toLongitudeDeg) => {
      const any = { fromLatitudeDeg, fromLongitudeDeg, toLatitudeDeg, toLongitudeDeg };
      const [, middle, end] = pointsAlong({ ...any, samples: 3 });
      const half = { toLatitudeDeg: middle!.latitudeDeg, toLongitudeDeg: middle!.longitudeDeg };
      const { distanceM } = bearingAndDistance({ ...any, ...half });
      return (
        Math.abs(distanceM - middle!.distanceFromNearM) < 1e-3 &&
        Math.abs(end!.distanceFromNearM - 2 * distanceM) < 1e-3
      );
    }),
  );
});

it("throws RangeFault outside its ranges", () => {
  expect(() => pointsAlong({ ...way, samples: 1 })).toThrow(RangeFault);
  expect(() => pointsAlong({ ...way, samples: 10_001 })).toThrow(RangeFault);
  expect(() => pointsAlong({ ...way, toLatitudeDeg: 91, samples: 3 })).toThrow(RangeFault);
});
