/**
 * Power to current, and what a radio's data sheet is written in.
 * Base units: W, Wh, Ah, V, A, Hz, dBi, dBm, dB, bit/s, frames/s.
 */
import { DEFINITION, SI, SP811, type UnitRow } from "./unit.ts";

export const POWER: readonly UnitRow[] = [
  { symbol: "W", singular: "watt", plural: "watts", toBase: 1, typed: [], source: SI },
  { symbol: "mW", singular: "milliwatt", plural: "milliwatts", toBase: 1e-3, typed: [], source: SI },
  { symbol: "kW", singular: "kilowatt", plural: "kilowatts", toBase: 1e3, typed: [], source: SI },
  // Nobody plants a megawatt on a post: it is here so that "MW" is never taken for a milliwatt.
  { symbol: "MW", singular: "megawatt", plural: "megawatts", toBase: 1e6, typed: [], source: SI },
];

export const ENERGY: readonly UnitRow[] = [
  {
    symbol: "Wh",
    singular: "watt-hour",
    plural: "watt-hours",
    toBase: 1,
    typed: ["watt hour", "watt hours", "watthour", "watthours", "W h", "whr"],
    source: DEFINITION,
  },
  {
    symbol: "kWh",
    singular: "kilowatt-hour",
    plural: "kilowatt-hours",
    toBase: 1e3,
    typed: ["kilowatt hour", "kilowatt hours", "kilowatthours", "kW h", "kwhr"],
    source: DEFINITION,
  },
  {
    symbol: "MJ",
    singular: "megajoule",
    plural: "megajoules",
    toBase: 1e6 / 3600,
    typed: [],
    source: `1 Wh is 3600 J: ${SP811}`,
  },
];

export const CHARGE: readonly UnitRow[] = [
  {
    symbol: "Ah",
    singular: "amp-hour",
    plural: "amp-hours",
    toBase: 1,
    typed: [
      "amp hour",
      "amp hours",
      "amphour",
      "amphours",
      "ampere-hour",
      "ampere-hours",
      "ampere hour",
      "ampere hours",
      "A h",
      "ahr",
    ],
    source: DEFINITION,
  },
  {
    symbol: "mAh",
    singular: "milliamp-hour",
    plural: "milliamp-hours",
    toBase: 1e-3,
    typed: ["milliamp hour", "milliamp hours", "milliampere-hours", "mA h"],
    source: SI,
  },
];

export const VOLTAGE: readonly UnitRow[] = [
  {
    symbol: "V",
    singular: "volt",
    plural: "volts",
    toBase: 1,
    typed: ["vdc", "v dc", "volts dc", "volt dc", "vac", "v ac", "volts ac"],
    source: SI,
  },
  { symbol: "mV", singular: "millivolt", plural: "millivolts", toBase: 1e-3, typed: [], source: SI },
  { symbol: "kV", singular: "kilovolt", plural: "kilovolts", toBase: 1e3, typed: [], source: SI },
];

export const CURRENT: readonly UnitRow[] = [
  { symbol: "A", singular: "amp", plural: "amps", toBase: 1, typed: ["ampere", "amperes"], source: SI },
  {
    symbol: "mA",
    singular: "milliamp",
    plural: "milliamps",
    toBase: 1e-3,
    typed: ["milliampere", "milliamperes"],
    source: SI,
  },
];

export const FREQUENCY: readonly UnitRow[] = [
  { symbol: "Hz", singular: "hertz", plural: "hertz", toBase: 1, typed: [], source: SI },
  { symbol: "kHz", singular: "kilohertz", plural: "kilohertz", toBase: 1e3, typed: [], source: SI },
  { symbol: "MHz", singular: "megahertz", plural: "megahertz", toBase: 1e6, typed: [], source: SI },
  { symbol: "GHz", singular: "gigahertz", plural: "gigahertz", toBase: 1e9, typed: ["gig"], source: SI },
];

export const GAIN: readonly UnitRow[] = [
  {
    symbol: "dBi",
    singular: "decibel over isotropic",
    plural: "decibels over isotropic",
    toBase: 1,
    // Data sheets that say only "dB" for an antenna nearly always mean dBi (common practice, no source).
    typed: ["dB", "decibel", "decibels"],
    source: DEFINITION,
  },
  {
    symbol: "dBd",
    singular: "decibel over a dipole",
    plural: "decibels over a dipole",
    toBase: 1,
    baseOffset: 2.15,
    typed: [],
    source: "a half-wave dipole has 2.15 dBi: textbook figure, from memory",
  },
];

export const LEVEL: readonly UnitRow[] = [
  {
    symbol: "dBm",
    singular: "decibel-milliwatt",
    plural: "decibel-milliwatts",
    toBase: 1,
    typed: ["dB", "decibel", "decibels", "decibel milliwatts"],
    source: DEFINITION,
  },
  {
    symbol: "dBW",
    singular: "decibel-watt",
    plural: "decibel-watts",
    toBase: 1,
    baseOffset: 30,
    typed: ["decibel watts"],
    source: "1 W is 1000 mW: 10 log10(1000) = 30, worked by hand",
  },
];

export const LOSS: readonly UnitRow[] = [
  { symbol: "dB", singular: "decibel", plural: "decibels", toBase: 1, typed: ["dbs"], source: DEFINITION },
];

export const BITRATE: readonly UnitRow[] = [
  {
    symbol: "Mbit/s",
    singular: "megabit per second",
    plural: "megabits per second",
    toBase: 1e6,
    typed: [
      "Mbps",
      "mbps",
      "Mb/s",
      "Mb",
      "mbits",
      "mbit",
      "megabit",
      "megabits",
      "megabits a second",
      "mbits/s",
    ],
    source: SI,
  },
  {
    symbol: "kbit/s",
    singular: "kilobit per second",
    plural: "kilobits per second",
    toBase: 1e3,
    typed: ["kbps", "Kbps", "kb/s", "Kb/s", "kbits", "kbit", "kilobits", "kilobits a second", "kbits/s"],
    source: SI,
  },
  {
    symbol: "Gbit/s",
    singular: "gigabit per second",
    plural: "gigabits per second",
    toBase: 1e9,
    typed: ["Gbps", "gbps", "Gb/s", "gbits", "gbit", "gigabit", "gigabits", "gigabits a second"],
    source: SI,
  },
  // Bytes differ from bits by one capital letter and a factor of eight, so their short forms are taken letter for letter.
  {
    symbol: "MB/s",
    singular: "megabyte per second",
    plural: "megabytes per second",
    toBase: 8e6,
    typed: ["MBps", "MB", "mbyte/s", "megabytes a second", "megabytes"],
    source: `${SI}; 8 bits to the byte`,
  },
  {
    symbol: "kB/s",
    singular: "kilobyte per second",
    plural: "kilobytes per second",
    toBase: 8e3,
    typed: ["kBps", "KB/s", "KBps", "kbyte/s", "kilobytes a second", "kilobytes"],
    source: `${SI}; 8 bits to the byte`,
  },
];

export const FRAME_RATE: readonly UnitRow[] = [
  {
    symbol: "frames/s",
    singular: "frame per second",
    plural: "frames per second",
    toBase: 1,
    typed: [
      "fps",
      "frame/s",
      "frames a second",
      "frame a second",
      "frames",
      "pictures a second",
      "images a second",
    ],
    source: DEFINITION,
  },
  {
    symbol: "frames/min",
    singular: "frame per minute",
    plural: "frames per minute",
    toBase: 1 / 60,
    typed: [
      "frame/min",
      "frames a minute",
      "frame a minute",
      "pictures a minute",
      "picture a minute",
      "images a minute",
    ],
    source: DEFINITION,
  },
];
