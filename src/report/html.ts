import { severityWord } from "../design/index.ts";
import type { Block, Document, DocumentStep } from "./document.ts";

const entities: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};
const escaped = (text: string): string => text.replace(/[&<>"']/g, (sign) => entities[sign]!);

/** On paper no step, row or warning is torn in two, and a wide table scrolls by itself on a telephone. */
const style = `body{font:16px/1.5 Georgia,serif;max-width:50rem;margin:2rem auto;padding:0 1rem;color:#222;background:#fff}
h1,h2,h3,th{font-family:system-ui,sans-serif;line-height:1.2}h2{margin-top:2.5rem}
.wide{overflow-x:auto}table{border-collapse:collapse;margin:1rem 0}
td,th{padding:.2rem .7rem;border-bottom:1px solid #ccc;text-align:left;vertical-align:top}td.r,th.r{text-align:right}
.stop,.caution,.note,.before{border-left:.3rem solid #777;padding:.3rem .8rem;margin:.6rem 0}.stop{border-color:#a00}
.caution,.before{border-color:#b60}li{margin:1rem 0}nav li{margin:.2rem 0}.why{color:#555;font-size:.9em}
svg{max-width:100%;max-height:36rem;height:auto}figure{margin:1rem 0}
@media print{body{margin:0;max-width:none;font-size:11pt}nav{display:none}.wide{overflow:visible}a{color:inherit}
li,tr,figure,.stop,.caution,.note,.before{break-inside:avoid}h2,h3{break-after:avoid}thead{display:table-header-group}}`;

const sideOf = (side: "left" | "right" | undefined): string => (side === "right" ? ' class="r"' : "");

function stepHtml(step: DocumentStep): string {
  const cautions = step.cautions.map((text) => `<div class="before"><b>Caution.</b> ${escaped(text)}</div>`);
  const expects = step.expects === "" ? "" : `<div>Expect: ${escaped(step.expects)}</div>`;
  const why = step.why === "" ? "" : `<div class="why">Why: ${escaped(step.why)}</div>`;
  return `<li>${cautions.join("")}<label><input type="checkbox"> ${escaped(step.does)}</label>${expects}${why}</li>`;
}

function tableHtml({ columns, align, rows }: Extract<Block, { kind: "table" }>): string {
  const head = columns.map((text, i) => `<th scope="col"${sideOf(align[i])}>${escaped(text)}</th>`);
  const body = rows.map(
    (cells) => `<tr>${cells.map((text, i) => `<td${sideOf(align[i])}>${escaped(text)}</td>`).join("")}</tr>`,
  );
  return `<div class="wide"><table><thead><tr>${head.join("")}</tr></thead><tbody>\n${body.join("\n")}\n</tbody></table></div>`;
}

/** Of a heading, for the list of contents. */
const anchor = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-|-$/g, "");

function blockHtml(block: Block): string {
  switch (block.kind) {
    case "heading": {
      const id = block.level === 2 ? ` id="${escaped(anchor(block.text))}"` : "";
      return `<h${block.level}${id}>${escaped(block.text)}</h${block.level}>`;
    }
    case "paragraph":
      return `<p>${escaped(block.text)}</p>`;
    case "warning":
      return `<div class="${block.severity}"><b>${severityWord[block.severity]}.</b> ${escaped(block.text)}</div>`;
    case "facts": {
      const rows = block.rows.map(
        ([label, value]) => `<tr><th scope="row">${escaped(label)}</th><td>${escaped(value)}</td></tr>`,
      );
      return `<table><tbody>\n${rows.join("\n")}\n</tbody></table>`;
    }
    case "table":
      return tableHtml(block);
    case "steps": {
      const tag = block.isOrdered ? "ol" : "ul";
      return `<${tag}>\n${block.steps.map(stepHtml).join("\n")}\n</${tag}>`;
    }
    case "drawing":
      return `<figure>${block.svg}<figcaption>${escaped(block.caption)}</figcaption></figure>`;
  }
}

function contents(document: Document): string {
  const links = document.flatMap((block) =>
    block.kind === "heading" && block.level === 2
      ? [`<li><a href="#${escaped(anchor(block.text))}">${escaped(block.text)}</a></li>`]
      : [],
  );
  return links.length < 2 ? "" : `<nav aria-label="Contents"><ul>\n${links.join("\n")}\n</ul></nav>\n`;
}

/** The document as one HTML page that needs no other file, the list of contents after its title. */
export function html(document: Document, title: string): string {
  const [first, ...rest] = document[0]?.kind === "heading" ? document : [null, ...document];
  const head = first === null || first === undefined ? "" : `${blockHtml(first)}\n`;
  return `<!doctype html>\n<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>${escaped(title)}</title><style>${style}</style></head>\n<body>\n<main>\n${head}${contents(document)}${rest.map((block) => (block === null ? "" : blockHtml(block))).join("\n")}\n</main>\n</body></html>\n`;
}
