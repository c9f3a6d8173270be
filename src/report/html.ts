import type { Block, Document, DocumentStep } from "./document.ts";
import { severityWord } from "./words.ts";

const entities: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};
export const escapedHtml = (text: string): string => text.replace(/[&<>"']/g, (sign) => entities[sign]!);

const style = `body{font:16px/1.5 Georgia,serif;max-width:46rem;margin:2rem auto;padding:0 1rem;color:#222}
h1,h2,h3{font-family:system-ui,sans-serif;line-height:1.2}table{border-collapse:collapse;margin:1rem 0}
td,th{padding:.2rem .7rem;border-bottom:1px solid #ccc;text-align:left;vertical-align:top}.r{text-align:right}
.stop,.caution,.note,.before{border-left:.3rem solid #777;padding:.3rem .8rem;margin:.6rem 0}.stop{border-color:#a00}
.caution,.before{border-color:#b60}li{margin:.8rem 0}.why{color:#555;font-size:.9em}@media print{body{margin:0}}`;

const cell = (text: string, side: "left" | "right", tag: "td" | "th") =>
  `<${tag}${side === "right" ? ' class="r"' : ""}>${escapedHtml(text)}</${tag}>`;

function stepHtml(step: DocumentStep): string {
  const cautions = step.cautions.map(
    (text) => `<div class="before"><b>Caution.</b> ${escapedHtml(text)}</div>`,
  );
  const expects = step.expects === "" ? "" : `<div>Expect: ${escapedHtml(step.expects)}</div>`;
  const why = step.why === "" ? "" : `<div class="why">Why: ${escapedHtml(step.why)}</div>`;
  return `<li>${cautions.join("")}<label><input type="checkbox"> ${escapedHtml(step.does)}</label>${expects}${why}</li>`;
}

function blockHtml(block: Block): string {
  switch (block.kind) {
    case "heading":
      return `<h${block.level}>${escapedHtml(block.text)}</h${block.level}>`;
    case "paragraph":
      return `<p>${escapedHtml(block.text)}</p>`;
    case "warning":
      return `<div class="${block.severity}"><b>${severityWord[block.severity]}.</b> ${escapedHtml(block.text)}</div>`;
    case "facts":
      return `<table>${block.rows.map(([label, value]) => `<tr>${cell(label, "left", "th")}${cell(value, "left", "td")}</tr>`).join("")}</table>`;
    case "table": {
      const line = (cells: readonly string[], tag: "td" | "th") =>
        `<tr>${cells.map((text, i) => cell(text, block.align[i] ?? "left", tag)).join("")}</tr>`;
      return `<table>${line(block.columns, "th")}${block.rows.map((cells) => line(cells, "td")).join("")}</table>`;
    }
    case "steps": {
      const tag = block.isOrdered ? "ol" : "ul";
      return `<${tag}>${block.steps.map(stepHtml).join("")}</${tag}>`;
    }
    case "drawing":
      return `<figure>${block.svg}<figcaption>${escapedHtml(block.caption)}</figcaption></figure>`;
  }
}

/** The document as one HTML page that needs no other file. */
export function html(document: Document, title: string): string {
  return `<!doctype html>\n<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>${escapedHtml(title)}</title><style>${style}</style></head>\n<body>\n${document.map(blockHtml).join("\n")}\n</body></html>\n`;
}
