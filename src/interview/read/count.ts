import { findUnit } from "../../core/units/index.ts";
import { readNumber } from "./number.ts";
import { type Refused, refused } from "./refusal.ts";
import { LONGEST_ANSWER, plainText, quotable } from "./typed-text.ts";

export interface CountHeard {
  readonly ok: true;
  readonly count: number;
  /** "3". */
  readonly heard: string;
}

/**
 * A whole number, in figures or words; the thing counted may stand after it ("3 cameras").
 *
 * @param possible  both ends included; left out: 0 to a million
 */
export function readCount(
  text: string,
  possible: { readonly min: number; readonly max: number } = { min: 0, max: 1e6 },
): CountHeard | Refused {
  const plain = plainText(text).replace(/[.!]+$/, "");
  if (plain === "") return refused({ code: "empty" });
  const typed = quotable(text);
  const notANumber = refused({ code: "not-a-number", typed });
  if (text.length > LONGEST_ANSWER) return notANumber;

  const start = /^(?:about |just |only |exactly )?(-|minus )?/i.exec(plain)!;
  const number = readNumber(plain, start[0].length);
  const rest = number === undefined ? "" : plain.slice(number.next).trim();
  if (number === undefined || !/^(?:[a-z][a-z -]*)?$/i.test(rest) || /\b(?:to|or|and|and a)\b/i.test(rest))
    return notANumber;
  if (number.comma !== undefined) return refused({ code: "ambiguous-comma", ...number.comma });
  const unit = rest === "" ? undefined : findUnit(rest);
  if (unit !== undefined && unit.dimension !== "count") {
    const shown = `${plain.slice(0, number.next).trim()} ${unit.symbol}`;
    const example = String(Math.max(possible.min, 1));
    return refused({
      code: "wrong-kind",
      typed: quotable(shown),
      typedDimension: unit.dimension,
      wantedDimension: "count",
      example,
    });
  }
  const count = start[1] === undefined ? number.value : 0 - number.value;
  if (!Number.isInteger(count)) return refused({ code: "not-a-count", typed, got: count });
  const facts = { typed: String(count), min: possible.min, max: possible.max, got: count, unit: "" };
  if (count < possible.min) return refused({ code: "too-small", ...facts });
  if (count > possible.max) return refused({ code: "too-large", ...facts });
  return { ok: true, count, heard: String(count) };
}
