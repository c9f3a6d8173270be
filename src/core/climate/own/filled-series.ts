/** More holes than this are no typical year any more. @source judgement */
const MOST_MISSING_FRAC = 0.05;

/**
 * An hourly series with its holes (NaN) filled by the mean of the same hour on the nearest day before and after that
 * has it, over the turn of the year too.
 *
 * @returns null in place of the values where more than a twentieth is missing
 */
export function filledSeries(hourly: Float64Array): {
  readonly values: Float64Array | null;
  readonly missingHours: number;
} {
  const holes: number[] = [];
  hourly.forEach((value, hour) => {
    if (Number.isNaN(value)) holes.push(hour);
  });
  if (holes.length > MOST_MISSING_FRAC * hourly.length) return { values: null, missingHours: holes.length };
  const values = hourly.slice();
  for (const hour of holes) values[hour] = (neighbour(hourly, hour, -24) + neighbour(hourly, hour, 24)) / 2;
  // an hour of the day that is missing all year long has no neighbour
  if (values.some(Number.isNaN)) return { values: null, missingHours: holes.length };
  return { values, missingHours: holes.length };
}

function neighbour(hourly: Float64Array, from: number, step: number): number {
  const { length } = hourly;
  for (let away = 1; away * 24 < length; away += 1) {
    const value = hourly[(((from + away * step) % length) + length) % length]!;
    if (!Number.isNaN(value)) return value;
  }
  return Number.NaN;
}
