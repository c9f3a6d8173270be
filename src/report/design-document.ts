import { type Design, type List, type ListId, listsOf } from "../design/index.ts";
import type { Block, Document } from "./document.ts";
import { figureBlock } from "./facts.ts";
import { handbookBlocks } from "./handbook-blocks.ts";
import { linkBlocks } from "./link-blocks.ts";
import { postLines, postSvg } from "./post-drawing.ts";
import { monthBlocks, noteBlocks, partsBlocks, reliabilityBlocks, wiringBlocks } from "./tables.ts";

/** One answer as it is listed: what was asked, what was said, where it came from. */
export interface AnswerRow {
  readonly topic: string;
  readonly label: string;
  readonly answer: string;
  readonly origin: string;
}

const heading = (level: 1 | 2 | 3, text: string): Block => ({ kind: "heading", level, text });
const paragraph = (text: string): Block => ({ kind: "paragraph", text });

function findingBlocks(design: Design): Document {
  if (design.findings.length === 0)
    return [paragraph("Nothing stands in the way of this design as it has been described.")];
  return design.findings.map((finding) => ({
    kind: "warning",
    severity: finding.severity,
    text: finding.change === "" ? finding.says : `${finding.says} ${finding.change}`,
  }));
}

const listBlocks = (list: List): Document => [
  heading(2, list.title),
  ...(list.intro === "" ? [] : [paragraph(list.intro)]),
  {
    kind: "steps",
    isOrdered: list.isOrdered,
    steps: list.steps.map(({ cautions, does, why, expects }) => ({
      cautions: cautions.map(({ says }) => says),
      does,
      why,
      expects,
    })),
  },
];

function openParagraphs({ brief, withheld }: Design): Document {
  const { openTopics } = brief;
  const texts = [
    ...(openTopics.length === 0
      ? []
      : [`Not finished: questions are open in ${openTopics.join(", ")}. What rests on them is provisional.`]),
    ...[...new Set(withheld.map(({ because }) => because))].map((reason) => {
      const stages = withheld.filter(({ because }) => because === reason).map(({ stage }) => stage);
      return `Not worked, because ${reason}: ${stages.join(", ")}.`;
    }),
  ];
  return texts.map(paragraph);
}

/** The whole design for whoever builds, checks and looks after it, in the order in which they need it. */
export function designDocument(
  design: Design,
  about: {
    readonly answers: readonly AnswerRow[];
    readonly attributions: readonly string[];
    readonly withNotes: boolean;
  },
): Document {
  const site = design.brief.place.site.value;
  const lists = listsOf(design);
  const list = (id: ListId): Document => listBlocks(lists.find((one) => one.id === id)!);
  return [
    heading(1, `Camera post: ${design.name}`),
    paragraph(
      site === null
        ? "No place has been named yet, so nothing that needs the sun could be worked."
        : `Place: ${site.label}.`,
    ),
    ...openParagraphs(design),
    heading(2, "Read this first"),
    ...findingBlocks(design),
    heading(2, "The post in figures"),
    figureBlock(design),
    {
      kind: "drawing",
      linesAt: (columns) => postLines(design, { width: columns, glyphs: "ascii" }),
      svg: postSvg(design),
      caption: "The post seen from the front, to scale.",
    },
    ...monthBlocks(design),
    ...reliabilityBlocks(design),
    ...linkBlocks(design),
    ...list("permissions"),
    ...partsBlocks(design),
    ...list("tools"),
    ...wiringBlocks(design),
    ...list("installation"),
    ...list("settings"),
    ...list("commissioning"),
    ...list("upkeep"),
    ...handbookBlocks(design),
    heading(2, "What was answered"),
    {
      kind: "table",
      columns: ["Topic", "Question", "Answer", "From"],
      align: ["left", "left", "left", "left"],
      rows: about.answers.map((row) => [row.topic, row.label, row.answer, row.origin]),
    },
    ...(about.withNotes ? noteBlocks(design.brief.units) : []),
    heading(2, "Small print"),
    paragraph(
      "This is a calculation from what was answered, not a promise. It does not replace local codes, the makers' instructions or licensed practice. Rules on radio, building, electricity and recording differ by country, state and city: ask a local source.",
    ),
    ...about.attributions.map(paragraph),
  ];
}
