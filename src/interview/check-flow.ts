/** What the types of define.ts cannot see of a flow, or cannot see in one put together by hand. */

import type { AskStep, Question, RepeatStep, Rule, Topic } from "./define.ts";
import { fits, storedFrom } from "./value.ts";
import { noMore } from "./walk.ts";

/**
 * The breaches of a flow, a sentence each; none in a sound flow.
 *
 * An id stands once and begins with its topic; a rule reads only what is asked before it; a repeated block can end; a
 * stand-in answers its own question; what is usual is possible.
 */
export function checkFlow(topics: readonly Topic[]): readonly string[] {
  const breaches: string[] = [];
  const known = new Set<string>();

  const mustKnow = (id: string, rule: Rule<unknown> | undefined, extra: ReadonlySet<string>): void => {
    for (const read of rule?.reads ?? [])
      if (!known.has(read) && !extra.has(read))
        breaches.push(`${id} reads "${read}", which is not asked before it`);
  };
  const declare = (topic: Topic, id: string): void => {
    if (known.has(id)) breaches.push(`${id} is asked twice`);
    if (!id.startsWith(`${topic.id}.`)) breaches.push(`${id} does not belong to the topic ${topic.id}`);
    known.add(id);
  };
  const ask = (step: AskStep, id: string, extra: ReadonlySet<string>): void => {
    mustKnow(id, step.rules.when, extra);
    mustKnow(id, step.rules.suggest, extra);
    const { question } = step;
    if ((question.kind === "obstacles" || question.kind === "ground") && !known.has(question.along))
      breaches.push(`${id} is about the length "${question.along}", which is not asked before it`);
    breaches.push(...questionBreaches(question).map((breach) => `${id}: ${breach}`));
  };
  const repeat = (step: RepeatStep): void => {
    mustKnow(step.id, step.rules.when, new Set());
    breaches.push(...endBreaches(step).map((breach) => `${step.id}: ${breach}`));
    const each = new Set<string>();
    for (const part of step.block) {
      ask(part, `${step.id}, ${part.id}`, each);
      if (each.has(part.id)) breaches.push(`${step.id}, ${part.id} is asked twice`);
      each.add(part.id);
    }
  };

  for (const [index, topic] of topics.entries()) {
    if (topics.findIndex((other) => other.id === topic.id) < index)
      breaches.push(`the topic ${topic.id} stands twice`);
    for (const step of topic.steps) {
      if (step.step === "ask") ask(step, step.id, new Set());
      else repeat(step);
      declare(topic, step.id);
    }
  }
  return breaches;
}

function questionBreaches(question: Question): readonly string[] {
  const breaches: string[] = [];
  if (!fits(question, storedFrom(question, question.unsure.use)))
    breaches.push("its stand-in is no possible answer to it");
  if (question.kind === "quantity") {
    const { usual, possible } = question;
    if (usual.min < possible.min || usual.max > possible.max || usual.min > usual.max)
      breaches.push("what is usual is not within what is possible");
  }
  if (question.kind === "choice") {
    const ids: readonly string[] = question.options.map((option: { id: string }) => option.id);
    if (ids.length < 2) breaches.push("a choice needs two options");
    if (new Set(ids).size < ids.length) breaches.push("an option stands twice");
  }
  return breaches;
}

function endBreaches(step: RepeatStep): readonly string[] {
  const first = step.block[0];
  if (first === undefined || first.question.kind !== "choice")
    return ["its block does not begin with a choice"];
  const hasEnd = first.question.options.some((option: { id: string }) => option.id === noMore);
  const breaches = hasEnd ? [] : [`its first question has no option "${noMore}"`];
  if (first.question.unsure.use !== noMore) breaches.push(`unsure does not end it`);
  if (step.atMost < 1) breaches.push("it is asked no times");
  return breaches;
}
