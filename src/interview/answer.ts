/** What a typed line is as an answer to the question at hand. Nothing is decided here but that; session.ts acts on it. */

import { readObstacles } from "../core/link/index.ts";
import { bearingAndDistance, readCoordinates } from "../core/place/index.ts";
import { readHorizon } from "../core/sun/index.ts";
import { convert, formatNumber, formatQuantity, sayingIn } from "../core/units/index.ts";
import type { Origin, Site, Spot } from "../design/brief.ts";
import type {
  Answer,
  GroundReading,
  Line,
  PlaceHints,
  PlaceMatch,
  PlaceReading,
  StoredValue,
  SunReading,
  Units,
  Walked,
} from "./conversation.ts";
import type { HorizonQuestion, QuantityQuestion } from "./define.ts";
import {
  type AskedInstead,
  forcedText,
  type QuantityHeard,
  type Refusal,
  readChoiceAmongWords,
  readClockRange,
  readQuantity,
  readQuantityAmongWords,
  refusalText,
} from "./read/index.ts";
import { exampleOf, usualText } from "./shown.ts";
import { quantityValue } from "./value.ts";
import { labelOf } from "./walk.ts";

export type Reading =
  /** `adds`: one sentence on which end is used of an answer that leaves room. */
  | { readonly kind: "taken"; readonly answer: Answer; readonly adds: string | null }
  /** Possible but not likely: `says` asks whether to keep it. */
  | { readonly kind: "unusual"; readonly answer: Answer; readonly says: string }
  | { readonly kind: "refused"; readonly text: string }
  /** No answer but a question about this one, or a sentence that says only that nobody knows. */
  | { readonly kind: "asked"; readonly command: AskedInstead["command"] }
  /** To be done only after a yes. */
  | { readonly kind: "consent"; readonly says: string }
  | { readonly kind: "places"; readonly matches: readonly PlaceMatch[] };

/** The readers that need more than the text: places, files. */
export interface Readers {
  readonly readPlace: (text: string, hints: PlaceHints) => PlaceReading;
  readonly readSun: (text: string, site: Site | null, isAgreed: boolean, units: Units) => SunReading;
  readonly readGround: (text: string, line: Line) => GroundReading;
  /** The place answered so far. */
  readonly site: Site | null;
  /** Whether it was given by coordinates of its own, not by the name of a town near it. */
  readonly isSiteExact: boolean;
  /** The line whose length the question of this id holds. */
  readonly lineOf: (id: string) => Line;
  readonly isAgreed: boolean;
  /** Of the brief. */
  readonly currency: string;
  readonly units: Units;
}

/** A line as an answer. */
export function readAnswer(text: string, walked: Walked, readers: Readers): Reading {
  const { question } = walked;
  const words = forcedText(text);
  const refused = (refusal: Refusal): Reading => ({
    kind: "refused",
    text: refusalSentence(refusal, walked),
  });
  const taken = (value: StoredValue, adds: string | null = null): Extract<Reading, { kind: "taken" }> => ({
    kind: "taken",
    answer: { typed: words.trim(), value, origin: "estimate" },
    adds,
  });
  if (words.trim() === "") return refused({ code: "empty" });
  switch (question.kind) {
    case "quantity": {
      const heard = readQuantityAmongWords(words, question);
      if (heard.ok) return quantityReading(words.trim(), heard, question);
      const spot = question.alsoSpot === true ? readCoordinates(words) : null;
      return spot?.kind === "coordinates" && heard.refusal.code !== "ambiguous-comma"
        ? spotReading(words.trim(), spot, question, { ...readers, refused })
        : refused(heard.refusal);
    }
    case "choice": {
      const heard = readChoiceAmongWords(words, question.options);
      if ("command" in heard) return { kind: "asked", command: heard.command };
      return heard.ok ? taken({ kind: "choice", option: heard.id }) : refused(heard.refusal);
    }
    case "clock": {
      const heard = readClockRange(words);
      if (!heard.ok) return refused(heard.refusal);
      return taken({ kind: "clock", fromMin: heard.fromMin, toMin: heard.toMin });
    }
    case "place": {
      const near = walked.value.kind === "place" ? walked.value.site : null;
      const found = readers.readPlace(words.trim(), {
        near,
        currency: readers.currency,
        units: readers.units,
      });
      if (found.kind === "refused") return { kind: "refused", text: found.says };
      if (found.kind === "doubtful") {
        const { answer } = taken({ kind: "place", site: found.match.site });
        return { kind: "unusual", answer, says: `${found.says} Keep ${answer.typed}?` };
      }
      const [first, second] = found.matches;
      if (first === undefined) return refused({ code: "not-a-place", typed: words.trim().slice(0, 40) });
      if (second !== undefined) return { kind: "places", matches: found.matches };
      return taken({ kind: "place", site: first.site }, found.says);
    }
    case "horizon":
      return horizonReading(words.trim(), question, { refused, units: readers.units });
    case "sun": {
      const read = readers.readSun(words.trim(), readers.site, readers.isAgreed, readers.units);
      if (read.kind === "refused") return { kind: "refused", text: read.says };
      if (read.kind === "consent") return read;
      const value: StoredValue = { kind: "sun", figures: read.figures };
      const origin: Origin = read.figures === null ? "estimate" : "datasheet";
      return { kind: "taken", answer: { typed: words.trim(), value, origin }, adds: read.says };
    }
    case "obstacles":
      return obstaclesReading(words.trim(), readers.lineOf(question.along));
    case "ground": {
      const read = readers.readGround(words.trim(), readers.lineOf(question.along));
      if (read.kind === "refused") return { kind: "refused", text: read.says };
      return taken({ kind: "ground", ground: read.ground }, read.says);
    }
  }
}

/** Coordinates of the other end: a length from the place answered before, and a bearing. */
function spotReading(
  typed: string,
  { latitudeDeg, longitudeDeg }: Spot,
  question: QuantityQuestion,
  about: Pick<Readers, "site" | "isSiteExact" | "units"> & {
    readonly refused: (refusal: Refusal) => Reading;
  },
): Reading {
  const { site, isSiteExact } = about;
  if (site === null || !isSiteExact)
    return {
      kind: "refused",
      text: `Coordinates here need those of the post too, and ${site === null ? "no place is named" : `only ${site.label} is known`}. Type the distance, or change place first.`,
    };
  const spot: Spot = { latitudeDeg, longitudeDeg };
  const { distanceM, bearingDeg } = wayTo(site, spot);
  if (distanceM < onePlaceM)
    return { kind: "refused", text: "That is where the post stands: the two ends are in one place." };
  const { unit, possible } = question;
  const length = convert({ value: distanceM, from: "m", to: unit });
  const size = sayingIn(about.units)(distanceM, "m away", { digits: 3 });
  if (length > possible.max)
    return about.refused({ code: "too-large", ...possible, unit, got: length, typed: size });
  const value: StoredValue = {
    kind: "quantity",
    low: length,
    best: length,
    high: length,
    unit,
    spot,
  };
  return {
    kind: "taken",
    answer: { typed, value, origin: "measured" },
    adds: `That is ${size} from the post, at a bearing of ${formatNumber({ value: bearingDeg, digits: 3 })} deg from true north.`,
  };
}

/** Ends nearer than this are one place. */
const onePlaceM = 1;

/** From one spot to another along the ground. */
export const wayTo = (from: Spot, to: Spot) =>
  bearingAndDistance({
    fromLatitudeDeg: from.latitudeDeg,
    fromLongitudeDeg: from.longitudeDeg,
    toLatitudeDeg: to.latitudeDeg,
    toLongitudeDeg: to.longitudeDeg,
  });

/** Words about what stands along a line, said back as they were understood. */
function obstaclesReading(typed: string, { lengthM, units }: Line): Reading {
  const read = readObstacles(typed, { distanceM: lengthM, units });
  if (read.kind === "refused") return { kind: "refused", text: read.reason };
  const length = (value: number) =>
    units === "metric" ? formatQuantity({ value, unit: "m" }) : sayingIn(units)(value, "m away", 1);
  const things = read.obstacles.map(({ noun, heightM, distanceFromNearM, depthM }) => {
    const deep = depthM === undefined ? "" : `, ${length(depthM)} deep`;
    return `${noun} ${length(heightM)} high${deep}, ${length(distanceFromNearM)} from the post`;
  });
  return {
    kind: "taken",
    answer: { typed, value: { kind: "obstacles", words: typed }, origin: "estimate" },
    adds: `Understood: ${things.length === 0 ? "nothing stands between" : things.join("; ")}.`,
  };
}

/** One figure stands for all round; everything else is words or pairs. */
function horizonReading(
  typed: string,
  question: HorizonQuestion,
  { refused, units }: { readonly refused: (refusal: Refusal) => Reading; readonly units: Units },
): Reading {
  const angle = readQuantity(typed, { dimension: "angle", unit: "deg", possible: question.possible });
  if (angle.ok) {
    const elevationDeg = angle.high;
    const points = elevationDeg === 0 ? [] : [{ azimuthDeg: 0, elevationDeg }];
    const adds =
      angle.high === angle.best
        ? null
        : `To be on the safe side I use ${formatQuantity({ value: angle.high, unit: "deg" })} until you know more.`;
    const answer: Answer = {
      typed,
      value: { kind: "horizon", points },
      origin: angle.originWord ?? "estimate",
    };
    return unusualHorizon(answer, elevationDeg, question) ?? { kind: "taken", answer, adds };
  }
  const words = readHorizon(typed, { eyeHeightM: question.eyeHeightM, units });
  if (words.kind === "refused") {
    // A lone figure of the wrong kind or size is better refused as one.
    return /^\D*[\d.,]+\s*\S*$/.test(typed)
      ? refused(angle.refusal)
      : { kind: "refused", text: words.reason };
  }
  const highest = Math.max(0, ...words.horizon.map(({ elevationDeg }) => elevationDeg));
  if (highest > question.possible.max)
    return refused({
      code: "too-large",
      ...question.possible,
      unit: "deg",
      got: highest,
      typed: formatQuantity({ value: highest, unit: "deg" }),
    });
  const answer: Answer = { typed, value: { kind: "horizon", points: words.horizon }, origin: "estimate" };
  const isAssumed = words.obstacles.some((obstacle) => obstacle.isWidthAssumed);
  const fromGround = readHorizon(typed);
  const isLower =
    fromGround.kind === "profile" &&
    fromGround.obstacles.some(({ elevationDeg }, i) => elevationDeg > words.obstacles[i]!.elevationDeg);
  const adds =
    [
      ...(isLower
        ? [
            `Seen from the panel, ${units === "metric" ? formatQuantity({ value: question.eyeHeightM, unit: "m" }) : sayingIn(units)(question.eyeHeightM, "m", 1)} above the ground: ${formatQuantity({ value: highest, unit: "deg" })} at most.`,
          ]
        : []),
      ...(isAssumed
        ? ["How wide it is was not said: I take an eighth of the compass, or a tree's own width."]
        : []),
    ].join(" ") || null;
  return unusualHorizon(answer, highest, question) ?? { kind: "taken", answer, adds };
}

function unusualHorizon(answer: Answer, highestDeg: number, question: HorizonQuestion): Reading | null {
  if (highestDeg <= question.usual.max) return null;
  const size = formatQuantity({ value: highestDeg, unit: "deg" });
  return {
    kind: "unusual",
    answer,
    says: `${size} is more than usual here (usual: up to ${formatQuantity({ value: question.usual.max, unit: "deg" })}). Keep it?`,
  };
}

function quantityReading(typed: string, heard: QuantityHeard, question: QuantityQuestion): Reading {
  const value = quantityValue(heard, question);
  const answer: Answer = { typed, value, origin: heard.originWord ?? "estimate" };
  const { usual, lean } = question;
  // An open end is ours, not the builder's: only what was said can be unusual.
  const said = heard.doubt === "range" ? [heard.low, heard.high] : [heard.best];
  const odd = said.find((end) => end < usual.min || end > usual.max);
  if (odd !== undefined) {
    const size = odd > usual.max ? "more" : "less";
    const says = `${heard.heard} is ${size} than usual here (usual: ${usualText(question)}). Keep it?`;
    return { kind: "unusual", answer, says };
  }
  const adds = `To be on the safe side I use ${formatQuantity({ value: value[lean], unit: question.unit })} until you know more.`;
  return { kind: "taken", answer, adds: value[lean] === value.best ? null : adds };
}

/** Why a text was not taken, in one sentence that says what to type. */
export function refusalSentence(refusal: Refusal, walked: Walked): string {
  const { question } = walked;
  if (question.kind === "choice" && refusal.code === "empty")
    return `Type a number from 1 to ${question.options.length}. If you are not sure, type: not sure.`;
  return refusalText(refusal, { label: labelOf(walked), example: exampleOf(walked) });
}
