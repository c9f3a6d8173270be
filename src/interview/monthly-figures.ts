/** Twelve monthly figures of sun as a builder types them, made daily means on the level and checked against the sky. */

import { type IrradiationCheck, type IrradiationUnit, monthlyIrradiation } from "../core/climate/index.ts";
import { ghiFromTilted } from "../core/sun/index.ts";
import { formatNumber, MONTH_NAMES } from "../core/units/index.ts";
import type { Site } from "../design/brief.ts";
import type { SunReading } from "./conversation.ts";

/** Reflectance of the ground before a tilted panel: grass. Common practice, no source. */
const albedo = 0.2;
const number = (value: number): string => formatNumber({ value, digits: 3 });

/** Whether a text is meant as figures at all: it has several numbers and hardly a word. */
export const looksLikeFigures = (text: string): boolean => (text.match(/\d+(?:[.,]\d+)?/g)?.length ?? 0) >= 3;

/** "0,7; 1,4" and "0,7 1,4" have decimal commas; "0.7, 1.4" and "0.7 1.4" have points. */
function numbersIn(text: string): readonly number[] {
  const hasPoints = /\d\.\d/.test(text);
  const isCommaDecimal = !hasPoints && /\d,\d/.test(text) && /[;\s]/.test(text.trim());
  const plain = isCommaDecimal ? text.replace(/(\d),(\d)/g, "$1.$2") : text;
  return (plain.match(/-?\d+(?:\.\d+)?/g) ?? []).map(Number);
}

function unitIn(words: string): IrradiationUnit {
  if (/\bmj/i.test(words)) return "MJ/m2 a day";
  return /month/i.test(words) ? "kWh/m2 a month" : "kWh/m2 a day";
}

/**
 * @param text  twelve numbers, January first; then a unit (kWh/m2 a day when left out, MJ, a month), and "on 40 deg" or
 *              "tilt 40" where the figures are for a tilted panel facing the equator (peak sun hours)
 * @param site  the place they are for
 */
export function readMonthlyFigures(text: string, site: Site): SunReading {
  const tiltText = /(?:\bon|\btilt(?:ed)?|\bat)\s*:?\s*(\d+(?:\.\d+)?)\s*(?:°|deg)?/i.exec(text);
  const words = text.replace(/m2|m²/gi, "").replace(tiltText?.[0] ?? "", "");
  const values = numbersIn(words);
  const unit = unitIn(words);
  const own = monthlyIrradiation({ values, unit, ...(tiltText ? {} : { latitudeDeg: site.latitudeDeg }) });
  const [first] = own.checks;
  if (own.ghiDailyKWhPerM2ByMonth === null || first !== undefined) {
    return {
      kind: "refused",
      says: first === undefined ? "Those are no figures of sun." : checkText(first, unit),
    };
  }
  if (tiltText === null) return figures(own.ghiDailyKWhPerM2ByMonth, "figures typed by the builder");
  const tiltDeg = Number(tiltText[1]);
  if (tiltDeg > 90)
    return { kind: "refused", says: `A tilt lies between 0 and 90 deg; ${tiltDeg} was typed.` };
  const level = ghiFromTilted({
    poaDailyKWhPerM2ByMonth: own.ghiDailyKWhPerM2ByMonth,
    latitudeDeg: site.latitudeDeg,
    tiltDeg,
    azimuthDeg: site.latitudeDeg < 0 ? 0 : 180,
    albedoByMonth: own.ghiDailyKWhPerM2ByMonth.map(() => albedo),
  });
  if (level.kind === "refused")
    return {
      kind: "refused",
      says: `${MONTH_NAMES[level.month]}: a panel at ${tiltDeg} deg cannot get ${number(level.gotKWhPerM2)} kWh/m2 a day there; at most ${number(level.limitKWhPerM2)}.`,
    };
  return figures(level.ghiDailyKWhPerM2ByMonth, `figures for a tilt of ${tiltDeg} deg typed by the builder`);
}

function figures(ghiDailyKWhPerM2ByMonth: readonly number[], source: string): SunReading {
  const mean = ghiDailyKWhPerM2ByMonth.reduce((sum, value) => sum + value, 0) / 12;
  return {
    kind: "figures",
    figures: {
      ghiDailyKWhPerM2ByMonth,
      meanTempCByMonth: null,
      dailyQuantilesByMonth: null,
      lag1ByMonth: null,
      hours: null,
      source,
    },
    says: `That is ${number(mean)} kWh/m2 a day on level ground over the year.`,
  };
}

/** One sentence on why figures of sun cannot be, and what would do. */
export function checkText(check: IrradiationCheck, unit: IrradiationUnit): string {
  switch (check.code) {
    case "wrong-count":
      return `Twelve figures are needed, January first; ${check.got} were typed.`;
    case "not-a-number":
      return `${MONTH_NAMES[check.month]} is no number.`;
    case "negative":
      return `${MONTH_NAMES[check.month]} is ${number(check.got)}; the sun never takes light away.`;
    case "above-extraterrestrial":
      return `${MONTH_NAMES[check.month]}: ${number(check.gotKWhPerM2)} kWh/m2 a day is more than arrives outside the air there (${number(check.limitKWhPerM2)}). Are they in ${unit === "MJ/m2 a day" ? "another unit" : "MJ, or sums of a month"}? Type the unit behind them.`;
    case "looks-like-monthly-sums":
    case "looks-like-MJ":
    case "looks-like-daily-kWh":
      return `In ${unit} those cannot be right; they look like ${check.suggestedUnit}. Type them again with the unit behind.`;
    case "looks-like-other-hemisphere":
      return "They are bright when the place is dark, as if for the other half of the earth. January comes first.";
  }
}
