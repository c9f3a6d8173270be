import { withoutRetired } from "../../flows/index.ts";
import type { Site } from "../design/index.ts";
import type { AskStep } from "../interview/define.ts";
import {
  type Answer,
  designNow,
  type Interview,
  reviewRows,
  runScript,
  update,
  view,
  walkNow,
} from "../interview/index.ts";
import { columnsOf } from "../plain/index.ts";
import {
  designDocument,
  designJson,
  html,
  markdown,
  partsCsv,
  plainText,
  postLines,
} from "../report/index.ts";
import type { BriefFile, FileAnswer, SchemaQuestion } from "../store/index.ts";
import type { Design, Opened, Program, SheetFormat, SheetLook, State } from "./program.ts";
import { attributions, interview, once, suggestedPlaces } from "./wiring.ts";

const onPaper: SheetLook = { columns: 80, isSpoken: false };

const wouldDo = {
  place: "A town, or latitude and longitude.",
  clock: "A stretch of the day, such as 6:30 to 18:00.",
  horizon: "A height in degrees, words, or pairs of azimuth and height.",
  sun: "none, twelve figures, or a file's name.",
  obstacles: "Words, such as: barn 7 m high at 300 m.",
  ground: "level, pairs of distance and height, or a file's name.",
} as const;

function schemaQuestion(id: string, { question }: AskStep): SchemaQuestion {
  const { ask, kind } = question;
  const answers =
    kind === "choice"
      ? `One of: ${question.options.map((option: { id: string }) => option.id).join(", ")}.`
      : kind === "quantity"
        ? bareNumberText(question)
        : wouldDo[kind];
  return { id, description: `${ask} ${answers}` };
}

/** In which unit a number without one is taken. */
function bareNumberText({ unit, alsoUnit }: Extract<AskStep["question"], { kind: "quantity" }>): string {
  if (unit === "") return "A plain number.";
  return alsoUnit === undefined
    ? `A bare number is in ${unit}.`
    : `A bare number is in ${unit}, or in ${alsoUnit} where the brief's units are us.`;
}

function questions(): readonly SchemaQuestion[] {
  return interview.topics.flatMap(({ steps }) =>
    steps.flatMap((step) =>
      step.step === "ask"
        ? [schemaQuestion(step.id, step)]
        : step.block.map((part) => schemaQuestion(`${step.id}.N.${part.id.replace(/^each\./, "")}`, part)),
    ),
  );
}

const topicVersions: Readonly<Record<string, number>> = Object.fromEntries(
  interview.topics.map(({ id, version }) => [id, version]),
);

/** An answer to a topic that has changed since it was saved is read anew from what was typed. */
function asSaved(id: string, kept: FileAnswer, file: BriefFile): FileAnswer {
  const topic = id.slice(0, id.indexOf("."));
  const saved = file.topicVersions[topic];
  const isCurrent = saved === undefined || saved === topicVersions[topic];
  return typeof kept === "string" || isCurrent ? kept : kept.typed;
}

function opened(file: BriefFile): Opened {
  const { name, currency, units } = file;
  const kept = withoutRetired(file.answers);
  const answers = Object.fromEntries(
    Object.entries(kept).map(([id, answer]) => [id, asSaved(id, answer, file)]),
  );
  const run = runScript(interview, { name, currency, units }, answers);
  const hidden: Record<string, Answer> = {};
  const untouched: Record<string, FileAnswer> = {};
  for (const id of run.unused) {
    const one = kept[id]!;
    if (typeof one === "string") untouched[id] = one;
    else hidden[id] = one;
  }
  for (const { id } of run.refused) untouched[id] = kept[id]!;
  return {
    // Answers that the others do not call for now stay with them: a change may call for them again.
    state: { ...run.state, answers: { ...hidden, ...run.state.answers } },
    refused: run.refused.map(({ id, text }) => ({ id, says: text })),
    missing: run.missing,
    untouched,
  };
}

function sheet(state: State, design: Design, format: SheetFormat, look: SheetLook): string {
  if (format === "json") return designJson(design);
  if (format === "csv") return partsCsv(design);
  const answers = reviewRows(walkNow(interview, state)).map(({ topic, label, answer, origin }) => ({
    topic,
    label,
    answer,
    origin: origin ?? "",
  }));
  const document = designDocument(design, { answers, attributions, withNotes: format !== "text" });
  switch (format) {
    case "text":
      return plainText(document, look.columns, { columnsOf, isSpoken: look.isSpoken });
    case "md":
      return markdown(document);
    case "html":
      return html(document, `Camera post: ${state.name}`);
  }
}

type DesignOf = typeof interview.designOf;

/** The designs before and after the last answer are asked for again and again: by what it changed, by the drawing. */
function rememberingTwo(designOf: DesignOf): DesignOf {
  let remembered: readonly { readonly key: string; readonly design: Design }[] = [];
  return (walked, about) => {
    const key = JSON.stringify([about, walked.map(({ id, value, answer }) => [id, value, answer?.origin])]);
    const found = remembered.find((one) => one.key === key);
    if (found !== undefined) return found.design;
    const design = designOf(walked, about);
    remembered = [{ key, design }, ...remembered.slice(0, 1)];
    return design;
  };
}

/**
 * The real program: ten topics, the real engine, design and report.
 *
 * @param about.lastPlace  the last place used in another brief: a place being typed is more likely near it
 */
export function openProgram(about: { readonly lastPlace?: () => Site | null } = {}): Program {
  const lastPlace = once(about.lastPlace ?? (() => null));
  const real: Interview<Design> = {
    ...interview,
    readPlace: (text, hints) => interview.readPlace(text, { ...hints, near: hints.near ?? lastPlace() }),
    designOf: rememberingTwo(interview.designOf),
  };
  const designOf = (state: State): Design => designNow(real, state);
  return {
    topicVersions,
    questions: questions(),
    attributions,
    open: opened,
    update: (state, event) => update(real, state, event),
    view: (state) => view(real, state),
    suggestedPlaces,
    designOf,
    shortFacts: (design) =>
      interview.tellings
        .filter((telling) => telling.figure(design) !== null)
        .map((telling) => ({ label: telling.label, value: telling.short(design) })),
    drawPost: (state, { columns, isAscii }) =>
      postLines(designOf(state), { width: columns, glyphs: isAscii ? "ascii" : "unicode" }),
    sheet: (state, format, look = onPaper) => sheet(state, designOf(state), format, look),
  };
}
