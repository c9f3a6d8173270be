/** Numbers inside sentences: plain, rounded, without a unit table. */

/** Rounded to so many places, trailing zeros dropped: 10, 6.5, 0.25. */
export function fixed(value: number, places: number): string {
  const text = value.toFixed(places);
  return Number(text) === 0 ? "0" : places > 0 ? text.replace(/\.?0+$/, "") : text;
}

/** As it is, without noise of arithmetic. */
export function plain(value: number): string {
  return fixed(value, 3);
}

const MONTHS = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
];

export function monthName(month: number): string {
  return MONTHS[month]!;
}
