import { readFileSync } from "node:fs";
import { join } from "node:path";

/**
 * Monthly mean global horizontal irradiation and extreme temperatures of 61 places, from open typical-year files:
 *
 * - TMY3, CZ2010, CWEC2016, WYEC2, IWEC, TMYx, IGDG and the weather-driver files of ASHRAE standard 140, as they lie in
 *   public repositories (urbanopt/urbanopt-example-geojson-project, NREL/OpenStudio-resources, lbl-srg/modelica-buildings,
 *   open-ideas/IDEAS, architecture-building-systems/CityEnergyAnalyst, BETALAB-team/EUReCA,
 *   CenterForTheBuiltEnvironment/clima, samuelduchesne/archetypal, ladybug-tools/ladybug, NREL/openstudio-standards,
 *   pvlib/pvlib-python) and in the packages accim-samples 0.8.2 and besos-examples 0.1.0;
 * - TRY 2010, the test reference years of the German weather service for 1988-2007, in the package demandlib 0.2.2.
 *
 * `how` says whether a row was summed from the hourly file or read in its summary. A typical year joins months of
 * different single years, so a month of it lies about a tenth from the long mean: the check cannot be sharper than that.
 */
export interface Station {
  readonly place: string;
  /** "fit": the correction of the grid was fitted to it; "check": it was kept out of the fit; "none": see `leftOut` */
  readonly use: "fit" | "check" | "none";
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly elevationM: number;
  readonly ghiDailyKWhPerM2ByMonth: readonly number[];
  readonly ghiDailyKWhPerM2: number;
  readonly coldestMonthTempC?: number;
  readonly lowestHourTempC?: number;
  readonly hottestMonthTempC?: number;
  readonly highestHourTempC?: number;
  /** standard deviation of the daily values within each month, over the month's mean */
  readonly dailyShareSpreadByMonth?: readonly number[];
  readonly dataSet: string;
  readonly how: string;
}

// The table is JSON because the Python that makes the grid reads the same file.
export const stations = JSON.parse(
  readFileSync(join(import.meta.dirname, "vectors/stations.json"), "utf8"),
) as readonly Station[];

/** Why three of them stand outside the comparison by halves. */
export const leftOut = {
  "Halley, Antarctica": "refused: permanent ice",
  "Honolulu HI US": "no irradiation data there: its cell was filled from the rain and temperature maps",
  "Venice Tessera IT": "data of 1951 to 1970, a quarter darker than modern ones of the same plain (Bologna)",
} as const;
