/** The one table of units: every conversion, every typed unit and every unit shown comes from these rows. */
import {
  BITRATE,
  CHARGE,
  CURRENT,
  ENERGY,
  FRAME_RATE,
  FREQUENCY,
  GAIN,
  LEVEL,
  LOSS,
  POWER,
  VOLTAGE,
} from "./rows-electric.ts";
import { ANGLE, AREA, COUNT, LENGTH, SPEED } from "./rows-space.ts";
import {
  DURATION,
  IRRADIATION,
  MASS,
  PRESSURE,
  SHARE,
  TEMPERATURE,
  TEMPERATURE_COEFFICIENT,
  TEMPERATURE_DIFFERENCE,
} from "./rows-world.ts";
import type { Dimension, UnitRow } from "./unit.ts";

interface DimensionRow {
  /** With its article, as it stands in "12 V is a voltage". */
  readonly words: string;
  /** The first is what most people here would type; not always the base. */
  readonly units: readonly UnitRow[];
}

/** In the order in which a unit typed without any context is looked for: what is most often meant comes first. */
export const DIMENSIONS: Readonly<Record<Dimension, DimensionRow>> = {
  length: { words: "a length", units: LENGTH },
  power: { words: "a power", units: POWER },
  voltage: { words: "a voltage", units: VOLTAGE },
  current: { words: "a current", units: CURRENT },
  charge: { words: "a battery capacity", units: CHARGE },
  energy: { words: "an amount of energy", units: ENERGY },
  duration: { words: "a length of time", units: DURATION },
  mass: { words: "a weight", units: MASS },
  temperature: { words: "a temperature", units: TEMPERATURE },
  angle: { words: "an angle", units: ANGLE },
  share: { words: "a share in percent", units: SHARE },
  speed: { words: "a speed", units: SPEED },
  area: { words: "an area", units: AREA },
  pressure: { words: "a pressure", units: PRESSURE },
  frequency: { words: "a frequency", units: FREQUENCY },
  bitrate: { words: "a data rate", units: BITRATE },
  frameRate: { words: "a number of frames a second", units: FRAME_RATE },
  loss: { words: "a loss in decibels", units: LOSS },
  gain: { words: "an antenna gain", units: GAIN },
  level: { words: "a signal level", units: LEVEL },
  temperatureDifference: { words: "a difference of temperature", units: TEMPERATURE_DIFFERENCE },
  temperatureCoefficient: { words: "a change per degree", units: TEMPERATURE_COEFFICIENT },
  irradiation: { words: "an amount of sun a day", units: IRRADIATION },
  count: { words: "a plain number", units: COUNT },
};
