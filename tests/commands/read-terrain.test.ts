// Expected heights are worked by hand: the invented ground is a plane, or rows times columns, both of which straight
// interpolation between four corners gives back exactly.
import { mkdtempSync, rmSync, truncateSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { geotiffHeights } from "../../src/commands/read-geotiff.ts";
import { type GroundRead, groundAlong } from "../../src/commands/read-terrain.ts";
import { RangeFault } from "../../src/core/numerics/index.ts";
import { bearingAndDistance } from "../../src/core/place/index.ts";
import { near } from "../helpers/near.ts";
import { type TinyGeotiff, tinyGeotiff } from "./tiny-geotiff.ts";

const folder = mkdtempSync(join(tmpdir(), "mastwright-terrain-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function fileOf(name: string, bytes: Uint8Array | string): string {
  const path = join(folder, name);
  writeFileSync(path, bytes);
  return path;
}

const spot = (latitudeDeg: number, longitudeDeg: number) => ({ latitudeDeg, longitudeDeg });
const says = (read: { readonly kind: string; readonly says?: string }) => {
  expect(read.kind).toBe("refused");
  // One or two plain sentences, and no words of machines.
  expect(read.says).toMatch(/^[^\n]+\.$/);
  expect(read.says).not.toMatch(/undefined|NaN|null|Error|\[object/);
  return read.says!;
};
function profileOf(read: GroundRead) {
  if (read.kind === "refused") throw new Error(read.says);
  return read.profile;
}

describe("an .hgt tile", () => {
  const side = 1201;
  const bytes = Buffer.alloc(2 * side * side);
  for (let row = 0; row < side; row++)
    for (let column = 0; column < side; column++)
      bytes.writeInt16BE(row + 2 * column, 2 * (row * side + column));
  const setVoid = (row: number, column: number) => bytes.writeInt16BE(-32768, 2 * (row * side + column));
  // 52.9 N 3.2 W: row 120, column 960.
  setVoid(120, 960);
  const file = fileOf("N52W004.hgt", bytes);
  const groundM = (latitudeDeg: number, longitudeDeg: number) =>
    (53 - latitudeDeg) * 1200 + 2 * (longitudeDeg + 4) * 1200;

  it("gives the ground of a path across it, end to end, at equal steps", () => {
    const ends = { near: spot(52.101, -3.903), far: spot(52.504, -3.207) };
    const read = groundAlong({ file, ...ends, samples: 41 });
    const profile = profileOf(read);
    const { distanceM } = bearingAndDistance({
      fromLatitudeDeg: 52.101,
      fromLongitudeDeg: -3.903,
      toLatitudeDeg: 52.504,
      toLongitudeDeg: -3.207,
    });
    expect(profile).toHaveLength(41);
    near(profile[0]!.groundM, groundM(52.101, -3.903), { within: 1e-6 });
    near(profile[40]!.groundM, groundM(52.504, -3.207), { within: 1e-6 });
    profile.forEach((point, i) => {
      near(point.distanceFromNearM, (distanceM * i) / 40, { within: 1e-6 });
    });
    // Three seconds of arc of latitude are about 92.7 m (1851.9 m a minute, the sea mile).
    near(read.kind === "ground" ? read.cellM : 0, 92.6, { within: 1 });
  });

  it("is read in its own hemisphere, whatever the case of its name", () => {
    const southern = fileOf("s35e149.HGT", bytes);
    const profile = profileOf(
      groundAlong({ file: southern, near: spot(-34.5, 149.25), far: spot(-34.75, 149.25), samples: 3 }),
    );
    // Its rows begin at 34 S: half a degree is row 600; a quarter of a degree is column 300.
    near(profile[0]!.groundM, 600 + 2 * 300, { within: 1e-6 });
    near(profile[2]!.groundM, 900 + 2 * 300, { within: 1e-6 });
  });

  it("reads the outermost corners", () => {
    const profile = profileOf(groundAlong({ file, near: spot(53, -4), far: spot(52, -3), samples: 3 }));
    near(profile[0]!.groundM, 0, { within: 1e-6 });
    near(profile[2]!.groundM, 1200 + 2400, { within: 1e-6 });
  });

  it("refuses a path over a hole, and says how much is missing; beside the hole it does not", () => {
    const over = groundAlong({ file, near: spot(52.9, -3.3), far: spot(52.9, -3.1), samples: 3 });
    expect(says(over)).toBe(
      "N52W004.hgt has holes on the path: 1 of 3 points have no height. Use another file.",
    );
    const beside = groundAlong({ file, near: spot(52.898, -3.3), far: spot(52.898, -3.1), samples: 3 });
    expect(beside.kind).toBe("ground");
  });

  it("refuses a path that leaves it, and says what it covers", () => {
    const read = groundAlong({ file, near: spot(52.9, -3.3), far: spot(53.1, -3.3), samples: 20 });
    expect(says(read)).toBe(
      "N52W004.hgt covers latitude 52.000 to 53.000 and longitude -4.000 to -3.000: the path leaves it, and only one file is read.",
    );
  });

  it("refuses one of another size or without a place in its name", () => {
    const ends = { near: spot(52.1, -3.5), far: spot(52.2, -3.5), samples: 5 };
    expect(says(groundAlong({ file: fileOf("N52W003.hgt", bytes.subarray(2)), ...ends }))).toContain(
      "1201 or 3601 heights a side",
    );
    expect(says(groundAlong({ file: fileOf("wales.hgt", bytes), ...ends }))).toContain("N52W004.hgt");
  });
});

describe("what is no file of heights", () => {
  const ends = { near: spot(52.1, -3.5), far: spot(52.2, -3.5), samples: 5 };

  it("is refused in plain words", () => {
    expect(says(groundAlong({ file: join(folder, "nothing.tif"), ...ends }))).toMatch(/^There is no file /);
    expect(says(groundAlong({ file: folder, ...ends }))).toContain("is a folder");
    expect(says(groundAlong({ file: fileOf("notes.txt", "a hill"), ...ends }))).toMatch(
      /^notes.txt is neither/,
    );
    expect(says(groundAlong({ file: fileOf("empty.tif", ""), ...ends }))).toMatch(/^empty.tif is neither/);
    expect(says(groundAlong({ file: fileOf("N52W004.hgt.zip", "PK"), ...ends }))).toMatch(/^Unpack N52W004/);
  });

  it("is refused when it is larger than 300 MB, without being read", () => {
    const file = fileOf("large.tif", "II*\0");
    truncateSync(file, 300_000_001);
    expect(says(groundAlong({ file, ...ends }))).toBe(
      "large.tif is larger than 300 MB. Cut out the part around the path.",
    );
  });

  it("has no path where both ends are one", () => {
    expect(says(groundAlong({ file: "x", near: spot(1, 2), far: spot(1, 2), samples: 5 }))).toContain("same");
  });

  it("throws RangeFault for our own mistakes", () => {
    expect(() => groundAlong({ file: "x", ...ends, samples: 2 })).toThrow(RangeFault);
    expect(() => groundAlong({ file: "x", ...ends, near: spot(91, 0) })).toThrow(RangeFault);
  });
});

// Eleven by eleven cells of a tenth of a degree, the height rows times columns.
const eleven = Array.from({ length: 121 }, (_, i) => Math.floor(i / 11) * (i % 11));
const tiny: TinyGeotiff = {
  columns: 11,
  heights: Int16Array.from(eleven),
  northDeg: 53,
  westDeg: -4,
  stepDeg: 0.1,
};

describe("a GeoTIFF", () => {
  const read = (name: string, about: Partial<TinyGeotiff>, ...spots: ReturnType<typeof spot>[]) =>
    geotiffHeights(fileOf(name, tinyGeotiff({ ...tiny, ...about })), spots);
  const heights = async (name: string, about: Partial<TinyGeotiff>, ...spots: ReturnType<typeof spot>[]) => {
    const found = await read(name, about, ...spots);
    if (found.kind === "refused") throw new Error(found.says);
    return found.heightsM;
  };

  it("of areas has its heights in the middle of its cells, and straight between them", async () => {
    // Row 4, column 3 lies at 53 - 0.45 and -4 + 0.35; then half a cell south and a quarter of one east of it.
    const found = await heights("areas.tif", {}, spot(52.55, -3.65), spot(52.5, -3.625));
    near(found[0]!, 12, { within: 1e-5 });
    near(found[1]!, 4.5 * 3.25, { within: 1e-5 });
  });

  it("of points has them half a cell further north-west", async () => {
    const found = await heights("points.tif", { keys: { 1024: 2, 1025: 2, 2048: 4326 } }, spot(52.6, -3.7));
    near(found[0]!, 12, { within: 1e-5 });
  });

  it("may be packed, of fractions, and placed by a matrix", async () => {
    const fractions = Float32Array.from(eleven, (height) => height + 0.25);
    const packed = await heights("packed.tif", { isDeflated: true, heights: fractions }, spot(52.5, -3.625));
    near(packed[0]!, 4.5 * 3.25 + 0.25, { within: 1e-5 });
    const matrix = [0.1, 0, 0, -4, 0, -0.1, 0, 53, 0, 0, 0, 0, 0, 0, 0, 1];
    near((await heights("matrix.tif", { matrix }, spot(52.55, -3.65)))[0]!, 12, { within: 1e-5 });
  });

  it("is read in parts when the path is long and the grid fine", async () => {
    const columns = 2100;
    const many = Int16Array.from(
      { length: columns * columns },
      (_, i) => Math.floor(i / columns) + (i % columns),
    );
    const line = Array.from({ length: 50 }, (_, i) => spot(52.999 - 0.0021 * i, -3.999 + 0.0021 * i));
    const about = { columns, heights: many, stepDeg: 0.00005 };
    const found = await heights("fine.tif", about, ...line);
    // Row and column of a spot, from half a cell inside the corner.
    found.forEach((heightM, i) => {
      near(heightM!, 2 * ((0.001 + 0.0021 * i) / 0.00005 - 0.5), { within: 1e-4 });
    });
  });

  it("has no height where it says so, nor where a number can be none", async () => {
    const withHole = Int16Array.from(eleven, (height, i) => (i === 4 * 11 + 3 ? -77 : height));
    const hole = spot(52.55, -3.65);
    const beyond = spot(52.35, -3.35);
    expect(await heights("hole.tif", { heights: withHole, noData: "-77" }, hole, beyond)).toEqual([
      null,
      expect.closeTo(36, 5),
    ]);
    for (const none of [-9999, -3.4e38, Number.NaN])
      expect(await heights("none.tif", { heights: Float32Array.from(eleven, () => none) }, hole)).toEqual([
        null,
      ]);
  });

  const inside = spot(52.5, -3.5);
  it.each<readonly [what: string, about: Partial<TinyGeotiff>, says: RegExp]>([
    ["a map projection", { keys: { 1024: 1, 1025: 1, 3072: 32630 } }, /map projection \(EPSG:32630\)/],
    ["an older system", { keys: { 1024: 2, 1025: 1, 2048: 4277 } }, /another system .*\(EPSG:4277\)/],
    ["no system", { keys: { 1025: 1 } }, /does not say that it lies on latitude/],
    ["a picture", { heights: Uint8Array.from(eleven) }, /is a picture/],
    ["feet by its keys", { keys: { 1024: 2, 1025: 1, 2048: 4269, 4099: 9003 } }, /in feet/],
    [
      "feet by its notes",
      { metadata: '<GDALMetadata><Item name="UNITTYPE" sample="0" role="unittype">ft</Item></GDALMetadata>' },
      /in feet/,
    ],
    [
      "a factor",
      { metadata: '<GDALMetadata><Item name="SCALE" sample="0" role="scale">0.1</Item></GDALMetadata>' },
      /multiplied or shifted/,
    ],
    ["a turned grid", { matrix: [0.1, 0.02, 0, -4, 0.02, -0.1, 0, 53, 0, 0, 0, 0, 0, 0, 0, 1] }, /askew/],
  ])("is refused with %s", async (what, about, expected) => {
    expect(says(await read(`${what}.tif`, about, inside))).toMatch(expected);
  });

  it("is refused where it ends before the path does", async () => {
    expect(says(await read("areas.tif", {}, inside, spot(51.85, -3.5)))).toBe(
      "areas.tif covers latitude 51.950 to 52.950 and longitude -3.950 to -2.950: the path leaves it, and only one file is read.",
    );
  });

  it("is refused when it is cut short", async () => {
    const whole = tinyGeotiff({ ...tiny, isDeflated: true });
    const broken = Buffer.from(whole);
    broken.fill(0xff, 8, 40);
    expect(says(await geotiffHeights(fileOf("broken.tif", broken), [inside]))).toMatch(/damaged/);
    const short = fileOf("short.tif", whole.subarray(0, 60));
    expect(says(await geotiffHeights(short, [inside]))).toMatch(/damaged/);
    // Heights that are not packed would come out as zeros.
    expect(says(await read("half.tif", { missingBytes: 5000 }, inside))).toMatch(/damaged/);
  });
});

describe("the bundled program beside its reader of GeoTIFFs", () => {
  let bundled: { readonly groundAlong: typeof groundAlong };
  beforeAll(async () => {
    await build({
      entryPoints: ["read-terrain", "ask-geotiff"].map((name) => `src/commands/${name}.ts`),
      outdir: join(folder, "bundle"),
      bundle: true,
      platform: "node",
      format: "esm",
      splitting: true,
      logLevel: "warning",
    });
    writeFileSync(join(folder, "bundle/package.json"), '{"type":"module"}');
    bundled = await import(pathToFileURL(join(folder, "bundle/read-terrain.js")).href);
  });

  it("waits for it, and has the ground", () => {
    const file = fileOf("ground.tif", tinyGeotiff({ ...tiny, isDeflated: true }));
    const read = bundled.groundAlong({
      file,
      near: spot(52.55, -3.65),
      far: spot(52.15, -3.65),
      samples: 5,
    });
    const profile = profileOf(read);
    // Down a meridian, one row of column 3 after another; the steps are equal in metres, to 3 m alike in degrees.
    profile.forEach((point, i) => {
      near(point.groundM, 3 * (4 + i), { within: 0.002 });
    });
    near(profile[4]!.distanceFromNearM, 44_500, { within: 100 });
  });

  it("hands on what is wrong", () => {
    const file = fileOf("picture.tif", tinyGeotiff({ ...tiny, heights: Uint8Array.from(eleven) }));
    const ends = { near: spot(52.5, -3.6), far: spot(52.4, -3.6), samples: 5 };
    expect(says(bundled.groundAlong({ file, ...ends }))).toBe(
      "picture.tif is a picture, not a grid of heights.",
    );
  });
});
