/** Bytes of a GeoTIFF with one strip, little-endian: tags by number as TIFF 6.0 and GeoTIFF 1.1 give them (from memory). */
import { deflateSync } from "node:zlib";

export interface TinyGeotiff {
  readonly columns: number;
  /** from the north-west, row by row */
  readonly heights: Int16Array | Float32Array | Uint8Array;
  readonly northDeg: number;
  readonly westDeg: number;
  readonly stepDeg: number;
  /** Geo keys by number; latitude and longitude on WGS 84, cells as areas where nothing else is said. */
  readonly keys?: Readonly<Record<number, number>>;
  readonly isDeflated?: boolean;
  readonly noData?: string;
  readonly metadata?: string;
  /** The other way to say where it lies; north and west are then not written. */
  readonly matrix?: readonly number[];
  /** How many bytes more the strip is said to have than it has. */
  readonly missingBytes?: number;
}

type Field = readonly [tag: number, type: number, values: readonly number[] | string];
const [short, long, double, ascii] = [3, 4, 12, 2];
const bytesOf: Readonly<Record<number, number>> = { [short]: 2, [long]: 4, [double]: 8, [ascii]: 1 };

export function tinyGeotiff(about: TinyGeotiff): Buffer {
  const { heights, columns } = about;
  const rows = heights.length / columns;
  const raw = Buffer.from(heights.buffer, heights.byteOffset, heights.byteLength);
  const strip = about.isDeflated ? deflateSync(raw) : raw;
  const keys = Object.entries(about.keys ?? { 1024: 2, 1025: 1, 2048: 4326 });
  const format = heights instanceof Float32Array ? 3 : heights instanceof Int16Array ? 2 : 1;
  const placed: readonly Field[] = about.matrix
    ? [[34264, double, about.matrix]]
    : [
        [33550, double, [about.stepDeg, about.stepDeg, 0]],
        [33922, double, [0, 0, 0, about.westDeg, about.northDeg, 0]],
      ];
  const fields: readonly Field[] = [
    [256, short, [columns]],
    [257, short, [rows]],
    [258, short, [heights.BYTES_PER_ELEMENT * 8]],
    [259, short, [about.isDeflated ? 8 : 1]],
    [262, short, [1]],
    [273, long, [8]],
    [277, short, [1]],
    [278, short, [rows]],
    [279, long, [strip.length + (about.missingBytes ?? 0)]],
    [339, short, [format]],
    ...placed,
    [34735, short, [1, 1, 0, keys.length, ...keys.flatMap(([key, value]) => [Number(key), 0, 1, value])]],
    ...(about.metadata ? [[42112, ascii, `${about.metadata}\0`] as const] : []),
    ...(about.noData ? [[42113, ascii, `${about.noData}\0`] as const] : []),
  ];
  const padded = Buffer.concat([strip, Buffer.alloc(strip.length % 2)]);
  const directoryAt = 8 + padded.length;
  const directory = Buffer.alloc(2 + 12 * fields.length + 4);
  directory.writeUInt16LE(fields.length, 0);
  const beyond: Buffer[] = [];
  let beyondAt = directoryAt + directory.length;
  fields.forEach(([tag, type, values], i) => {
    const at = 2 + 12 * i;
    const packed = Buffer.alloc(Math.max(4, values.length * bytesOf[type]!));
    if (typeof values === "string") packed.write(values, "latin1");
    else
      values.forEach((value, k) => {
        if (type === short) packed.writeUInt16LE(value, 2 * k);
        else if (type === long) packed.writeUInt32LE(value, 4 * k);
        else packed.writeDoubleLE(value, 8 * k);
      });
    directory.writeUInt16LE(tag, at);
    directory.writeUInt16LE(type, at + 2);
    directory.writeUInt32LE(values.length, at + 4);
    if (packed.length === 4) packed.copy(directory, at + 8);
    else {
      directory.writeUInt32LE(beyondAt, at + 8);
      beyond.push(packed);
      beyondAt += packed.length;
    }
  });
  const head = Buffer.from([0x49, 0x49, 42, 0, 0, 0, 0, 0]);
  head.writeUInt32LE(directoryAt, 4);
  return Buffer.concat([head, padded, directory, ...beyond]);
}
