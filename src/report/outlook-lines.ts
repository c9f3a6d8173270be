/** The days to come in plain sentences, and drawn. */
import { MONTH_NAMES } from "../core/units/index.ts";
import type { PostOutlook, PostTierOutlook } from "../design/index.ts";
import { type Chart, chargeColumns, chargeColumnsAtMost, percent } from "./charts.ts";
import { sentence } from "./words.ts";

const clockText = (hour: number): string => `${String(hour).padStart(2, "0")}:00`;

/** "in about 31 hours (day 2, towards 04:00)"; day 1 is today. */
function whenText(hours: number, hourNow: number): string {
  const whole = Math.round(hours);
  const at = hourNow + whole;
  const about = whole < 1 ? "within the hour" : whole === 1 ? "in about an hour" : `in about ${whole} hours`;
  return `${about} (day ${Math.floor(at / 24) + 1}, towards ${clockText(at % 24)})`;
}

/** "goes off in about 31 hours (...) and is back in about 50 hours (...)". */
function fateText({ hoursUntilShed, hoursUntilBack }: PostTierOutlook, outlook: PostOutlook): string {
  const { hourNow, days } = outlook;
  if (hoursUntilShed === null)
    return days.length === 1
      ? "stays on for the rest of today"
      : `stays on through these ${days.length} days`;
  const off = hoursUntilShed === 0 ? "is off now" : `goes off ${whenText(hoursUntilShed, hourNow)}`;
  const back =
    hoursUntilBack === null
      ? "does not come back within these days"
      : `is back ${whenText(hoursUntilBack, hourNow)}`;
  return `${off} and ${back}`;
}

/** What goes off, as the subject of a sentence. */
function tierName({ carriesPicture, devices }: PostTierOutlook, isLast: boolean): string {
  if (carriesPicture) return "the picture, with all that it needs,";
  return isLast ? `what the post is there for (${devices})` : `what is shed first (${devices})`;
}

const skyWord = {
  sunny: "sunny",
  partly: "partly sunny",
  overcast: "overcast",
  rain: "rain",
  figure: "given",
} as const;

/** "rain 0.4, sunny 2.1": each kind of day once, and each figure that was given. */
function skiesText({ days }: PostOutlook): string {
  const said = days.map(({ sky, ghiKWhPerM2 }) => `${skyWord[sky]} ${ghiKWhPerM2.toFixed(1)}`);
  return [...new Set(said)].join(", ");
}

function readingLines(outlook: PostOutlook): readonly string[] {
  const { reading } = outlook;
  if (reading === null) return [];
  const span = `${percent(reading.lowestSocFrac)} to ${percent(reading.highestSocFrac)}`;
  const means = `${reading.restV} V at rest is read as ${percent(outlook.socFrac)} of charge, and can mean ${span}.`;
  const why =
    reading.chemistry === "lifepo4"
      ? reading.isBlind
        ? " Lithium iron phosphate keeps nearly one voltage from 20 to 90 % of its charge, so this says next to nothing: take the percent from a battery monitor that counts ampere-hours."
        : " Lithium iron phosphate tells its charge by its voltage only when nearly full or nearly empty, as here."
      : " It holds after some hours without sun and load, best before sunrise.";
  const last = reading.tiersAtLowest.at(-1);
  const atLowest =
    last === undefined
      ? []
      : [`If it is ${percent(reading.lowestSocFrac)}, ${tierName(last, true)} ${fateText(last, outlook)}.`];
  return [`${means}${why}`, ...atLowest];
}

/** Hours to a column, the fewest that let all hours be drawn. */
const HOURS_A_COLUMN = [1, 2, 3, 6, 12, 24];

function outlookChart(outlook: PostOutlook): Chart {
  const { socFracByHour, hourNow, tiers, lowestSocFrac, socFrac } = outlook;
  const offBelowSocFrac = tiers.at(-1)?.shedAtSocFrac ?? 0;
  const step =
    HOURS_A_COLUMN.find((hours) => socFracByHour.length / hours <= chargeColumnsAtMost) ??
    HOURS_A_COLUMN.at(-1)!;
  const columns = Array.from({ length: Math.ceil(socFracByHour.length / step) }, (_, i) =>
    Math.min(...socFracByHour.slice(i * step, (i + 1) * step)),
  );
  // the column in which a day begins
  const dayOf = (hour: number) => Math.floor((hourNow + hour) / 24);
  const isDay = step === 24;
  const lowest =
    outlook.hoursUntilLowest === 0
      ? "never lower"
      : `lowest ${whenText(outlook.hoursUntilLowest, hourNow)} at ${percent(lowestSocFrac)}`;
  const end = `${percent(socFracByHour.at(-1)!)} when day ${outlook.days.length} ends`;
  const isOff = lowestSocFrac <= offBelowSocFrac + 1e-6;
  return {
    title: "Charge in the coming days",
    words: `${percent(socFrac)} now, ${lowest}, ${end}. ${
      isOff
        ? `The last loads go off at ${percent(offBelowSocFrac)}, to spare the battery.`
        : `The last loads would go off at ${percent(offBelowSocFrac)}.`
    }`,
    lines: chargeColumns({
      socFracs: columns,
      offBelowSocFrac,
      isMarked: (i) => (isDay ? i % 7 === 6 : dayOf((i + 1) * step - 1) > dayOf(i * step - 1)),
      foot: isDay
        ? "one column a day, a mark a week"
        : `one column ${step === 1 ? "an hour" : `${step} hours`}, a mark at midnight`,
    }),
  };
}

const degrees = (tempC: number): string => `${Math.round(tempC) || 0} °C`;

/** What an outlook says, a sentence or two a line, and its chart of 46 columns at most. */
export function outlookWords(outlook: PostOutlook): {
  readonly lines: readonly string[];
  readonly chart: Chart;
} {
  const { tiers, month, bankTempC, healthFrac } = outlook;
  const cold = outlook.isTooColdToCharge
    ? [
        `At ${degrees(bankTempC)} this battery takes no charge, so no sun is counted into it. One whose own heater holds it above 0 °C does.`,
      ]
    : [];
  return {
    lines: [
      ...tiers.map((tier, i) =>
        sentence(`${tierName(tier, i === tiers.length - 1)} ${fateText(tier, outlook)}`),
      ),
      ...readingLines(outlook),
      ...cold,
      `Day 1 is today. Taken for ${MONTH_NAMES[month]}, in kWh/m2 a day on the level: ${skiesText(outlook)}; a battery at ${degrees(bankTempC)} with ${percent(healthFrac)} of its new capacity, and a panel free of snow. It is no better than the forecast.`,
    ],
    chart: outlookChart(outlook),
  };
}
