import type { Design } from "../design/index.ts";

/** A degree sign is shown as two strange letters where a spreadsheet guesses the encoding wrong. */
const spelled = (text: string): string =>
  text
    .replace(/°(?=[CF])/g, "")
    .replaceAll("°", " degrees")
    .replaceAll("×", "x");

/**
 * One field of a comma-separated line.
 *
 * @source RFC 4180 section 2. A text that a spreadsheet would run as a formula (a leading "=", "+", "-", "@", tab or
 *         carriage return) gets an apostrophe: OWASP, CSV injection, from memory
 */
const field = (value: string | number): string => {
  const text = typeof value === "number" ? String(value) : spelled(value).replace(/^(?=[=+\-@\t\r])/, "'");
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
};

/** What to buy, one part a line, for a spreadsheet or a shop. */
export function partsCsv(design: Design): string {
  const lines = [
    [
      "id",
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
      part.id,
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
