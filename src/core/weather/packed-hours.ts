import { clamp, within } from "../numerics/index.ts";
import { HOURS_A_YEAR } from "./calendar.ts";

/** The hours of a typical year that a battery run needs. */
export interface OwnHours {
  /** -90 to 90, north positive. */
  readonly latitudeDeg: number;
  /** -180 to 180, east positive. */
  readonly longitudeDeg: number;
  /** Of the clock of the hours, -12 to 14. */
  readonly utcOffsetH: number;
  /** 8760 each; irradiance on the level 0 to 2000, air -90 to 60. Diffuse is null where the year has none. */
  readonly ghiWPerM2: Float64Array;
  readonly dhiWPerM2: Float64Array | null;
  readonly tempC: Float64Array;
}

/** What is kept of a measured value: whole watts and tenths of a kelvin, two bytes each. */
const TENTHS_A_KELVIN = 10;
const BYTES_A_VALUE = 2;
const SERIES = 3;
const ABSENT = -1;

/** Characters of a packed year: every three bytes take four. */
const PACKED_HOURS_LENGTH = (HOURS_A_YEAR * BYTES_A_VALUE * SERIES * 4) / 3;

/**
 * The three series as one text that a brief can keep: global and diffuse irradiance in whole W/m2, then the air in tenths
 * of a degree, 16 bits each with the low byte first, in base64 (RFC 4648 section 4).
 *
 * @returns 70080 characters
 * @throws RangeFault where a series has not 8760 hours or a value lies outside its range
 */
export function packHours(hours: Pick<OwnHours, "ghiWPerM2" | "dhiWPerM2" | "tempC">): string {
  const view = new DataView(new ArrayBuffer(HOURS_A_YEAR * BYTES_A_VALUE * SERIES));
  const put = (series: number, valueAt: (hour: number) => number): void => {
    for (let hour = 0; hour < HOURS_A_YEAR; hour += 1)
      view.setInt16((series * HOURS_A_YEAR + hour) * BYTES_A_VALUE, Math.round(valueAt(hour)), true);
  };
  const { ghiWPerM2, dhiWPerM2, tempC } = hours;
  for (const series of [ghiWPerM2, dhiWPerM2 ?? ghiWPerM2, tempC])
    within("hours of a series", series.length, HOURS_A_YEAR, HOURS_A_YEAR);
  put(0, (hour) => within("ghiWPerM2", ghiWPerM2[hour]!, 0, 2000));
  put(1, (hour) => (dhiWPerM2 === null ? ABSENT : within("dhiWPerM2", dhiWPerM2[hour]!, 0, 2000)));
  put(2, (hour) => within("tempC", tempC[hour]!, -90, 60) * TENTHS_A_KELVIN);
  return btoa(Array.from(new Uint8Array(view.buffer), (byte) => String.fromCharCode(byte)).join(""));
}

/**
 * @param packed  as packHours gave it; values that it never gives are held to the ranges of OwnHours
 * @throws RangeFault where it is not as long as a year's three series
 */
export function unpackHours(packed: string): Pick<OwnHours, "ghiWPerM2" | "dhiWPerM2" | "tempC"> {
  within("characters of packed hours", packed.length, PACKED_HOURS_LENGTH, PACKED_HOURS_LENGTH);
  const bytes = Uint8Array.from(atob(packed), (character) => character.charCodeAt(0));
  const view = new DataView(bytes.buffer);
  const series = (at: number): Float64Array =>
    Float64Array.from({ length: HOURS_A_YEAR }, (_, hour) =>
      view.getInt16((at * HOURS_A_YEAR + hour) * BYTES_A_VALUE, true),
    );
  const irradiance = (values: Float64Array): Float64Array => values.map((value) => clamp(value, 0, 2000));
  const diffuse = series(1);
  return {
    ghiWPerM2: irradiance(series(0)),
    dhiWPerM2: diffuse.every((value) => value === ABSENT) ? null : irradiance(diffuse),
    tempC: series(2).map((tenths) => clamp(tenths / TENTHS_A_KELVIN, -90, 60)),
  };
}
