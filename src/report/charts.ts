/** What is drawn when a topic closes: the charge of the battery through the darkest spell. */
import { MONTH_NAMES } from "../core/units/index.ts";
import type { DarkSpell, Design, Reliability } from "../design/index.ts";

export interface Chart {
  readonly title: string;
  readonly words: string;
  readonly lines: readonly string[];
}

/** @returns charts of 46 columns at most, none where there is nothing to draw */
export function chartsOf(topicId: string, design: Design): readonly Chart[] {
  return topicId === "power" && design.reliability !== null ? [chargeChart(design.reliability)] : [];
}

const rows = 8;
/** "100 % │" before it makes 46. */
const daysAtMost = 39;
const percent = (frac: number): string => `${(100 * frac).toFixed(0)} %`;

/** The lowest charge of each day through the darkest spell of all years. */
function chargeChart({ yearly, years }: Reliability): Chart {
  const { darkSpell } = yearly;
  const days = darkSpell.lowestSocFracByDay;
  const lowest = Math.min(...days);
  const day = days.indexOf(lowest) + 1;
  const isOff = lowest <= darkSpell.offBelowSocFrac + 1e-6;
  return {
    title: "Charge through the darkest spell",
    words: `In the darkest spell of ${years} years, from ${MONTH_NAMES[darkSpell.month]!}, the charge falls from ${percent(days[0]!)} to ${percent(lowest)} on day ${day}${
      isOff
        ? `, where the loads are off (at ${percent(darkSpell.offBelowSocFrac)})`
        : `; the loads would be off at ${percent(darkSpell.offBelowSocFrac)}`
    }.`,
    lines: chargeLines(darkSpell),
  };
}

/** One column a day, filled up to its lowest charge; a dashed line where the loads are off. */
function chargeLines({ lowestSocFracByDay, offBelowSocFrac }: DarkSpell): readonly string[] {
  const days = lowestSocFracByDay.slice(0, daysAtMost);
  const offRow = Math.min(rows - 1, Math.floor(offBelowSocFrac * rows));
  const drawn = Array.from({ length: rows }, (_, fromTop) => {
    const row = rows - 1 - fromTop;
    const label = row === rows - 1 ? "100 %" : row === rows / 2 - 1 ? " 50 %" : "     ";
    const cells = days.map((frac) => {
      const filled = frac * rows - row;
      return filled >= 0.75 ? "█" : filled >= 0.25 ? "▄" : row === offRow ? "╌" : " ";
    });
    return `${label} │${cells.join("")}`.trimEnd();
  });
  const weeks = days.map((_, i) => (i % 7 === 6 ? "┴" : "─")).join("");
  return [...drawn, `  0 % └${weeks}`, "       one column a day, a mark a week"];
}
