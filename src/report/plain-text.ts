import type { Block, Document, DocumentStep } from "./document.ts";
import { severityWord } from "./words.ts";

/** Breaks text at spaces so that no line is wider than `width`; a single longer word keeps a line of its own. */
export function wrapped(text: string, width: number, indent = ""): readonly string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/\s+/)) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (line !== "" && indent.length + longer.length > width) {
      lines.push(indent + line);
      line = word;
    } else line = longer;
  }
  return [...lines, indent + line];
}

function stepLines(step: DocumentStep, mark: string, width: number): readonly string[] {
  const indent = " ".repeat(mark.length + 1);
  const told = [
    ...step.cautions.map((caution) => `Caution: ${caution}`),
    step.does,
    ...(step.expects === "" ? [] : [`Expect: ${step.expects}`]),
    ...(step.why === "" ? [] : [`Why: ${step.why}`]),
  ];
  const lines = told.flatMap((text) => wrapped(text, width, indent));
  return [`${mark} ${lines[0]!.slice(indent.length)}`, ...lines.slice(1)];
}

function blockLines(block: Block, width: number): readonly string[] {
  switch (block.kind) {
    case "heading":
      return block.level === 3
        ? [block.text]
        : [block.text, (block.level === 1 ? "=" : "-").repeat(Math.min(block.text.length, width))];
    case "paragraph":
      return wrapped(block.text, width);
    case "warning":
      return wrapped(`${severityWord[block.severity]}: ${block.text}`, width);
    case "facts":
      return block.rows.flatMap(([label, value]) => wrapped(`${label}: ${value}`, width));
    case "table":
      // One fact a line, so that it can be read aloud and never runs out of the window.
      return block.rows.flatMap((cells) =>
        wrapped(
          cells.map((cell, i) => (i === 0 ? `${cell}:` : `${block.columns[i]} ${cell}`)).join("  "),
          width,
        ),
      );
    case "steps":
      return block.steps.flatMap((step, i) => stepLines(step, block.isOrdered ? `${i + 1}.` : "-", width));
    case "drawing":
      return [...block.lines, ...wrapped(block.caption, width)];
  }
}

/**
 * The document as plain lines for a terminal or a screen reader.
 *
 * @param width  columns, 20 or more
 */
export function plainText(document: Document, width: number): string {
  return `${document.map((block) => blockLines(block, width).join("\n")).join("\n\n")}\n`;
}
