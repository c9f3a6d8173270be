/** What a picture must show, and with what cameras it is usually made. */
import { COMMON_SENSORS, densityClasses, type Sensor } from "../../core/view/index.ts";
import type { Purpose, Smoothness } from "../brief.ts";

const CLASS_OF_PURPOSE: Readonly<Record<Purpose, string>> = {
  notice: "detect",
  follow: "observe",
  recognise: "recognise",
  identify: "identify",
};

/** Pixels per metre for a purpose. @source IEC/EN 62676-4:2014 by the class of the same meaning; the match is ours */
export function wantedPxPerM(purpose: Purpose): number {
  return densityClasses("2014").find(({ name }) => name === CLASS_OF_PURPOSE[purpose])!.pxPerM;
}

/** Sensors to choose among, fewest pixels first: 2, 4 and 8 megapixels. @source common practice, no source */
export const OFFERED_SENSORS: readonly Sensor[] = [
  ["1/2.8", 1920],
  ["1/2.7", 2688],
  ["1/1.8", 3840],
].map(([type, widthPx]) => COMMON_SENSORS.find((one) => one.type === type && one.widthPx === widthPx)!);

/** Frames per second. @source common practice, no source: 10 to 20 is usual, 25 looks smooth, 5 shows that something passed */
export const FRAMES_PER_S: Readonly<Record<Smoothness, number>> = { occasional: 5, normal: 15, smooth: 25 };

/** Zoom of a turning camera, focal length in mm on a 2-megapixel sensor. @source from memory: 25 times from 4.8 mm */
export const TURNING_ZOOM_MM = { widest: 4.8, longest: 120 } as const;

/** Built-in infrared light of a fixed camera reaches about this far. @source common practice, no source: 20 to 40 m */
export const INFRARED_REACH_M = 30;
