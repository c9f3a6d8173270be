/** The one law that matters most: whoever reads from the top meets the caution before the step. */
import { describe, expect, it } from "vitest";
import { listsOf } from "../../src/design/index.ts";
import { html, markdown, plainText } from "../../src/report/index.ts";
import { documents, htmlText, markdownText } from "./sheets.ts";

const formats: readonly (readonly [
  name: string,
  write: (document: (typeof documents)[number][1]) => string,
])[] = [
  ["Markdown", (document) => markdownText(markdown(document))],
  ["HTML", (document) => htmlText(html(document, "A post"))],
  ["text", (document) => plainText(document, 72)],
];
const oneLine = (text: string): string => text.replace(/[>\s]+/g, " ");

/** Where each caution and each step stand, in the order of the lists; throws at the first that stands too early. */
function walk(
  text: string,
  steps: readonly { readonly cautions: readonly string[]; readonly does: string }[],
): number {
  let at = 0;
  let cautions = 0;
  for (const { cautions: told, does } of steps) {
    for (const caution of told) {
      const found = text.indexOf(`Caution: ${oneLine(caution)}`, at);
      const or = text.indexOf(`Caution. ${oneLine(caution)}`, at);
      const marked = text.indexOf(`**Caution.** ${oneLine(caution)}`, at);
      at = Math.max(found, or, marked);
      if (at < 0) throw new Error(`the caution is missing or comes too late: ${caution}`);
      cautions += 1;
    }
    at = text.indexOf(oneLine(does), at);
    if (at < 0) throw new Error(`the step comes before its caution: ${does}`);
    at += does.length;
  }
  return cautions;
}
const stepsOf = (design: (typeof documents)[number][2]) =>
  listsOf(design).flatMap(({ steps }) =>
    steps.map(({ cautions, does }) => ({ cautions: cautions.map(({ says }) => says), does })),
  );

describe.each(formats)("in %s", (_format, write) => {
  it.each(documents)("every caution stands before its step: %s", (_name, document, design) => {
    expect(walk(oneLine(write(document)), stepsOf(design))).toBeGreaterThan(20);
  });
  it("a caution after its step would be seen", () => {
    const [, document, design] = documents[0]!;
    const late = document.map((block) =>
      block.kind === "steps"
        ? {
            ...block,
            steps: block.steps.map((step) => ({ ...step, cautions: [], why: step.cautions.join(" ") })),
          }
        : block,
    );
    expect(() => walk(oneLine(write(late)), stepsOf(design))).toThrow(/caution/);
  });
});

describe("the document", () => {
  it.each(documents)(
    "asks before it buys, buys before it builds, proves after it built: %s",
    (_name, document) => {
      const headings = document.flatMap((block) => (block.kind === "heading" ? [block.text] : []));
      const wanted = [
        "Read this first",
        "Before you buy: look and ask",
        "What to buy",
        "Tools to bring",
        "Build it in this order",
        "Settings sheet",
        "Prove that it works",
        "Look after it",
        "Small print",
      ];
      expect(headings.filter((heading) => wanted.includes(heading))).toEqual(wanted);
      expect(new Set(headings).size).toBe(headings.length);
    },
  );
  it("shows stops and cautions of the design before anything else", () => {
    for (const [name, document, design] of documents) {
      const warnings = document.flatMap((block, i) => (block.kind === "warning" ? [i] : []));
      expect(warnings.length, name).toBe(design.findings.length);
      const buying = document.findIndex((block) => block.kind === "facts");
      for (const at of warnings) expect(at).toBeLessThan(buying);
    }
  });
});
