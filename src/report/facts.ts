/** The post in figures: what a person would say of it in a minute. */
import { formatNumber, MONTH_NAMES, sayingIn } from "../core/units/index.ts";
import { type Brief, bagsFor, type Design, limitText, type Reliability, type Sun } from "../design/index.ts";
import type { Block } from "./document.ts";
import { sentence } from "./words.ts";

type Row = readonly [label: string, value: string];

const rough = (value: number): string => formatNumber({ value, digits: 2 });
const figure = (value: number): string => formatNumber({ value, digits: 3 });
/** What is to be held: never less than was worked. */
const push = { digits: 2, safe: "up" } as const;
const tenths = { places: 1, keepsZeros: true } as const;
const whole = (value: number): string => value.toFixed(0);

export function figureBlock(design: Design): Block {
  return {
    kind: "facts",
    rows: [
      ...energyRows(design),
      ...pictureRows(design),
      ...linkRows(design),
      ...mountRows(design),
      costRow(design),
    ],
  };
}

function energyRows({ brief, sun, loads, battery, array, reliability }: Design): readonly Row[] {
  const rows: Row[] = [
    [
      "Energy",
      `${figure(loads.designDailyWh)} Wh a day in the month that decides, ${rough(loads.nightShareFrac * 100)} % of it in the dark.`,
    ],
  ];
  if (sun !== null)
    rows.push([
      "Panels stand",
      [
        `${whole(sun.tiltDeg)}° from flat, facing true ${sun.facing} (azimuth ${whole(sun.azimuthDeg)}°).`,
        latitudeRule(sun),
        secondTilt(sun),
      ]
        .filter((text) => text !== "")
        .join(" "),
    ]);
  if (array !== null)
    rows.push(
      [
        "Panels",
        `${figure(array.installedW)} W in all, ${figure(array.wantedW)} W needed. ${sentence(array.layoutReason)}`,
      ],
      [
        "Controller",
        `${array.controllers > 1 ? `${array.controllers} of them: ` : ""}${array.controller.toUpperCase()}, at least ${figure(array.controllerA)} A and ${figure(array.controllerMaxInputV)} V from the panels.`,
      ],
    );
  if (battery !== null)
    rows.push(
      [
        "Battery",
        `${figure(battery.bankAh)} Ah at ${battery.bankV} V, ${figure(battery.wantedAh)} Ah needed, ${sayingIn(brief.units)(battery.bankKg, "kg", { digits: 2 })}. ${sentence(battery.layoutReason)}`,
      ],
      ["Battery kind", sentence(battery.chemistryReason)],
      [
        "Without sun",
        battery.sizedBy === "handbook"
          ? sentence(battery.autonomyReason)
          : `${rough(battery.lastsDays)} days from full, when the battery is old.`,
      ],
    );
  if (reliability !== null)
    rows.push(
      ["Dark hours", darkHoursText(reliability, brief)],
      [
        "Size built",
        `${reliability.chosenMethod === "handbook" ? "The handbook's" : "The weather years'"}: the first part says why.`,
      ],
    );
  return rows;
}

function latitudeRule(sun: Sun): string {
  return sun.latitudeLossFrac < 0.005
    ? ""
    : `The rule of taking the latitude (${whole(sun.latitudeTiltDeg)}°) would lose ${rough(100 * sun.latitudeLossFrac)} % in the worst month.`;
}

function secondTilt(sun: Sun): string {
  if (sun.summerTiltDeg === null) return "";
  return `A second tilt of ${whole(sun.summerTiltDeg)}° from ${MONTH_NAMES[sun.summerMonths[0]!]!} to ${MONTH_NAMES[sun.summerMonths.at(-1)!]!} brings ${rough(100 * Math.max(0, sun.twoTiltsWorstGainFrac))} % in the worst month and ${rough(100 * Math.max(0, sun.twoTiltsYearGainFrac))} % over the year.`;
}

function darkHoursText({ yearly, years, carefulMeans }: Reliability, brief: Brief): string {
  const limit = limitText(brief.autonomy);
  const asked = limit === "" ? "" : ` The second of these must keep to what was asked: ${limit}.`;
  return `Over ${years} weather years about ${whole(yearly.darkHours)} hours a year, ${whole(yearly.carefulDarkHours)} with ${carefulMeans}.${asked} In the worst year of ten ${whole(yearly.worstTenthDarkHours)}; ${whole(yearly.dullSunDarkHours)} if the sun is as much duller as it may be.${ownYearText(yearly.ownYear)}`;
}

function ownYearText(own: Reliability["yearly"]["ownYear"]): string {
  return own === null
    ? ""
    : ` In the very hours of ${own.source} about ${whole(own.darkHours)} hours, the battery never below ${whole(100 * own.lowestSocFrac)} %; a typical year has no bad spell, so the size rests on the others.`;
}

function pictureRows({ view, brief }: Design): readonly Row[] {
  const said = sayingIn(brief.units);
  const rows = view.scenes.map((scene, i): Row => {
    const distanceM = brief.view.scenes[i]?.distanceM.value ?? 0;
    return [
      scene.name,
      `${scene.pixelsAcross} x ${scene.pixelsDown} pixels, lens ${rough(scene.focalLengthMm)} mm: ${said.bare(scene.pxPerM, "a metre")} pixels per ${said.either("metre", "foot")} at ${said(distanceM, "m", { digits: 2 })} (asked: ${said.bare(scene.wantedPxPerM, "a metre", { digits: 3, safe: "up" })}), ${said(scene.sceneWidthM, "m", { digits: 2 })} wide.`,
    ];
  });
  return view.scenes.length > 0 && view.storageGB > 0
    ? [
        ...rows,
        [
          "Storage",
          `${whole(Math.ceil(view.storageGB - 1e-9))} GB for ${figure(brief.view.keepDays.value)} days.`,
        ],
      ]
    : rows;
}

function linkRows({ brief, link }: Design): readonly Row[] {
  if (link === null) return [["Link", "None: the pictures are kept at the post."]];
  const need = `${rough(link.needMbps)} Mbit/s needed`;
  if (link.radio === null)
    return [["Link", `By ${link.carrier === "cable" ? "network cable" : "mobile network"}, ${need}.`]];
  const { distanceM, availableMbps, fadeMarginDb } = link.radio;
  return [
    [
      "Link",
      `By radio over ${sayingIn(brief.units)(distanceM, "m away", { digits: 3 })}, ${rough(availableMbps)} Mbit/s to use, ${need}, ${whole(fadeMarginDb)} dB to spare.`,
    ],
  ];
}

function mountRows({ brief, mounting }: Design): readonly Row[] {
  const said = sayingIn(brief.units);
  const standsInGround = ["newMast", "existingPole"].includes(brief.mounting.support.value);
  const { tube, footing, box, lifts } = mounting;
  const rows: Row[] = [
    [
      "Wind",
      `${said(mounting.gustForceN, "N", push)} in a gust of ${said(mounting.gustMPerS, "m/s")}; design load (0.6 of it, for allowable stress): ${said(mounting.totalForceN, "N", push)}${standsInGround ? `, ${said(mounting.groundMomentNm, "Nm", push)} at the ground` : ""}.`,
    ],
  ];
  if (tube !== null)
    rows.push([
      "Mast",
      `${tube.name}, ${said(mounting.mastHeightM, "m", tenths)} above ground, ${said(mounting.tubeLengthM, "m", { ...tenths, safe: "up" })} ${said.either("in all", "overall")}${tube.isEnough ? "" : ", which is not enough"}.`,
    ]);
  if (footing !== null) {
    const bags = bagsFor(said, footing);
    rows.push([
      "Footing",
      `${said(footing.depthM, "m", { digits: 3, safe: "up" })} deep, ${said(footing.diameterM, "m", { digits: 3, safe: "up" })} across, ${bags.count} bags of ${bags.each}${footing.mustRedesign ? ", which an engineer must redesign" : ""}.`,
    ]);
  }
  rows.push([
    "Box",
    `At least ${said(Math.ceil(box.volumeL), "litres of room", { safe: "up" })}, ${box.stands === "mast" ? "hung up" : "on the ground"}${box.openingCm2 > 0 ? `, vents of ${said(Math.ceil(box.openingCm2), "cm2", { safe: "up" })} low down and as much high up` : ""}.`,
  ]);
  for (const { what, weightKg, people, needsHoist } of lifts)
    rows.push([
      `Lift: ${what}`,
      `${said(weightKg, "kg", { digits: 2 })}, ${needsHoist ? "a hoist or hand truck" : people === 1 ? "one person" : `${people} people`}.`,
    ]);
  return rows;
}

const costRow = ({ money, battery }: Design): Row => [
  battery === null ? "Cost of parts, without battery and panels" : "Cost of parts",
  `About ${rough(money.lowTotal)} to ${rough(money.highTotal)} ${money.currency}, ${figure(money.contingencyFrac * 100)} % for odds and ends included (typical prices, from memory).`,
];
