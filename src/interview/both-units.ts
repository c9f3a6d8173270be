/** What a flow writes once, made into what is shown to those who think in metres and to those who think in feet. */
import { convert, type UnitSystem } from "../core/units/index.ts";

/** What is read here of a question; its other parts stay. */
interface Asked {
  readonly kind: string;
  readonly label: string;
  readonly ask: string;
  readonly hint: string;
  readonly why: string;
  readonly how: string;
  readonly unsure: StandIn<unknown>;
  readonly options?: readonly { readonly label: string }[];
  readonly unit?: string;
  readonly alsoUnit?: string;
  readonly possible?: Range;
  readonly usual?: Range;
}
interface StandIn<T> {
  readonly use: T;
  readonly because: string;
}
interface Range {
  readonly min: number;
  readonly max: number;
}

/** Enough digits that going to the other unit and back gives the same figure. */
const digits = 12;
export const converted = (value: number, from: string, to: string): number =>
  from === to ? value : Number(convert({ value, from, to }).toPrecision(digits));

function threeDigits(value: number, round: (value: number) => number): number {
  if (value === 0) return 0;
  const step = 10 ** (Math.floor(Math.log10(Math.abs(value))) - 2);
  return Number((round(value / step) * step).toPrecision(3));
}

/** "barn [7 m|25 ft] high": a figure that is round in both systems is written for both, the metric one first. */
export const wordsIn = (units: UnitSystem, text: string): string =>
  text.includes("[") ? text.replace(/\[([^[\]|]*)\|([^[\]|]*)\]/g, units === "us" ? "$2" : "$1") : text;

/** A stand-in and its reason in the words of these units. */
export const standInIn = <T>(units: UnitSystem, { use, because }: StandIn<T>): StandIn<T> => ({
  use: (typeof use === "string" ? wordsIn(units, use) : use) as T,
  because: wordsIn(units, because),
});

/** The question in the words of these units, and with its two units changed over where it has two and they are asked for. */
export function questionIn<Q extends Asked>(units: UnitSystem, question: Q): Q {
  const said = (text: string) => wordsIn(units, text);
  const { label, ask, hint, why, how, options } = question;
  const unsure = standInIn(units, question.unsure);
  return {
    ...question,
    label: said(label),
    ask: said(ask),
    hint: said(hint),
    why: said(why),
    how: said(how),
    unsure,
    ...(options && { options: options.map((option) => ({ ...option, label: said(option.label) })) }),
    ...(units === "us" ? changedOver(question, unsure) : {}),
  };
}

/** The parts that go with the unit. Limits are shown in refusals: three digits, rounded outwards so that no value falls out. */
function changedOver({ unit, alsoUnit, possible, usual }: Asked, unsure: StandIn<unknown>): Partial<Asked> {
  if (unit === undefined || alsoUnit === undefined) return {};
  const other = (value: number): number => converted(value, unit, alsoUnit);
  const around = ({ min, max }: Range): Range => ({
    min: threeDigits(other(min), Math.floor),
    max: threeDigits(other(max), Math.ceil),
  });
  return {
    unit: alsoUnit,
    alsoUnit: unit,
    ...(possible && { possible: around(possible) }),
    ...(usual && { usual: around(usual) }),
    unsure: typeof unsure.use === "number" ? { ...unsure, use: other(unsure.use) } : unsure,
  };
}
