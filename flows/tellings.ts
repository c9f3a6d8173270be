/**
 * What is said after an answer: one line a figure, in the order of what matters most, told only when it moved.
 */
import { formatNumber, MONTH_NAMES, type Saying, sayingIn } from "../src/core/units/index.ts";
import type { Design, StageName } from "../src/design/design.ts";
import { atLeast, bagsFor, dug, limitText, type Meaning } from "../src/design/index.ts";
import type { Telling } from "../src/interview/define.ts";

const n = (value: number, digits = 2) => formatNumber({ value, digits });
const percent = (frac: number) => `${n(frac * 100)} %`;
const plural = (count: number, one: string, many = `${one}s`) => `${count} ${count === 1 ? one : many}`;
const saying = ({ brief }: Design): Saying => sayingIn(brief.units);
const two = { digits: 2 } as const;
/** Tellings of a stage that may be missing are only spoken when their figure is there. */
const there = <T>(stage: T | null): T => stage as T;

/** While questions are open, a size rests on stand-ins and says so. */
const soFar = (design: Design, stage: StageName) => (design.provisional.includes(stage) ? " so far" : "");

const darkest = (design: Design) => {
  const poa = there(design.sun).poaDailyKWhPerM2ByMonth;
  const month = there(design.sun).designMonth;
  return { month: MONTH_NAMES[month]!, kWhPerM2: poa[month]! };
};

const bankText = (design: Design) => {
  const bank = there(design.battery);
  const kind = bank.chemistry === "agm" ? "AGM lead-acid" : "LiFePO4";
  return `${n(bank.bankAh)} Ah at ${bank.bankV} V ${kind} (${plural(bank.blocks, "block")}, ${saying(design)(bank.bankKg, "kg", two)})`;
};

/** Two digits of a metre are told; in feet and inches it is the figure of the lists. */
const hole = (said: Saying, valueM: number) => said.either(`${n(valueM)} m`, dug(said, valueM));

const arrayText = (design: Design) => {
  const array = there(design.array);
  return `${n(array.installedW, 3)} W (${array.panels} x ${n(array.panelW, 3)} W)`;
};

/**
 * What the answers to a choice would come to at this post, as far as it is known.
 *
 * @param meanings  worked only where they are asked for
 */
export function optionNotes(
  questionId: string,
  meanings: () => readonly Meaning[],
): Readonly<Record<string, string>> {
  if (questionId !== "autonomy.consequence") return {};
  return Object.fromEntries(
    meanings().map(({ consequence, askedDays, isReached, ...size }) => {
      const sizes = `${n(size.installedW, 3)} W with ${n(size.bankAh)} Ah at ${size.bankV} V`;
      if (askedDays !== null) return [consequence, `${sizes} for ${plural(askedDays, "day")}`];
      return [consequence, isReached ? sizes : "out of reach"];
    }),
  );
}

/** Said once, before either word is needed again. */
const twoWays =
  " Two ways are compared: the handbook's, the trade's sums by hand from the darkest month and days without sun; and weather years of your place, gone through hour by hour.";

export const tellings: readonly Telling<Design>[] = [
  {
    id: "sun",
    label: "Sun on the panel",
    figure: (design) => (design.sun === null ? null : darkest(design).kWhPerM2),
    say: (design) => {
      const { month, kWhPerM2 } = darkest(design);
      const sun = there(design.sun);
      const spread = percent(there(design.climate).ghiUncertaintyFrac);
      return kWhPerM2 < 0.05
        ? `In ${month} the panel gets no sun at all there.`
        : `${month} decides the size: ${n(kWhPerM2)} kWh/m2 a day on a panel facing ${sun.facing} (azimuth ${sun.azimuthDeg.toFixed(0)} degrees), ${n(sun.tiltDeg)} degrees steep (sure to about ${spread}).`;
    },
    short: (design) => `${n(darkest(design).kWhPerM2)} kWh/m2 a day in ${darkest(design).month}`,
  },
  {
    id: "energy",
    label: "Energy a day",
    // About one watt day and night: less is not worth a line.
    step: 25,
    figure: (design) => design.loads.designDailyWh,
    say: (design, before) => {
      const wh = n(design.loads.designDailyWh, 3);
      const night = percent(design.loads.nightShareFrac);
      return before === null
        ? `The post asks for about ${wh} Wh a day, ${night} of it in the dark. What you have not said yet is assumed.`
        : `The post now asks for ${wh} Wh a day, ${night} of it in the dark (before: ${n(Number(before), 3)} Wh).`;
    },
    short: (design) => `${n(design.loads.designDailyWh, 3)} Wh`,
  },
  {
    id: "battery",
    label: "Battery",
    figure: (design) => (design.battery === null ? null : bankText(design)),
    say: (design) => {
      const bank = there(design.battery);
      return `Battery${soFar(design, "battery")}: ${bankText(design)} for ${n(bank.lastsDays)} days without sun.`;
    },
    short: bankText,
  },
  {
    id: "array",
    label: "Panels",
    figure: (design) => (design.array === null || design.array.panels === 0 ? null : arrayText(design)),
    say: (design, before) =>
      `Panels${soFar(design, "array")}: ${arrayText(design)}; ${there(design.array).sizedBy === "handbook" ? "the handbook asks" : "the weather years ask"} for ${n(there(design.array).wantedW, 3)} W, margin included.${before === null ? twoWays : ""}`,
    short: arrayText,
  },
  {
    id: "dark",
    label: "Dark hours",
    figure: (design) =>
      design.reliability === null ? null : Math.round(design.reliability.yearly.carefulDarkHours),
    step: 5,
    say: (design) => {
      const { yearly, years, carefulMeans } = there(design.reliability);
      const limit = limitText(design.brief.autonomy);
      const asked = limit === "" ? "" : ` The second figure counts: ${limit}.`;
      const own =
        yearly.ownYear === null
          ? ""
          : ` In the very hours of ${yearly.ownYear.source}: ${n(yearly.ownYear.darkHours)}; a typical year knows no bad spell.`;
      return `Over ${years} weather years the picture is dark about ${n(yearly.darkHours)} hours a year, ${n(yearly.carefulDarkHours)} with ${carefulMeans}.${asked}${own}`;
    },
    short: (design) => {
      const { yearly, carefulMeans } = there(design.reliability);
      return `${n(yearly.darkHours)} h a year, ${n(yearly.carefulDarkHours)} with ${carefulMeans}`;
    },
  },
  {
    id: "lens",
    label: "Lens",
    figure: (design) =>
      design.view.scenes.map((scene) => `${scene.focalLengthMm} mm, ${scene.pixelsAcross} px`).join("; ") ||
      null,
    say: (design) => {
      const said = saying(design);
      return design.view.scenes
        .map(
          (scene) =>
            `${scene.name}: a lens of ${scene.focalLengthMm} mm and ${scene.pixelsAcross} points across show ${said(scene.sceneWidthM, "m", two)} at ${said.bare(scene.pxPerM, "a metre", { digits: 3 })} points a ${said.either("metre", "foot")} (wanted ${said.bare(scene.wantedPxPerM, "a metre", { digits: 3, safe: "up" })}).`,
        )
        .join(" ");
    },
    short: (design) => {
      const said = saying(design);
      return design.view.scenes
        .map(
          (scene) =>
            `${scene.focalLengthMm} mm, ${said.bare(scene.pxPerM, "a metre", two)} points/${said.symbol("m")}`,
        )
        .join("; ");
    },
  },
  {
    id: "link",
    label: "Link",
    figure: (design) => {
      const radio = design.link?.radio;
      return radio
        ? `${radio.carriesPicture} ${Math.round(radio.fadeMarginDb)} ${Math.round(radio.availableMbps)} ${design.link?.clearance?.cheapest?.raises}`
        : null;
    },
    say: (design) => {
      const link = there(design.link);
      const radio = there(link.radio);
      const clearance = there(link.clearance);
      const room =
        clearance.clearingNearHeightM === null
          ? ""
          : `; there is too little room over ${clearance.governing}`;
      return radio.carriesPicture
        ? `A ${radio.radioClass} link with antennas of ${n(radio.antennaGainDbi)} dBi carries ${n(radio.availableMbps)} Mbit/s with ${n(radio.fadeMarginDb)} dB to spare; the picture needs ${n(link.needMbps)}${room}.`
        : `The radio link does not carry the picture yet: ${n(radio.availableMbps)} Mbit/s, and ${n(link.needMbps)} are needed${room}.`;
    },
    short: (design) => {
      const radio = there(there(design.link).radio);
      return `${n(radio.availableMbps)} Mbit/s, ${n(radio.fadeMarginDb)} dB margin`;
    },
  },
  {
    id: "mast",
    label: "Mast",
    // the ground to keep free grows with the mast, and whoever has looked must hear of it
    figure: ({ mounting }) =>
      mounting.tube === null ? null : `${mounting.tube.name}, ${Math.ceil(mounting.keepClearM)} m free`,
    say: (design) => {
      const { tube, mastHeightM, tubeLengthM, keepClearM, gustForceN } = design.mounting;
      const said = saying(design);
      return `Mast: ${there(tube).name}, ${said(mastHeightM, "m", two)} above ground, ${said(tubeLengthM, "m", { ...two, safe: "up" })} long with its buried part, so no wire may be within ${atLeast(said, keepClearM)}; the strongest gust pushes with ${said(gustForceN, "N", { ...two, safe: "up" })}.`;
    },
    short: (design) =>
      `${there(design.mounting.tube).name}, ${saying(design)(design.mounting.mastHeightM, "m", two)}`,
  },
  {
    id: "footing",
    label: "Footing",
    figure: (design) => {
      const footing = design.mounting.footing;
      return footing ? Math.round(footing.depthM * 20) / 20 : null;
    },
    say: (design) => {
      const footing = there(design.mounting.footing);
      const said = saying(design);
      const bags = bagsFor(said, footing);
      return footing.mustRedesign
        ? "Footing: deeper than a simple hole can be. This mast needs an engineer, a smaller panel or another place."
        : `Footing: a hole ${hole(said, footing.depthM)} deep and ${hole(said, footing.diameterM)} wide, ${bags.count} bags of concrete (${bags.each}).`;
    },
    short: (design) => `${hole(saying(design), there(design.mounting.footing).depthM)} deep`,
  },
  {
    id: "cost",
    label: "Cost of parts",
    // Without a battery it would be the price of something else.
    figure: (design) =>
      design.battery !== null && design.money.highTotal > 0 ? design.money.highTotal : null,
    step: 25,
    say: (design) => {
      const { lowTotal, highTotal, currency } = design.money;
      return `Parts cost${soFar(design, "money")} about ${n(lowTotal)} to ${n(highTotal)} ${currency} (typical prices, from memory).`;
    },
    short: (design) => `${n(design.money.lowTotal)} to ${n(design.money.highTotal)} ${design.money.currency}`,
  },
  {
    id: "cold",
    label: "Coldest hour",
    step: 0.5,
    figure: (design) => design.climate?.designColdTempC ?? null,
    say: (design) => {
      const { designColdTempC, designHotTempC } = there(design.climate);
      const said = saying(design);
      return `Coldest hour of a usual year: ${said(designColdTempC, "C", two)}; hottest ${said(designHotTempC, "C", two)}.`;
    },
    short: (design) => saying(design)(there(design.climate).designColdTempC, "C", two),
  },
];
