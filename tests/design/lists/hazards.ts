/**
 * Which words of a step mean that it can hurt somebody, and how. The steps are read as a safety officer reads them: by what
 * is done, not by who wrote it, so a new step without its caution fails. Judgement; no source.
 */
import type { Design, Hazard, List, Step } from "../../../src/design/index.ts";

interface Rule {
  readonly hazard: Hazard | ((design: Design) => Hazard | null);
  /** In what is done. */
  readonly when: RegExp;
  readonly unless?: RegExp;
  /** Only where this holds of the design. */
  readonly only?: (design: Design) => boolean;
}

const panelsOnFrame = ({ mounting }: Design) => mounting.panelMount === "ground frame";
const onRoof = ({ brief }: Design) => brief.mounting.support.value === "roof";
const onPole = ({ brief }: Design) => brief.mounting.support.value === "existingPole";
const isNew = ({ brief }: Design) => brief.mounting.support.value === "newMast";
/** Work above the ground, whatever the post hangs on. */
const climbing =
  /\bladder|\bclimb|\bhang the (?!empty)|\bempty brackets|\bfix the brackets|at each clamp|\bpull the cables|\baim the|router's antenna|\bclamps|look at aim|look at the aim|height of the radio \(/i;
const panelWork = /\b(fix|wash|clear|clean|tilt|cover) the (?:\w+ )?panels?\b(?! frame)/i;
/** Hands or tools near the battery. */
const batteryWork =
  /\bbatter(y|ies)\b|\bblocks?\b|\bfuses?\b|\bterminals?\b|\bdisconnect a little|in the box|open the box/i;
/** Read on a screen, looked at from afar, or done at the panels, which have fuses of their own. */
const fromAfar =
  /from home|^stand on the spot|^ask an electrician|panels' plugs|with the panels still covered/i;
const panelVerbs =
  /\b(fix|wash|clear|clean|tilt|cover|uncover|uncovered|join)\b[^.]*\bpanels?\b(?! frame)|panels first|from the panels|of each panel you own|panels' plugs|panels covered/i;

export const rules: readonly Rule[] = [
  { hazard: "overhead lines", when: /\blook up|\bstand the mast|\braise|lower the mast|empty brackets/i },
  { hazard: "buried lines", when: /\bdig\b|\bdrive the earth rod|\btrench for|screw in/i },
  { hazard: "open hole", when: /\bdig (?:the|or)\b|fill the hole/i, unless: /fill the hole with/i },
  { hazard: "wet cement", when: /fill the hole with|\bpour|\bwet concrete/i },
  {
    hazard: "falling mast",
    when: /\bstand the mast|\braise a mast|lower the mast|mast comes down|mast plumb/i,
  },
  { hazard: "falling mast", when: /after a storm/i, only: isNew },
  { hazard: "weak pole", when: climbing, only: onPole, unless: /at the other end: fix|^look from/i },
  { hazard: "roof edge", when: climbing, only: onRoof, unless: /at the other end: fix|^look from/i },
  { hazard: "ladder", when: climbing },
  { hazard: "ladder", when: /at the other end: fix the second radio/i },
  { hazard: "ladder", when: panelWork, only: (design) => !panelsOnFrame(design) },
  { hazard: "hidden lines", when: /into masonry|\bdrill/i },
  {
    hazard: "lifting",
    when: /\bplace the (\d+ )?blocks?\b|\bstand the mast|\bfix the (\d+ )?panels?\b|to a collection point/i,
  },
  { hazard: "wind", when: /\b(fix|tilt) the (\d+ )?panels?\b/i },
  { hazard: "heat", when: /\bfix the (\d+ )?panels?\b|hot afternoon|full sun/i },
  { hazard: "short circuit", when: batteryWork, unless: fromAfar },
  {
    hazard: ({ battery }) =>
      battery === null ? null : battery.chemistry === "agm" ? "lead-acid" : "lithium",
    when: batteryWork,
    unless: fromAfar,
  },
  { hazard: "fire", when: /\bheater pad/i },
  { hazard: "live panel", when: panelVerbs, unless: /^mount the fuse|empty brackets/i },
  {
    hazard: "polarity",
    when: /\bconnect (?:the|it)\b[^.]*\b(?:controller|battery)|put in the .*\bfuse|\bjoin (?:\d+|none) in series|lamp of known watts/i,
    unless: /put the load fuse in, and go through/i,
  },
  {
    hazard: "passive PoE",
    when: /radio you own is fed/i,
    only: ({ brief }) => brief.parts.radio?.value.feed.startsWith("passive") === true,
  },
  { hazard: "mains", when: /plug in its supply/i },
  {
    hazard: "lightning",
    when: /(?:drive|measure) the earth rod|building's own earth|lightning|surge protector where its cable enters/i,
  },
  {
    hazard: "radio waves",
    when: /\baim the radio|both radios|router's antenna until|received level at both/i,
  },
];

/** Lists whose steps are done with the hands; the others are read, asked or typed. */
export const handLists: readonly List["id"][] = ["permissions", "installation", "commissioning", "upkeep"];

/** What a step ought to warn of. */
export function expectedHazards(step: Step, design: Design): readonly Hazard[] {
  const found = rules
    .filter(
      ({ when, unless, only }) =>
        when.test(step.does) && !unless?.test(step.does) && (only?.(design) ?? true),
    )
    .map(({ hazard }) => (typeof hazard === "string" ? hazard : hazard(design)));
  // A post without a place has no battery yet: nothing of it can be near.
  return [...new Set(found)].filter(
    (hazard): hazard is Hazard => hazard !== null && !(hazard === "short circuit" && design.battery === null),
  );
}

/** Cautions that are missing, as lines to be read in a failure. */
export function missingCautions(lists: readonly List[], design: Design): readonly string[] {
  return lists
    .filter(({ id }) => handLists.includes(id))
    .flatMap((list) =>
      list.steps.flatMap((step) =>
        expectedHazards(step, design)
          .filter((hazard) => !step.cautions.some((caution) => caution.hazard === hazard))
          .map((hazard) => `${list.id}.${step.id} says nothing of: ${hazard}`),
      ),
    );
}
