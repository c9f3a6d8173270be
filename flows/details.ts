/**
 * What "more" tells at a topic beside the design so far: what was worked but would be too much after an answer. The whole of it
 * stands in the lists.
 */
import { formatNumber, MONTH_NAMES, type Saying, sayingIn } from "../src/core/units/index.ts";
import {
  type ArraySizing,
  type Battery,
  type Design,
  GOVERNING_WORDS,
  governingAh,
  handbookSums,
  monthSumText,
  type Reliability,
  type Sun,
} from "../src/design/index.ts";
import type { Detail } from "../src/interview/conversation.ts";

const n = (value: number, digits = 3): string => formatNumber({ value, digits });
const whole = (value: number): string => String(Math.round(value));
const percent = (frac: number, digits = 2): string => `${n(100 * frac, digits)} %`;
const month = (index: number): string => MONTH_NAMES[index]!;
const short = (index: number): string => month(index).slice(0, 3);

/** null stands for the end of all questions, where everything has its place. */
const SUN_TOPICS: readonly (string | null)[] = ["place", "power", null];
const YEARS_TOPICS: readonly (string | null)[] = ["autonomy", "power", null];
const SUMS_TOPICS: readonly (string | null)[] = ["power", null];

export function details(topicId: string | null, design: Design): readonly Detail[] {
  const { sun, reliability } = design;
  return [
    ...(SUN_TOPICS.includes(topicId) && sun !== null ? [sunDetail(sun)] : []),
    ...(YEARS_TOPICS.includes(topicId) && reliability !== null ? [yearsDetail(reliability)] : []),
    ...(SUMS_TOPICS.includes(topicId) ? sumsDetail(design) : []),
  ];
}

function sunDetail(sun: Sun): Detail {
  const { latitudeTiltDeg, latitudeLossFrac, summerTiltDeg, summerMonths } = sun;
  const rule = `The rule of taking the latitude, ${whole(latitudeTiltDeg)} degrees,`;
  const lines = [
    `The panels stand ${whole(sun.tiltDeg)} degrees steep and face ${sun.facing}. ${
      latitudeLossFrac < 0.005
        ? `${rule} would do as well here.`
        : `${rule} would lose ${percent(latitudeLossFrac)} in the worst month.`
    }`,
  ];
  if (summerTiltDeg !== null)
    lines.push(
      `A second tilt of ${whole(summerTiltDeg)} degrees from ${month(summerMonths[0]!)} to ${month(summerMonths.at(-1)!)} brings ${percent(Math.max(0, sun.twoTiltsWorstGainFrac))} in the worst month and ${percent(Math.max(0, sun.twoTiltsYearGainFrac))} over the year.`,
    );
  return { title: "How the panels stand", lines };
}

/** Under this a month is called dark for no time at all. */
const LEAST_DARK_H = 0.05;

function yearsDetail({ yearly, years, askedDarkHours, carefulMeans }: Reliability): Detail {
  const dark = yearly.darkHoursByMonth.flatMap((hours, i) =>
    hours < LEAST_DARK_H ? [] : [`${short(i)} ${n(hours, 2)}`],
  );
  const charge = yearly.medianSocFracByMonth.map(
    (median, i) => `${short(i)} ${whole(100 * median)} and ${whole(100 * yearly.lowestSocFracByMonth[i]!)}`,
  );
  const held = askedDarkHours === null ? "" : `, which must stay within ${whole(askedDarkHours)}`;
  const lines = [
    `Dark hours a year: ${n(yearly.darkHours, 2)} in the mean, ${n(yearly.worstTenthDarkHours, 2)} in the worst year of ten, ${n(yearly.dullSunDarkHours, 2)} if the sun is as much duller as it may be; ${n(yearly.carefulDarkHours, 2)} with ${carefulMeans}${held}.`,
    dark.length === 0
      ? "No month has dark hours."
      : `Dark hours by month: ${dark.join(", ")}${dark.length === 12 ? "" : "; none in the others"}.`,
    `Charge by month in percent, usual and lowest: ${charge.join(", ")}.`,
    `Not given of the energy asked for: ${yearly.tiers.map(({ devices, darkHours, lossOfLoadFrac }) => `${devices} ${percent(lossOfLoadFrac)} (dark ${n(darkHours, 2)} h a year)`).join("; ")}.`,
  ];
  if (yearly.refillDays !== null)
    lines.push(
      `Once the first loads are back on after a dark spell, the battery is nearly full again in about ${n(yearly.refillDays, 2)} days.`,
    );
  return { title: `Over ${years} weather years`, lines };
}

function sumsDetail(design: Design): readonly Detail[] {
  const sums = handbookSums(design);
  const { brief, battery, array, loads } = design;
  if (sums === null || battery === null || array === null) return [];
  return [
    {
      title: "The handbook's sums, in short",
      lines: [
        ...batteryLines(battery, loads.largestDailyWh, sayingIn(brief.units)),
        arrayLine(array, sums.months),
        ...(sums.secondOpinion === null
          ? []
          : [
              `The Sandia worksheets, a second opinion: ${n(sums.secondOpinion.requiredAh)} Ah and ${n(sums.secondOpinion.panelsW)} W in whole panels.`,
            ]),
        "The lists have them line by line, with the source of each.",
      ],
    },
  ];
}

function batteryLines(battery: Battery, largestDailyWh: number, said: Saying): readonly string[] {
  const { dailyAh, autonomyDays, unadjustedAh, bankNominalV, capacityAtTemperatureFrac } = battery;
  const largestAh = governingAh(battery);
  return [
    `Battery (IEEE 1013): ${n(largestDailyWh)} Wh / ${n(bankNominalV)} V = ${n(dailyAh)} Ah a day, x ${n(autonomyDays)} days = ${n(unadjustedAh)} Ah. For depth / ${n(battery.permittedDodFrac)} = ${n(battery.forDepthAh)} Ah; for an ordinary day ${n(dailyAh)} / ${n(battery.permittedDailyDodFrac)} = ${n(battery.forDailyDepthAh)} Ah; for age ${n(battery.forEndOfLifeAh)} Ah. The largest counts, ${GOVERNING_WORDS[battery.governing]}, and not their product.`,
    `${n(largestAh)} Ah / ${n(capacityAtTemperatureFrac)} for ${said(battery.temperatureC, "C")} = ${n(largestAh / capacityAtTemperatureFrac)} Ah, x ${n(1 + battery.marginFrac)} margin = ${n(battery.requiredAh)} Ah.`,
  ];
}

function arrayLine(
  array: ArraySizing,
  months: NonNullable<ReturnType<typeof handbookSums>>["months"],
): string {
  const top = months
    .filter(({ requiredW }) => requiredW !== null)
    .toSorted((a, b) => b.requiredW! - a.requiredW!)[0];
  const ofMonth =
    top === undefined
      ? ""
      : ` in ${month(top.month)}, which asks for most, ${monthSumText(top, array.arrayToLoadRatio)} = ${n(top.requiredW!)} W`;
  const whole = top !== undefined && array.requiredW <= top.requiredW! * (1 + 1e-9);
  return `Panels (IEEE 1562), daily energy x array-to-load ratio / (sun hours x what arrives):${ofMonth}${whole ? "" : `; the whole year asks for ${n(array.requiredW)} W`}.`;
}
