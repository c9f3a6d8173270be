/** A flow of a few lines with every kind of question and rule, and a design of two figures, for tests of the engine. */
import type { Site } from "../../src/design/brief.ts";
import type { Finding } from "../../src/design/finding.ts";
import type {
  Answers,
  Effect,
  Interview,
  PlaceMatch,
  Said,
  State,
  Walked,
} from "../../src/interview/conversation.ts";
import { choice, clock, place, quantity, type Telling, topic } from "../../src/interview/define.ts";
import { begin, update } from "../../src/interview/session.ts";
import { ruleValue } from "../../src/interview/value.ts";

const power = { dimension: "power", unit: "W", lean: "high", possible: { min: 0, max: 60 } } as const;

const placeTopic = topic({ id: "place", version: 1, title: "Place", opening: "First the place." })
  .ask(
    "where",
    place({
      label: "Place",
      ask: "Where will the post stand?",
      hint: "A town, or coordinates. Example: 52.30, -3.51",
      why: "The place sets the sun.",
      how: "Look at a map.",
      unsure: { use: null, because: "no place can stand in for yours" },
    }),
  )
  .ask(
    "height",
    quantity({
      label: "Height",
      ask: "How high is the mast?",
      hint: "Example: 4 m",
      why: "A higher mast bends more.",
      how: "Use a tape.",
      dimension: "length",
      unit: "m",
      alsoUnit: "ft",
      lean: "high",
      possible: { min: 1, max: 30 },
      usual: { min: 2, max: 10 },
      unsure: { use: 4, because: "most masts are 3 to 5 m" },
    }),
  )
  .end();

const loadsTopic = topic({ id: "loads", version: 1, title: "Loads", opening: "Now the power." }, [placeTopic])
  .ask(
    "camera",
    quantity({
      ...power,
      label: "Camera",
      ask: "How many watts does the camera draw?",
      hint: "It is on the label. Example: 5 W, or 4.2 W measured",
      why: "The camera runs most.",
      how: "Use a meter.",
      usual: { min: 2, max: 12 },
      unsure: { use: 5, because: "fixed cameras draw 3 to 6 W." },
    }),
  )
  .ask(
    "night",
    choice({
      label: "Night",
      ask: "What must it see at night?",
      hint: "Infrared burns all night.",
      why: "The light is fed by the battery alone.",
      how: "Ask who looks at the picture.",
      options: [
        { id: "none", label: "Nothing", aliases: ["no"] },
        { id: "infrared", label: "People, by infrared light" },
        { id: "stop", label: "Stop" },
      ],
      unsure: { use: "infrared", because: "it is the safe side" },
    }),
  )
  .ask(
    "infrared",
    quantity({
      ...power,
      label: "Infrared",
      ask: "How many watts more does its light draw?",
      hint: "Example: 4 W",
      why: "It burns all night.",
      how: "Cover the sensor.",
      usual: { min: 1, max: 10 },
      unsure: { use: 4, because: "it adds 2 to 6 W" },
    }),
    (given) => ({
      when: given(["loads.night"], (night) => night === "infrared"),
      suggest: given(["loads.camera"], (camera) => ({
        use: camera / 2,
        because: "about half the camera's own",
      })),
    }),
  )
  .repeat("extra", { atMost: 3 }, (device) =>
    device
      .ask(
        "kind",
        choice({
          label: "Other device",
          ask: "Is anything else to be powered?",
          hint: "Anything with a plug counts.",
          why: "Small devices add up.",
          how: "Look at your bench.",
          options: [
            { id: "none", label: "Nothing else", aliases: ["no"] },
            { id: "lamp", label: "A lamp" },
            { id: "sensor", label: "A sensor" },
          ],
          unsure: { use: "none", because: "it can be added later" },
        }),
      )
      .ask(
        "power",
        quantity({
          ...power,
          label: "Device's power",
          ask: "How many watts does it draw?",
          hint: "Example: 10 W",
          why: "It runs all day.",
          how: "Read its label.",
          usual: { min: 0.1, max: 30 },
          unsure: { use: 10, because: "a usual size" },
        }),
        (given) => ({
          suggest: given(["each.kind"], (kind) => ({
            use: kind === "lamp" ? 8 : 1,
            because: `a usual ${kind}`,
          })),
        }),
      )
      .ask(
        "count",
        quantity({
          label: "How many lamps",
          ask: "How many such lamps?",
          hint: "Count them.",
          why: "They add up.",
          how: "Count them.",
          dimension: "count",
          unit: "",
          isWhole: true,
          lean: "high",
          possible: { min: 1, max: 20 },
          usual: { min: 1, max: 6 },
          unsure: { use: 1, because: "the fewest" },
        }),
        (given) => ({ when: given(["each.kind"], (kind) => kind === "lamp") }),
      ),
  )
  .end();

const hoursTopic = topic({ id: "hours", version: 1, title: "Hours", opening: "Now the hours." }, [loadsTopic])
  .ask(
    "span",
    clock({
      label: "Hours",
      ask: "When does it run?",
      hint: "Example: 6:00 to 18:00",
      why: "Hours times watts.",
      how: "Think of who looks.",
      unsure: { use: { fromMin: 0, toMin: 1440 }, because: "all day is safe" },
    }),
  )
  .ask(
    "snow",
    quantity({
      label: "Snow",
      ask: "For how many weeks does snow lie?",
      hint: "Example: 3 weeks",
      why: "Snow covers panels.",
      how: "Ask a neighbour.",
      dimension: "duration",
      unit: "weeks",
      lean: "high",
      possible: { min: 0, max: 26 },
      usual: { min: 0, max: 8 },
      unsure: { use: 2, because: "a guess" },
    }),
    (given) => ({
      when: given.site(["loads.extra"], (site, extra) => (site?.coldestMonthC ?? 9) < 0 || extra.length > 2),
      suggest: given.site([], (site) => ({
        use: site === null ? 0 : -site.coldestMonthC,
        because: "the cold",
      })),
    }),
  )
  .end();

const site = (label: string, latitudeDeg: number): Site => ({
  label,
  latitudeDeg,
  longitudeDeg: -3.5,
  elevationM: null,
  countryCode: null,
});
const match = (label: string, latitudeDeg: number): PlaceMatch => ({ label, site: site(label, latitudeDeg) });
const gazetteer: ReadonlyMap<string, readonly PlaceMatch[]> = new Map([
  ["hill", [match("Hill, GB", 52)]],
  ["fell", [match("Fell, NO", 65)]],
  ["newport", [match("Newport, Wales, GB", 51.6), match("Newport, Shropshire, GB", 52.8)]],
]);

/** Figures of a design that a test can work in its head: watts in all, and Wh a day where the place is known. */
export interface SmallDesign {
  readonly watts: number;
  readonly dailyWh: number | null;
  readonly supply: string;
  readonly snowWeeks: number;
}

function numberAt(walked: readonly Walked[], id: string): number {
  const found = walked.find((each) => each.id === id);
  return found === undefined ? 0 : (ruleValue(found.question, found.value) as number);
}

function designOf(all: readonly Walked[]): SmallDesign {
  const walked = all.filter(({ isAsked }) => isAsked);
  const extra = [1, 2, 3].map(
    (n) => numberAt(walked, `loads.extra.${n}.power`) * (numberAt(walked, `loads.extra.${n}.count`) || 1),
  );
  const watts = [numberAt(walked, "loads.camera"), numberAt(walked, "loads.infrared"), ...extra].reduce(
    (sum, each) => sum + each,
  );
  const where = walked.find((each) => each.id === "place.where")?.value;
  const isKnown = where?.kind === "place" && where.site !== null;
  return {
    watts,
    dailyWh: isKnown ? watts * 24 : null,
    supply: watts > 20 ? "large" : "small",
    snowWeeks: numberAt(walked, "hours.snow"),
  };
}

const tellings: readonly Telling<SmallDesign>[] = [
  {
    id: "daily",
    figure: (design) => design.dailyWh,
    step: 10,
    say: (design, before) =>
      `It takes ${design.dailyWh} Wh a day${before === null ? "" : `, before ${before}`}.`,
    label: "Energy",
    short: (design) => `${design.dailyWh} Wh a day`,
  },
  {
    id: "watts",
    figure: (design) => design.watts,
    say: (design) => `All devices draw ${design.watts} W.`,
    label: "Power",
    short: (design) => `${design.watts} W`,
  },
  {
    id: "supply",
    figure: (design) => design.supply,
    say: (design) => `The supply is ${design.supply}.`,
    label: "Supply",
    short: (design) => design.supply,
  },
  {
    id: "snow",
    figure: (design) => design.snowWeeks,
    say: (design) => `Snow lies for ${design.snowWeeks} weeks.`,
    label: "Snow",
    short: (design) => `${design.snowWeeks} weeks`,
  },
];

const finding = (id: string, severity: Finding["severity"], says: string): Finding => ({
  id,
  severity,
  says,
  change: "",
  numbers: {},
  topics: [],
});

function findingsOf({ watts }: SmallDesign): readonly Finding[] {
  const found: Finding[] = [];
  if (watts > 8) found.push(finding("loads.note", "note", "More than a camera."));
  if (watts > 40) found.push(finding("loads.much", "stop", `${watts} W is too much.`));
  else if (watts > 14) found.push(finding("loads.much", "caution", `${watts} W is a lot.`));
  return found;
}

export const smallInterview: Interview<SmallDesign> = {
  topics: [placeTopic, loadsTopic, hoursTopic],
  tellings,
  siteFacts: ({ latitudeDeg }) => ({
    coldestMonthC: latitudeDeg > 60 ? -6 : 3,
    designColdC: -10,
    designHotC: 30,
    ghiDailyKWhPerM2ByMonth: Array(12).fill(1),
    absLatitudeDeg: latitudeDeg,
  }),
  readSun: () => ({ kind: "figures", figures: null, says: null }),
  readPlace: (text) => {
    const matches = gazetteer.get(text.toLowerCase());
    return matches === undefined
      ? { kind: "refused", says: `I could not find "${text}".` }
      : { kind: "sites", matches };
  },
  readGround: () => ({ kind: "ground", ground: null, says: null }),
  designOf,
  findingsOf,
  optionNotes: () => ({}),
  charts: () => [],
  details: () => [],
  outlook: () => ({ lines: [], chart: null }),
};

export interface Talk {
  readonly state: State;
  readonly effects: readonly Effect[];
  readonly said: readonly Said[];
}

/** The state after these lines, and what the last one brought about. */
export function talk(from: State, ...lines: readonly string[]): Talk {
  let state = from;
  let effects: readonly Effect[] = [];
  for (const text of lines) [state, effects] = update(smallInterview, state, { type: "line", text });
  return { state, effects, said: effects.flatMap((effect) => (effect.type === "say" ? [effect.said] : [])) };
}

export const started = (answers: Answers = {}): State =>
  update(smallInterview, begin({ name: "gate", currency: "EUR", answers }), { type: "start" })[0];

/** One line an answer, to the end of the small flow with nothing beyond the camera. */
export const straight: readonly string[] = ["hill", "4 m", "5 W", "1", "1", "6:00 to 18:00"];
