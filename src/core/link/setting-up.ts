import { within } from "../numerics/index.ts";
import { beamwidthFromGainDeg, permittedLeanDeg } from "./antenna.ts";
import { aimTiltDeg } from "./earth.ts";

export type AntennaAim = {
  /** Clockwise from true north, 0 to 360: set by map, or by compass once the declination is allowed for. */
  readonly bearingDeg: number;
  /** Above the horizontal, positive upwards. */
  readonly tiltDeg: number;
  /** Full width between the half-power points. */
  readonly beamwidthDeg: number;
  /** Off the true aim either way at which 1 dB, and 3 dB, are lost. */
  readonly oneDbDeg: number;
  readonly threeDbDeg: number;
  /** The 1 dB angle at the far end's distance: how far left or right of it the antenna may look. */
  readonly oneDbAcrossM: number;
};

/**
 * Where an antenna must look, and how exactly.
 *
 * @param aim.bearingDeg    0 to 360, to the other end
 * @param aim.distanceM     1 to 1 000 000
 * @param aim.ownHeightM    above a common datum, -500 to 10 000
 * @param aim.otherHeightM  above the same datum, -500 to 10 000
 * @param aim.k             effective-earth-radius factor, 0.3 to 100
 * @param aim.gainDbi       6 to 60; not used where beamwidthDeg is known
 * @param aim.beamwidthDeg  full half-power width, 0.05 to 180, from the data sheet
 * @throws RangeFault outside the ranges above
 * @source main lobe 12 (theta/theta3)^2 of Recommendations ITU-R F.699 and F.1336, from memory
 */
export function antennaAim(aim: {
  readonly bearingDeg: number;
  readonly distanceM: number;
  readonly ownHeightM: number;
  readonly otherHeightM: number;
  readonly k: number;
  readonly gainDbi: number;
  readonly beamwidthDeg?: number;
}): AntennaAim {
  const beamwidthDeg = aim.beamwidthDeg ?? beamwidthFromGainDeg(aim.gainDbi);
  const oneDbDeg = permittedLeanDeg({ lossDb: 1, beamwidthDeg });
  return {
    bearingDeg: within("bearingDeg", aim.bearingDeg, 0, 360),
    tiltDeg: aimTiltDeg({
      distanceM: aim.distanceM,
      nearHeightM: aim.ownHeightM,
      farHeightM: aim.otherHeightM,
      k: aim.k,
    }),
    beamwidthDeg,
    oneDbDeg,
    threeDbDeg: permittedLeanDeg({ lossDb: 3, beamwidthDeg }),
    // a beam wider than half the sky has no side to look past
    oneDbAcrossM: aim.distanceM * Math.tan((Math.min(80, oneDbDeg) * Math.PI) / 180),
  };
}

export type LevelVerdict = {
  readonly finding: "as expected" | "low" | "high";
  readonly offDb: number;
  /** One sentence for whoever stands at the post. */
  readonly advice: string;
};

/**
 * What a level read at the radio says of the link as built.
 *
 * @param reading.readDbm      -200 to 30
 * @param reading.expectedDbm  -200 to 30
 * @param reading.toleranceDb  0.1 to 60, either way
 * @throws RangeFault outside the ranges above
 * @source first side lobes lie 13 to 20 dB down: common practice, from memory; the order of looking is judgement
 */
export function levelVerdict(reading: {
  readonly readDbm: number;
  readonly expectedDbm: number;
  readonly toleranceDb: number;
}): LevelVerdict {
  const offDb =
    within("readDbm", reading.readDbm, -200, 30) - within("expectedDbm", reading.expectedDbm, -200, 30);
  const toleranceDb = within("toleranceDb", reading.toleranceDb, 0.1, 60);
  if (Math.abs(offDb) <= toleranceDb) {
    return {
      finding: "as expected",
      offDb,
      advice: "The level is what the path should give: tighten everything.",
    };
  }
  if (offDb > 0) {
    return {
      finding: "high",
      offDb,
      advice:
        "More than the path should give: check the power that is set, and that the right radio is heard.",
    };
  }
  const advice =
    offDb < -12
      ? "Far too low: the antenna looks past on a side lobe, the polarisations are crossed, or something stands in the path."
      : "Too low: swing slowly both ways through the peak, then up and down, then look for wet leaves and loose connectors.";
  return { finding: "low", offDb, advice };
}
