/** Which stages rest on which answers and on which stages before them, as data. */
import { type Brief, type Given, type TopicId, topicIds } from "../brief.ts";
import { type StageName, stageNames } from "../design.ts";

interface RestsOn {
  readonly topics: readonly TopicId[];
  readonly stages: readonly StageName[];
}

export const restsOn: Readonly<Record<StageName, RestsOn>> = {
  climate: { topics: ["place"], stages: [] },
  sun: { topics: ["place", "loads", "hours", "view", "power"], stages: ["climate"] },
  loads: { topics: ["loads", "hours", "view", "power"], stages: ["climate", "sun"] },
  reliability: {
    topics: ["place", "loads", "hours", "autonomy", "power", "parts"],
    stages: ["climate", "sun", "loads"],
  },
  battery: {
    topics: ["autonomy", "power", "parts"],
    stages: ["climate", "sun", "loads", "reliability"],
  },
  array: {
    topics: ["place", "autonomy", "power", "parts"],
    stages: ["climate", "sun", "loads", "reliability", "battery"],
  },
  view: { topics: ["place", "view", "loads", "hours"], stages: [] },
  link: { topics: ["place", "link", "autonomy", "mounting"], stages: ["climate", "view"] },
  mounting: {
    topics: ["place", "mounting", "view"],
    stages: ["sun", "loads", "battery", "array", "link"],
  },
  wiring: {
    topics: ["place", "loads", "power", "parts"],
    stages: ["climate", "loads", "battery", "array", "mounting"],
  },
  parts: {
    topics: ["parts"],
    stages: ["climate", "sun", "loads", "battery", "array", "view", "link", "mounting", "wiring"],
  },
  money: { topics: ["money"], stages: ["parts"] },
};

/**
 * Inputs that move a figure of another topic's stage by a tenth at most, and so do not make it provisional: whether a radio of
 * the builder's own may hang on the bank without a converter.
 */
export const minorInputs: readonly string[] = ["brief.parts.radio"];

/** A stage and every stage it rests on, however far down. */
export function stagesUnder(stage: StageName): ReadonlySet<StageName> {
  const under = new Set<StageName>([stage]);
  for (const below of restsOn[stage].stages) for (const one of stagesUnder(below)) under.add(one);
  return under;
}

/** Every topic that a stage rests on, however far down. */
export function topicsUnder(stage: StageName): ReadonlySet<TopicId> {
  return new Set([...stagesUnder(stage)].flatMap((one) => restsOn[one].topics));
}

/** Stages that rest on a question still open, or on a place that nobody knows. */
export function provisionalStages(
  brief: Brief,
  given: { readonly hasClimate: boolean },
): readonly StageName[] {
  return stageNames.filter(
    (stage) =>
      (!given.hasClimate && stagesUnder(stage).has("climate")) ||
      [...topicsUnder(stage)].some((topic) => brief.openTopics.includes(topic)),
  );
}

/** One answer of a brief that is Mastwright's own stand-in. */
export interface AssumedAnswer {
  readonly topic: TopicId;
  /** Path below the brief: "mounting.gustMPerS", "loads.devices.0.dayW". */
  readonly path: string;
  readonly value: unknown;
}

/** The stand-ins a brief really uses. A stand-in of a question that another answer made needless counts in no sum. */
export function assumedAnswers(brief: Brief): readonly AssumedAnswer[] {
  const found: AssumedAnswer[] = [];
  const visit = (topic: TopicId, path: string, value: unknown) => {
    if (typeof value !== "object" || value === null) return;
    if (isGiven(value)) {
      if (value.origin === "assumed" && isCalledFor(path, brief)) {
        found.push({ topic, path, value: value.value });
      }
      return;
    }
    for (const [key, below] of Object.entries(value)) visit(topic, `${path}.${key}`, below);
  };
  for (const topic of topicIds) visit(topic, topic, brief[topic]);
  return found;
}

/** Whether an answer enters any sum, given the others. */
function isCalledFor(path: string, brief: Brief): boolean {
  const { autonomy, mounting, link, power } = brief;
  const consequence = autonomy.consequence.value;
  const carrier = link.carrier.value;
  switch (path) {
    // No figures of one's own is no stand-in for anything, and with one source there is nothing to trust more.
    case "place.ownSun":
    case "place.trustedSun":
      return false;
    case "autonomy.askedDays":
      return consequence === "days";
    case "autonomy.askedDarkHours":
      return consequence === "darkHours";
    // Otherwise it is the same question as whether there is a wire.
    case "mounting.freeGroundM":
      return mounting.overheadLine.value === "yes";
    case "mounting.wallAzimuthDeg":
      return mounting.support.value === "wall";
    case "mounting.poleDiameterMm":
    case "mounting.poleHeightM":
      return mounting.support.value === "existingPole";
    case "mounting.soil":
    case "mounting.frostDepthM":
      return mounting.support.value === "newMast";
    case "power.batteryHeaterW":
      return brief.power.chemistry.value === "lifepo4";
    case "power.controller":
      return brief.parts.controller === null;
    case "power.heaviestBlockKg":
      return brief.parts.battery === null;
    case "power.largestPanelW":
      return brief.parts.panel === null;
    case "power.isTiltChanged":
      return power.isTiltChanged.value;
    case "link.distanceM":
      return carrier === "radio" || carrier === "cable";
    case "link.sight":
    case "link.farHeightM":
    case "link.otherPosts":
      return carrier === "radio";
    // The same question as the distance; level ground is said where the path is told.
    case "link.far":
    case "link.ground":
      return false;
    case "link.between":
      return carrier === "radio" && ["trees", "buildings", "ground"].includes(link.sight.value);
    default:
      return true;
  }
}

function isGiven(value: object): value is Given<unknown> {
  return "origin" in value && "isAnswered" in value;
}
