/** What a builder types about sun figures of their own: none, twelve numbers, a file, or leave to ask a service. */
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync, statSync } from "node:fs";
import { basename } from "node:path";
import { fileURLToPath } from "node:url";
import { readEpw, readPowerClimatology, readTmy3, type TypicalYear } from "../core/climate/index.ts";
import { bearingAndDistance } from "../core/place/index.ts";
import { sayingIn, type UnitSystem } from "../core/units/index.ts";
import { ownWeatherPlace, packHours } from "../core/weather/index.ts";
import type { KeptHours, OwnSun, Site } from "../design/index.ts";
import { looksLikeFigures, readMonthlyFigures, type SunReading } from "../interview/index.ts";
import type { Fetched } from "./fetch-power.ts";
import { spotText } from "./spot.ts";

const wouldDo = "Type none, twelve figures from January, the name of an EPW, TMY3 or POWER file, or fetch.";
/** A typical year of hours is about two megabytes. */
const largestFileBytes = 20_000_000;
/** Figures from farther away are told to be so. */
const nearKm = 50;

/** Whose sun it is, and in which units distances to it are told. */
interface Wanted {
  readonly site: Site;
  readonly units: UnitSystem;
}

export function readSun(
  text: string,
  site: Site | null,
  isAgreed: boolean,
  units: UnitSystem = "metric",
): SunReading {
  const typed = text.trim();
  if (/^(?:no|none|nothing|nope|n)\b/i.test(typed)) return { kind: "figures", figures: null, says: null };
  if (site === null)
    return { kind: "refused", says: "Sun figures need the place first: go back and name it." };
  if (/^fetch\b/i.test(typed)) return isAgreed ? fetched({ site, units }) : consent(site);
  const path = typed.replace(/^file\s+/i, "").replace(/^["']|["']$/g, "");
  if (existsSync(path)) return fromFile(path, { site, units });
  if (looksLikeFigures(typed)) return readMonthlyFigures(typed, site);
  const isName = /\.\w{2,5}$/.test(path);
  return {
    kind: "refused",
    says: isName ? `There is no file ${path} here. ${wouldDo}` : wouldDo,
  };
}

const consent = (site: Site): SunReading => ({
  kind: "consent",
  says: `This sends ${spotText({ latitudeDeg: round(site.latitudeDeg), longitudeDeg: round(site.longitudeDeg) })} to NASA's open POWER service on the internet, nothing else, and may take 20 seconds. Send it?`,
});
const rounder =
  (digits: number) =>
  (value: number): number =>
    Number(value.toFixed(digits));
const round = rounder(2);

/** A program of its own beside the bundle. */
const askPower = fileURLToPath(new URL("./ask-power.js", import.meta.url));

/** The one question the interview waits for: asked in a process of its own, for reading an answer must not take turns. */
function fetched(wanted: Wanted): SunReading {
  const { site } = wanted;
  const { status, stdout } = spawnSync(
    process.execPath,
    [askPower, String(site.latitudeDeg), String(site.longitudeDeg)],
    { encoding: "utf8", timeout: 25_000, maxBuffer: 8_000_000, windowsHide: true },
  );
  if (status !== 0)
    return { kind: "refused", says: "The service could not be asked. Use a file or twelve figures." };
  const answer = JSON.parse(stdout) as Fetched;
  if (answer.kind === "nothing") return { kind: "refused", says: answer.says };
  return fromText(answer.text, "NASA POWER", wanted);
}

function keptHours(year: TypicalYear): KeptHours {
  const { latitudeDeg, longitudeDeg, utcOffsetH } = year;
  return { latitudeDeg, longitudeDeg, utcOffsetH, packed: packHours(year) };
}

function fromFile(path: string, wanted: Wanted): SunReading {
  const name = basename(path);
  try {
    const about = statSync(path);
    if (about.isDirectory()) return { kind: "refused", says: `${path} is a folder. ${wouldDo}` };
    if (about.size > largestFileBytes)
      return { kind: "refused", says: `${name} is too large for a weather file.` };
    return fromText(readFileSync(path, "utf8"), name, wanted);
  } catch (error) {
    return { kind: "refused", says: `${name} cannot be read: ${(error as Error).message}.` };
  }
}

function fromText(text: string, name: string, { site, units }: Wanted): SunReading {
  const start = text.trimStart();
  const read = start.startsWith("{")
    ? readPowerClimatology(text)
    : /^LOCATION\s*,/i.test(start)
      ? readEpw(text)
      : readTmy3(text);
  if (read.kind === "refused") return { kind: "refused", says: `${name}: ${read.reason}` };
  const { ghiDailyKWhPerM2ByMonth, meanTempCByMonth, latitudeDeg, longitudeDeg } = read;
  const days = read.kind === "year" ? read : null;
  const figures: OwnSun = {
    ghiDailyKWhPerM2ByMonth,
    meanTempCByMonth,
    // Rounded, for they are kept in the brief: a year is no better known than that.
    dailyQuantilesByMonth: days?.dailyGhiQuantilesByMonth.map((shares) => shares.map(rounder(3))) ?? null,
    lag1ByMonth: days && (ownWeatherPlace(days).lag1ByMonth?.map(rounder(2)) ?? null),
    hours: days && keptHours(days),
    source: name,
  };
  const { distanceM } = bearingAndDistance({
    fromLatitudeDeg: site.latitudeDeg,
    fromLongitudeDeg: site.longitudeDeg,
    toLatitudeDeg: latitudeDeg,
    toLongitudeDeg: longitudeDeg,
  });
  const km = Math.round(distanceM / 1000);
  const mean = ghiDailyKWhPerM2ByMonth.reduce((sum, value) => sum + value, 0) / 12;
  const where =
    km > nearKm ? ` It is for a place ${sayingIn(units)(km, "km")} away: that may be another climate.` : "";
  return {
    kind: "figures",
    figures,
    says: `${name} gives ${mean.toFixed(2)} kWh/m2 a day over the year${days === null ? "" : ", how dull and bright its days are, and its hours"}.${where}`,
  };
}
