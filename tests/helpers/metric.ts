/** What a reader of feet and pounds must not meet. */

const UNIT = "mm|cm|m|km|kg|g|kN|N|Nm|kPa|Pa|MPa|°C|C|K|m2|m3|cm2|litres?|l|m\\/s|km\\/h";
const WORDS =
  /\b(centi|milli|kilo)?metres?\b|\b(centi|milli|kilo)meters?\b|\blit(re|er)s?\b|\bkilo(gram|gramme)?s?\b|\bCelsius\b|\bkelvins?\b|\bnewtons?\b|\bpascals?\b/gi;
/** A figure with a metric unit, or such a unit alone in a heading. */
const FIGURES = new RegExp(`\\d\\)? ?(?:${UNIT})(?![\\w/(])(?!['’])`, "g");
const HEADINGS = /(?<![\w/"=.#])(?:mm2|mm|cm2|cm|km|kg|Nm|m2|m3|m\/s|°C|m)(?![\w/'’=])/g;

/** Said in metric by every reader, or said beside the other unit. */
const ALLOWED: readonly RegExp[] = [
  // a wire by its gauge, its metric size in brackets
  /\d+(?:\/\d+)? AWG \([\d.]+ mm2\)/g,
  // lenses are sold in millimetres everywhere
  /lens(?: of|,)? [\d.]+ mm|lens \([\d.]+ mm\)|\d mm, [\d.]+ (?:px|points)/g,
  // sun stays in kWh/m2, which are hours of full sun
  /kWh\/m2/g,
  // latitudes of made-up places
  /(?<=Place: )\d+ N\b/g,
  // tubes are called by what they are sold as where they are sold by the millimetre
  /[\d.]+ x [\d.]+ mm/g,
  // what charge controllers are set in
  /degree Celsius \(1\.8 °F\)/g,
];

/** Metric units and words of a text, each with what stands round it. */
export function metricIn(text: string): readonly string[] {
  const rest = ALLOWED.reduce(
    (left, allowed) => left.replace(allowed, (found) => "_".repeat(found.length)),
    text,
  );
  return [FIGURES, HEADINGS, WORDS].flatMap((rule) =>
    [...rest.matchAll(rule)].map(({ index }) =>
      text.slice(Math.max(0, index - 60), index + 40).replace(/\s+/g, " "),
    ),
  );
}
