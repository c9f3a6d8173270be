/**
 * What was said, in words: the one place where a kind of saying gets its sign word. The chat screen sets these lines
 * beside its margin rule, the plain face and the transcripts print them one below the other.
 */
import { type Finding, severityWord } from "../design/finding.ts";
import type { Said } from "../interview/index.ts";
import { asciiText } from "./ascii.ts";
import { wrapText } from "./wrap.ts";

/** How a line is to be felt; never the only bearer of its meaning. */
export type Tone = "plain" | "quiet" | "strong" | "note" | "caution" | "stop";

export interface SaidLine {
  /** The sign word or number that stands before the line; empty where it goes on. */
  readonly margin: string;
  /** The sign word when read aloud, where the margin is too narrow for it. */
  readonly spoken?: string;
  /** In a list of facts, the name of this one. */
  readonly label?: string;
  readonly text: string;
  readonly tone: Tone;
}

function findingLines(finding: Finding, isGone: boolean): readonly SaidLine[] {
  if (isGone) return [{ margin: "Settled", text: finding.says, tone: "quiet" }];
  const says: SaidLine = {
    margin: severityWord[finding.severity],
    text: finding.says,
    tone: finding.severity,
  };
  if (finding.change === "") return [says];
  return [says, { margin: "", text: finding.change, tone: "plain" }];
}

/** A saying as lines with their sign words. */
export function saidInWords(said: Said): readonly SaidLine[] {
  switch (said.kind) {
    case "topicOpened":
      return [
        {
          margin: `${said.number} of ${said.of}`,
          spoken: `Part ${said.number} of ${said.of}`,
          text: said.title,
          tone: "strong",
        },
        { margin: "", text: said.opening, tone: "plain" },
      ];
    case "answered": {
      const lines: SaidLine[] = [
        { margin: "", text: said.ask, tone: "quiet" },
        { margin: "Answer", text: said.typed, tone: "strong" },
      ];
      if (said.heard !== null) lines.push({ margin: "Heard", text: said.heard, tone: "plain" });
      return lines;
    }
    case "meaning":
      return [{ margin: "So", text: said.text, tone: "plain" }];
    case "finding":
      return findingLines(said.finding, said.isGone);
    case "refusal":
      return [{ margin: "Once more", text: said.text, tone: "caution" }];
    case "aside":
      return [
        { margin: "", text: said.title, tone: "strong" },
        ...said.lines.map((text): SaidLine => ({ margin: "", text, tone: "plain" })),
      ];
    case "changed":
      return said.rows.map((row) => ({
        margin: "Changed",
        label: row.label,
        text: `${row.before} → ${row.after}`,
        tone: "plain",
      }));
    case "chart":
      return [{ margin: "", text: `${said.chart.title}. ${said.chart.words}`, tone: "plain" }];
    case "review":
      return reviewLines(said.rows);
    case "topicClosed":
      return [
        { margin: "So far", text: said.title, tone: "strong" },
        ...said.rows.map(
          (row): SaidLine => ({ margin: "", label: row.label, text: row.value, tone: "plain" }),
        ),
      ];
  }
}

function reviewLines(rows: Extract<Said, { kind: "review" }>["rows"]): readonly SaidLine[] {
  const lines: SaidLine[] = [];
  let topic = "";
  for (const row of rows) {
    if (row.topic !== topic) lines.push({ margin: "", text: row.topic, tone: "strong" });
    topic = row.topic;
    // an estimate is what an answer is unless something better is said
    const origin = row.origin === "measured" || row.origin === "datasheet" ? `, ${row.origin}` : "";
    lines.push({
      margin: String(row.number),
      label: row.label,
      text: `${row.answer}${origin}`,
      tone: "plain",
    });
  }
  return lines;
}

/** Kinds that begin a new paragraph on a page. */
const opensParagraph: ReadonlySet<Said["kind"]> = new Set([
  "topicOpened",
  "topicClosed",
  "review",
  "aside",
  "chart",
]);

/**
 * A saying as lines of text, for the plain face and for transcripts.
 *
 * @param about.width     columns to wrap at; not wrapped when absent, so that the terminal or the reader does it
 * @param about.isLive    the question and the typed answer stand on the page already
 * @param about.isAscii   only the printable signs of ASCII
 */
export function saidToLines(
  said: Said,
  about: { readonly width?: number; readonly isLive?: boolean; readonly isAscii?: boolean } = {},
): readonly string[] {
  const lines: string[] = [];
  const isOnPage = about.isLive === true && said.kind === "answered";
  for (const line of saidInWords(said)) {
    if (isOnPage && line.margin !== "Heard") continue;
    const sign = line.spoken ?? line.margin;
    const fact = line.label === undefined ? line.text : `${line.label}: ${line.text}`;
    const whole = sign === "" ? fact : `${sign}: ${fact}`;
    const text = about.isAscii ? asciiText(whole) : whole;
    lines.push(...(about.width === undefined ? [text] : wrapText(text, about.width)));
  }
  if (lines.length > 0 && opensParagraph.has(said.kind)) lines.unshift("");
  return lines;
}
