// Random cases made by make_model_vectors.py with the pvlib version recorded in each file: 579 of them, beside those
// of vectors.test.ts. Where the formula is the same the tolerance is that of the printed digits, far inside 0.1 %.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  ashraeIncidenceRatio,
  glassIncidenceRatio,
  glassView,
  hayDaviesPoa,
  hdkrPoa,
  huldModulePowerW,
  incidenceDeg,
  isotropicPoa,
  moduleCurrentRatio,
  perezPoa,
  type SkyLight,
  type SkyPlaneIrradiance,
  spencerDistanceFactorRatio,
  turbidClearSky,
  weakLightRatio,
} from "../../../src/core/sun/index.ts";
import { near, nearRatio } from "../../helpers/near.ts";

function rowsOf<Keys extends string>(name: string, count: number): readonly Readonly<Record<Keys, number>>[] {
  const file = JSON.parse(readFileSync(new URL(`vectors/${name}.json`, import.meta.url), "utf8"));
  expect(file.library).toBe("pvlib 0.16.1");
  expect(file.rows).toHaveLength(count);
  return file.rows.map((row: readonly number[]) =>
    Object.fromEntries(file.columns.map((column: string, i: number) => [column, row[i]!])),
  );
}

const SKY_MODELS = { hayDavies: hayDaviesPoa, hdkr: hdkrPoa, perez: perezPoa } as const;
type Model = keyof typeof SKY_MODELS;
type SkyRow =
  | "zenithDeg"
  | "sunAzimuthDeg"
  | "tiltDeg"
  | "azimuthDeg"
  | "extraterrestrialNormalWPerM2"
  | "albedo"
  | "beamNormalWPerM2"
  | "diffuseWPerM2"
  | "ghiWPerM2"
  | "groundWPerM2"
  | "isotropicPoaWPerM2"
  | `${Model}${"Sky" | "Circumsolar" | "Dome" | "Horizon"}WPerM2`;

describe("light of the sky on a tilted plane", () => {
  const rows = rowsOf<SkyRow>("sky-models", 200);
  it.each(["hayDavies", "hdkr", "perez"] as const)("%s, part by part", (model) => {
    for (const row of rows) {
      const got: SkyPlaneIrradiance = SKY_MODELS[model]({ ...row, incidenceDeg: incidenceDeg(row) });
      // eight digits of parts that may be near cancelling
      const tolerance = { within: 1e-6 * (1 + row.diffuseWPerM2 * 4) };
      near(got.skyWPerM2, row[`${model}SkyWPerM2`], tolerance);
      near(got.circumsolarWPerM2, row[`${model}CircumsolarWPerM2`], tolerance);
      near(got.domeWPerM2, row[`${model}DomeWPerM2`], tolerance);
      near(got.horizonWPerM2, row[`${model}HorizonWPerM2`], tolerance);
      near(got.groundWPerM2, row.groundWPerM2, tolerance);
      near(got.poaWPerM2, got.beamWPerM2 + got.skyWPerM2 + got.groundWPerM2, { within: 1e-9 });
    }
  });
  it("isotropic", () => {
    for (const row of rows) {
      const got = isotropicPoa({ ...row, incidenceDeg: incidenceDeg(row) });
      near(got.poaWPerM2, row.isotropicPoaWPerM2, { within: 1e-5 });
    }
  });
  it("the cases reach every model's corners: ring and no ring, light from the horizon and light taken from it", () => {
    expect(rows.filter((row) => row.beamNormalWPerM2 === 0).length).toBeGreaterThan(30);
    expect(rows.filter((row) => row.perezCircumsolarWPerM2 > 1).length).toBeGreaterThan(30);
    expect(rows.filter((row) => row.perezHorizonWPerM2 < -1).length).toBeGreaterThan(30);
    expect(rows.filter((row) => row.perezHorizonWPerM2 > 1).length).toBeGreaterThan(30);
    expect(rows.filter((row) => row.perezSkyWPerM2 === 0 && row.diffuseWPerM2 > 0).length).toBeGreaterThan(0);
    expect(rows.filter((row) => row.zenithDeg > 85).length).toBeGreaterThan(5);
  });
});

describe("glass", () => {
  it("physical and ASHRAE", () => {
    type Row =
      | "incidenceDeg"
      | "refractiveIndex"
      | "extinctionPerM"
      | "thicknessM"
      | "slopeRatio"
      | "plainRatio"
      | "glassRatio"
      | "ashraeRatio";
    for (const row of rowsOf<Row>("glass", 120)) {
      near(glassIncidenceRatio({ incidenceDeg: row.incidenceDeg }), row.plainRatio, { within: 1e-7 });
      near(glassIncidenceRatio(row), row.glassRatio, { within: 1e-7 });
      near(ashraeIncidenceRatio(row), row.ashraeRatio, { within: 1e-7 });
    }
  });
  // Two methods, not two copies: Brandemuehl and Beckman's polynomials stand for an integral that pvlib takes in full
  // (Marion 2017).
  it("sky within 0.01 of the integral, ground within 0.02, at every tilt", () => {
    for (const row of rowsOf<"tiltDeg" | "skyRatio" | "groundRatio">("glass-view", 19)) {
      const got = glassView(row.tiltDeg);
      near(got.skyRatio, row.skyRatio, { within: 0.01 });
      near(got.groundRatio, row.groundRatio, { within: 0.02 });
    }
  });
});

describe("module", () => {
  type Row =
    | "effectiveWPerM2"
    | "moduleTempC"
    | "ratedW"
    | "cellTempC"
    | "oldPowerW"
    | "newPowerW"
    | "ampsPerRatedA"
    | "currentTempCoefficientPerK";
  const rows = rowsOf<Row>("weak-light", 120);
  it("Huld, both sets", () => {
    for (const row of rows) {
      near(huldModulePowerW(row), row.oldPowerW, { within: 1e-5 });
      near(huldModulePowerW({ ...row, fit: "chatzipanagi-2025" }), row.newPowerW, { within: 1e-5 });
      // at 25 deg C the weak-light ratio is the whole of it
      const cold = huldModulePowerW({ ...row, moduleTempC: 25 });
      nearRatio((weakLightRatio(row) * row.ratedW * row.effectiveWPerM2) / 1000, cold, { withinFrac: 1e-9 });
    }
  });
  // Against the five-parameter model of De Soto: a 36-cell module held at 13 V by its battery, over the same at 1000 W/m2
  // and 25 deg C.
  it("current in step with the light: 2 % of itself above 200 W/m2, below it 0.5 % of the rated current; cells from -20 to 60 deg C", () => {
    for (const row of rows) {
      const got = moduleCurrentRatio(row);
      near(got, row.ampsPerRatedA, { within: Math.max(0.02 * row.ampsPerRatedA, 0.005) });
    }
  });
});

describe("Ineichen and Perez clear sky", () => {
  type Row =
    | "apparentZenithDeg"
    | "elevationM"
    | "linkeTurbidityRatio"
    | "extraterrestrialNormalWPerM2"
    | "absoluteAirMassRatio"
    | "ghiWPerM2"
    | "beamNormalWPerM2"
    | "diffuseWPerM2";
  const rows = rowsOf<Row>("turbid-sky", 120);
  it("with pvlib's air mass, and with our own", () => {
    for (const row of rows) {
      const { absoluteAirMassRatio: _, ...own } = row;
      for (const [sky, tolerance] of [
        [turbidClearSky(row), 1e-5],
        // the two standard atmospheres differ by 0.02 % of pressure
        [turbidClearSky(own), 0.2],
      ] as const) {
        near(sky.ghiWPerM2, row.ghiWPerM2, { within: tolerance });
        near(sky.beamNormalWPerM2, row.beamNormalWPerM2, { within: tolerance });
        near(sky.diffuseWPerM2, row.diffuseWPerM2, { within: tolerance });
      }
    }
  });
});

describe("values of pvlib's own tests (tests/test_irradiance.py, test_clearsky.py)", () => {
  // 24 June 2014, 06:00, 12:00 and 18:00 at 32.2 N 111 W; a plane of 40 deg facing south
  const hours = [
    {
      diffuseWPerM2: 40.461,
      beamNormalWPerM2: 316.195,
      ghiWPerM2: 79.739,
      zenithDeg: 82.85457,
      sunAzimuthDeg: 66.7141,
    },
    {
      diffuseWPerM2: 118.458,
      beamNormalWPerM2: 939.955,
      ghiWPerM2: 1042.48,
      zenithDeg: 10.56414,
      sunAzimuthDeg: 144.76568,
    },
    {
      diffuseWPerM2: 62.034,
      beamNormalWPerM2: 646.229,
      ghiWPerM2: 257.208,
      zenithDeg: 72.41687,
      sunAzimuthDeg: 287.04104,
    },
  ];
  const light: readonly SkyLight[] = hours.map((hour) => ({
    ...hour,
    incidenceDeg: incidenceDeg({ ...hour, tiltDeg: 40, azimuthDeg: 180 }),
    extraterrestrialNormalWPerM2: 1366.1 * spencerDistanceFactorRatio(175),
    tiltDeg: 40,
    albedo: 0.25,
  }));
  it.each([
    [hayDaviesPoa, [27.1775, 102.9949, 33.1909], 0.001],
    [hdkrPoa, [27.9412, 104.1317, 34.1663], 0.001],
    // at noon pvlib's test has no number. With the inputs above pvlib 0.16.1 gives 31.4631 and 45.4600, as ours does: its
    // test takes the sun's distance of another hour
    [perezPoa, [31.46, null, 45.455], 0.006],
  ] as const)("%o", (model, expected, tolerance) => {
    expected.forEach((sky, i) => {
      if (sky !== null) near(model(light[i]!).skyWPerM2, sky, { within: tolerance });
    });
  });
  it("clear sky, turbidity 3 at sea level", () => {
    for (const [apparentZenithDeg, absoluteAirMassRatio, ghi, beam, diffuse] of [
      [10, 1, 1038.159, 942.208, 110.265],
      [46.04676, 1.32355, 704.697, 888.901, 87.736],
      [72.41687, 3.01614, 251.994, 655.449, 53.99],
    ] as const) {
      const got = turbidClearSky({
        apparentZenithDeg,
        elevationM: 0,
        linkeTurbidityRatio: 3,
        absoluteAirMassRatio,
      });
      near(got.ghiWPerM2, ghi, { within: 0.01 });
      near(got.beamNormalWPerM2, beam, { within: 0.01 });
      near(got.diffuseWPerM2, diffuse, { within: 0.01 });
    }
  });
});
