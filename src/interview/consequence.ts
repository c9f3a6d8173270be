/** What an answer changed in the design, as things to say: few, in the order of the flow's own list, silent where nothing moved. */

import { type Finding, type Severity, severityWord } from "../design/finding.ts";
import type { Interview, Said, Walked } from "./conversation.ts";
import type { Telling } from "./define.ts";

/** Lines said after one answer; stops are said beyond it. */
const linesAtMost = 3;
/** Smallest change of a number worth telling where the telling names none, as a fraction of what it was. */
const usualStepFrac = 0.02;

/** A design with the questions it was worked from. */
export interface Worked<D> {
  readonly design: D;
  readonly walked: readonly Walked[];
}

/**
 * What follows from an answer to a question.
 *
 * @param about.isRevised an earlier answer was changed: what it moved is said as before and after, all of it
 * @param about.shows     id of the telling that is said in its short form where nothing else is to be said
 */
export function consequences<D>(
  interview: Pick<Interview<D>, "tellings" | "findingsOf">,
  before: Worked<D>,
  after: Worked<D>,
  about: { readonly isRevised: boolean; readonly shows?: string | undefined },
): readonly Said[] {
  const told = interview.tellings.filter((telling) => hasMoved(telling, before.design, after.design));
  const figures = about.isRevised
    ? changedRows(told, before.design, after.design)
    : meanings(told, before.design, after.design);
  const findings = changedFindings(
    ripeFindings(interview, before),
    ripeFindings(interview, after),
    interview.findingsOf(after.design),
  );
  const of = (severity: Severity) => findings.filter((finding) => finding.severity === severity);
  const stops = of("stop");
  const others = [...of("caution"), ...of("note")];
  const room = Math.max(
    others[0]?.severity === "caution" ? 1 : 0,
    linesAtMost - figures.length - stops.length,
  );
  const left = others.slice(room).filter(({ severity }) => severity !== "note").length;
  const said = [...figures, ...[...stops, ...others.slice(0, room)].map((finding) => finding.said)];
  if (left > 0)
    said.push({
      kind: "meaning",
      text: `${left} more ${left === 1 ? "thing has" : "things have"} changed that should be looked at. Type more to see all.`,
    });
  if (said.length > 0) return said;
  const shown = interview.tellings.find(({ id }) => id === about.shows);
  if (shown === undefined || shown.figure(after.design) === null) return [];
  return [{ kind: "meaning", text: `${shown.label}: ${shown.short(after.design)}.` }];
}

/**
 * The findings that rest on what the builder has said. One whose questions are still open would only frighten with
 * our own stand-ins; it is said when its own questions and every topic before theirs are answered.
 */
function ripeFindings<D>(
  interview: Pick<Interview<D>, "findingsOf">,
  { design, walked }: Worked<D>,
): readonly Finding[] {
  const order = [...new Set(walked.map(({ topic }) => topic.id as string))];
  return interview.findingsOf(design).filter(({ topics: named }) => {
    const topicOf = (id: string): number => order.indexOf(id.split(".")[0]!);
    const last = Math.max(-1, ...named.map(topicOf));
    const isNamed = ({ id }: Walked): boolean =>
      named.some((name) => id === name || id.startsWith(`${name}.`));
    const isNamedAsked = walked.some((each) => topicOf(each.id) === last && isNamed(each));
    return walked.every((each) => {
      const at = topicOf(each.id);
      if (each.answer !== null || at > last) return true;
      // Where the question it names is not asked at all, the whole topic has to be answered.
      return at === last && isNamedAsked && !isNamed(each);
    });
  });
}

function meanings<D>(told: readonly Telling<D>[], before: D, after: D): readonly Said[] {
  return told
    .filter((telling) => telling.figure(after) !== null)
    .slice(0, linesAtMost)
    .map((telling) => ({ kind: "meaning", text: telling.say(after, telling.figure(before)) }));
}

function changedRows<D>(told: readonly Telling<D>[], before: D, after: D): readonly Said[] {
  const short = (telling: Telling<D>, design: D): string =>
    telling.figure(design) === null ? "not known yet" : telling.short(design);
  const rows = told
    .map((telling) => ({
      label: telling.label,
      before: short(telling, before),
      after: short(telling, after),
    }))
    .filter((row) => row.before !== row.after);
  return rows.length === 0 ? [] : [{ kind: "changed", rows }];
}

function hasMoved<D>(telling: Telling<D>, before: D, after: D): boolean {
  const [was, is] = [telling.figure(before), telling.figure(after)];
  if (typeof was !== "number" || typeof is !== "number") return was !== is;
  return Math.abs(is - was) > (telling.step ?? Math.abs(was) * usualStepFrac);
}

interface ChangedFinding {
  readonly severity: Severity;
  readonly said: Said;
}

/**
 * Findings that came, changed their gravity, or went away; a note that goes is not missed.
 *
 * @param present all that the design has now, ripe or not: one that is only waiting again has not gone
 */
function changedFindings(
  before: readonly Finding[],
  after: readonly Finding[],
  present: readonly Finding[],
): readonly ChangedFinding[] {
  const was = keyed(before);
  const is = keyed(after);
  const there = keyed(present);
  const came = [...is].filter(([key, finding]) => was.get(key)?.severity !== finding.severity);
  const went = [...was].filter(([key, finding]) => !there.has(key) && finding.severity !== "note");
  return [
    ...came.map(([, finding]) => said(finding, false)),
    ...went.map(([, finding]) => said(finding, true)),
  ];
}

const said = (finding: Finding, isGone: boolean): ChangedFinding => ({
  severity: finding.severity,
  said: { kind: "finding", finding, isGone },
});

/** By id; the second of an id (another device with the same trouble) is a finding of its own. */
function keyed(findings: readonly Finding[]): ReadonlyMap<string, Finding> {
  const byKey = new Map<string, Finding>();
  for (const finding of findings) {
    let number = 1;
    while (byKey.has(`${finding.id} ${number}`)) number++;
    byKey.set(`${finding.id} ${number}`, finding);
  }
  return byKey;
}

/** The design so far, one short line a figure and one a finding. */
export function designLines<D>(
  interview: Pick<Interview<D>, "tellings" | "findingsOf">,
  design: D,
): readonly string[] {
  const figures = interview.tellings
    .filter((telling) => telling.figure(design) !== null)
    .map((telling) => `${telling.label}: ${telling.short(design)}`);
  const findings = interview
    .findingsOf(design)
    .map(
      ({ severity, says, change }) =>
        `${severityWord[severity]}: ${says}${change === "" ? "" : ` ${change}`}`,
    );
  const lines = [...figures, ...findings];
  return lines.length === 0 ? ["Nothing can be worked out yet: the next answers change that."] : lines;
}
