/** Stretches of the solar day, hours after solar midnight, and how they overlap. */
import type { Schedule } from "../brief.ts";

/** From, to; 0 to 24, from below to. */
export type Span = readonly [number, number];

/** When the sun is up on a day of so many hours of daylight, centred on solar noon. */
export function lightSpans(daylightH: number): readonly Span[] {
  return daylightH > 0 ? [[12 - daylightH / 2, 12 + daylightH / 2]] : [];
}

/** What a day leaves over. */
export function darkSpans(daylightH: number): readonly Span[] {
  if (daylightH <= 0) return [[0, 24]];
  if (daylightH >= 24) return [];
  return [
    [0, 12 - daylightH / 2],
    [12 + daylightH / 2, 24],
  ];
}

/** When a device runs, in solar hours. A clock stretch of no length means the whole day, the cautious reading. */
export function runningSpans(when: {
  readonly schedule: Schedule;
  readonly daylightH: number;
  readonly clockMinusSolarH: number;
}): readonly Span[] {
  const { schedule } = when;
  switch (schedule.kind) {
    case "always":
    case "cold":
    case "heat":
      return [[0, 24]];
    case "daylight":
      return lightSpans(Math.min(24, when.daylightH + 2 * schedule.marginH));
    case "clock":
      return clockSpans(schedule, when.clockMinusSolarH);
  }
}

function clockSpans(
  clock: { readonly fromMin: number; readonly toMin: number },
  clockMinusSolarH: number,
): readonly Span[] {
  if (clock.fromMin === clock.toMin) return [[0, 24]];
  const from = turnH(clock.fromMin / 60 - clockMinusSolarH);
  const to = turnH(clock.toMin / 60 - clockMinusSolarH);
  if (from < to) return [[from, to]];
  return to > 0
    ? [
        [0, to],
        [from, 24],
      ]
    : [[from, 24]];
}

function turnH(hour: number): number {
  return ((hour % 24) + 24) % 24;
}

/** Hours that lie in one of the first spans and in one of the second; each list holds no overlaps of its own. */
export function overlapH(a: readonly Span[], b: readonly Span[]): number {
  let total = 0;
  for (const [from, to] of a) {
    for (const [start, end] of b) total += Math.max(0, Math.min(to, end) - Math.max(from, start));
  }
  return total;
}

/** The parts of `a` that lie in `b`. */
export function common(a: readonly Span[], b: readonly Span[]): readonly Span[] {
  return a.flatMap(([from, to]) =>
    b
      .map(([start, end]): Span => [Math.max(from, start), Math.min(to, end)])
      .filter(([start, end]) => end > start),
  );
}
