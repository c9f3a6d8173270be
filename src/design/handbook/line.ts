/** One line of sums that can be followed by hand. */
import { formatNumber } from "../../core/units/index.ts";

export interface SumLine {
  /** By which text and other lines call it: "B3". */
  readonly mark: string;
  readonly what: string;
  /** How it is worked, in the numbers of the lines before it; empty where it is not worked here but given. */
  readonly sum: string;
  readonly value: number;
  /** Empty for a share or a ratio. */
  readonly unit: string;
  readonly source: string;
}

/** Four digits: what is worked again from printed figures comes out the same to a thousandth. */
export const handFigure = (value: number): string => formatNumber({ value, digits: 4 });

/** A figure with its unit. */
export const withUnit = (value: number, unit: string): string =>
  unit === "" ? handFigure(value) : `${handFigure(value)} ${unit}`;

/** Lines numbered in their order: B1, B2, ... */
export const numbered = (letter: string, lines: readonly Omit<SumLine, "mark">[]): readonly SumLine[] =>
  lines.map((line, i) => ({ mark: `${letter}${i + 1}`, ...line }));
