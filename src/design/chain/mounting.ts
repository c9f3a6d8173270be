import {
  batteryVentilation,
  boxForceCoefficient,
  boxRise,
  concrete,
  DIRECTIONALITY,
  embedment,
  liftingIndex,
  overheadLineClearanceM,
  PANEL_FORCE_COEFFICIENT,
  pickTube,
  ruleOfThumbDepthM,
  soilStrength,
  type TubeFit,
  velocityPressurePa,
  WALL_WATTS_PER_M2K,
  type WindPart,
  windLoad,
} from "../../core/mast/index.ts";
import { clamp } from "../../core/numerics/index.ts";
import type { Brief } from "../brief.ts";
import type { ArraySizing, Battery, Lift, Link, Loads, Mounting, Notes, Sun } from "../design.ts";
import { CONVERTER_EFFICIENCY_FRAC } from "../practice/loads.ts";
import {
  BANK_ROOM_RATIO,
  BLOCK_L_PER_KWH,
  BOX_HEIGHT_M,
  BOX_ON_MAST,
  BRACKETS_KG,
  CAMERA_ON_MAST,
  COMFORTABLE_DEPTH_M,
  ELECTRONICS_L,
  EXPOSURE,
  FOOTING_DIAMETERS_M,
  GROUND_FRAME_HEIGHT_M,
  HEAVIEST_BANK_ON_MAST_KG,
  LARGEST_ARRAY_ON_MAST_M2,
  LIFTING,
  LOOSE_TOP_M,
  PANEL_LOWER_EDGE_M,
  RADIO_ON_MAST,
  SOIL_OF_CLASS,
  tubeFamily,
} from "../practice/mounting.ts";
import { PANEL_KG_PER_M2, PANEL_W_PER_M2 } from "../practice/sold.ts";
import { plain } from "./words.ts";

/** Mast, footing, box and what must be lifted. Without an array, one panel of the largest size stands in. */
export function mountingStage(
  brief: Brief,
  sun: Sun | null,
  loads: Loads,
  battery: Battery | null,
  array: ArraySizing | null,
  link: Link | null,
): Mounting {
  const { mounting } = brief;
  const panelM2 = array?.areaM2 ?? brief.power.largestPanelW.value / PANEL_W_PER_M2;
  const panelMount = panelM2 <= LARGEST_ARRAY_ON_MAST_M2 ? "mast" : "ground frame";
  // the panel may lean at any tilt: its face counts upright, which is where it reaches highest
  const sideM = Math.sqrt(Math.min(panelM2, LARGEST_ARRAY_ON_MAST_M2));
  const panelHeightM = panelMount === "mast" ? PANEL_LOWER_EDGE_M + sideM / 2 : GROUND_FRAME_HEIGHT_M;
  const cameraHeightM = mounting.cameraHeightM.value;
  const radioHeightM = link?.radio?.nearHeightM ?? cameraHeightM;
  const mastHeightM = Math.max(
    cameraHeightM,
    radioHeightM,
    panelMount === "mast" ? panelHeightM + sideM / 2 : 0,
    0.5,
  );
  const bankKg = battery?.bankKg ?? 0;
  const boxStands = bankKg > HEAVIEST_BANK_ON_MAST_KG ? "ground" : "mast";

  const gustMPerS = mounting.gustMPerS.value;
  const wind = { windMPerS: clamp(gustMPerS, 10, 100), exposure: EXPOSURE };
  const panels: WindPart = {
    name: "panels",
    areaM2: panelM2,
    forceCoefficient: PANEL_FORCE_COEFFICIENT,
    heightM: panelHeightM,
    directionalityFactor: DIRECTIONALITY.panel,
  };
  const parts = partsOnMast({
    brief,
    panels: panelMount === "mast" ? panels : null,
    hasRadio: link?.radio !== undefined && link.radio !== null,
    hasBox: boxStands === "mast",
    cameraHeightM,
    radioHeightM,
    mastHeightM,
  });
  const panelForceN = panelM2 * windLoad({ ...wind, parts: [{ ...panels, areaM2: 1 }] }).forceN;
  const headKg =
    BRACKETS_KG +
    CAMERA_ON_MAST.weightKg * cameraCount(brief) +
    (link?.radio ? RADIO_ON_MAST.weightKg : 0) +
    (panelMount === "mast" ? panelM2 * PANEL_KG_PER_M2 : 0);

  const isNew = mounting.support.value === "newMast";
  const picked = pickTube({
    ...wind,
    heightM: mastHeightM,
    parts,
    headMassKg: headKg,
    family: tubeFamily(brief.place.site.value?.countryCode ?? null),
  });
  const fit: TubeFit = picked.kind === "picked" ? picked : picked.stoutest;
  const load = isNew ? fit.wind : windLoad({ ...wind, parts });
  const footing = isNew ? footingOf(brief, { fit, mastHeightM }) : null;
  const tubeLengthM = mastHeightM + (footing?.depthM ?? 0);
  const tubeKg = (fit.massKg / mastHeightM) * tubeLengthM;

  return {
    tiltDeg: sun?.tiltDeg ?? null,
    azimuthDeg: sun?.azimuthDeg ?? null,
    panelMount,
    panelHeightM,
    cameraHeightM,
    radioHeightM,
    boxHeightM: boxStands === "mast" ? BOX_HEIGHT_M : 0.3,
    mastHeightM,
    tubeLengthM,
    gustMPerS,
    velocityPressurePa: velocityPressurePa({
      ...wind,
      heightM: mastHeightM,
      directionalityFactor: DIRECTIONALITY.panel,
    }),
    panelForceN,
    totalForceN: load.forceN,
    groundMomentNm: load.momentNm,
    tube: isNew
      ? {
          name: fit.tube.name,
          outsideMm: fit.tube.outerMm,
          wallMm: fit.tube.wallMm,
          stressShareFrac: fit.stressUseFrac,
          tipDeflectionM: fit.tipDeflectionM,
          weightKg: tubeKg,
          isEnough: picked.kind === "picked",
        }
      : null,
    footing,
    box: boxOf({ battery, loads, stands: boxStands }),
    lifts: liftsOf({ battery, array, tubeKg: isNew ? tubeKg : null, hasFooting: footing !== null }),
    keepClearM: overheadLineClearanceM({ mastLengthM: Math.max(0.5, tubeLengthM) }),
  };
}

function cameraCount(brief: Brief): number {
  return Math.max(1, brief.view.scenes.length);
}

function partsOnMast(on: {
  readonly brief: Brief;
  readonly panels: WindPart | null;
  readonly hasRadio: boolean;
  readonly hasBox: boolean;
  readonly cameraHeightM: number;
  readonly radioHeightM: number;
  readonly mastHeightM: number;
}): readonly WindPart[] {
  const parts: WindPart[] = on.panels ? [on.panels] : [];
  parts.push({
    name: "cameras",
    areaM2: CAMERA_ON_MAST.faceM2 * cameraCount(on.brief),
    forceCoefficient: boxForceCoefficient({ heightM: 0.1, widthM: 0.1 }),
    heightM: on.cameraHeightM,
  });
  if (on.hasRadio) {
    parts.push({
      name: "radio",
      areaM2: RADIO_ON_MAST.faceM2,
      forceCoefficient: PANEL_FORCE_COEFFICIENT,
      heightM: on.radioHeightM,
    });
  }
  if (on.hasBox) {
    const { heightM, widthM } = BOX_ON_MAST;
    parts.push({
      name: "box",
      areaM2: heightM * widthM,
      forceCoefficient: boxForceCoefficient({ heightM, widthM }),
      heightM: Math.min(BOX_HEIGHT_M, on.mastHeightM),
      directionalityFactor: DIRECTIONALITY.box,
    });
  }
  return parts;
}

function footingOf(
  brief: Brief,
  given: { readonly fit: TubeFit; readonly mastHeightM: number },
): Mounting["footing"] {
  const { soil, frostDepthM } = brief.mounting;
  const { fit, mastHeightM } = given;
  const tried = FOOTING_DIAMETERS_M.map((diameterM) => ({
    diameterM,
    hole: embedment({
      forceN: fit.wind.forceN,
      resultantHeightM: fit.wind.resultantHeightM,
      diameterM,
      lateralKPaPerM: soilStrength(SOIL_OF_CLASS[soil.value]).lateralKPaPerM,
      // an isolated post may shift 12 mm at the ground in a storm: a camera or a bridge of 23 dBi bears that
      acceptsShift: true,
      frostDepthM: clamp(frostDepthM.value, 0, 3),
      looseTopM: LOOSE_TOP_M,
    }),
  }));
  const { diameterM, hole } =
    tried.find((one) => one.hole.kind === "depth" && one.hole.depthM <= COMFORTABLE_DEPTH_M) ?? tried.at(-1)!;
  // the rule of thumb asks a tenth of the whole post, which is longer by the depth itself
  const byThumbM = ruleOfThumbDepthM(clamp(mastHeightM / 0.9 + 0.7, 1, 30));
  const depthM = Math.ceil(Math.max(hole.depthM, byThumbM) * 20) / 20;
  const mix = concrete({
    diameterM,
    depthM: clamp(depthM, 0.1, 10),
    postOuterMm: Math.min(fit.tube.outerMm, 1000 * diameterM),
    bag: "25 kg",
  });
  return {
    depthM,
    diameterM,
    frostDepthM: frostDepthM.value,
    concreteM3: mix.volumeM3,
    bags25Kg: mix.bags,
    mustRedesign: hole.kind === "redesign" || soil.value === "soft",
  };
}

function boxOf(given: {
  readonly battery: Battery | null;
  readonly loads: Loads;
  readonly stands: "mast" | "ground";
}): Mounting["box"] {
  const { battery, loads, stands } = given;
  const bankKWh = battery ? (battery.bankAh * battery.bankNominalV) / 1000 : 0;
  // what converter and switch turn into heat stays inside
  const meanW = loads.largestDailyWh / 24;
  const rise = boxRise({
    ...BOX_ON_MAST,
    place: stands === "mast" ? "on-wall-or-mast" : "free-standing",
    lossW: (1 - CONVERTER_EFFICIENCY_FRAC) * meanW + 3.5,
    wallWPerM2K: WALL_WATTS_PER_M2K["painted-steel"],
    sunWPerM2: 0,
    sunlitAreaM2: 0,
    solarAbsorptance: 0.3,
  });
  return {
    stands,
    volumeL: ELECTRONICS_L + BANK_ROOM_RATIO * BLOCK_L_PER_KWH * bankKWh,
    riseK: rise.riseK,
    openingCm2:
      battery?.chemistry === "agm"
        ? batteryVentilation({
            cells: battery.bankV / 2,
            capacityAh: clamp(battery.bankAh, 0.5, 10_000),
            battery: "valve-regulated",
            charge: "boost",
          }).openingCm2
        : 0,
  };
}

function liftsOf(given: {
  readonly battery: Battery | null;
  readonly array: ArraySizing | null;
  readonly tubeKg: number | null;
  readonly hasFooting: boolean;
}): readonly Lift[] {
  const { battery, array, tubeKg, hasFooting } = given;
  const lifts: Lift[] = [];
  if (battery) {
    lifts.push(lift(`battery block of ${plain(battery.blockAh)} Ah`, battery.blockKg, LIFTING.compact));
  }
  if (array) lifts.push(lift(`panel of ${plain(array.panelW)} W`, array.panelKg, LIFTING.wide));
  if (tubeKg !== null) lifts.push(lift("mast tube", tubeKg, LIFTING.wide));
  if (hasFooting) lifts.push(lift("bag of concrete mix", 25, LIFTING.compact));
  return lifts;
}

function lift(what: string, weightKg: number, lifting: (typeof LIFTING)[keyof typeof LIFTING]): Lift {
  const index = liftingIndex({ weightKg: Math.min(weightKg, 500), ...lifting });
  return { what, weightKg, people: index > 1 ? 2 : 1, needsHoist: index > 2 };
}

const WIND = [
  "brief.mounting.gustMPerS",
  "array.areaM2",
  "mounting.mastHeightM",
  "brief.view.scenes",
  "link.radio",
] as const;
const ASCE = "ASCE 7-16 chapters 26 and 29 with 0.6 W of section 2.4.1 (tables from memory)";

export const mountingNotes = {
  tiltDeg: {
    what: "slope of the panel",
    formula: "as the sun stage found it",
    inputs: ["sun.tiltDeg"],
    source: "see sun.tiltDeg",
  },
  azimuthDeg: {
    what: "direction of the panel",
    formula: "as the sun stage found it",
    inputs: ["sun.azimuthDeg"],
    source: "see sun.azimuthDeg",
  },
  panelMount: {
    what: "where the panels stand",
    formula: "on the mast up to 2 m2, else on a ground frame beside it",
    inputs: ["array.areaM2"],
    source: "judgement, no source",
  },
  panelHeightM: {
    what: "middle of the panels above ground",
    formula: "2 m to the lower edge + half the panel's side; 1 m on a ground frame",
    inputs: ["array.areaM2", "mounting.panelMount"],
    source: "judgement, no source",
  },
  cameraHeightM: {
    what: "height of the camera",
    formula: "as answered",
    inputs: ["brief.mounting.cameraHeightM"],
    source: "the builder",
  },
  radioHeightM: {
    what: "height of the radio",
    formula: "what clears the path, else the camera's",
    inputs: ["link.radio"],
    source: "see link.radio",
  },
  boxHeightM: {
    what: "middle of the box above ground",
    formula: "1.2 m on the mast; 0.3 m on the ground",
    inputs: ["battery.bankKg"],
    source: "judgement, no source",
  },
  mastHeightM: {
    what: "top of the mast above ground",
    formula: "highest of camera, radio and upper edge of the panels",
    inputs: ["mounting.cameraHeightM", "mounting.radioHeightM", "mounting.panelHeightM"],
    source: "arithmetic",
  },
  tubeLengthM: {
    what: "whole length of the tube",
    formula: "height above ground + depth of the footing",
    inputs: ["mounting.mastHeightM", "mounting.footing"],
    source: "arithmetic",
  },
  gustMPerS: {
    what: "gust to design for",
    formula: "as answered: strength-level 3-second gust at 10 m in open country",
    inputs: ["brief.mounting.gustMPerS"],
    source: "the builder, from a local office or code map",
  },
  velocityPressurePa: {
    what: "pressure of that gust at the mast's top",
    formula: "0.613 x K_z (open country) x 0.85 x V2",
    inputs: ["mounting.gustMPerS", "mounting.mastHeightM"],
    source: "ASCE 7-16 equation 26.10-1",
  },
  panelForceN: {
    what: "wind force on the panels, 0.6 of the gust's",
    formula: "0.6 x pressure x 0.85 x 1.8 x area",
    inputs: ["array.areaM2", "mounting.panelHeightM", "mounting.gustMPerS"],
    source: ASCE,
  },
  totalForceN: {
    what: "wind force on everything on the mast, 0.6 of the gust's",
    formula: "sum over panels, cameras, radio, box and tube",
    inputs: WIND,
    source: ASCE,
  },
  groundMomentNm: {
    what: "bending moment at the ground",
    formula: "sum of force x height",
    inputs: WIND,
    source: ASCE,
  },
  tube: {
    what: "slenderest sold tube that bears it",
    formula:
      "moment / section modulus at most 0.6 of yield; tip moves at most 1/60 of the height; sways at 1 Hz or faster",
    inputs: ["mounting.groundMomentNm", "mounting.mastHeightM", "brief.place.site"],
    source:
      "AISC 360 (0.6 F_y, safe); 1/60 and 1 Hz: common practice, no source; sizes ASME B36.10 and EN 10219",
  },
  footing: {
    what: "hole and concrete",
    formula:
      "IBC equation for a post not held at the ground, which may shift 12 mm in the storm (twice the soil's value), in soil below frost and 0.2 m of topsoil, not less than a tenth of the post + 0.6 m; narrowest of 0.3 to 0.6 m that is at most 2 m deep; 25 kg bags + 10 %",
    inputs: [
      "mounting.totalForceN",
      "mounting.groundMomentNm",
      "brief.mounting.soil",
      "brief.mounting.frostDepthM",
    ],
    source:
      "IBC 1807.3.2.1 and table 1806.2; doubling: 1806.3.4 (from memory); the rest common practice, no source",
  },
  box: {
    what: "box for bank and electronics",
    formula:
      "25 l + 2 x 10 l per kWh; on the ground above 30 kg of bank; rise = heat inside / (5.5 W/m2K x cooling area); opening = 28 x 0.05 x cells x 8 mA/Ah x Ah / 1000",
    inputs: [
      "battery.bankAh",
      "battery.bankNominalV",
      "battery.bankKg",
      "battery.chemistry",
      "loads.largestDailyWh",
    ],
    source:
      "rise: VDE 0660-500 practice; opening: IEC 62485-2 clause 7 (gassing figure from memory); volume and weight limits: judgement",
  },
  lifts: {
    what: "what must be lifted, and by how many",
    formula:
      "weight / recommended weight above 1: two people; above 2: a hoist, a hand truck or smaller pieces",
    inputs: ["battery.blockKg", "array.panelKg", "mounting.tube"],
    source: "NIOSH 94-110, revised lifting equation; postures judged",
  },
  keepClearM: {
    what: "least level distance from the mast's foot to an overhead line",
    formula: "whole length of the tube + 10 ft, for lines up to 50 kV",
    inputs: ["mounting.tubeLengthM"],
    source: "OSHA 1910.333(c)(3); adding the mast's length: common practice, no source",
  },
} satisfies Notes<Mounting>;
