import type { Block, Document, DocumentStep } from "./document.ts";
import { severityWord } from "./words.ts";

/** Characters that Markdown would read as markup inside running text. */
const escaped = (text: string): string => text.replace(/([\\`*_[\]<>|])/g, "\\$1");

const row = (cells: readonly string[]): string => `| ${cells.map(escaped).join(" | ")} |`;

/** Cautions stand as quotations of their own before the step; the step keeps its number, as CommonMark allows. */
function stepLines(step: DocumentStep, mark: string): readonly string[] {
  const indent = " ".repeat(mark.length + 1);
  return [
    ...step.cautions.flatMap((caution) => [`> **Caution.** ${escaped(caution)}`, ""]),
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
      return ["| | |", "| --- | --- |", ...block.rows.map(row)];
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
      return ["```", ...block.lines, "```", `*${escaped(block.caption)}*`];
  }
}

/** The document as Markdown that also prints well: tick boxes, and each caution before its step. */
export function markdown(document: Document): string {
  return `${document.map((block) => blockLines(block).join("\n")).join("\n\n")}\n`;
}
