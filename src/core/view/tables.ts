/**
 * What can be told apart at a pixel density, by the two editions of IEC 62676-4. Newer cameras and documents use the
 * second; most guides still quote the first. Name the edition with the word.
 */
export type DensityEdition = "2014" | "2025";

export type DensityClass = {
  readonly edition: DensityEdition;
  readonly name: string;
  /** Pixels per metre at the target, at least. */
  readonly pxPerM: number;
  /** What it lets one do, in our words. */
  readonly meaning: string;
  readonly source: string;
};

const READ_2014 = "IEC/EN 62676-4:2014, as read in a national guide";
const PAPER_2014 = "IEC/EN 62676-4:2014, as read in a white paper";
const DRAFT_2025 =
  "IEC 62676-4:2025, names read in two places, numbers from a description of the draft and from memory";

/** Rising by density within each edition. */
export const DENSITY_CLASSES: readonly DensityClass[] = [
  { edition: "2014", name: "monitor", pxPerM: 12.5, meaning: "see that a crowd moves", source: READ_2014 },
  {
    edition: "2014",
    name: "detect",
    pxPerM: 25,
    meaning: "notice that someone is there",
    source: PAPER_2014,
  },
  {
    edition: "2014",
    name: "observe",
    pxPerM: 62.5,
    meaning: "see clothing and what is done",
    source: PAPER_2014,
  },
  {
    edition: "2014",
    name: "recognise",
    pxPerM: 125,
    meaning: "tell who it is among people one knows",
    source: READ_2014,
  },
  {
    edition: "2014",
    name: "identify",
    pxPerM: 250,
    meaning: "tell who a stranger is, beyond doubt",
    source: PAPER_2014,
  },
  {
    edition: "2014",
    name: "inspect",
    pxPerM: 1000,
    meaning: "examine small detail",
    source: "IEC/EN 62676-4:2014, from memory",
  },
  { edition: "2025", name: "overview", pxPerM: 20, meaning: "see the scene as a whole", source: DRAFT_2025 },
  {
    edition: "2025",
    name: "outline",
    pxPerM: 40,
    meaning: "notice that someone is there",
    source: DRAFT_2025,
  },
  { edition: "2025", name: "discern", pxPerM: 80, meaning: "see what is done", source: DRAFT_2025 },
  {
    edition: "2025",
    name: "perceive",
    pxPerM: 125,
    meaning: "tell who it is among people one knows",
    source: DRAFT_2025,
  },
  {
    edition: "2025",
    name: "characterise",
    pxPerM: 250,
    meaning: "tell who a stranger is",
    source: DRAFT_2025,
  },
  {
    edition: "2025",
    name: "validate",
    pxPerM: 500,
    meaning: "tell who a stranger is, beyond doubt",
    source: DRAFT_2025,
  },
  { edition: "2025", name: "scrutinise", pxPerM: 1500, meaning: "examine small detail", source: DRAFT_2025 },
];

export type Sensor = {
  /** The trade's inch type, which is NOT a width. */
  readonly type: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly widthMm: number;
  readonly heightMm: number;
};

function sensor(shape: {
  readonly type: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly pitchUm: number;
}): Sensor {
  const { type, widthPx, heightPx, pitchUm } = shape;
  return {
    type,
    widthPx,
    heightPx,
    widthMm: (widthPx * pitchUm) / 1000,
    heightMm: (heightPx * pitchUm) / 1000,
  };
}

/**
 * Common image sensors: the width comes from pixel pitch times pixels, not from the inch type. Pitches from memory; a
 * data sheet's figures take their place.
 */
export const COMMON_SENSORS: readonly Sensor[] = [
  sensor({ type: "1/3", widthPx: 1280, heightPx: 720, pitchUm: 3.75 }),
  sensor({ type: "1/2.8", widthPx: 1920, heightPx: 1080, pitchUm: 2.9 }),
  sensor({ type: "1/2.7", widthPx: 1920, heightPx: 1080, pitchUm: 3.0 }),
  sensor({ type: "1/2.9", widthPx: 1920, heightPx: 1080, pitchUm: 2.8 }),
  sensor({ type: "1/2.7", widthPx: 2688, heightPx: 1520, pitchUm: 2.0 }),
  sensor({ type: "1/2.8", widthPx: 2592, heightPx: 1944, pitchUm: 2.0 }),
  sensor({ type: "1/1.8", widthPx: 3840, heightPx: 2160, pitchUm: 2.0 }),
];

/** Widths in pixels that cameras are sold with, rising (common practice, no source). */
export const COMMON_WIDTHS_PX: readonly number[] = [1280, 1920, 2560, 2688, 3072, 3840];

/** Focal lengths that fixed cameras are sold with or take as a lens of their own, mm, rising (common practice, no source). */
export const COMMON_FOCAL_LENGTHS_MM: readonly number[] = [2.8, 4, 6, 8, 12, 16, 25, 50];
