import type { Money, Notes } from "../design.ts";

export const moneyNotes = {
  currency: {
    what: "currency of the prices",
    formula: "the brief's where a rate is known, else US dollars",
    inputs: ["brief.currency"],
    source: "the builder",
  },
  unitsPerUsd: {
    what: "units of it for one US dollar",
    formula: "fixed rate",
    inputs: ["money.currency"],
    source: "from memory (2026), rounded",
  },
  lowParts: {
    what: "all parts still to be bought, low ends",
    formula: "sum of the lines",
    inputs: ["parts.lines"],
    source: "arithmetic",
  },
  highParts: {
    what: "all parts still to be bought, high ends",
    formula: "sum of the lines",
    inputs: ["parts.lines"],
    source: "arithmetic",
  },
  lowTotal: {
    what: "the same with the allowance, low end",
    formula: "parts x (1 + contingency)",
    inputs: ["money.lowParts", "money.contingencyFrac"],
    source: "arithmetic",
  },
  highTotal: {
    what: "the same with the allowance, high end",
    formula: "parts x (1 + contingency)",
    inputs: ["money.highParts", "money.contingencyFrac"],
    source: "arithmetic",
  },
  contingencyFrac: {
    what: "allowance for what is forgotten",
    formula: "as answered",
    inputs: ["brief.money.contingencyFrac"],
    source: "10 to 15 %: common practice, no source",
  },
  ceiling: {
    what: "most that may be spent; 0 where there is no limit",
    formula: "as answered",
    inputs: ["brief.money.ceiling"],
    source: "the builder",
  },
} satisfies Notes<Money>;
