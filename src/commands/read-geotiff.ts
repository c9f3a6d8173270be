/**
 * Reads heights from a GeoTIFF on latitude and longitude. Only what lies around the path is unpacked. Runs in a process
 * of its own (ask-geotiff.ts), for the library takes turns with the disk.
 */
import { statSync } from "node:fs";
import { basename } from "node:path";
import { fromFile, type GeoTIFFImage } from "geotiff";
import { type HeightsRead, heightAtSpot, type Net, notCovered, windowFor } from "./height-grid.ts";
import type { Spot } from "./spot.ts";

/**
 * Systems of latitude and longitude that lie within about 2 m of WGS 84: itself in two and three dimensions, ETRS89 and
 * NAD83. EPSG codes, from memory.
 */
const nearWgs84: ReadonlySet<number> = new Set([4326, 4979, 4258, 4269]);
/** EPSG codes for feet, and for heights over NAVD88 in feet, from memory. */
const footUnits: ReadonlySet<number> = new Set([9002, 9003]);
const footSystems: ReadonlySet<number> = new Set([6360, 8228]);
/** Beyond it the path is read in halves, so that a long one over a fine grid needs no more memory. */
const largestWindowCells = 4_000_000;
const damaged = "is damaged, or packed in a way that is not understood here.";

export async function geotiffHeights(file: string, spots: readonly Spot[]): Promise<HeightsRead> {
  const name = basename(file);
  const tiff = await fromFile(file).catch(() => null);
  if (tiff === null) return { kind: "refused", says: `${name} is not a GeoTIFF that can be read.` };
  try {
    const image = await tiff.getImage();
    const wrong = (await isCutShort(image, statSync(file).size)) ? damaged : await whatIsWrong(image);
    if (wrong !== null) return { kind: "refused", says: `${name} ${wrong}` };
    const net = netOf(image);
    if (net === null)
      return { kind: "refused", says: `${name} does not say where it lies, or lies askew to north.` };
    const says = notCovered(name, net, spots);
    if (says !== null) return { kind: "refused", says };
    return { kind: "heights", net, heightsM: await heightsOf(image, net, spots) };
  } catch {
    return { kind: "refused", says: `${name} ${damaged}` };
  } finally {
    await tiff.close();
  }
}

/** A download that broke off: the library would read zeros, which look like a plain by the sea. */
async function isCutShort(image: GeoTIFFImage, sizeBytes: number): Promise<boolean> {
  const directory = image.getFileDirectory();
  const parts = image.isTiled
    ? (["TileOffsets", "TileByteCounts"] as const)
    : (["StripOffsets", "StripByteCounts"] as const);
  const [offsets, counts] = await Promise.all(parts.map((part) => directory.loadValue(part)));
  if (offsets === undefined || counts === undefined || offsets.length !== counts.length) return true;
  for (let i = 0; i < offsets.length; i++)
    if (!(Number(offsets[i]) + Number(counts[i]) <= sizeBytes)) return true;
  return !(image.getWidth() > 0 && image.getHeight() > 0);
}

/** Continues a sentence that begins with the file's name. */
async function whatIsWrong(image: GeoTIFFImage): Promise<string | null> {
  if (image.getSamplesPerPixel() !== 1 || image.getBitsPerSample() < 16)
    return "is a picture, not a grid of heights.";
  const keys = image.getGeoKeys() ?? {};
  const convert = "Convert it to latitude and longitude on WGS 84 (EPSG:4326).";
  if (keys.GTModelTypeGeoKey === 1) {
    const code = keys.ProjectedCSTypeGeoKey;
    return `lies on a map projection${code > 0 && code < 32767 ? ` (EPSG:${code})` : ""}, not on latitude and longitude. ${convert}`;
  }
  if (keys.GTModelTypeGeoKey !== 2) return `does not say that it lies on latitude and longitude. ${convert}`;
  const system = keys.GeographicTypeGeoKey;
  if (!nearWgs84.has(system))
    return `has latitudes and longitudes of another system than WGS 84${system > 0 && system < 32767 ? ` (EPSG:${system})` : ""}. ${convert}`;
  const about = (await image.getGDALMetadata(0)) ?? {};
  const isInFeet =
    footUnits.has(keys.VerticalUnitsGeoKey) ||
    footSystems.has(keys.VerticalCSTypeGeoKey) ||
    /^(?:us.?)?(?:ft|foot|feet)/i.test(String(about.UNITTYPE ?? ""));
  if (isInFeet) return "has its heights in feet. Convert them to metres.";
  if (Number(about.SCALE ?? 1) !== 1 || Number(about.OFFSET ?? 0) !== 0)
    return "keeps its heights multiplied or shifted. Convert them to plain metres.";
  return null;
}

/** null where it is turned, upside down or nowhere. */
function netOf(image: GeoTIFFImage): Net | null {
  const placed = cornerAndSteps(image);
  if (placed === null || !(placed.latitudeStepDeg > 0 && placed.longitudeStepDeg > 0)) return null;
  const { latitudeStepDeg, longitudeStepDeg } = placed;
  // Unless it says that its numbers stand for points, a file gives the outer corner of its first cell.
  const toFirst = image.getGeoKeys()?.GTRasterTypeGeoKey === 2 ? 0 : 0.5;
  return {
    rows: image.getHeight(),
    columns: image.getWidth(),
    northDeg: placed.northDeg - toFirst * latitudeStepDeg,
    westDeg: placed.westDeg + toFirst * longitudeStepDeg,
    latitudeStepDeg,
    longitudeStepDeg,
  };
}

function cornerAndSteps(image: GeoTIFFImage): Omit<Net, "rows" | "columns"> | null {
  const directory = image.getFileDirectory();
  const scale = directory.getValue("ModelPixelScale");
  const tie = directory.getValue("ModelTiepoint");
  if (scale !== undefined && tie?.length === 6) {
    const [longitudeStepDeg = 0, latitudeStepDeg = 0] = scale;
    return {
      northDeg: tie[4]! + tie[1]! * latitudeStepDeg,
      westDeg: tie[3]! - tie[0]! * longitudeStepDeg,
      latitudeStepDeg,
      longitudeStepDeg,
    };
  }
  const matrix = directory.getValue("ModelTransformation");
  if (matrix?.length !== 16 || matrix[1] !== 0 || matrix[4] !== 0) return null;
  return {
    northDeg: matrix[7]!,
    westDeg: matrix[3]!,
    latitudeStepDeg: -matrix[5]!,
    longitudeStepDeg: matrix[0]!,
  };
}

async function heightsOf(
  image: GeoTIFFImage,
  net: Net,
  spots: readonly Spot[],
): Promise<readonly (number | null)[]> {
  const window = windowFor(net, spots);
  if (window.rows * window.columns > largestWindowCells && spots.length > 1) {
    const half = Math.ceil(spots.length / 2);
    const nearer = await heightsOf(image, net, spots.slice(0, half));
    return [...nearer, ...(await heightsOf(image, net, spots.slice(half)))];
  }
  const { firstRow, firstColumn, rows, columns } = window;
  const cells = await image.readRasters({
    window: [firstColumn, firstRow, firstColumn + columns, firstRow + rows],
    samples: [0],
    interleave: true,
  });
  const noData = image.getGDALNoData();
  const unknown = noData === null ? Number.NaN : noData;
  const heightAt = (row: number, column: number) => {
    const value = Number(cells[(row - firstRow) * columns + column - firstColumn]);
    return value === unknown || value === Math.fround(unknown) ? Number.NaN : value;
  };
  return spots.map((spot) => heightAtSpot(net, spot, heightAt));
}
