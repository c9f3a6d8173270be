/** The world grids as core gets them: decompressed bytes of data/climate.bin (format: make/pack.py) made into layers. */

/** One quantity on a regular grid; rows from south to north, columns from west to east, planes (months) outermost. */
export interface Layer {
  readonly planes: number;
  readonly rows: number;
  readonly columns: number;
  readonly southDeg: number;
  readonly westDeg: number;
  readonly stepDeg: number;
  /** value = stored * scale + offset */
  readonly scale: number;
  readonly offset: number;
  /** the stored number that stands for "no value here"; -1 if every cell has one */
  readonly missing: number;
  readonly stored: Uint8Array | Uint16Array;
}

export interface ClimateGrids {
  /** 1 where there is land (or a lake shore, or an inhabited island) within about 25 to 50 km */
  readonly land: Layer;
  /** monthly clearness index: daily global over extraterrestrial horizontal irradiation */
  readonly clearness: Layer;
  /** for each month, square roots of sixteen means of the daily value over the monthly one, dullest first */
  readonly dailyShareSqrt: Layer;
  /** for each month the standard deviation of the error of the clearness index, as a fraction of it */
  readonly clearnessErrorFrac: Layer;
  /** 1 where the irradiation was estimated from rain and temperature for want of data */
  readonly estimated: Layer;
  readonly monthlyTempC: Layer;
  /** mean ground height round each node of the temperature map, on which its temperatures are taken to stand */
  readonly temperatureReferenceM: Layer;
  readonly rainRate001MmPerH: Layer;
  readonly refractivityGradientPerKm: Layer;
  readonly terrainRoughnessM: Layer;
  readonly groundElevationM: Layer;
}

interface LayerHeader {
  readonly name: string;
  readonly planes: number;
  readonly rows: number;
  readonly columns: number;
  readonly south: number;
  readonly west: number;
  readonly step: number;
  readonly scale: number;
  readonly offset: number;
  readonly encoding: "u8" | "u16" | "bits" | "u16delta";
  readonly missing?: number;
  readonly at: number;
  readonly bytes: number;
}

const MAGIC = "MWCLIM1\n";

/**
 * The climate grids in a file made by make/climate.py.
 *
 * @param bytes  the file after decompression
 * @throws Error when the bytes are not such a file (a damaged installation, never the builder's input)
 */
export function openClimate(bytes: Uint8Array): ClimateGrids {
  const text = new TextDecoder();
  if (text.decode(bytes.subarray(0, 8)) !== MAGIC)
    throw new Error("the climate data do not begin as they should");
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const payloadAt = 12 + view.getUint32(8, true);
  // The header is written by our own make script, and read by nobody else's program.
  const header = JSON.parse(text.decode(bytes.subarray(12, payloadAt))) as { layers: LayerHeader[] };
  const layer = (name: keyof ClimateGrids): Layer => {
    const about = header.layers.find((one) => one.name === name);
    if (about === undefined) throw new Error(`the climate data lack the layer ${name}`);
    const payload = bytes.subarray(payloadAt + about.at, payloadAt + about.at + about.bytes);
    if (payload.length !== about.bytes) throw new Error(`the climate data end inside the layer ${name}`);
    return {
      planes: about.planes,
      rows: about.rows,
      columns: about.columns,
      southDeg: about.south,
      westDeg: about.west,
      stepDeg: about.step,
      scale: about.scale,
      offset: about.offset,
      missing: about.missing ?? -1,
      stored: decoded(about, payload),
    };
  };
  return {
    land: layer("land"),
    clearness: layer("clearness"),
    dailyShareSqrt: layer("dailyShareSqrt"),
    clearnessErrorFrac: layer("clearnessErrorFrac"),
    estimated: layer("estimated"),
    monthlyTempC: layer("monthlyTempC"),
    temperatureReferenceM: layer("temperatureReferenceM"),
    rainRate001MmPerH: layer("rainRate001MmPerH"),
    refractivityGradientPerKm: layer("refractivityGradientPerKm"),
    terrainRoughnessM: layer("terrainRoughnessM"),
    groundElevationM: layer("groundElevationM"),
  };
}

function decoded(about: LayerHeader, payload: Uint8Array): Uint8Array | Uint16Array {
  switch (about.encoding) {
    case "u8":
      return payload;
    case "u16": {
      const values = new Uint16Array(payload.length / 2);
      for (let i = 0; i < values.length; i++) values[i] = payload[2 * i]! | (payload[2 * i + 1]! << 8);
      return values;
    }
    case "bits": {
      const size = about.rows * about.columns;
      const bytesPerPlane = Math.ceil(size / 8);
      const values = new Uint8Array(about.planes * size);
      for (let plane = 0; plane < about.planes; plane++) {
        for (let i = 0; i < size; i++) {
          values[plane * size + i] = (payload[plane * bytesPerPlane + (i >> 3)]! >> (i & 7)) & 1;
        }
      }
      return values;
    }
    case "u16delta":
      return undone(about, payload);
  }
}

/** Undoes the differences along the row, down the first column, and from plane to plane. */
function undone(about: LayerHeader, payload: Uint8Array): Uint16Array {
  const { planes, rows, columns } = about;
  const size = rows * columns;
  const high = planes * size;
  const values = new Uint16Array(high);
  for (let plane = 0, at = 0; plane < planes; plane++) {
    for (let row = 0, south = 0; row < rows; row++) {
      for (let column = 0, west = south; column < columns; column++, at++) {
        const zigzag = payload[at]! | (payload[high + at]! << 8);
        west += (zigzag >> 1) ^ -(zigzag & 1);
        if (column === 0) south = west;
        values[at] = plane === 0 ? west : west + values[at - size]!;
      }
    }
  }
  return values;
}
