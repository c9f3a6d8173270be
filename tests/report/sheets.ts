/** Documents to print, and small readers of each format: written here from the formats' own rules, not from our writers. */
import type { Design } from "../../src/design/index.ts";
import { type Document, designDocument } from "../../src/report/index.ts";
import { changed } from "../design/fixtures.ts";
import { designs } from "../design/lists/variants.ts";

export const documentOf = (design: Design): Document =>
  designDocument(design, {
    answers: [
      { topic: "Place", label: "Place", answer: "52.3, -3.51 (near Newtown)", origin: "estimate" },
      { topic: "View", label: "Night", answer: "Everything, with infrared light", origin: "assumed" },
    ],
    attributions: ["Places: an open gazetteer, CC BY 4.0."],
    withNotes: true,
  });

/** Every variant of the lists, as a document. */
export const documents: readonly (readonly [name: string, document: Document, design: Design])[] =
  designs.map(([name, design]) => [name, documentOf(design), design]);

/** Signs that mean something to Markdown, HTML, CSV or a spreadsheet. */
export const hostile = `=1+1 <script>alert("x")</script> | *bold* _under_ \`code\` [link](x) & # \\ ' ~~gone~~`;
export const hostileBrief = { ...changed({}), name: hostile };

/** Records of a comma-separated text. @source RFC 4180 section 2 */
export function csvRecords(text: string): readonly (readonly string[])[] {
  const records: string[][] = [];
  let fields: string[] = [];
  let at = 0;
  while (at < text.length) {
    let field = "";
    if (text[at] === '"') {
      at += 1;
      for (;;) {
        if (at >= text.length) throw new Error("a quotation is never closed");
        if (text[at] === '"' && text[at + 1] === '"') {
          field += '"';
          at += 2;
        } else if (text[at] === '"') {
          at += 1;
          break;
        } else field += text[at++];
      }
    } else {
      while (at < text.length && text[at] !== "," && text[at] !== "\r") {
        if (text[at] === '"' || text[at] === "\n") throw new Error(`a bare ${JSON.stringify(text[at])}`);
        field += text[at++];
      }
    }
    fields.push(field);
    if (text[at] === ",") at += 1;
    else if (text.startsWith("\r\n", at)) {
      records.push(fields);
      fields = [];
      at += 2;
    } else throw new Error(`after a field stands ${JSON.stringify(text[at])}`);
  }
  if (fields.length > 0) throw new Error("the last record has no end");
  return records;
}

const voidTags = new Set(["meta", "input", "br", "hr", "img", "link", "rect", "line"]);

export interface Tag {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  /** Names of the elements it stands in, outermost first. */
  readonly inside: readonly string[];
}

/**
 * Opening tags of a page in order; throws where tags cross or stay open, or an attribute has no quotes. Stricter than HTML
 * itself: what passes here is read the same way by every parser.
 */
export function htmlTags(page: string): readonly Tag[] {
  const tags: Tag[] = [];
  const open: string[] = [];
  for (const [whole, slash, name, rest] of page.matchAll(/<(\/?)([a-z][a-z0-9]*)((?:"[^"]*"|[^<>"])*)>/g)) {
    if (slash === "/") {
      const last = open.pop();
      if (last !== name) throw new Error(`</${name}> closes <${last}>`);
      continue;
    }
    const attributes = Object.fromEntries(
      Array.from(rest!.matchAll(/([\w-]+)(?:="([^"]*)")?/g), ([, key, value]) => [key, value ?? ""]),
    );
    tags.push({ name: name!, attributes, inside: [...open] });
    if (!voidTags.has(name!) && !whole.endsWith("/>")) open.push(name!);
  }
  if (open.length > 0) throw new Error(`left open: ${open.join(", ")}`);
  return tags;
}

/** What a reader sees of a page. */
export const htmlText = (page: string): string =>
  page
    .replace(/<style>.*?<\/style>/s, "")
    .replace(/<[^>]*>/g, " ")
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&#39;", "'")
    .replaceAll("&amp;", "&");

/** What a reader sees of Markdown: CommonMark lets any punctuation be escaped by a backslash. */
export const markdownText = (text: string): string => text.replace(/\\([!-/:-@[-`{-~])/g, "$1");
