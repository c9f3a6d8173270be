/**
 * Reads a tile of one degree in the layout of the Shuttle Radar Topography Mission: heights as 16-bit numbers, the larger
 * byte first, rows from north to south, -32768 where nothing is known; the name tells the south-western corner.
 *
 * @source the mission's documentation (NASA/USGS), from memory
 */
import { readFileSync, statSync } from "node:fs";
import { basename } from "node:path";
import { type HeightsRead, heightAtSpot, type Net, notCovered } from "./height-grid.ts";
import type { Spot } from "./spot.ts";

export function hgtHeights(file: string, spots: readonly Spot[]): HeightsRead {
  const name = basename(file);
  const [, northSouth, latitude, eastWest, longitude] = /^([NS])(\d\d)([EW])(\d{3})/i.exec(name) ?? [];
  if (northSouth === undefined)
    return {
      kind: "refused",
      says: `${name} does not tell where it lies: an .hgt file is called after its south-western corner, such as N52W004.hgt.`,
    };
  const side = Math.sqrt(statSync(file).size / 2);
  if (side !== 1201 && side !== 3601)
    return {
      kind: "refused",
      says: `${name} is not an .hgt tile: those have 1201 or 3601 heights a side, two bytes each.`,
    };
  const stepDeg = 1 / (side - 1);
  const southDeg = Number(latitude) * (northSouth.toUpperCase() === "S" ? -1 : 1);
  const net: Net = {
    rows: side,
    columns: side,
    northDeg: southDeg + 1,
    westDeg: Number(longitude) * (eastWest!.toUpperCase() === "W" ? -1 : 1),
    latitudeStepDeg: stepDeg,
    longitudeStepDeg: stepDeg,
  };
  const says = notCovered(name, net, spots);
  if (says !== null) return { kind: "refused", says };
  const bytes = readFileSync(file);
  const heightAt = (row: number, column: number) => bytes.readInt16BE(2 * (row * side + column));
  return { kind: "heights", net, heightsM: spots.map((spot) => heightAtSpot(net, spot, heightAt)) };
}
