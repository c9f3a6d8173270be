/** Figures inside the sentences of the lists: rounded to what a tape, a meter or a back can tell apart. */
import { formatNumber } from "../../core/units/index.ts";
import { fixed, plain } from "../chain/words.ts";

/** Two significant digits, no exponent. */
const rough = (value: number): string => formatNumber({ value, digits: 2 });

export const metres = (value: number): string => `${fixed(value, 1)} m`;
/** Of holes: to 5 cm, as they are dug. */
export const dugMetres = (value: number): string => `${fixed(value, 2)} m`;
export const volts = (value: number): string => `${fixed(value, 1)} V`;
/** Drops along a wire. */
export const smallVolts = (value: number): string => `${fixed(value, 2)} V`;
/** Fuses and other printed ratings, as they are. */
export const ratedAmps = (value: number): string => `${plain(value)} A`;
export const amps = (value: number): string => `${rough(value)} A`;
export const ohms = (value: number): string => `${rough(value)} ohm`;
export const watts = (value: number): string => `${rough(value)} W`;
export const wattHours = (value: number): string => `${rough(value)} Wh`;
export const newtons = (value: number): string => `${rough(value)} N`;
export const kilograms = (value: number): string => `${rough(value)} kg`;
/** Standard gravity turns a push into the weight that would pull as hard. */
export const asWeight = (forceN: number): string => kilograms(forceN / 9.80665);
/** Vents: never rounded down. */
export const squareCm = (value: number): string => `${Math.ceil(value - 1e-9).toFixed(0)} cm2`;
export const degreesC = (value: number): string => `${fixed(value, 0)} °C`;
/** Of aims: to a tenth. */
export const fixedDegrees = (value: number): string => `${fixed(value, 1)}°`;
export const degrees = (value: number): string => `${fixed(value, 0)}°`;
export const megabits = (value: number): string => `${rough(value)} Mbit/s`;
export const decibels = (value: number): string => `${fixed(value, 0)} dB`;
export const level = (value: number): string => `${fixed(value, 0)} dBm`;
/** Of storage: whole gigabytes, never rounded down. */
export const gigabytes = (value: number): string => `${fixed(Math.ceil(value - 1e-9), 0)} GB`;
export const percent = (frac: number): string => `${fixed(100 * frac, 0)} %`;
/** Distances to keep: never rounded down. */
export const atLeastMetres = (value: number): string => `${fixed(Math.ceil(10 * value - 1e-9) / 10, 1)} m`;

/** "1 minute", "2 minutes". */
export const counted = (count: number, one: string, many = `${one}s`): string =>
  `${count} ${count === 1 ? one : many}`;

/** "a", "a and b", "a, b and c". */
export function listed(names: readonly string[]): string {
  return names.length < 2 ? (names[0] ?? "") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}
