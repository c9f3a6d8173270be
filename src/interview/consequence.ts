/** What an answer changed in the design, as things to say: few, in the order of the flow's own list, silent where nothing moved. */

import type { Finding, Severity } from "../design/finding.ts";
import type { Interview, Said } from "./conversation.ts";
import type { Telling } from "./define.ts";

/** Lines said after one answer; stops and cautions are said beyond it. */
const linesAtMost = 3;
/** Smallest change of a number worth telling where the telling names none, as a fraction of what it was. */
const usualStepFrac = 0.02;

/**
 * What follows from an answer.
 *
 * @param isRevised an earlier answer was changed: what it moved is said as before and after, all of it
 */
export function consequences<D>(
  interview: Pick<Interview<D>, "tellings" | "findingsOf">,
  before: D,
  after: D,
  isRevised: boolean,
): readonly Said[] {
  const told = interview.tellings.filter((telling) => hasMoved(telling, before, after));
  const figures = isRevised ? changedRows(told, before, after) : meanings(told, before, after);
  const findings = changedFindings(interview.findingsOf(before), interview.findingsOf(after));
  const grave = findings.filter(({ severity }) => severity !== "note").map(({ said }) => said);
  const notes = findings.filter(({ severity }) => severity === "note").map(({ said }) => said);
  const room = Math.max(0, linesAtMost - figures.length - grave.length);
  return [...figures, ...grave, ...notes.slice(0, room)];
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

/** Findings that came, changed their gravity, or went away; a note that goes is not missed. */
function changedFindings(before: readonly Finding[], after: readonly Finding[]): readonly ChangedFinding[] {
  const was = keyed(before);
  const is = keyed(after);
  const came = [...is].filter(([key, finding]) => was.get(key)?.severity !== finding.severity);
  const went = [...was].filter(([key, finding]) => !is.has(key) && finding.severity !== "note");
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

const severityWord = { stop: "Stop", caution: "Caution", note: "Note" } as const;
