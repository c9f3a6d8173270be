import { describe, expect, it } from "vitest";
import * as link from "../../../src/core/link/index.ts";
import { RangeFault } from "../../../src/core/numerics/index.ts";

/** The ranges that the docstrings promise: at both edges a finite number, one step beyond a RangeFault that names it. */
type Promised = {
  readonly name: string;
  readonly call: (given: Record<string, number>) => number;
  readonly given: Record<string, number>;
  readonly ranges: Record<string, readonly [number, number]>;
};

const height = [-500, 10_000] as const;
const loss = [0, 60] as const;
const gain = [-20, 70] as const;
const any = <T>(given: Record<string, number>) => given as T;

const path = { distanceM: 5000, frequencyMHz: 5800 };
const rain = { ...path, rainMmPerH: 42, polarisationTiltDeg: 90 };
const masts = { ...path, distanceM: 20_000, nearAntennaM: 60, farAntennaM: 30 };
const mastRanges = {
  distanceM: [1, 200_000],
  frequencyMHz: [300, 100_000],
  nearAntennaM: [-500, 9000],
  farAntennaM: [-500, 9000],
} as const;

const PROMISES: readonly Promised[] = [
  {
    name: "freeSpaceLossDb",
    call: (given) => link.freeSpaceLossDb(any(given)),
    given: path,
    ranges: { distanceM: [1, 1_000_000], frequencyMHz: [30, 300_000] },
  },
  {
    name: "earthBulgeM",
    call: (given) => link.earthBulgeM(any(given)),
    given: { fromNearM: 1, fromFarM: 1, k: 1 },
    ranges: { fromNearM: [0, 1_000_000], fromFarM: [0, 1_000_000], k: [0.3, 100] },
  },
  {
    name: "radioHorizonM",
    call: (given) => link.radioHorizonM(any(given)),
    given: { nearHeightM: 1, farHeightM: 1, k: 1 },
    ranges: { nearHeightM: [0, 10_000], farHeightM: [0, 10_000], k: [0.3, 100] },
  },
  {
    name: "aimTiltDeg",
    call: (given) => link.aimTiltDeg(any(given)),
    given: { distanceM: 100, nearHeightM: 1, farHeightM: 1, k: 1 },
    ranges: { distanceM: [1, 1_000_000], nearHeightM: height, farHeightM: height, k: [0.3, 100] },
  },
  {
    name: "fresnelRadiusM",
    call: (given) => link.fresnelRadiusM(any(given)),
    given: { fromNearM: 10, fromFarM: 10, frequencyMHz: 5800, zone: 1 },
    ranges: {
      fromNearM: [0, 1_000_000],
      fromFarM: [0, 1_000_000],
      frequencyMHz: [30, 300_000],
      zone: [1, 100],
    },
  },
  {
    name: "knifeEdgeV",
    call: (given) => link.knifeEdgeV(any(given)),
    given: { aboveLineM: 1, fromNearM: 10, fromFarM: 10, frequencyMHz: 5800 },
    ranges: { aboveLineM: [-30_000, 30_000], fromNearM: [0.01, 1_000_000], fromFarM: [0.01, 1_000_000] },
  },
  {
    name: "doubleEdgeCorrectionDb",
    call: (given) => link.doubleEdgeCorrectionDb(any(given)),
    given: { nearGapM: 10, betweenM: 10, farGapM: 10 },
    ranges: { nearGapM: [1, 400_000], betweenM: [1, 400_000], farGapM: [1, 400_000] },
  },
  {
    name: "dominantEdgeCorrectionDb",
    call: (given) => link.dominantEdgeCorrectionDb(any(given)),
    given: {
      nearGapM: 10,
      betweenM: 10,
      farGapM: 10,
      dominantTopM: 30_000,
      otherTopM: 1,
      frequencyMHz: 5800,
    },
    ranges: {
      nearGapM: [1, 400_000],
      betweenM: [1, 400_000],
      farGapM: [1, 400_000],
      otherTopM: [0, 30_000],
    },
  },
  {
    name: "linkBudget",
    call: (given) => link.linkBudget(any(given)).rxLevelDbm,
    given: {
      txPowerDbm: 20,
      txGainDbi: 1,
      txLossDb: 1,
      rxGainDbi: 1,
      rxLossDb: 1,
      pathLossDb: 1,
      otherLossDb: 1,
    },
    ranges: {
      txPowerDbm: [-60, 60],
      txGainDbi: gain,
      rxGainDbi: gain,
      txLossDb: loss,
      rxLossDb: loss,
      pathLossDb: [0, 300],
      otherLossDb: [0, 300],
    },
  },
  {
    name: "treeLossDb",
    call: (given) => link.treeLossDb(any(given)),
    given: { frequencyMHz: 5800, depthM: 5 },
    ranges: { frequencyMHz: [230, 95_000], depthM: [0, 400] },
  },
  {
    name: "woodLossDb",
    call: (given) => link.woodLossDb(any(given)),
    given: { depthM: 10, gammaDbPerM: 1, maxDb: 30 },
    ranges: { depthM: [0, 10_000], gammaDbPerM: [0.001, 10], maxDb: [1, 100] },
  },
  {
    name: "rainDbPerKm",
    call: (given) => link.rainDbPerKm(any(given)),
    given: { ...rain, elevationDeg: 0 },
    ranges: {
      frequencyMHz: [1000, 1_000_000],
      rainMmPerH: [0, 300],
      polarisationTiltDeg: [0, 180],
      elevationDeg: [-90, 90],
    },
  },
  {
    name: "rainExceededDb",
    call: (given) => link.rainExceededDb(any(given)),
    given: { ...rain, exceededFrac: 1e-3 },
    ranges: {
      distanceM: [1, 60_000],
      frequencyMHz: [300, 100_000],
      rainMmPerH: [0, 300],
      exceededFrac: [1e-5, 1e-2],
    },
  },
  {
    name: "rainOutage",
    call: (given) => link.rainOutage(any(given)).outageFrac,
    given: { ...rain, marginDb: 10 },
    ranges: { marginDb: [-300, 300] },
  },
  {
    name: "rainScaledDb",
    call: (given) => link.rainScaledDb(any(given)),
    given: { knownDb: 5, knownFrequencyMHz: 11_000, frequencyMHz: 38_000 },
    ranges: { knownDb: [0.001, 100], knownFrequencyMHz: [7000, 50_000], frequencyMHz: [7000, 50_000] },
  },
  {
    name: "gasLossDb",
    call: (given) => link.gasLossDb(any(given)),
    given: { ...path, dryPressureHPa: 1013.25, tempC: 15, vapourGPerM3: 7.5 },
    ranges: {
      distanceM: [1, 200_000],
      frequencyMHz: [1000, 350_000],
      dryPressureHPa: [300, 1100],
      tempC: [-60, 60],
      vapourGPerM3: [0, 60],
    },
  },
  {
    name: "multipathOccurrenceFrac",
    call: (given) => link.multipathOccurrenceFrac(any(given)),
    given: { ...masts, gradientNPerKm: -200, roughnessM: 40 },
    ranges: { ...mastRanges, gradientNPerKm: [-1000, 200], roughnessM: [0, 3000] },
  },
  {
    name: "multipathOccurrenceByMapFrac",
    call: (given) => link.multipathOccurrenceByMapFrac(any(given)),
    given: { ...masts, logK: -5, dN75NPerKm: 12, terrainM: 10 },
    ranges: { ...mastRanges, logK: [-10, 0], dN75NPerKm: [0, 200], terrainM: [-500, 9000] },
  },
  {
    name: "multipathExceededFrac",
    call: (given) => link.multipathExceededFrac(any(given)),
    given: { occurrenceFrac: 0.01, fadeDb: 10 },
    ranges: { occurrenceFrac: [0, 1000], fadeDb: [0, 100] },
  },
  {
    name: "yearFromWorstMonthFrac",
    call: (given) => link.yearFromWorstMonthFrac(any(given)),
    given: { ...masts, worstMonthFrac: 0.01, latitudeDeg: 50 },
    ranges: {
      worstMonthFrac: [0, 1],
      latitudeDeg: [-90, 90],
      distanceM: [1, 200_000],
      farAntennaM: [-500, 9000],
    },
  },
  {
    name: "barnettVigantsFrac",
    call: (given) => link.barnettVigantsFrac(any(given)),
    given: { terrainRatio: 1, climateRatio: 0.25, distanceM: 10_000, frequencyMHz: 5800, fadeDb: 20 },
    ranges: {
      distanceM: [1000, 200_000],
      frequencyMHz: [1000, 45_000],
      fadeDb: [0, 100],
      terrainRatio: [0.01, 10],
    },
  },
  {
    name: "dishGainDbi",
    call: (given) => link.dishGainDbi(any(given)),
    given: { diameterM: 0.3, frequencyMHz: 5800, efficiencyFrac: 0.55 },
    ranges: { diameterM: [0.05, 10], frequencyMHz: [300, 300_000], efficiencyFrac: [0.3, 0.8] },
  },
  {
    name: "misalignmentLossDb",
    call: (given) => link.misalignmentLossDb(any(given)),
    given: { offAxisDeg: 1, beamwidthDeg: 6 },
    ranges: { offAxisDeg: [-180, 180], beamwidthDeg: [0.05, 180] },
  },
  {
    name: "permittedLeanDeg",
    call: (given) => link.permittedLeanDeg(any(given)),
    given: { lossDb: 1, beamwidthDeg: 6 },
    ranges: { lossDb: [0, 12], beamwidthDeg: [0.05, 180] },
  },
  {
    name: "elevationBeamwidthDeg",
    call: (given) => link.elevationBeamwidthDeg(any(given)),
    given: { gainDbi: 16, sectorWidthDeg: 90 },
    ranges: { gainDbi: [3, 25], sectorWidthDeg: [10, 180] },
  },
  {
    name: "exposureDistanceM",
    call: (given) => link.exposureDistanceM(any(given)),
    given: { eirpDbm: 36, limitWPerM2: 10, reflectionRatio: 4 },
    ranges: { eirpDbm: [-30, 120], limitWPerM2: [0.1, 1000], reflectionRatio: [1, 4] },
  },
  {
    name: "netThroughputMbps",
    call: (given) => link.netThroughputMbps(any(given)),
    given: { phyMbps: 100, planningFactorFrac: 0.5, portMbps: 100 },
    ranges: { phyMbps: [0, 100_000], planningFactorFrac: [0, 1], portMbps: [10, 100_000] },
  },
];

const EDGES = PROMISES.flatMap(({ name, call, given, ranges }) =>
  Object.entries(ranges).map(([quantity, [min, max]]) => ({ name, call, given, quantity, min, max })),
);

describe("promised ranges", () => {
  it.each(EDGES)("$name: $quantity from $min to $max", ({ call, given, quantity, min, max }) => {
    const step = (max - min) * 1e-6;
    for (const edge of [min, max]) {
      expect(Number.isFinite(call({ ...given, [quantity]: edge }))).toBe(true);
    }
    for (const beyond of [min - step, max + step, Number.NaN]) {
      const attempt = () => call({ ...given, [quantity]: beyond });
      expect(attempt).toThrow(RangeFault);
      expect(attempt).toThrow(quantity);
    }
  });

  it.each([
    ["wavelengthM", link.wavelengthM, 30, 300_000],
    ["effectiveEarthRatio", link.effectiveEarthRatio, -1000, 156],
    ["knifeEdgeLossDb", link.knifeEdgeLossDb, -1e9, 1e9],
    ["averageTerrainLossDb", link.averageTerrainLossDb, -10, -0.25],
    ["levelV", link.levelV, -200, 60],
    ["woodGammaDbPerM", link.woodGammaDbPerM, 30, 30_000],
    ["woodMaxDb", link.woodMaxDb, 100, 3000],
    ["thermalNoiseDbm", link.thermalNoiseDbm, 0.001, 10_000],
    ["beamwidthFromGainDeg", link.beamwidthFromGainDeg, 6, 60],
    ["polarisationLossDb", link.polarisationLossDb, -90, 90],
    ["outageHPerYear", link.outageHPerYear, 0, 1],
    ["wiredPortMbps", link.wiredPortMbps, 10, 100_000],
  ] as const)("%s from %d to %d", (_name, call, min, max) => {
    const step = (max - min) * 1e-6;
    expect(Number.isFinite(call(min))).toBe(true);
    expect(Number.isFinite(call(max))).toBe(true);
    expect(() => call(min - step)).toThrow(RangeFault);
    expect(() => call(max + step)).toThrow(RangeFault);
    expect(() => call(Number.NaN)).toThrow(RangeFault);
  });
});
