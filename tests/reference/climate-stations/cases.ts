import { readFileSync } from "node:fs";
import { join } from "node:path";

/**
 * Monthly mean global horizontal irradiation and extreme temperatures of 91 places, from open typical-year files:
 *
 * - TMY3, CZ2010, CWEC2016, WYEC2, IWEC, TMYx, IGDG and the weather-driver files of ASHRAE standard 140, as they lie in
 *   public repositories (urbanopt/urbanopt-example-geojson-project, NREL/OpenStudio-resources, lbl-srg/modelica-buildings,
 *   open-ideas/IDEAS, architecture-building-systems/CityEnergyAnalyst, BETALAB-team/EUReCA,
 *   CenterForTheBuiltEnvironment/clima, samuelduchesne/archetypal, ladybug-tools/ladybug, NREL/openstudio-standards,
 *   pvlib/pvlib-python) and in the packages accim-samples 0.8.2 and besos-examples 0.1.0;
 * - TRY 2010, the test reference years of the German weather service for 1988-2007, in the package demandlib 0.2.2;
 * - since 2026-11-25, all "check": IWEC and TMY3 in sinergym 3.5.1 (MIT), TMY3 in ochre-gym 0.1.0a1 (BSD-3), TMYx in
 *   eplus-gym-khalil 0.1.1 (MIT by its classifier; its licence file is empty), and measured at a station for many years:
 *   Wageningen 1976-1999 in pcse 6.0.13 (EUPL-1.2), Davos 2013-2022 in diive 0.90.0 (GPL-3.0; mean latitude and
 *   longitude of the site from memory). Taken were all places not in the table yet, but those whose years are synthetic
 *   by their own comments (Granada SWEC, Lisbon INETI). Of each file only twelve means and four temperatures are kept.
 *
 * `how` says whether a row was summed from the hourly file or read in its summary. A typical year joins months of
 * different single years: picked as such months are, one lies 5 to 10 % from the long mean (make/typical_years.py), and
 * two typical years of one place differ by that (eleven pairs in the table within 75 km: 7 % each, 9 % in the darkest
 * month, standard deviation). The check cannot be sharper than that. TMYx are no measurement of the sun: their comments
 * name ERA5 or cloud reports as its source, and they are brighter than the others.
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
  /** the temperatures were kept out of the fit of the extremes (make/fit_extremes.py) */
  readonly temperatureUse?: "check";
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
