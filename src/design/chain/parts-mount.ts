import { type Saying, sayingIn } from "../../core/units/index.ts";
import type { Brief } from "../brief.ts";
import { CLAMP_MM } from "../practice/mounting.ts";
import * as prices from "../practice/prices.ts";
import { type Draft, times, type Worked } from "./part-draft.ts";
import { bagsFor, dug, fixed, plain } from "./words.ts";

/** Of a tube, as its table has it: 2.375 in, 60.3 mm. */
const rolled = (said: Saying, valueMm: number, places = 1): string =>
  said.either(said(valueMm, "mm", places), said(valueMm, "mm", { digits: 4 }));

const SUPPORT_WORDS = {
  newMast: "mast",
  existingPole: "pole",
  wall: "wall",
  roof: "wall below the roof",
} as const;
const BRACKETS = {
  newMast: "Panel bracket for a pole",
  existingPole: "Panel bracket for a pole",
  wall: "Panel bracket for a wall, that turns and tilts",
  roof: "Panel frame for a roof, that turns and tilts",
} as const;

export function mountParts(brief: Brief, worked: Worked): readonly Draft[] {
  const { mounting, battery, array } = worked;
  const { tube, footing, box } = mounting;
  const said = sayingIn(brief.units);
  const parts: Draft[] = [
    {
      id: "box",
      name: "Box for battery and electronics, lockable",
      quantity: 1,
      unit: "",
      specification: [
        `at least ${said(box.volumeL, "litres of room", { safe: "up" })} inside, white, with a sun shield`,
        battery?.chemistry === "agm"
          ? `vented: at least ${said(box.openingCm2, "cm2", { places: 1, safe: "up" })} free low down and again high up, behind insect screens; electronics apart from the battery's air`
          : "IP65, with a breather",
        box.stands === "ground"
          ? "stands on the ground"
          : `hangs on the ${SUPPORT_WORDS[brief.mounting.support.value]}`,
      ],
      // usual boxes hold about 60 litres
      price: times(prices.BOX, Math.max(1, box.volumeL / 60)),
      figures: ["mounting.box"],
    },
    {
      id: "earth",
      name: "Earth rod, clamp and bonding wire",
      quantity: 1,
      unit: "set",
      specification: [
        said.either(
          "rod of at least 2.4 m (8 ft) and 16 mm (5/8 in), or what your code asks; 16 mm2 (6 AWG) copper",
          "rod of at least 8 ft and 5/8 in, or what your code asks; 6 AWG (16 mm2) copper",
        ),
        "one electrode for whatever of metal there is: mast, panel frames, box and surge protectors",
      ],
      price: prices.EARTH_SET,
      figures: [],
    },
  ];
  if (tube) {
    parts.push({
      id: "mast",
      name: "Mast tube, galvanised steel",
      quantity: 1,
      unit: "",
      specification: [
        `${tube.name}: ${rolled(said, tube.outsideMm)} outside, wall ${rolled(said, tube.wallMm)}`,
        `${said(mounting.tubeLengthM, "m", { places: 1, safe: "up" })} long (${said(mounting.mastHeightM, "m", 1)} above ground)`,
      ],
      price: times(prices.MAST_PER_M, mounting.tubeLengthM),
      figures: ["mounting.tube", "mounting.tubeLengthM"],
    });
  }
  if (footing) {
    const bags = bagsFor(said, footing);
    parts.push({
      id: "concrete",
      name: "Concrete mix",
      quantity: bags.count,
      unit: `bags of ${bags.each}`,
      specification: [`hole ${dug(said, footing.diameterM)} across and ${dug(said, footing.depthM)} deep`],
      // priced by the bag of 25 kg
      price: times(prices.CONCRETE_PER_BAG, bags.kg / 25),
      figures: ["mounting.footing"],
    });
  }
  if (array) {
    const onMast = mounting.panelMount === "mast";
    const isOnBuilding = ["wall", "roof"].includes(brief.mounting.support.value);
    parts.push({
      id: "panelMount",
      name: onMast ? BRACKETS[brief.mounting.support.value] : "Ground frame for the panels, with its anchors",
      quantity: 1,
      unit: "",
      specification: [
        `for ${array.panels === 1 ? "1 panel" : `${array.panels} panels`} of ${plain(array.panelW)} W (${said(array.areaM2, "m2", 1)}, ${said(array.panels * array.panelKg, "kg", { safe: "up" })})`,
        mounting.tiltDeg === null ? "tilt to be set" : `tilt ${fixed(mounting.tiltDeg, 0)}°`,
        ...(onMast && isOnBuilding && mounting.azimuthDeg !== null
          ? [`turns to face azimuth ${fixed(mounting.azimuthDeg, 0)}°, whichever way the building faces`]
          : []),
        `bears ${said(mounting.panelGustForceN, "N", { safe: "up" })} in the strongest gust (${said(mounting.panelForceN, "N", { safe: "up" })}, 0.6 of it, where its maker states allowable loads)`,
      ],
      price: prices.panelMount({ areaM2: array.areaM2, isOnMast: onMast }),
      figures: [
        "mounting.panelGustForceN",
        "mounting.panelForceN",
        "mounting.tiltDeg",
        "array.panels",
        "array.panelW",
      ],
    });
  }
  const poleMm = tube?.outsideMm ?? brief.mounting.poleDiameterMm.value;
  parts.push({
    id: "clamps",
    name: poleMm > 0 ? "Pole clamps for camera, radio and box" : "Wall brackets for camera, radio and box",
    quantity: 1,
    unit: "set",
    specification:
      poleMm > 0
        ? [
            `for ${rolled(said, poleMm, 0)} outside diameter`,
            ...(poleMm < CLAMP_MM.narrowest || poleMm > CLAMP_MM.widest
              ? [
                  `usual clamps span ${said.bare(CLAMP_MM.narrowest, "mm")} to ${said(CLAMP_MM.widest, "mm")}: order to measure`,
                ]
              : []),
          ]
        : ["with fixings for the wall or roof as it is"],
    price: prices.POLE_CLAMPS,
    figures: tube ? ["mounting.tube"] : ["brief.mounting.poleDiameterMm"],
  });
  return parts;
}
