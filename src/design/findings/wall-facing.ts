import { compassWord } from "../../core/sun/index.ts";
import { fixed } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

/** A bracket on a wall turns its panels so far to the side before the wall takes much of their sky. @source judgement */
const EASY_TURN_DEG = 45;

/** Beyond this the panels would look along the wall or into it. @source judgement */
const LARGEST_TURN_DEG = 75;

/** Panels on a wall look out from it, whatever the sun asks. */
export const wallFacing: Rule = ({ brief, mounting, sun }) => {
  const { support, wallAzimuthDeg } = brief.mounting;
  if (support.value !== "wall" || mounting.panelMount !== "mast" || sun === null) return null;
  const wallDeg = wallAzimuthDeg.value;
  const panels = `the panels must face ${sun.facing} (azimuth ${fixed(sun.azimuthDeg, 0)}°)`;
  const about = {
    id: "mounting.wallFacing",
    topics: ["mounting.wallFacing", "mounting.support"],
  };
  if (wallDeg === null)
    return {
      ...about,
      severity: "caution",
      says: `Nobody has looked which way the wall faces, and ${panels}: a wall that faces elsewhere stands in their sun.`,
      change: "Read a compass with your back to the wall, and answer which way it faces.",
      numbers: { panelAzimuthDeg: sun.azimuthDeg },
    };
  const turnDeg = Math.abs(((sun.azimuthDeg - wallDeg + 540) % 360) - 180);
  if (turnDeg <= EASY_TURN_DEG) return null;
  const isBehind = turnDeg > LARGEST_TURN_DEG;
  return {
    ...about,
    severity: isBehind ? "stop" : "caution",
    says: `The wall faces ${compassWord(wallDeg)} (azimuth ${fixed(wallDeg, 0)}°), and ${panels}, ${fixed(turnDeg, 0)}° to the side of it: ${isBehind ? "they would look along the wall or into it" : "the wall takes part of their sky, and the sums here do not count that"}.`,
    change: isBehind
      ? "Use another wall, or put the panels on a mast, a pole or a frame of their own in the open."
      : "Use a bracket that turns that far and holds the panels well off the wall, or put them on another wall or in the open.",
    numbers: { wallAzimuthDeg: wallDeg, panelAzimuthDeg: sun.azimuthDeg, turnDeg },
  };
};
