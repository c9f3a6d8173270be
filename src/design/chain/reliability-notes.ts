import type { Notes, Reliability } from "../design.ts";
import {
  BANK_LAG_H,
  FIRST_EFFORT,
  FULL_EFFORT,
  LEAST_SIMULATED_DAYS,
  MOST_ARRAY_RATIO_WHERE_BRIDGED,
  MOST_BANK_RATIO,
  MOST_BANK_RATIO_WHERE_BRIDGED,
  MOST_SIMULATED_DAYS,
} from "../practice/reliability.ts";
import { SWITCHING_WORDS } from "../practice/switching.ts";

const WEATHER = [
  "climate.ghiDailyKWhPerM2ByMonth",
  "climate.dailyGhiQuantilesByMonth",
  "climate.meanTempCByMonth",
  "climate.designColdTempC",
  "climate.designHotTempC",
  "sun.tiltDeg",
  "sun.azimuthDeg",
  "sun.snowFracByMonth",
  "brief.place.horizon",
  "brief.place.soilingFrac",
] as const;
const POST = ["brief.loads.devices", "brief.hours.runsInMonth", "brief.power.controller"] as const;

const SIMULATION = `hourly energy balance: days drawn from the place's own spread with their memory of the day before (Graham, Hollands and Brunger 1988, from memory; memory by Aguiar, Collares-Pereira and Conde 1988), hours by Collares-Pereira and Rabl 1979, panel by Hay and Davies 1980 with glass, heat and weak light, bank with losses, cold and age; bank ${BANK_LAG_H} h behind the air, ${SWITCHING_WORDS}: judgement`;
const pair = (what: string) => ({
  what,
  formula:
    "whole panels and whole blocks, their weight, area and price (panels, frame, blocks), and the mean dark hours a year in the careful case",
  inputs: [...WEATHER, ...POST, "reliability.carefulRatio", "reliability.carefulSunRatio"],
  source: `${SIMULATION}; sizes sold and prices from memory`,
});

export const reliabilityNotes = {
  years: {
    what: "weather years that are run through",
    formula: `${FULL_EFFORT.years}, and ${FIRST_EFFORT.years} while the topics of loads and hours are open; drawn from one seed, so that the same brief gives the same figures`,
    inputs: [],
    source: "judgement: what comes once in ten years is met three times in thirty",
  },
  askedDarkHours: {
    what: "hours a year in which the picture may be dark",
    formula:
      "as answered; 438, 87.6, 8.76 for a nuisance, a worry, a disaster; nothing where days were asked",
    inputs: ["brief.autonomy.consequence", "brief.autonomy.askedDarkHours"],
    source:
      "availability classes of 95 % and 99 % (Ball and Risser 1988, as quoted in Applied Photovoltaics section 7.2); 99.9 % judgement",
  },
  carefulRatio: {
    what: "demand of the careful case, by which pairs are judged, over the demand as answered",
    formula: "1 + margin; every case has a bank at the end of its life",
    inputs: ["brief.power.marginFrac"],
    source: "judgement",
  },
  carefulSunRatio: {
    what: "sun of the careful case over the sun as the source says",
    formula:
      "(1 + margin) x (1 - uncertainty of the sun), 1 at most: sun over demand falls by the larger of margin and uncertainty, and a month without sun has none to lose",
    inputs: ["brief.power.marginFrac", "climate.ghiUncertaintyFrac"],
    source: "judgement",
  },
  carefulMeans: {
    what: "the careful case in words",
    formula: "as above",
    inputs: ["reliability.carefulRatio", "reliability.carefulSunRatio"],
    source: "as above",
  },
  handbook: pair("the pair that the worksheets ask for, and what it really delivers"),
  handbookNewDarkHours: {
    what: "dark hours of the handbook's pair while its bank is new, demand and sun as answered, where the bank bridges dark months",
    formula:
      "as the pair, with the whole capacity: the worksheet takes the largest of the corrections for depth and for age, not their product",
    inputs: ["reliability.handbook", "climate.ghiDailyKWhPerM2ByMonth", "sun.snowFracByMonth"],
    source: `${SIMULATION}; the worksheet: IEEE 1013, from memory`,
  },
  pairs: {
    ...pair(
      "pairs that reach what was asked, or are no darker than the handbook's where days were asked: for each array the least bank; first the least dark of those within a tenth of the cheapest, then by cost",
    ),
    formula: `arrays of ${FULL_EFFORT.arrayRatios[0]} to ${FULL_EFFORT.arrayRatios[1]} times the handbook's power (up to ${MOST_ARRAY_RATIO_WHERE_BRIDGED} times where the bank bridges dark months), banks from ${LEAST_SIMULATED_DAYS} days without sun (or the days until somebody comes) to ${MOST_SIMULATED_DAYS} or ${MOST_BANK_RATIO} times the handbook's size (${MOST_BANK_RATIO_WHERE_BRIDGED} where it bridges dark months), each larger by a tenth or the next that is sold; steps are searched so that each answer is tried out and so is the next smaller bank; charge current within C/20 to C/5 for lead (no lower bound where it bridges dark months), up to C/2 for lithium; the lower bound falls where no pair keeps it`,
    inputs: [
      ...WEATHER,
      ...POST,
      "brief.autonomy.visitDays",
      "brief.power.heaviestBlockKg",
      "brief.power.largestPanelW",
      "brief.parts.battery",
      "brief.parts.panel",
    ],
    source: `${SIMULATION}; two days at least: AS/NZS 4509.2:2010 (two to five days), as quoted by a training body`,
  },
  chosenMethod: {
    what: "whose size is built",
    formula:
      "the builder's choice; else the handbook's where days were asked; else the one that reaches the dark hours asked for, and of two the cheaper; where none does, the least dark of those tried",
    inputs: ["brief.power.sizing", "reliability.handbook", "reliability.pairs", "reliability.askedDarkHours"],
    source: "judgement",
  },
  because: {
    what: "why that one",
    formula: "as above, in words",
    inputs: ["reliability.chosenMethod"],
    source: "as above",
  },
  chosen: pair("the pair that is built"),
  isReached: {
    what: "whether it reaches what was asked",
    formula: "dark hours in the careful case <= dark hours asked",
    inputs: ["reliability.chosen", "reliability.askedDarkHours"],
    source: "arithmetic",
  },
  yearly: {
    what: "what the chosen pair does over the years: dark hours (mean, worst year in ten, by month, with a duller sun, in the hours of the builder's own file run twice), loss of load of each group of loads and of all, charge by month, energy wasted, cycles, years of life, days from the first loads back on until 95 % full, frost",
    formula:
      "demand as answered, bank at the end of its life; life: cycles by depth against a curve, or the calendar halved for each 10 K above 25 °C, whichever ends first; frost: hours below the acid's freezing point at its charge",
    inputs: [...WEATHER, ...POST, "climate.ghiUncertaintyFrac", "brief.place.ownSun", "reliability.chosen"],
    source: `${SIMULATION}; wear curves from memory; freezing points: US Army TM 5-3820-256-24-4 table 2; refilling in the sense of IEC 62124 (from memory)`,
  },
} satisfies Notes<Reliability>;
