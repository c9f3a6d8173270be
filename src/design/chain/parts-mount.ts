import type { Brief } from "../brief.ts";
import { CLAMP_MM } from "../practice/mounting.ts";
import * as prices from "../practice/prices.ts";
import { type Draft, times, type Worked } from "./part-draft.ts";
import { fixed, plain } from "./words.ts";

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
  const parts: Draft[] = [
    {
      id: "box",
      name: "Box for battery and electronics, lockable",
      quantity: 1,
      unit: "",
      specification: [
        `at least ${fixed(box.volumeL, 0)} litres inside, white, with a sun shield`,
        battery?.chemistry === "agm"
          ? `vented: at least ${fixed(box.openingCm2, 1)} cm2 free low down and again high up, behind insect screens; electronics apart from the battery's air`
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
        "rod of at least 2.4 m (8 ft) and 16 mm (5/8 in), or what your code asks; 16 mm2 (6 AWG) copper",
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
        `${tube.name}: ${fixed(tube.outsideMm, 1)} mm outside, wall ${fixed(tube.wallMm, 1)} mm`,
        `${fixed(mounting.tubeLengthM, 1)} m long (${fixed(mounting.mastHeightM, 1)} m above ground)`,
      ],
      price: times(prices.MAST_PER_M, mounting.tubeLengthM),
      figures: ["mounting.tube", "mounting.tubeLengthM"],
    });
  }
  if (footing) {
    parts.push({
      id: "concrete",
      name: "Concrete mix",
      quantity: footing.bags25Kg,
      unit: "bags of 25 kg",
      specification: [`hole ${fixed(footing.diameterM, 2)} m across and ${fixed(footing.depthM, 2)} m deep`],
      price: prices.CONCRETE_PER_BAG,
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
        `for ${array.panels === 1 ? "1 panel" : `${array.panels} panels`} of ${plain(array.panelW)} W (${fixed(array.areaM2, 1)} m2, ${fixed(array.panels * array.panelKg, 0)} kg)`,
        mounting.tiltDeg === null ? "tilt to be set" : `tilt ${fixed(mounting.tiltDeg, 0)}°`,
        ...(onMast && isOnBuilding && mounting.azimuthDeg !== null
          ? [`turns to face azimuth ${fixed(mounting.azimuthDeg, 0)}°, whichever way the building faces`]
          : []),
        `bears ${fixed(mounting.panelGustForceN, 0)} N in the strongest gust (${fixed(mounting.panelForceN, 0)} N, 0.6 of it, where its maker states allowable loads)`,
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
            `for ${fixed(poleMm, 0)} mm outside diameter`,
            ...(poleMm < CLAMP_MM.narrowest || poleMm > CLAMP_MM.widest
              ? [`usual clamps span ${CLAMP_MM.narrowest} to ${CLAMP_MM.widest} mm: order to measure`]
              : []),
          ]
        : ["with fixings for the wall or roof as it is"],
    price: prices.POLE_CLAMPS,
    figures: tube ? ["mounting.tube"] : ["brief.mounting.poleDiameterMm"],
  });
  return parts;
}
