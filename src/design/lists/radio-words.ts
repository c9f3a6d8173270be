/** Where antennas look and what they should receive, as the steps say it. */
import { levelVerdict } from "../../core/link/index.ts";
import type { Link, LinkDirection } from "../design.ts";
import { decibels, type Figures, fixedDegrees, level, listed } from "./figures.ts";

/** "at the post about -52 dBm, within 2 dB": whoever hears, not whoever sends. */
const heard = ({ to, expectedDbm, toleranceDb }: LinkDirection): string =>
  `at ${to} about ${level(expectedDbm)}, within ${decibels(Math.max(3, toleranceDb))}`;

/** Both ends' levels on the day; no reading is better than 3 dB. */
export function expectedLevels({ budget }: Link): string {
  return budget === null ? "" : listed([heard(budget.farToNear), heard(budget.nearToFar)]);
}

/** What a level that is too low says: the next thing to try, and the thing that is plainly wrong. */
export function lowLevelAdvice({ budget }: Link): string {
  if (budget === null) return "";
  const { toleranceDb } = budget.farToNear;
  const expectedDbm = Math.max(-150, budget.farToNear.expectedDbm);
  const advice = (offDb: number) =>
    levelVerdict({ readDbm: expectedDbm - offDb, expectedDbm, toleranceDb: 3 }).advice;
  return `${advice(Math.min(12, toleranceDb + 4))} ${advice(toleranceDb + 13)}`;
}

/** Where the post's antenna looks: by the map, by a compass, and up or down. */
export function aimWords({ path, aim }: Link, say: Figures): string {
  if (path === null || aim === null) return "";
  const tilt =
    Math.abs(aim.tiltDeg) < 0.5
      ? "level"
      : `${fixedDegrees(Math.abs(aim.tiltDeg))} ${aim.tiltDeg > 0 ? "up" : "down"}`;
  const close = `A slip of ${fixedDegrees(aim.oneDbDeg)}, ${say.length(aim.oneDbAcrossM)} to the side of the other end, costs 1 dB; ${fixedDegrees(aim.threeDbDeg)} cost half the power.`;
  if (path.bearingDeg === null)
    return `Take the bearing of the other end from a map: true north, corrected for magnetic declination${declined(aim.declinationDeg)} before a compass is used. Tilt: ${tilt}. ${close}`;
  const compassDeg = aim.declinationDeg === null ? null : (path.bearingDeg - aim.declinationDeg + 360) % 360;
  const compass =
    compassDeg === null
      ? "correct it for magnetic declination before a compass is used, and do not trust one near the magnetic poles"
      : `a compass shows ${fixedDegrees(compassDeg)}, the magnetic declination${declined(aim.declinationDeg)} taken off`;
  return `Bearing ${fixedDegrees(path.bearingDeg)} from true north; ${compass}. Read it some ${say.said.either("metres", "yards")} away from steel. Tilt: ${tilt}. ${close}`;
}

const declined = (declinationDeg: number | null): string =>
  declinationDeg === null
    ? ""
    : ` (here ${fixedDegrees(Math.abs(declinationDeg))} ${declinationDeg < 0 ? "west" : "east"})`;

/** Where the other end's antenna looks. */
export function backAimWords({ path, aim }: Link): string {
  if (path === null || aim === null) return "";
  const tilt =
    Math.abs(aim.backTiltDeg) < 0.5
      ? ""
      : `, ${fixedDegrees(Math.abs(aim.backTiltDeg))} ${aim.backTiltDeg > 0 ? "up" : "down"}`;
  const bearing =
    path.backBearingDeg === null ? "" : ` at ${fixedDegrees(path.backBearingDeg)} from true north`;
  return `facing the post${bearing}${tilt}`;
}
