/** Numbers inside sentences: plain, rounded, without a unit table. */
import { convert, MONTH_NAMES, type Saying } from "../../core/units/index.ts";

/** The wire of what keeps a lithium bank warm, as tables and lists name it. */
export const HEATER_RUN = "Battery to battery heater";
/** What all loads hang on, behind the disconnect. */
export const MAIN_RUN = "Battery to load bus";

/** Rounded to so many places, trailing zeros dropped: 10, 6.5, 0.25. */
export function fixed(value: number, places: number): string {
  const text = value.toFixed(places);
  return Number(text) === 0 ? "0" : places > 0 ? text.replace(/\.?0+$/, "") : text;
}

/** Distances to keep and heights to build, up to a tenth of a metre or a whole foot: never rounded down. */
export function atLeast(said: Saying, valueM: number): string {
  const up = (value: number, places: number) => Math.ceil(value * 10 ** places - 1e-9) / 10 ** places;
  return said.either(
    said(up(valueM, 1), "m", 1),
    `${up(convert({ value: valueM, from: "m", to: "ft" }), 0)} ft`,
  );
}

/** Distances to a scene and its width: paced out or guessed, so that two digits are meant. */
export const paced = (said: Saying, valueM: number, places = 1): string =>
  said.either(said(valueM, "m", places), said(valueM, "m", { digits: 2 }));

/** Of holes: to a centimetre or an inch, never shallower than worked. */
export const dug = (said: Saying, valueM: number): string => said(valueM, "m", { places: 2, safe: "up" });

/** The bags in which dry concrete mix is sold to this reader: the lighter of the common ones. */
export function bagsFor(said: Saying, footing: { readonly bags25Kg: number; readonly bags50Lb: number }) {
  return said.system === "us"
    ? ({ count: footing.bags50Lb, each: "50 lb", kg: 22.68 } as const)
    : ({ count: footing.bags25Kg, each: "25 kg", kg: 25 } as const);
}

/** A conductor as it is bought there; where that is by square millimetres, those who think in gauges read the gauge first. */
export const conductorText = (
  said: Saying,
  { sold, awg }: { readonly sold: string; readonly awg: string },
): string => said.either(sold, sold === awg ? awg : `${awg} (${sold})`);

/** As it is, without noise of arithmetic. */
export function plain(value: number): string {
  return fixed(value, 3);
}

/** Dark hours of a year: "about 62 dark hours a year", "under one dark hour a year". */
export function darkHoursText(hours: number): string {
  return hours < 1 ? "under one dark hour a year" : `about ${fixed(hours, 0)} dark hours a year`;
}

export function monthName(month: number): string {
  return MONTH_NAMES[month]!;
}

/** Months in words, runs drawn together, also over the turn of the year: "November to January", "March and July". */
export function monthSpans(months: readonly number[]): string {
  const isIn = (month: number) => months.includes((month + 12) % 12);
  if (months.length === 12) return "every month";
  const runs = months
    .filter((month) => !isIn(month - 1))
    .map((from) => {
      let length = 1;
      while (isIn(from + length)) length += 1;
      const last = monthName((from + length - 1) % 12);
      return length === 1 ? last : `${monthName(from)} ${length === 2 ? "and" : "to"} ${last}`;
    });
  return runs.join(", ");
}
