/** The gazetteer as core gets it: decompressed bytes of data/places.bin (format: make/places.py). */

export interface Region {
  readonly countryCode: string;
  /** postal short name of a state or province where one is in use, else "" */
  readonly short: string;
  /** name of the first-order division, "" where it is not known */
  readonly name: string;
}

/** Columns by place, sorted by country and region. */
export interface PlaceIndex {
  readonly count: number;
  readonly regions: readonly Region[];
  /** "\n" before every place and at the very end; names of one place parted by "|", the first is its own */
  readonly folded: string;
  /** position in `folded` of the "\n" before each place, and of the last one */
  readonly foldedAt: Uint32Array;
  readonly names: Uint8Array;
  /** where each place's name begins in `names`, and one past the last one's newline */
  readonly nameAt: Uint32Array;
  readonly regionIndex: Uint16Array;
  readonly latitudeThousandths: Int32Array;
  readonly longitudeThousandths: Int32Array;
  /** UNKNOWN_ELEVATION where there is none */
  readonly elevationM: Int32Array;
  /** ten times the base-2 logarithm; 0 for none */
  readonly populationLog: Uint8Array;
}

export const UNKNOWN_ELEVATION = -1000;

interface Header {
  readonly count: number;
  readonly regions: readonly (readonly [string, string, string])[];
  readonly parts: Readonly<Record<string, readonly [number, number]>>;
}

/**
 * The gazetteer in a file made by make/places.py.
 *
 * @param bytes  the file after decompression
 * @throws Error when the bytes are not such a file (a damaged installation, never the builder's input)
 */
export function openPlaces(bytes: Uint8Array): PlaceIndex {
  const text = new TextDecoder();
  if (text.decode(bytes.subarray(0, 8)) !== "MWPLACE\n")
    throw new Error("the place data do not begin as they should");
  const headerBytes = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength).getUint32(8, true);
  // The header is written by our own make script, and read by nobody else's program.
  const header = JSON.parse(text.decode(bytes.subarray(12, 12 + headerBytes))) as Header;
  const part = (name: string): Uint8Array => {
    const [at, length] = header.parts[name] ?? [0, -1];
    const found = bytes.subarray(12 + headerBytes + at, 12 + headerBytes + at + length);
    if (found.length !== length) throw new Error(`the place data lack the part ${name}`);
    return found;
  };
  const { count } = header;
  const foldedBytes = part("folded");
  const names = part("names");
  const regionIndex = new Uint16Array(count);
  const regionSteps = part("region");
  for (let i = 0, region = 0; i < count; i++) {
    region += regionSteps[i]! | (regionSteps[count + i]! << 8);
    regionIndex[i] = region;
  }
  return {
    count,
    regions: header.regions.map(([countryCode, short, name]) => ({ countryCode, short, name })),
    // The part is ASCII; decoding it as Latin-1 skips the search for longer characters.
    folded: `\n${new TextDecoder("latin1").decode(foldedBytes)}\n`,
    foldedAt: lineStarts(foldedBytes, count),
    names,
    nameAt: lineStarts(names, count),
    regionIndex,
    latitudeThousandths: undone(part("latitude"), count),
    longitudeThousandths: undone(part("longitude"), count),
    elevationM: undone(part("elevation"), count),
    populationLog: part("population"),
  };
}

/** Start of each line; the last entry is where a further line would start. */
function lineStarts(bytes: Uint8Array, count: number): Uint32Array {
  const starts = new Uint32Array(count + 1);
  let line = 1;
  for (let at = bytes.indexOf(10); at >= 0; at = bytes.indexOf(10, at + 1)) starts[line++] = at + 1;
  starts[count] = bytes.length + 1;
  return starts;
}

/** Undoes zigzag differences that are stored as byte planes, low bytes first. */
function undone(bytes: Uint8Array, count: number): Int32Array {
  const values = new Int32Array(count);
  const three = bytes.length === 3 * count;
  for (let i = 0, value = 0; i < count; i++) {
    const zigzag = bytes[i]! | (bytes[count + i]! << 8) | (three ? bytes[2 * count + i]! << 16 : 0);
    value += zigzag & 1 ? -((zigzag + 1) >> 1) : zigzag >> 1;
    values[i] = value;
  }
  return values;
}
