/** Stand-ins in words: which of them can be found out, and which are wishes that were left to Mastwright. */
import { type SaidUnit, type Saying, sayingIn } from "../../core/units/index.ts";
import type { Brief } from "../brief.ts";
import { type AssumedAnswer, assumedAnswers } from "./order.ts";
import { plain } from "./words.ts";

type Words = Readonly<Record<string, readonly [what: string, unit: SaidUnit | "W" | ""]>>;

/** Numbers that can be measured, by path: what they are called and their unit. Devices and scenes are told apart by their place. */
export const measurableWords: Words = {
  "place.soilingFrac": ["dirt on the panel", ""],
  "place.snowWeeks": ["weeks of snow on the panel", ""],
  "view.scenes.distanceM": ["distance of scene", "m"],
  "view.scenes.widthM": ["width of scene", "m"],
  "loads.devices.dayW": ["power of", "W"],
  "loads.devices.nightExtraW": ["infrared power of", "W"],
  "autonomy.visitDays": ["days until somebody comes by", ""],
  "mounting.freeGroundM": ["distance of the nearest overhead wire", "m"],
  "mounting.cameraHeightM": ["height of the camera", "m"],
  "mounting.poleDiameterMm": ["diameter of the pole", "mm"],
  "mounting.poleHeightM": ["height of the pole", "m"],
  "mounting.gustMPerS": ["design gust", "m/s"],
  "mounting.frostDepthM": ["frost depth", "m"],
  "link.distanceM": ["distance to the far end", "m away"],
  "link.farHeightM": ["height of the far end", "m"],
  "link.otherPosts": ["other posts at the far end", ""],
};

/** What can be found out and is no number. */
const lookedAtWords: Readonly<Record<string, string>> = {
  "place.site": "the place",
  "place.horizon": "what stands round the panel",
  "mounting.overheadLine": "overhead wires",
  "mounting.support": "what it is mounted on",
  "mounting.wallAzimuthDeg": "which way the wall faces",
  "mounting.soil": "the soil",
  "loads.devices.takes12V": "that it runs on 12 V:",
  "link.sight": "what lies between the radios",
  "link.between": "height and place of what stands between",
  "parts.battery": "the battery you own",
  "parts.panel": "the panel you own",
  "parts.controller": "the controller you own",
  "parts.radio": "the radio you own",
};

/** Whether somebody could look or measure; anything else is the builder's own wish. */
const isFact = ({ path }: AssumedAnswer): boolean => {
  const kind = pathKind(path);
  return kind in measurableWords || kind in lookedAtWords;
};

/** The path without the place in a list. */
export function pathKind(path: string): string {
  return path.replace(/\.\d+\./, ".");
}

/** As it is; in the other system, where nobody answered with it, as the round figure that it stands for. */
const told = (said: Saying, value: number, unit: SaidUnit): string =>
  said.either(said(value, unit, 3), said(value, unit, { digits: 2 }));

/** A measurable stand-in with its figure: "frost depth (0.6 m)". */
export function measurableCalled({ path, value }: AssumedAnswer, brief: Brief): string {
  const [, index] = /\.(\d+)\./.exec(path) ?? [];
  const [what, unit] = measurableWords[pathKind(path)]!;
  const which =
    index === undefined
      ? ""
      : path.startsWith("loads.devices")
        ? ` ${brief.loads.devices[Number(index)]!.name}`
        : ` ${Number(index) + 1}`;
  const of = value as number;
  const figure = path.endsWith("Frac")
    ? `${plain(100 * of)} %`
    : unit === ""
      ? plain(of)
      : unit === "W"
        ? `${plain(of)} W`
        : told(sayingIn(brief.units), of, unit);
  return `${what}${which} (${figure})`;
}

function deviceNamed(path: string, brief: Brief): string {
  const [, index] = /^loads\.devices\.(\d+)\./.exec(path) ?? [];
  return index === undefined ? "" : ` ${brief.loads.devices[Number(index)]!.name}`;
}

/** The stand-ins of a brief that somebody could replace by looking or measuring. */
export const assumedFacts = (brief: Brief): readonly AssumedAnswer[] => assumedAnswers(brief).filter(isFact);

/** The same in words, with their figures where they have any. */
export function assumedFactWords(brief: Brief): readonly string[] {
  return assumedFacts(brief).map((answer) => {
    const looked = lookedAtWords[pathKind(answer.path)];
    return looked === undefined
      ? measurableCalled(answer, brief)
      : `${looked}${deviceNamed(answer.path, brief)}`;
  });
}
