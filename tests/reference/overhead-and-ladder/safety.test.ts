import { describe, it } from "vitest";
import { LADDER_ANGLE_DEG, ladderFootM, overheadLineClearanceM } from "../../../src/core/mast/index.ts";
import { near } from "../../helpers/near.ts";

const M_PER_FT = 0.3048;

// OSHA 1910.333(c)(3): 10 ft up to 50 kV and 4 in for every 10 kV above, printed in two pages; our rule adds the mast.
describe("overhead lines", () => {
  it.each([
    [0.4, 10],
    [50, 10],
    [60, 10 + 4 / 12],
    [138, 10 + 36 / 12],
  ] as const)("%d kV", (lineKv, clearFt) =>
    near(overheadLineClearanceM({ mastLengthM: 5, lineKv }) - 5, clearFt * M_PER_FT, { within: 1e-9 }),
  );
  it("an unnamed line counts as one of up to 50 kV", () =>
    near(overheadLineClearanceM({ mastLengthM: 6 }), 9.048, { within: 1e-9 }));
});

// OSHA 1926.1053: a quarter of the working length (from memory), and a test angle of 75 1/2 degrees (read in the rule).
describe("ladder", () => {
  it("leans at 75.5 degrees", () => near(LADDER_ANGLE_DEG, 75.5, { within: 0.05 }));
  it("stands out a quarter of its length", () => near(ladderFootM(4.8), 1.2, { within: 1e-9 }));
});
