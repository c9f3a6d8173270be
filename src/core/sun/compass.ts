/** The sixteen winds by their letters, clockwise from north, 22.5 deg apart. */
const WINDS = [
  "n",
  "nne",
  "ne",
  "ene",
  "e",
  "ese",
  "se",
  "sse",
  "s",
  "ssw",
  "sw",
  "wsw",
  "w",
  "wnw",
  "nw",
  "nnw",
];

/**
 * Direction of a compass word or its letters: "south-west", "southwesterly", "SW", "south south east".
 *
 * @param words  one word or several with spaces or hyphens between
 * @returns deg clockwise from true north, a multiple of 22.5; null when the words name no wind
 * @example compassDeg("south-west")  // 225
 */
export function compassDeg(words: string): number | null {
  const letters = words
    .toLowerCase()
    .replace(/[\s‐‑–-]+/g, "")
    .replace(/(north|south|east|west)(?:erly|ern|wards?)?/g, (_, wind: string) => wind.slice(0, 1));
  const index = WINDS.indexOf(letters);
  return index < 0 ? null : index * 22.5;
}

const EIGHT_WINDS = [
  "north",
  "north-east",
  "east",
  "south-east",
  "south",
  "south-west",
  "west",
  "north-west",
];

/**
 * The nearest of eight winds, in words.
 *
 * @param azimuthDeg  clockwise from true north, any turn
 * @example compassWord(160)  // "south"
 */
export function compassWord(azimuthDeg: number): string {
  return EIGHT_WINDS[((Math.round(azimuthDeg / 45) % 8) + 8) % 8]!;
}

const WIND_WORD = "(?:north|south|east|west)(?:erly|ern|wards?)?";
const WIND_LETTERS = WINDS.toReversed().join("|");

/** A compass word of up to three parts, or letters of the compass, as a source for regular expressions without case. */
export const COMPASS_PATTERN = `(?:${WIND_WORD}(?:[\\s‐‑–-]?${WIND_WORD}){0,2}|(?:${WIND_LETTERS}))(?![\\w'])`;
