import type { Mounting, Notes } from "../design.ts";
import {
  BANK_ROOM_RATIO,
  BLOCK_L_PER_KWH,
  BOX_HEIGHT_M,
  BOX_ON_GROUND_M,
  COMFORTABLE_DEPTH_M,
  ELECTRONICS_L,
  FOOTING_DIAMETERS_M,
  GROUND_FRAME_HEIGHT_M,
  HEAVIEST_BANK_ON_MAST_KG,
  LARGEST_ARRAY_ON_MAST_M2,
  LOOSE_TOP_M,
  PANEL_LOWER_EDGE_M,
} from "../practice/mounting.ts";

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
    formula: `on the mast up to ${LARGEST_ARRAY_ON_MAST_M2} m2, else on a ground frame beside it`,
    inputs: ["array.areaM2"],
    source: "judgement, no source",
  },
  panelHeightM: {
    what: "middle of the panels above ground",
    formula: `${PANEL_LOWER_EDGE_M} m to the lower edge + half the panel's side; ${GROUND_FRAME_HEIGHT_M} m on a ground frame`,
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
    formula: `${BOX_HEIGHT_M} m on the mast; ${BOX_ON_GROUND_M} m on the ground`,
    inputs: ["battery.bankKg"],
    source: "judgement, no source",
  },
  mastHeightM: {
    what: "top of the mast above ground",
    formula: "highest of what hangs on it; a pole that stands already as answered",
    inputs: ["mounting.neededHeightM", "brief.mounting.poleHeightM"],
    source: "arithmetic",
  },
  neededHeightM: {
    what: "highest thing on it",
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
  panelGustForceN: {
    what: "the strongest gust's true push on the panels",
    formula: "panel force / 0.6",
    inputs: ["mounting.panelForceN"],
    source: ASCE,
  },
  gustForceN: {
    what: "the strongest gust's true push on everything on the mast",
    formula: "total force / 0.6",
    inputs: ["mounting.totalForceN"],
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
    formula: `IBC equation for a post not held at the ground, which may shift 12 mm in the storm (twice the soil's value), in soil below frost and ${LOOSE_TOP_M} m of topsoil, not less than a tenth of the post + 0.6 m; narrowest of ${FOOTING_DIAMETERS_M.join(", ")} m that is at most ${COMFORTABLE_DEPTH_M} m deep; 25 kg bags + 10 %`,
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
    formula: `${ELECTRONICS_L} l + ${BANK_ROOM_RATIO} x ${BLOCK_L_PER_KWH} l per kWh; on the ground above ${HEAVIEST_BANK_ON_MAST_KG} kg of bank; rise = heat inside / (5.5 W/m2K x cooling area); opening = 28 x 0.05 x cells x 8 mA/Ah x Ah / 1000`,
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
    formula: "whole length of the tube, or the highest thing on a lower pole, + 10 ft, for lines up to 50 kV",
    inputs: ["mounting.tubeLengthM"],
    source: "OSHA 1910.333(c)(3); adding the mast's length: common practice, no source",
  },
} satisfies Notes<Mounting>;
