import type { Brief } from "../brief.ts";
import { allowedDarkHours } from "../practice/battery.ts";
import { fixed } from "./words.ts";

/** How many hours a year the picture may be dark, and by whose word: "a worry allows at most 88". Empty where days were asked for. */
export function limitText(autonomy: Brief["autonomy"]): string {
  const hours = allowedDarkHours(autonomy);
  if (hours === null) return "";
  const atMost = `at most ${fixed(hours, 0)}`;
  const { value, isAnswered } = autonomy.consequence;
  if (!isAnswered) return `${atMost} are taken until you say`;
  return value === "darkHours" ? `you asked for ${atMost}` : `a ${value} allows ${atMost}`;
}
