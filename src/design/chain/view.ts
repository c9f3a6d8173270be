import { sum } from "../../core/numerics/index.ts";
import { daylightHours, MEAN_DAY_BY_MONTH } from "../../core/sun/index.ts";
import {
  BITS_PER_PIXEL,
  COMMON_FOCAL_LENGTHS_MM,
  fieldOfViewDeg,
  pickLens,
  pixelDensityPxPerM,
  sceneWidthM,
  storageGB,
  streamMbps,
} from "../../core/view/index.ts";
import type { Brief, Scene, Schedule } from "../brief.ts";
import type { SceneView, View } from "../design.ts";
import { FRAMES_PER_S, OFFERED_SENSORS, TURNING_ZOOM_MM, wantedPxPerM } from "../practice/view.ts";
import { lengthH } from "./demand.ts";
import { runningSpans } from "./spans.ts";

export { viewNotes } from "./view-notes.ts";

/** For each scene the lens and the pixels that show what is asked, and what the pictures weigh. */
export function viewStage(brief: Brief): View {
  const cameras = brief.loads.devices.filter(({ kind }) => kind === "camera");
  const framesPerS = FRAMES_PER_S[brief.view.smoothness.value];
  const scenes = brief.view.scenes.map((scene, i): SceneView => {
    const seen = scene.kind.value === "turning" ? turningView(scene) : fixedView(scene);
    return {
      ...seen,
      name: cameras[i]?.name ?? `Scene ${i + 1}`,
      purpose: scene.purpose.value,
      wantedPxPerM: wantedPxPerM(scene.purpose.value),
      bitrateMbps: streamMbps({
        widthPx: seen.pixelsAcross,
        heightPx: seen.pixelsDown,
        framesPerS,
        bitsPerPixel: BITS_PER_PIXEL.busy,
      }),
    };
  });
  const totalMbps = sum(scenes.map(({ bitrateMbps }) => bitrateMbps));
  const meanMbps = sum(
    scenes.map(({ bitrateMbps }, i) => {
      const camera = cameras[i];
      return (bitrateMbps * (camera ? longestRunH(camera.schedule, brief) : 24)) / 24;
    }),
  );
  return {
    scenes,
    totalMbps,
    meanMbps,
    storageGB: storageGB({ streamMbps: meanMbps, days: brief.view.keepDays.value }),
  };
}

/** Hours a day for which a camera runs when it runs longest; where nobody knows how long the days are, all of them. */
function longestRunH(schedule: Schedule, brief: Brief): number {
  const site = brief.place.site.value;
  const longestH =
    site === null
      ? 24
      : Math.max(
          ...MEAN_DAY_BY_MONTH.map(({ dayOfYear }) =>
            daylightHours({ dayOfYear, latitudeDeg: site.latitudeDeg }),
          ),
        );
  return lengthH(runningSpans({ schedule, daylightH: longestH, clockMinusSolarH: 0 }));
}

type Seen = Omit<SceneView, "name" | "purpose" | "wantedPxPerM" | "bitrateMbps">;

/** The smallest sensor on which some lens spans the scene with enough pixels; the largest where none does. */
function fixedView(scene: Scene): Seen {
  const tried = OFFERED_SENSORS.map((sensor): Seen => {
    const lens = pickLens({
      sceneWidthM: scene.widthM.value,
      distanceM: scene.distanceM.value,
      sensorWidthMm: sensor.widthMm,
      widthPx: sensor.widthPx,
      focalLengthsMm: COMMON_FOCAL_LENGTHS_MM,
      wantedPxPerM: wantedPxPerM(scene.purpose.value),
    });
    return {
      focalLengthMm: lens.focalLengthMm,
      pixelsAcross: sensor.widthPx,
      pixelsDown: sensor.heightPx,
      sceneWidthM: lens.sceneWidthM,
      fieldOfViewDeg: lens.fieldOfViewDeg,
      pxPerM: lens.pxPerM,
      isEnough: lens.meetsDensity,
      isWideEnough: lens.coversScene,
    };
  });
  return tried.find((seen) => seen.isEnough && seen.isWideEnough) ?? tried.at(-1)!;
}

/** A turning camera zooms until the density is reached and turns to the rest of the scene. */
function turningView(scene: Scene): Seen {
  const { widthPx, heightPx, widthMm } = OFFERED_SENSORS[0]!;
  const distanceM = scene.distanceM.value;
  const neededMm = (wantedPxPerM(scene.purpose.value) * widthMm * distanceM) / widthPx;
  const focalLengthMm = Math.min(
    Math.max(Math.ceil(neededMm * 10) / 10, TURNING_ZOOM_MM.widest),
    TURNING_ZOOM_MM.longest,
  );
  const lens = { sensorWidthMm: widthMm, focalLengthMm };
  return {
    focalLengthMm,
    pixelsAcross: widthPx,
    pixelsDown: heightPx,
    sceneWidthM: sceneWidthM({ ...lens, distanceM }),
    fieldOfViewDeg: fieldOfViewDeg(lens),
    pxPerM: pixelDensityPxPerM({ ...lens, widthPx, distanceM }),
    isEnough: neededMm <= TURNING_ZOOM_MM.longest,
    isWideEnough: true,
  };
}
