/** The days to come in plain sentences, and drawn. */
import { MONTH_NAMES, sayingIn, type UnitSystem } from "../core/units/index.ts";
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
function fateText(tier: PostTierOutlook, outlook: PostOutlook): string {
  const { hoursUntilShed, hoursUntilBack, isOffNow } = tier;
  const { hourNow, days } = outlook;
  if (isOffNow && hoursUntilShed === null) return "is off now, and has power again before it next needs it";
  if (hoursUntilShed === null)
    return days.length === 1
      ? "stays on for the rest of today"
      : `stays on through these ${days.length} days`;
  const off =
    isOffNow || hoursUntilShed === 0 ? "is off now" : `goes off ${whenText(hoursUntilShed, hourNow)}`;
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

/** Where the charge alone does not tell whether loads are on: what was taken, and how to say the other. */
function takenLines({ tiers, reading, socFrac, contradiction }: PostOutlook): readonly string[] {
  const charge = reading === null ? percent(socFrac) : `${reading.restV} V`;
  if (contradiction === "off though charged")
    return [
      `At ${charge} the controller should have the loads on: if they are off, look first for a blown fuse, an open switch or a wrong setting. Here they are taken to come on now.`,
    ];
  if (contradiction === "on though empty")
    return [
      `At ${charge} the controller should have let the loads go: if they are still on, check the voltage it is set to. Here they are taken to go off now.`,
    ];
  // the most important of them that may be either: with it goes all that is less important
  const at = tiers.findLastIndex(({ isTakenAsOn }) => isTakenAsOn);
  if (at < 0) return [];
  const { shedAtSocFrac, backAtSocFrac } = tiers[at]!;
  const isLast = at === tiers.length - 1;
  return [
    `Between ${percent(shedAtSocFrac)} and ${percent(backAtSocFrac)} of charge ${tierName(tiers[at]!, isLast)} may be on, or still off after a dull spell, and was taken to be on: if it is off, say "${charge} and ${isLast ? "off" : "extras off"}", then the days.`,
  ];
}

/** When the battery is well again; nothing where it stays so. */
function recoveryLines({ recovery, month, hourNow }: PostOutlook): readonly string[] {
  const { usualSocFrac, hoursUntilUsual, fullSocFrac, hoursUntilFull } = recovery;
  const usual =
    usualSocFrac === null || usualSocFrac >= fullSocFrac || hoursUntilUsual === 0
      ? null
      : `its usual charge for ${MONTH_NAMES[month]} (${percent(usualSocFrac)})`;
  const full = `as good as full (${percent(fullSocFrac)})`;
  if (usual !== null && hoursUntilUsual === null)
    return [`The battery does not come back to ${usual} within these days.`];
  const isBack = usual === null ? "" : ` is back at ${usual} ${whenText(hoursUntilUsual!, hourNow)}`;
  if (hoursUntilFull === 0) return [];
  const isFull =
    hoursUntilFull === null
      ? `${isBack === "" ? " is" : ", but"} not ${full} within these days`
      : `${isBack === "" ? " is" : " and"} ${full} ${whenText(hoursUntilFull, hourNow)}`;
  return [`The battery${isBack}${isFull}.`];
}

/** Hours to a column, the fewest that let all hours be drawn. */
const HOURS_A_COLUMN = [1, 2, 3, 6, 12, 24];

function outlookChart(outlook: PostOutlook): Chart {
  const { socFracByHour, hourNow, tiers, lowestSocFrac, socFrac } = outlook;
  const offBelowSocFrac = tiers.at(-1)?.shedAtSocFrac ?? 0;
  const back = `and come back at ${percent(tiers.at(-1)?.backAtSocFrac ?? 1)}`;
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
  const isOffNow = tiers.at(-1)?.isOffNow === true;
  const isOff = lowestSocFrac <= offBelowSocFrac + 1e-6;
  return {
    title: "Charge in the coming days",
    words: `${percent(socFrac)} now, ${lowest}, ${end}. ${
      isOffNow
        ? `The last loads are off ${back}.`
        : isOff
          ? `The last loads go off at ${percent(offBelowSocFrac)}, to spare the battery, ${back}.`
          : `The last loads would go off at ${percent(offBelowSocFrac)} ${back}.`
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

/** What an outlook says, a sentence or two a line, and its chart of 46 columns at most. */
export function outlookWords(
  outlook: PostOutlook,
  units: UnitSystem,
): {
  readonly lines: readonly string[];
  readonly chart: Chart;
} {
  const { tiers, month, bankTempC, healthFrac } = outlook;
  const said = sayingIn(units);
  const degrees = (tempC: number): string => said(Math.round(tempC), "°C");
  const cold = outlook.isTooColdToCharge
    ? [
        `At ${degrees(bankTempC)} this battery takes no charge, so no sun is counted into it. One whose own heater holds it above ${degrees(0)} does.`,
      ]
    : [];
  return {
    lines: [
      ...tiers.map((tier, i) =>
        sentence(`${tierName(tier, i === tiers.length - 1)} ${fateText(tier, outlook)}`),
      ),
      ...takenLines(outlook),
      ...recoveryLines(outlook),
      ...readingLines(outlook),
      ...cold,
      `Day 1 is today. Taken for ${MONTH_NAMES[month]}, in kWh/m2 a day on the level: ${skiesText(outlook)}; a battery at ${degrees(bankTempC)} with ${percent(healthFrac)} of its new capacity, and a panel free of snow. It is no better than the forecast.`,
    ],
    chart: outlookChart(outlook),
  };
}
