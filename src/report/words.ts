import { MONTH_NAMES } from "../core/units/index.ts";

export const monthShort = MONTH_NAMES.map((name) => name.slice(0, 3));

/** Begins with a capital and ends with a full stop. */
export function sentence(words: string): string {
  const text = words.trim();
  if (text === "") return "";
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}${/[.!?]$/.test(text) ? "" : "."}`;
}
