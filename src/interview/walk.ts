/**
 * Which questions the answers call for, in order, each with the value that holds for it now.
 *
 * Nothing is remembered between walks: `when` and `suggest` are worked anew from the answers each time, so a changed
 * answer can leave nothing stale behind it. The answers to questions no longer called for stay where they are kept, and
 * count again as soon as their question does.
 */

import type { Site, TopicId } from "../design/brief.ts";
import { standInIn } from "./both-units.ts";
import type { Answer, Answers, Units, Walked } from "./conversation.ts";
import type {
  AnyValue,
  AskStep,
  Question,
  RecordValue,
  RepeatStep,
  Rule,
  SiteFacts,
  Topic,
} from "./define.ts";
import { valueFor } from "./units.ts";
import { fits, ruleValue, storedFrom } from "./value.ts";

/** The option of a block's first question that ends the repetition. */
export const noMore = "none";

/** What is known when a rule is worked: earlier values by id, and the site's facts once a place has been walked. */
interface Known {
  readonly values: Map<string, AnyValue | readonly RecordValue[]>;
  site: SiteFacts | null;
}

/**
 * @param siteFacts null at sea or outside the grids
 * @returns every question the answers call for, in the order of the flow
 */
export function walk(
  topics: readonly Topic[],
  answers: Answers,
  siteFacts: (site: Site) => SiteFacts | null,
  units: Units = "metric",
): readonly Walked[] {
  return walkAll(topics, answers, siteFacts, units).filter(({ isAsked }) => isAsked);
}

/** The same with the questions that are not asked, each with the stand-in that counts for it. */
export function walkAll(
  topics: readonly Topic[],
  answers: Answers,
  siteFacts: (site: Site) => SiteFacts | null,
  units: Units,
): readonly Walked[] {
  const walked: Walked[] = [];
  const known: Known = { values: new Map(), site: null };

  /** Walks one question; its value is known afterwards whether it is asked or hidden. */
  const ask = (topic: Topic, step: AskStep, id: string): Walked => {
    const { rules } = step;
    const question = units === "us" ? step.inFeet : step.question;
    const isAsked = rules.when === undefined || worked(rules.when, known);
    const suggested = rules.suggest && standInIn(units, worked(rules.suggest, known));
    const standIn = suggested
      ? { value: valueFor(question, storedFrom(step.question, suggested.use)), because: suggested.because }
      : { value: storedFrom(question, question.unsure.use), because: question.unsure.because };
    const answer =
      isAsked && Object.hasOwn(answers, id) ? heldNow(answers[id]!, standIn.value, question) : null;
    const value = answer?.value ?? standIn.value;
    const own = valueFor(step.question, value);
    const rule = ruleValue(step.question, own);
    known.values.set(step.id, rule);
    if (isAsked && value.kind === "place" && value.site !== null) known.site = siteFacts(value.site);
    const result: Walked = {
      id,
      topic,
      question,
      answer,
      value,
      standIn,
      own: { value: own, rule },
      isAsked,
    };
    walked.push(result);
    return result;
  };

  const repeat = (topic: Topic, step: RepeatStep): void => {
    const records: RecordValue[] = [];
    const isAsked = step.rules.when === undefined || worked(step.rules.when, known);
    for (let instance = 1; isAsked && instance <= step.atMost; instance++) {
      let first: Walked | null = null;
      for (const [index, part] of step.block.entries()) {
        const walkedPart = ask(topic, part, instanceId(step.id, instance, part));
        if (index > 0) continue;
        first = walkedPart.isAsked ? walkedPart : null;
        if (first === null || known.values.get(part.id) === noMore) break;
      }
      if (first === null || known.values.get(step.block[0]!.id) === noMore) break;
      records.push(recordOf(step, known));
      if (first.answer === null) break;
    }
    for (const part of step.block) known.values.delete(part.id);
    known.values.set(step.id, records);
  };

  for (const topic of topics)
    for (const step of topic.steps) step.step === "ask" ? ask(topic, step, step.id) : repeat(topic, step);
  return walked;
}

/** "each.name" of a block, as the full id of one of its instances. */
export const instanceId = (repeatId: string, instance: number, part: AskStep): string =>
  `${repeatId}.${instance}.${nameOf(part.id)}`;

const nameOf = (id: string): string => id.slice(id.lastIndexOf(".") + 1);

/** This instance's values by name: its parts are single questions, so no value is itself a list. */
const recordOf = (step: RepeatStep, known: Known): RecordValue =>
  Object.fromEntries(step.block.map((part) => [nameOf(part.id), known.values.get(part.id) as AnyValue]));

function worked<T>(rule: Rule<T>, known: Known): T {
  const values = rule.reads.map((id) => {
    if (!known.values.has(id)) throw new Error(`a rule reads "${id}", which is not asked before it`);
    return known.values.get(id);
  });
  return rule.work(known.site, ...(values as never[]));
}

/**
 * A kept answer as it holds now. An assumed one takes the present stand-in, so that revising an earlier answer and
 * revising it back leaves the same brief; one that does not fit its question is none.
 */
function heldNow(answer: Answer, standIn: Walked["value"], question: Question): Answer | null {
  if (answer.origin === "assumed") return { ...answer, value: standIn };
  const value = valueFor(question, answer.value);
  return fits(question, value) ? { ...answer, value } : null;
}

/** The question after this one in the order of the walk; null after the last, or where the id is not walked. */
export function nextQuestion(walked: readonly Walked[], cursor: string): Walked | null {
  const index = walked.findIndex((question) => question.id === cursor);
  return index < 0 ? null : (walked[index + 1] ?? null);
}

/** The question before this one; from the end of the interview (null) the last one. */
export function previousQuestion(walked: readonly Walked[], cursor: string | null): Walked | null {
  const index = cursor === null ? walked.length : walked.findIndex((question) => question.id === cursor);
  return walked[index - 1] ?? null;
}

/** Where an interview is taken up: the first question without an answer; null when there is none. */
export function firstUnanswered(walked: readonly Walked[]): Walked | null {
  return walked.find((question) => question.answer === null) ?? null;
}

/** Topics in which a question still lacks an answer, in their order. */
export function topicsOpen(walked: readonly Walked[]): readonly TopicId[] {
  return [
    ...new Set(walked.filter((question) => question.answer === null).map((question) => question.topic.id)),
  ];
}

/** "Power 2": a question's short name, with the number of its instance where its block is asked again and again. */
export function labelOf(walked: Walked): string {
  const instance = /\.(\d+)\.[^.]+$/.exec(walked.id)?.[1];
  return instance === undefined ? walked.question.label : `${walked.question.label} ${instance}`;
}
