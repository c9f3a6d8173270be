import { within } from "../numerics/index.ts";

export type Codec = "H.264" | "H.265";
export type SceneActivity = "quiet" | "normal" | "busy";

/**
 * Bits per pixel of a picture compressed with H.264: a still scene by day; people and vehicles; leaves, water, rain and
 * the grain of night. Surveillance practice, judgement; a published encoder guide of 2010 gives 0.07 to 0.28 for film
 * (from memory).
 */
export const BITS_PER_PIXEL: Readonly<Record<SceneActivity, number>> = {
  quiet: 0.05,
  normal: 0.07,
  busy: 0.12,
};

/**
 * What a codec needs beside H.264. Published: HEVC halves the rate at equal looks (Ohm et al., IEEE Transactions on
 * Circuits and Systems for Video Technology 2012, from memory), independent camera tests found 10 to 20 %. 0.7 is the
 * planning judgement between them, never 0.5.
 */
export const CODEC_RATIO: Readonly<Record<Codec, number>> = { "H.264": 1, "H.265": 0.7 };

/** Peak over mean to leave room for: a full picture is 3 to 10 times a frame's mean for one frame's time. Judgement. */
export const PEAK_RATIO = 2;

/** Days in a mean month. */
const DAYS_PER_MONTH = 365 / 12;

/**
 * Mean rate of a video stream, without packet overhead.
 *
 * @param widthPx       100 to 20 000
 * @param heightPx      100 to 20 000
 * @param framesPerS    0.01 to 120
 * @param bitsPerPixel  0.005 to 1, for H.264, see {@link BITS_PER_PIXEL}
 * @param codec         H.264 when absent
 * @returns Mbit/s
 * @accuracy a factor of two: scene, light and encoder decide. Size the link for a windy, wet night
 * @throws RangeFault outside the ranges above
 * @source width x height x frames x bits per pixel, common practice
 * @example streamMbps({ widthPx: 1920, heightPx: 1080, framesPerS: 25, bitsPerPixel: 0.07 })  // 3.63
 */
export function streamMbps(video: {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly framesPerS: number;
  readonly bitsPerPixel: number;
  readonly codec?: Codec;
}): number {
  return (
    (within("widthPx", video.widthPx, 100, 20_000) *
      within("heightPx", video.heightPx, 100, 20_000) *
      within("framesPerS", video.framesPerS, 0.01, 120) *
      within("bitsPerPixel", video.bitsPerPixel, 0.005, 1) *
      CODEC_RATIO[video.codec ?? "H.264"]) /
    1e6
  );
}

/**
 * Rate that a link must be able to carry for a moment.
 *
 * @param meanMbps  0 to 10 000
 * @returns Mbit/s
 * @throws RangeFault outside the range above
 * @source judgement, see {@link PEAK_RATIO}
 */
export function peakMbps(meanMbps: number): number {
  return PEAK_RATIO * within("meanMbps", meanMbps, 0, 10_000);
}

/**
 * Storage of one stream.
 *
 * @param streamMbps   mean rate, 0 to 10 000
 * @param days         kept, 0 to 10 000
 * @param hoursPerDay  recorded, 0 to 24; 24 when absent
 * @returns decimal gigabytes
 * @throws RangeFault outside the ranges above
 * @source definition: 1 Mbit/s for a day is 10.8 GB
 */
export function storageGB(recording: {
  readonly streamMbps: number;
  readonly days: number;
  readonly hoursPerDay?: number;
}): number {
  const hours =
    within("days", recording.days, 0, 10_000) * within("hoursPerDay", recording.hoursPerDay ?? 24, 0, 24);
  return (within("streamMbps", recording.streamMbps, 0, 10_000) * hours * 3600) / 8000;
}

/**
 * Data that one stream moves over a metered link in a month.
 *
 * @param streamMbps   mean rate with its packet overhead, 0 to 10 000
 * @param hoursPerDay  sent, 0 to 24; 24 when absent
 * @returns decimal gigabytes in a mean month of 30.42 days
 * @throws RangeFault outside the ranges above
 * @source definition
 */
export function monthlyDataGB(sending: {
  readonly streamMbps: number;
  readonly hoursPerDay?: number;
}): number {
  return storageGB({ ...sending, days: DAYS_PER_MONTH });
}
