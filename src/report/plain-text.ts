import { severityWord } from "../design/index.ts";
import type { Block, Document, DocumentStep } from "./document.ts";
import { tableLines } from "./text-table.ts";
import { type ColumnsOf, signsOf, wrapped } from "./wrap.ts";

/** Below this a drawing is only noise, and its caption alone is said. */
const drawingFrom = 30;
const drawingAtMost = 60;

interface Sheet {
  readonly columns: number;
  readonly columnsOf: ColumnsOf;
  /** Read aloud: no drawing, and nothing that needs an eye for columns. */
  readonly isSpoken: boolean;
}

function textLines({ columns, columnsOf }: Sheet, text: string, indent = ""): readonly string[] {
  return wrapped(text, columns - indent.length, columnsOf).map((line) => `${indent}${line}`.trimEnd());
}

interface Mark {
  readonly mark: string;
  /** Marks of this step and those after it that are done for the same reason. */
  readonly sharers: string;
}

/** Cautions stand before the number of the step they belong to. */
function stepLines(sheet: Sheet, step: DocumentStep, { mark, sharers }: Mark): readonly string[] {
  const indent = " ".repeat(mark.length + 1);
  const [first, ...more] = textLines(sheet, step.does, indent);
  const told = [
    ...(step.expects === "" ? [] : [`Expect: ${step.expects}`]),
    ...(step.why === "" ? [] : [`Why${sharers}: ${step.why}`]),
  ];
  return [
    ...step.cautions.flatMap((caution) => textLines(sheet, `Caution: ${caution}`)),
    `${mark} ${first!.slice(indent.length)}`,
    ...more,
    ...told.flatMap((text) => textLines(sheet, text, indent)),
  ];
}

/** A free line between numbered steps, and before cautions: marks alone part what only has to be ticked off. */
function stepsLines(
  sheet: Sheet,
  { isOrdered, steps }: Extract<Block, { kind: "steps" }>,
): readonly string[] {
  return steps.flatMap((step, i) => {
    const end = steps.findIndex((later, at) => at > i && later.why !== step.why);
    const last = end === -1 ? steps.length : end;
    const isSaid = isOrdered && step.why !== "" && i > 0 && steps[i - 1]!.why === step.why;
    const sharers = isOrdered && last > i + 1 ? ` of ${i + 1} to ${last}` : "";
    const isParted = i > 0 && (isOrdered || step.cautions.length > 0 || steps[i - 1]!.cautions.length > 0);
    return [
      ...(isParted ? [""] : []),
      ...stepLines(sheet, isSaid ? { ...step, why: "" } : step, {
        mark: isOrdered ? `${i + 1}.` : "-",
        sharers,
      }),
    ];
  });
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
      return tableLines(block, sheet, sheet.isSpoken);
    case "steps":
      return stepsLines(sheet, block);
    case "drawing":
      return [
        ...(sheet.isSpoken || sheet.columns < drawingFrom
          ? []
          : block.linesAt(Math.min(drawingAtMost, sheet.columns))),
        ...textLines(sheet, block.caption),
      ];
  }
}

/** Fewer parts than this are found without being told of; in narrower lines they are no help. */
const contentsFrom = 5;
const contentsColumns = 46;

/** The parts of the document with the line on which each begins; nothing for a short one. */
function contentsLines(
  sheet: Sheet,
  blocks: readonly (readonly string[])[],
  document: Document,
): readonly string[] {
  const parts = document.flatMap((block, i) => (block.kind === "heading" && block.level === 2 ? [i] : []));
  if (parts.length < contentsFrom || sheet.columns < contentsColumns) return [];
  const own = parts.length + 2;
  return [
    "Contents, and the line where each part begins",
    ...parts.map((part) => {
      const before = blocks.slice(0, part).reduce((sum, lines) => sum + Math.max(1, lines.length) + 1, 0);
      return `${String(before + own + 1).padStart(5)}  ${(document[part] as { readonly text: string }).text}`;
    }),
  ];
}

/**
 * The document as plain lines for a terminal or a screen reader.
 *
 * @param columns          20 or more; no line is wider
 * @param about.columnsOf  how wide a text is where it will be read
 * @param about.isSpoken   it is read aloud
 */
export function plainText(
  document: Document,
  columns: number,
  about: { readonly columnsOf?: ColumnsOf; readonly isSpoken?: boolean } = {},
): string {
  const { columnsOf = signsOf, isSpoken = false } = about;
  const sheet: Sheet = { columns, columnsOf, isSpoken };
  const blocks = document.map((block) => blockLines(block, sheet));
  const contents = contentsLines(sheet, blocks, document);
  const first = document.findIndex((block) => block.kind === "heading" && block.level === 2);
  const all = contents.length === 0 ? blocks : [...blocks.slice(0, first), contents, ...blocks.slice(first)];
  return `${all.map((lines) => lines.join("\n")).join("\n\n")}\n`;
}
