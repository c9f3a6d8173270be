// Random cases made by make_vectors.py with the pvlib version recorded in each file. Where the formula is the
// same, the tolerance is that of nine printed digits; position and sun times are checked against SPA with the
// accuracy that ours promises.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  clearSkyGhiWPerM2,
  cooperDeclinationDeg,
  equationOfTimeMin,
  faimanModuleTempC,
  incidenceDeg,
  isotropicPoa,
  type ModuleMount,
  modulePowerW,
  monthlyPoa,
  noctCellTempC,
  relativeAirMassRatio,
  SOLAR_CONSTANT_W_PER_M2,
  sandiaModuleTempC,
  spencerDeclinationDeg,
  spencerDistanceFactorRatio,
  splitIrradiance,
  sunPosition,
  sunTimes,
} from "../../../src/core/sun/index.ts";
import { near } from "../../helpers/near.ts";

type Row<Keys extends string> = Readonly<Record<Keys, number>>;

function rowsOf<T>(name: string, count: number): readonly T[] {
  const file = JSON.parse(readFileSync(new URL(`vectors/${name}.json`, import.meta.url), "utf8"));
  expect(file.library).toBe("pvlib 0.16.1");
  expect(file.rows).toHaveLength(count);
  return file.rows;
}

/** The smaller way round between two directions. */
function turnBetweenDeg(aDeg: number, bDeg: number): number {
  return Math.abs(((aDeg - bDeg + 540) % 360) - 180);
}

describe("sun position against SPA, 1950 to 2050", () => {
  type Position = Row<
    | "utcMs"
    | "latitudeDeg"
    | "longitudeDeg"
    | "elevationM"
    | "pressurePa"
    | "tempC"
    | "apparentZenithDeg"
    | "zenithDeg"
    | "azimuthDeg"
    | "equationOfTimeMin"
  >;
  it("zenith 0.01 deg, azimuth 0.01 deg across the sky, equation of time 0.04 min", () => {
    for (const row of rowsOf<Position>("position", 300)) {
      const got = sunPosition(row);
      near(got.trueZenithDeg, row.zenithDeg, { within: 0.01 });
      // within a degree of the horizon pvlib also refracts, but by an elevation that differs by up to 0.01
      // deg
      near(got.zenithDeg, row.apparentZenithDeg, { within: Math.abs(row.zenithDeg - 90) < 2 ? 0.03 : 0.01 });
      const acrossDeg =
        turnBetweenDeg(got.azimuthDeg, row.azimuthDeg) * Math.sin((row.zenithDeg * Math.PI) / 180);
      near(acrossDeg, 0, { within: 0.01 });
      near(got.equationOfTimeMin, row.equationOfTimeMin, { within: 0.04 });
    }
  });
  it("sunrise, transit, sunset 5 s below 60 deg latitude", () => {
    type Times = Row<
      "noonUtcMs" | "latitudeDeg" | "longitudeDeg" | "sunriseUtcMs" | "transitUtcMs" | "sunsetUtcMs"
    >;
    for (const row of rowsOf<Times>("sun-times", 200)) {
      const got = sunTimes({
        utcMs: row.noonUtcMs,
        latitudeDeg: row.latitudeDeg,
        longitudeDeg: row.longitudeDeg,
      });
      near(got.transitUtcMs, row.transitUtcMs, { within: 5_000 });
      near(got.sunriseUtcMs!, row.sunriseUtcMs, { within: 5_000 });
      near(got.sunsetUtcMs!, row.sunsetUtcMs, { within: 5_000 });
    }
  });
});

it("incidence", () => {
  type Incidence = Row<"zenithDeg" | "sunAzimuthDeg" | "tiltDeg" | "azimuthDeg" | "incidenceDeg">;
  for (const row of rowsOf<Incidence>("incidence", 200))
    near(incidenceDeg(row), row.incidenceDeg, { within: 1e-5 });
});

it("air mass", () => {
  for (const row of rowsOf<Row<"zenithDeg" | "airMassRatio">>("air-mass", 202)) {
    near(relativeAirMassRatio(row.zenithDeg), row.airMassRatio, { within: 1e-6 });
  }
});

it("Erbs hourly split", () => {
  type Split = Row<
    | "ghiWPerM2"
    | "zenithDeg"
    | "extraterrestrialNormalWPerM2"
    | "diffuseWPerM2"
    | "beamNormalWPerM2"
    | "clearnessIndex"
  >;
  for (const row of rowsOf<Split>("erbs", 400)) {
    const got = splitIrradiance(row);
    near(got.clearnessIndex, row.clearnessIndex, { within: 1e-6 });
    near(got.diffuseWPerM2, row.diffuseWPerM2, { within: 1e-4 });
    near(got.beamNormalWPerM2, row.beamNormalWPerM2, { within: 1e-4 });
  }
});

it("isotropic transposition", () => {
  type Plane = Row<
    | "zenithDeg"
    | "sunAzimuthDeg"
    | "tiltDeg"
    | "azimuthDeg"
    | "albedo"
    | "beamNormalWPerM2"
    | "diffuseWPerM2"
    | "ghiWPerM2"
    | "poaWPerM2"
    | "beamWPerM2"
    | "skyWPerM2"
    | "groundWPerM2"
  >;
  for (const row of rowsOf<Plane>("isotropic", 300)) {
    const got = isotropicPoa({ ...row, incidenceDeg: incidenceDeg(row) });
    for (const part of ["poaWPerM2", "beamWPerM2", "skyWPerM2", "groundWPerM2"] as const) {
      near(got[part], row[part], { within: 1e-5 });
    }
  }
});

it("cell temperature and module power", () => {
  type Cell = Row<
    | "poaWPerM2"
    | "ambientTempC"
    | "windMPerS"
    | "noctC"
    | "powerTempCoefficientPerK"
    | "ratedW"
    | "sandiaModuleTempC"
    | "sandiaCellTempC"
    | "faimanTempC"
    | "rossTempC"
    | "powerW"
  > & { readonly mount: ModuleMount };
  for (const row of rowsOf<Cell>("cell-temperature", 300)) {
    const sandia = sandiaModuleTempC(row);
    near(sandia.moduleTempC, row.sandiaModuleTempC, { within: 1e-6 });
    near(sandia.cellTempC, row.sandiaCellTempC, { within: 1e-6 });
    near(faimanModuleTempC(row), row.faimanTempC, { within: 1e-6 });
    near(noctCellTempC(row), row.rossTempC, { within: 1e-6 });
    near(modulePowerW({ ...row, cellTempC: row.sandiaCellTempC }), row.powerW, { within: 1e-5 });
  }
});

it("Haurwitz clear sky", () => {
  for (const row of rowsOf<Row<"apparentZenithDeg" | "ghiWPerM2">>("clear-sky", 200)) {
    near(clearSkyGhiWPerM2(row.apparentZenithDeg), row.ghiWPerM2, { within: 1e-5 });
  }
});

it("Spencer and Cooper", () => {
  type Day = Row<
    "dayOfYear" | "declinationDeg" | "cooperDeclinationDeg" | "equationOfTimeMin" | "normalWPerM2"
  >;
  for (const row of rowsOf<Day>("spencer", 122)) {
    near(spencerDeclinationDeg(row.dayOfYear), row.declinationDeg, { within: 1e-6 });
    near(cooperDeclinationDeg(row.dayOfYear), row.cooperDeclinationDeg, { within: 1e-6 });
    // two terms differ in the wild: 0.0000075 and 0.040849 in pvlib, 0.000075 and 0.04089 as Duffie and
    // Beckman print them
    near(equationOfTimeMin(row.dayOfYear), row.equationOfTimeMin, { within: 0.027 });
    near(SOLAR_CONSTANT_W_PER_M2 * spencerDistanceFactorRatio(row.dayOfYear), row.normalWPerM2, {
      within: 1e-4,
    });
  }
});

describe("monthly method against two typical years, hour by hour", () => {
  type Year = {
    readonly name: string;
    readonly latitudeDeg: number;
    readonly tiltDeg: number;
    readonly ghiDailyKWhPerM2ByMonth: readonly number[];
    readonly isotropicDailyKWhPerM2ByMonth: readonly number[];
    readonly perezDailyKWhPerM2ByMonth: readonly number[];
  };
  const mean = (values: readonly number[]) =>
    values.reduce((total, value) => total + value, 0) / values.length;
  // Two methods, not two copies: a typical year's months are not symmetric and hold more diffuse light than
  // Erbs' monthly correlation. The winter excess (Sand Point, 55 N, January: 38 % over isotropic, 15 % over
  // Perez) is stated, not hidden.
  it("year within 4 % of the hourly isotropic sum; months between 0.9 of it and 1.2 of the hourly Perez sum", () => {
    for (const year of rowsOf<Year>("typical-years", 4)) {
      const { poaDailyKWhPerM2ByMonth } = monthlyPoa({
        ...year,
        azimuthDeg: 180,
        albedoByMonth: Array.from({ length: 12 }, () => 0.2),
      });
      near(mean(poaDailyKWhPerM2ByMonth) / mean(year.isotropicDailyKWhPerM2ByMonth), 1, { within: 0.04 });
      poaDailyKWhPerM2ByMonth.forEach((poa, month) => {
        expect(poa).toBeGreaterThan(0.9 * year.isotropicDailyKWhPerM2ByMonth[month]!);
        expect(poa).toBeLessThan(1.2 * year.perezDailyKWhPerM2ByMonth[month]!);
      });
    }
  });
});

describe("values of pvlib's own tests (tests/test_irradiance.py, test_temperature.py, test_clearsky.py, test_pvsystem.py)", () => {
  it("isotropic sky and ground on a plane of 40 deg", () => {
    const plane = { beamNormalWPerM2: 0, incidenceDeg: 90, tiltDeg: 40 };
    const sky = (diffuseWPerM2: number): number =>
      isotropicPoa({ ...plane, diffuseWPerM2, ghiWPerM2: 0, albedo: 0 }).skyWPerM2;
    near(sky(40.461), 35.7284, { within: 0.0005 });
    near(sky(118.458), 104.6013, { within: 0.0005 });
    near(sky(62.034), 54.7772, { within: 0.0005 });
    near(sky(100), 88.30222, { within: 5e-6 });
    const ground = isotropicPoa({ ...plane, diffuseWPerM2: 0, ghiWPerM2: 900, albedo: 0.25 }).groundWPerM2;
    near(ground, 26.32, { within: 5e-5 });
  });
  it("Erbs, at 1 January and 20 June", () => {
    // pvlib's extraterrestrial irradiance uses 1366.1 W/m2 and Spencer's distance
    const split = (dayOfYear: number, ghiWPerM2: number, zenithDeg: number) =>
      splitIrradiance({
        ghiWPerM2,
        zenithDeg,
        extraterrestrialNormalWPerM2: 1366.1 * spencerDistanceFactorRatio(dayOfYear),
      });
    const rows = [
      [split(1, 50, 85), 41.57, 96.72, 0.4057],
      [split(1, 1000, 10), 217.86, 794.21, 0.7181],
      [split(171, 1000, 10), 170.79, 842.0, 0.7682],
    ] as const;
    for (const [got, diffuse, beam, index] of rows) {
      near(got.diffuseWPerM2, diffuse, { within: 0.05 });
      near(got.beamNormalWPerM2, beam, { within: 0.05 });
      near(got.clearnessIndex, index, { within: 0.0001 });
    }
  });
  it("Haurwitz by elevation", () => {
    for (const [elevationDeg, ghi] of [
      [5, 48.63],
      [10, 135.742],
      [30, 487.894],
      [50, 778.767],
      [90, 1035.092],
      [0, 0],
      [-5, 0],
    ] as const) {
      near(clearSkyGhiWPerM2(90 - elevationDeg), ghi, { within: 0.0006 });
    }
  });
  it("cell temperature and power", () => {
    near(noctCellTempC({ poaWPerM2: 1000, ambientTempC: 30, noctC: 50 }), 67.5, { within: 1e-9 });
    near(noctCellTempC({ poaWPerM2: 800, ambientTempC: 20, noctC: 45 }), 45, { within: 1e-9 });
    const weather = { poaWPerM2: 900, ambientTempC: 20, windMPerS: 5 };
    const sandia = sandiaModuleTempC({ ...weather, mount: "open-rack-glass-glass" });
    near(sandia.cellTempC, 43.509, { within: 0.0006 });
    near(sandia.moduleTempC, 40.809, { within: 0.0006 });
    near(faimanModuleTempC(weather), 35.203, { within: 0.0006 });
    near(faimanModuleTempC({ ...weather, constantLossWPerM2K: 22, windLossWsPerM3K: 6 }), 37.308, {
      within: 0.0006,
    });
    near(faimanModuleTempC({ poaWPerM2: 500, ambientTempC: 10, windMPerS: 5 }), 18.446, { within: 0.0006 });
    const power = { ratedW: 100, poaWPerM2: 900, cellTempC: 30, powerTempCoefficientPerK: -0.003 };
    near(modulePowerW(power), 88.65, { within: 1e-9 });
  });
  it("Kasten and Young by zenith", () => {
    for (const [zenithDeg, ratio] of [
      [0, 0.99971],
      [30, 1.15399],
      [45, 1.4126],
      [60, 1.99429],
      [75, 3.81291],
      [80, 5.58604],
      [85, 10.30579],
      [90, 37.91961],
    ] as const) {
      near(relativeAirMassRatio(zenithDeg), ratio, { within: 1e-5 });
    }
  });
});
