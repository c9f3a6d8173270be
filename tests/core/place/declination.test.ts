import fc from "fast-check";
import { expect, it } from "vitest";
import { RangeFault } from "../../../src/core/numerics/index.ts";
import { compassTrust, MAGNETIC_MODEL_YEARS, magneticDeclinationDeg } from "../../../src/core/place/index.ts";
import { near } from "../../helpers/near.ts";

const anyReading = fc.record({
  latitudeDeg: fc.double({ min: -90, max: 90, noNaN: true }),
  longitudeDeg: fc.double({ min: -180, max: 180, noNaN: true }),
  year: fc.double({ min: 2025, max: 2030, noNaN: true }),
});

it("is a direction everywhere, at the poles of the earth too", () => {
  fc.assert(
    fc.property(anyReading, (reading) => {
      const deg = magneticDeclinationDeg(reading);
      return deg >= -180 && deg <= 180;
    }),
  );
  for (const latitudeDeg of [-90, 90])
    expect(magneticDeclinationDeg({ latitudeDeg, longitudeDeg: 0, year: 2026 })).toBeGreaterThan(-181);
});

it("is the same on both sides of the date line, and drifts without a jump", () => {
  fc.assert(
    fc.property(anyReading, (reading) => {
      const west = magneticDeclinationDeg({ ...reading, longitudeDeg: -180 });
      const east = magneticDeclinationDeg({ ...reading, longitudeDeg: 180 });
      return Math.abs(west - east) < 1e-9;
    }),
  );
  // London's drifts east by about a sixth of a degree a year (from memory).
  const london = { latitudeDeg: 51.5, longitudeDeg: -0.12 };
  const yearly = [2025, 2026, 2027, 2028, 2029, 2030].map((year) =>
    magneticDeclinationDeg({ ...london, year }),
  );
  for (let i = 1; i < yearly.length; i++) near(yearly[i]! - yearly[i - 1]!, 0.17, { within: 0.06 });
});

it("is negative west of the line of no declination, positive east of it: common knowledge", () => {
  // Maine's compasses point about 15 degrees west of true north, Seattle's about 15 east (from memory, within 2 degrees).
  near(magneticDeclinationDeg({ latitudeDeg: 45.3, longitudeDeg: -69, year: 2025 }), -15, { within: 2 });
  near(magneticDeclinationDeg({ latitudeDeg: 47.6, longitudeDeg: -122.3, year: 2025 }), 15, { within: 2 });
});

it("does not trust a compass at the magnetic pole of the north, and does in Wales", () => {
  // The model's north dip pole of 2025 lies near 85.8 N 139 E (from memory).
  expect(compassTrust({ latitudeDeg: 85.8, longitudeDeg: 139, year: 2025 })).toBe("none");
  expect(compassTrust({ latitudeDeg: 52.3, longitudeDeg: -3.5, year: 2025 })).toBe("good");
});

it("throws RangeFault outside the earth and outside the model's years", () => {
  const reading = { latitudeDeg: 52, longitudeDeg: -3, year: 2026 };
  for (const ask of [magneticDeclinationDeg, compassTrust]) {
    for (const year of [MAGNETIC_MODEL_YEARS.first - 0.01, MAGNETIC_MODEL_YEARS.last + 0.01, Number.NaN])
      expect(() => ask({ ...reading, year })).toThrow(RangeFault);
    expect(() => ask({ ...reading, latitudeDeg: 90.1 })).toThrow(RangeFault);
    expect(() => ask({ ...reading, longitudeDeg: 181 })).toThrow(RangeFault);
  }
});
