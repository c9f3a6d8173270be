import {
  ALLOWABLE_STRESS_WIND_FRAC,
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
import { sayingIn } from "../../core/units/index.ts";
import type { Brief } from "../brief.ts";
import type { ArraySizing, Battery, Lift, Link, Loads, Mounting, Sun } from "../design.ts";
import { CONVERTER_EFFICIENCY_FRAC } from "../practice/loads.ts";
import {
  BANK_ROOM_RATIO,
  BLOCK_L_PER_KWH,
  BOX_HEIGHT_M,
  BOX_ON_GROUND_M,
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
import { bagsFor, plain } from "./words.ts";

export { mountingNotes } from "./mounting-notes.ts";

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
  const topM = Math.max(
    cameraHeightM,
    radioHeightM,
    panelMount === "mast" ? panelHeightM + sideM / 2 : 0,
    0.5,
  );
  // a pole that stands already is as high as it is, whatever is to hang on it
  const poleM = mounting.support.value === "existingPole" ? mounting.poleHeightM.value : 0;
  const mastHeightM = poleM > 0 ? poleM : topM;
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
    mastHeightM: topM,
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
    heightM: topM,
    parts,
    headMassKg: headKg,
    family: tubeFamily(brief.place.site.value?.countryCode ?? (brief.units === "us" ? "US" : null)),
  });
  const fit: TubeFit = picked.kind === "picked" ? picked : picked.stoutest;
  const load = isNew ? fit.wind : windLoad({ ...wind, parts });
  const footing = isNew ? footingOf(brief, { fit, mastHeightM }) : null;
  const tubeLengthM = mastHeightM + (footing?.depthM ?? 0);
  const raisedM = Math.max(tubeLengthM, topM);
  const tubeKg = (fit.massKg / topM) * tubeLengthM;

  return {
    tiltDeg: sun?.tiltDeg ?? null,
    azimuthDeg: sun?.azimuthDeg ?? null,
    panelMount,
    panelHeightM,
    cameraHeightM,
    radioHeightM,
    boxHeightM: boxStands === "mast" ? BOX_HEIGHT_M : BOX_ON_GROUND_M,
    mastHeightM,
    neededHeightM: topM,
    tubeLengthM,
    gustMPerS,
    velocityPressurePa: velocityPressurePa({
      ...wind,
      heightM: mastHeightM,
      directionalityFactor: DIRECTIONALITY.panel,
    }),
    panelForceN,
    totalForceN: load.forceN,
    panelGustForceN: panelForceN / ALLOWABLE_STRESS_WIND_FRAC,
    gustForceN: load.forceN / ALLOWABLE_STRESS_WIND_FRAC,
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
    lifts: liftsOf({
      battery,
      array,
      tubeKg: isNew ? tubeKg : null,
      bagKg: footing && bagsFor(sayingIn(brief.units), footing).kg,
    }),
    keepClearM: overheadLineClearanceM({ mastLengthM: Math.max(0.5, raisedM) }),
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
  const mixIn = (bag: "25 kg" | "50 lb") =>
    concrete({
      diameterM,
      depthM: clamp(depthM, 0.1, 10),
      postOuterMm: Math.min(fit.tube.outerMm, 1000 * diameterM),
      bag,
    });
  const mix = mixIn("25 kg");
  return {
    depthM,
    diameterM,
    frostDepthM: frostDepthM.value,
    concreteM3: mix.volumeM3,
    bags25Kg: mix.bags,
    bags50Lb: mixIn("50 lb").bags,
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
  readonly bagKg: number | null;
}): readonly Lift[] {
  const { battery, array, tubeKg, bagKg } = given;
  const lifts: Lift[] = [];
  if (battery) {
    lifts.push(lift(`battery block of ${plain(battery.blockAh)} Ah`, battery.blockKg, LIFTING.compact));
  }
  if (array) lifts.push(lift(`panel of ${plain(array.panelW)} W`, array.panelKg, LIFTING.wide));
  if (tubeKg !== null) lifts.push(lift("mast tube", tubeKg, LIFTING.wide));
  if (bagKg !== null) lifts.push(lift("bag of concrete mix", bagKg, LIFTING.compact));
  return lifts;
}

function lift(what: string, weightKg: number, lifting: (typeof LIFTING)[keyof typeof LIFTING]): Lift {
  const index = liftingIndex({ weightKg: Math.min(weightKg, 500), ...lifting });
  return { what, weightKg, people: index > 1 ? 2 : 1, needsHoist: index > 2 };
}
