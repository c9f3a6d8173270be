/** Cameras and what is kept of them. */
import { FRAMES_PER_S } from "../practice/view.ts";
import { counted, gigabytes, megabits } from "./figures.ts";
import { type MaybeStep, step } from "./list.ts";
import type { Post } from "./post.ts";

const NIGHT_WORDS = {
  none: "infrared light off",
  infrared: "infrared light automatic",
  ambient: "infrared light off, longest exposure set by trial at night",
} as const;

export function pictureSettings({ design }: Post): readonly MaybeStep[] {
  const { brief, view } = design;
  const framesPerS = FRAMES_PER_S[brief.view.smoothness.value];
  const hasSound = brief.view.recordsSound.value;
  return [
    ...view.scenes.map((scene, i) =>
      step(
        `camera${i + 1}`,
        `${scene.name}: ${scene.pixelsAcross} x ${scene.pixelsDown} pixels, ${framesPerS} frames/s, one full frame a second, H.264 or H.265, bit rate capped at ${megabits(scene.bitrateMbps)}, ${NIGHT_WORDS[brief.view.night.value]}, ${hasSound ? "sound as your adviser allows" : "sound off"}, date and time in the picture.`,
        {
          why: `A cap keeps a windy wet night from filling the link and the disk.${hasSound ? "" : " Recording talk is ruled far more strictly than pictures."}`,
        },
      ),
    ),
    view.scenes.length > 0 &&
      step(
        "masks",
        "Cameras: privacy masks over neighbours' windows, gardens and public paths, set in the camera itself, by day and by night.",
        {
          why: "What is masked in the camera is never recorded. Recording only on movement sees fewer people still.",
        },
      ),
    view.scenes.length > 0 &&
      brief.view.keepDays.value > 0 &&
      step(
        "keep",
        `Recorder: keep ${counted(brief.view.keepDays.value, "day")}, then overwrite by itself, with room for at least ${gigabytes(view.storageGB)}. Encrypt where it is offered.`,
        {
          why: "Keep pictures no longer than the purpose needs: many places set a limit, and yours decides. Write the number down.",
        },
      ),
  ];
}
