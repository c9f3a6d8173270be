/** Figures inside the sentences of the lists: rounded to what a tape, a meter or a back can tell apart. */
import { formatNumber, sayingIn, type UnitSystem } from "../../core/units/index.ts";
import { atLeast, bagsFor, dug, fixed, paced, plain } from "../chain/words.ts";

/** Two significant digits, no exponent. */
const rough = (value: number): string => formatNumber({ value, digits: 2 });

/** Standard gravity turns a push into the weight that would pull as hard. */
const GRAVITY_M_PER_S2 = 9.80665;

/** What is measured with a tape, a scale or a thermometer, in the reader's units. */
export function figuresIn(system: UnitSystem) {
  const said = sayingIn(system);
  const pushed = { digits: 2, safe: "up" } as const;
  const weight = (valueKg: number): string => said(valueKg, "kg", { digits: 2 });
  return {
    said,
    length: (valueM: number): string => said(valueM, "m", 1),
    /** Along the ground. */
    distance: (valueM: number): string => said(valueM, "m away", 1),
    /** To a scene. */
    scene: (valueM: number): string => paced(said, valueM),
    /** Of what is bought by the length. */
    cut: (valueM: number): string => said(valueM, "m", { places: 1, safe: "up" }),
    dug: (valueM: number): string => dug(said, valueM),
    /** Distances to keep: never rounded down. */
    clear: (valueM: number): string => atLeast(said, valueM),
    weight,
    /** To be held: never less in the reader's units than in those it was worked in. */
    force: (valueN: number): string => said(valueN, "N", pushed),
    /** The weight that would pull as hard. */
    pull: (forceN: number): string =>
      said.either(weight(forceN / GRAVITY_M_PER_S2), `${said.bare(forceN, "N", pushed)} lb`),
    /** Vents: never rounded down. */
    vent: (valueCm2: number): string => said(Math.ceil(valueCm2 - 1e-9), "cm2", { safe: "up" }),
    temperature: (valueC: number): string => said(valueC, "°C"),
    bags: (footing: Parameters<typeof bagsFor>[1]) => bagsFor(said, footing),
    rise: (valueK: number): string => said(valueK, "K"),
  };
}
export type Figures = ReturnType<typeof figuresIn>;

export const volts = (value: number): string => `${fixed(value, 1)} V`;
/** Drops along a wire. */
export const smallVolts = (value: number): string => `${fixed(value, 2)} V`;
/** Fuses and other printed ratings, as they are. */
export const ratedAmps = (value: number): string => `${plain(value)} A`;
export const amps = (value: number): string => `${rough(value)} A`;
export const ohms = (value: number): string => `${rough(value)} ohm`;
export const watts = (value: number): string => `${rough(value)} W`;
export const wattHours = (value: number): string => `${rough(value)} Wh`;
/** Of aims: to a tenth. */
export const fixedDegrees = (value: number): string => `${fixed(value, 1)}°`;
export const degrees = (value: number): string => `${fixed(value, 0)}°`;
export const megabits = (value: number): string => `${rough(value)} Mbit/s`;
export const decibels = (value: number): string => `${fixed(value, 0)} dB`;
export const level = (value: number): string => `${fixed(value, 0)} dBm`;
/** Of storage: whole gigabytes, never rounded down. */
export const gigabytes = (value: number): string => `${fixed(Math.ceil(value - 1e-9), 0)} GB`;
export const percent = (frac: number): string => `${fixed(100 * frac, 0)} %`;
/** How far off upright a mast may stand: 5 mm in a metre. 3/16 in over a level of 4 ft is a little less. */
export const plumb = ({ said }: Figures): string => said.either("5 mm in each metre", "3/16 in over 4 ft");

/** "1 minute", "2 minutes". */
export const counted = (count: number, one: string, many = `${one}s`): string =>
  `${count} ${count === 1 ? one : many}`;

/** "a", "a and b", "a, b and c". */
export function listed(names: readonly string[]): string {
  return names.length < 2 ? (names[0] ?? "") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}
