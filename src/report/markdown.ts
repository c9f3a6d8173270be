import { severityWord } from "../design/index.ts";
import type { Block, Document, DocumentStep } from "./document.ts";

/** Columns of the drawing in its fence: a page in portrait holds them. */
const drawingColumns = 60;

/**
 * Running text in which nothing is read as markup, and that still reads well raw: "_" is left alone inside a word, where
 * CommonMark leaves it alone too.
 */
const inline = (text: string): string =>
  text.replace(/\s+/g, " ").replace(/[\\`*[\]<|&~]|(?<![\p{L}\p{N}])_|_(?![\p{L}\p{N}])/gu, "\\$&");

/** The same where a line or an item begins with it, and "-" or "1." would begin a list. */
const escaped = (text: string): string =>
  inline(text)
    .replace(/^([#>+=-])/, "\\$1")
    .replace(/^(\d+)([.)])(?= |$)/, "$1\\$2");

const row = (cells: readonly string[]): string => `| ${cells.map(inline).join(" | ")} |`;

/** Cautions stand together in a quotation before the step; the step keeps its number, as CommonMark allows. */
function stepLines(step: DocumentStep, mark: string): readonly string[] {
  const indent = " ".repeat(mark.length + 1);
  return [
    ...step.cautions.flatMap((caution, i) => [
      ...(i === 0 ? [] : [">"]),
      `> **Caution.** ${escaped(caution)}`,
    ]),
    ...(step.cautions.length === 0 ? [] : [""]),
    `${mark} [ ] ${escaped(step.does)}`,
    ...(step.expects === "" ? [] : [`${indent}- Expect: ${escaped(step.expects)}`]),
    ...(step.why === "" ? [] : [`${indent}- Why: ${escaped(step.why)}`]),
    "",
  ];
}

function blockLines(block: Block): readonly string[] {
  switch (block.kind) {
    case "heading":
      return [`${"#".repeat(block.level)} ${escaped(block.text)}`];
    case "paragraph":
      return [escaped(block.text)];
    case "warning":
      return [`> **${severityWord[block.severity]}.** ${escaped(block.text)}`];
    case "facts":
      return block.rows.map(([label, value]) => `- **${escaped(label)}:** ${escaped(value)}`);
    case "table":
      return [
        row(block.columns),
        `| ${block.align.map((side) => (side === "right" ? "---:" : "---")).join(" | ")} |`,
        ...block.rows.map(row),
      ];
    case "steps":
      return block.steps
        .flatMap((step, i) => stepLines(step, block.isOrdered ? `${i + 1}.` : "-"))
        .slice(0, -1);
    case "drawing":
      return ["```", ...block.linesAt(drawingColumns), "```", "", `*${escaped(block.caption)}*`];
  }
}

/** The document as Markdown that also prints well: tick boxes, and each caution before its step. */
export function markdown(document: Document): string {
  return `${document.map((block) => blockLines(block).join("\n")).join("\n\n")}\n`;
}
