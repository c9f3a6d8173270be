// The World Magnetic Model 2025 by another's program and by its authors: made by make_vectors.py, which says how.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { compassTrust, magneticDeclinationDeg } from "../../../src/core/place/index.ts";
import { near } from "../../helpers/near.ts";

type Row = readonly [latitudeDeg: number, longitudeDeg: number, year: number, decl: number, horizNT: number];
const file: {
  readonly library: string;
  readonly computed: readonly Row[];
  readonly published: readonly Row[];
} = JSON.parse(readFileSync(new URL("vectors.json", import.meta.url), "utf8"));

/** The smaller way round between two directions. */
const turnDeg = (a: number, b: number): number => Math.abs(((a - b + 540) % 360) - 180);

describe("declination", () => {
  it("agrees with pygeomag 1.1.0 at 98 places and times to a thousandth of a degree", () => {
    expect(file.library).toBe("pygeomag 1.1.0");
    expect(file.computed).toHaveLength(98);
    for (const [latitudeDeg, longitudeDeg, year, expected] of file.computed) {
      const got = magneticDeclinationDeg({ latitudeDeg, longitudeDeg, year });
      near(turnDeg(got, expected), 0, { within: 0.001 });
    }
  });

  it("agrees with the published test values at height 0 to their last digit", () => {
    expect(file.published).toHaveLength(6);
    for (const [latitudeDeg, longitudeDeg, year, expected] of file.published)
      near(magneticDeclinationDeg({ latitudeDeg, longitudeDeg, year }), expected, { within: 0.00501 });
  });

  it("trusts a compass by the horizontal field that pygeomag works out", () => {
    const said = file.computed.map(([latitudeDeg, longitudeDeg, year]) =>
      compassTrust({ latitudeDeg, longitudeDeg, year }),
    );
    expect(new Set(said)).toEqual(new Set(["good", "caution", "none"]));
    expect(said).toEqual(
      file.computed.map(([, , , , nT]) => (nT < 2000 ? "none" : nT < 6000 ? "caution" : "good")),
    );
  });
});
