import { severityWord } from "../design/index.ts";
import type { Block, Document, DocumentStep } from "./document.ts";
import { type ColumnsOf, signsOf, wrapped } from "./wrap.ts";

/** Below this a drawing is only noise, and its caption alone is said. */
const drawingFrom = 30;
const drawingAtMost = 60;

interface Sheet {
  readonly columns: number;
  readonly columnsOf: ColumnsOf;
}

function textLines({ columns, columnsOf }: Sheet, text: string, indent = ""): readonly string[] {
  return wrapped(text, columns - indent.length, columnsOf).map((line) => `${indent}${line}`.trimEnd());
}

/** Cautions stand before the number of the step they belong to. */
function stepLines(sheet: Sheet, step: DocumentStep, mark: string): readonly string[] {
  const indent = " ".repeat(mark.length + 1);
  const [first, ...more] = textLines(sheet, step.does, indent);
  const told = [
    ...(step.expects === "" ? [] : [`Expect: ${step.expects}`]),
    ...(step.why === "" ? [] : [`Why: ${step.why}`]),
  ];
  return [
    ...step.cautions.flatMap((caution) => textLines(sheet, `Caution: ${caution}`)),
    `${mark} ${first!.slice(indent.length)}`,
    ...more,
    ...told.flatMap((text) => textLines(sheet, text, indent)),
    "",
  ];
}

/** One row a paragraph, each cell after its column's name, so that it can be read aloud and never runs out of the window. */
function rowText(columns: readonly string[], cells: readonly string[]): string {
  const told = cells.slice(1).flatMap((cell, i) => (cell === "" ? [] : [`${columns[i + 1]} ${cell}`]));
  return `${cells[0]}: ${told.join("; ")}`;
}

function blockLines(block: Block, sheet: Sheet): readonly string[] {
  switch (block.kind) {
    case "heading": {
      const lines = textLines(sheet, block.text);
      const widest = Math.max(...lines.map(sheet.columnsOf));
      return block.level === 3 ? lines : [...lines, (block.level === 1 ? "=" : "-").repeat(widest)];
    }
    case "paragraph":
      return textLines(sheet, block.text);
    case "warning":
      return textLines(sheet, `${severityWord[block.severity]}: ${block.text}`);
    case "facts":
      return block.rows.flatMap(([label, value]) => textLines(sheet, `${label}: ${value}`));
    case "table":
      return block.rows.flatMap((cells) => textLines(sheet, rowText(block.columns, cells)));
    case "steps":
      return block.steps
        .flatMap((step, i) => stepLines(sheet, step, block.isOrdered ? `${i + 1}.` : "-"))
        .slice(0, -1);
    case "drawing":
      return [
        ...(sheet.columns < drawingFrom ? [] : block.linesAt(Math.min(drawingAtMost, sheet.columns))),
        ...textLines(sheet, block.caption),
      ];
  }
}

/**
 * The document as plain lines for a terminal or a screen reader.
 *
 * @param columns    20 or more; no line is wider
 * @param columnsOf  how wide a text is where it will be read
 */
export function plainText(document: Document, columns: number, columnsOf: ColumnsOf = signsOf): string {
  const sheet: Sheet = { columns, columnsOf };
  return `${document.map((block) => blockLines(block, sheet).join("\n")).join("\n\n")}\n`;
}
