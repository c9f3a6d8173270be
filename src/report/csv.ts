import type { Design } from "../design/index.ts";

/**
 * One field of a comma-separated line.
 *
 * @source RFC 4180 section 2. A leading "=", "+", "-" or "@" gets an apostrophe, so that a spreadsheet does not run it.
 */
const field = (value: string | number): string => {
  const text = typeof value === "number" ? String(value) : value.replace(/^([=+\-@])/, "'$1");
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
};

/** What to buy, one part a line, for a spreadsheet or a shop. */
export function partsCsv(design: Design): string {
  const lines = [
    [
      "part",
      "quantity",
      "unit",
      "specification",
      `low price ${design.money.currency}`,
      `high price ${design.money.currency}`,
      "owned",
      "confirm first",
    ],
    ...design.parts.lines.map((part) => [
      part.name,
      part.quantity,
      part.unit,
      part.specification.join("; "),
      part.lowPrice,
      part.highPrice,
      part.isOwned ? "yes" : "no",
      part.restsOnAssumed ? "yes" : "no",
    ]),
  ];
  return `${lines.map((cells) => cells.map(field).join(",")).join("\r\n")}\r\n`;
}
