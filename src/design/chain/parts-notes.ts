import type { Notes, Parts } from "../design.ts";

export const partsNotes = {
  lines: {
    what: "what to buy, with the least specification and a price band",
    formula: "quantities and figures of the stages before; price of one x quantity x currency rate",
    inputs: [
      "array.panels",
      "battery.blocks",
      "view.scenes",
      "link.radio",
      "mounting.tube",
      "wiring.runs",
      "brief.parts",
    ],
    source: "price bands and rates from memory (2026), without tax and carriage",
  },
} satisfies Notes<Parts>;
