import { describe, expect, it } from "vitest";
import {
  CODEC_RATIO,
  monthlyDataGB,
  PEAK_RATIO,
  peakMbps,
  storageGB,
  streamMbps,
} from "../../../src/core/view/index.ts";
import { near } from "../../helpers/near.ts";

/** Source: an encoder guide of 2010, from memory: w h fps x motion (2) x 0.07 for H.264. How: printed value. */
describe("a published rule of thumb", () => {
  it("1280 x 720 at 24 frames/s with medium motion: 3 096 576 bit/s", () => {
    const mbps = streamMbps({ widthPx: 1280, heightPx: 720, framesPerS: 24, bitsPerPixel: 2 * 0.07 });
    near(mbps * 1e6, 3_096_576, { within: 0.001 });
  });
});

/** How: worked by hand from width x height x frames x bits per pixel. */
describe("streams", () => {
  it.each([
    [1920, 1080, 15, 0.05, 1.555],
    [1920, 1080, 25, 0.07, 3.629],
    [2560, 1440, 15, 0.07, 3.871],
    [2688, 1520, 15, 0.06, 3.677],
    [3840, 2160, 15, 0.05, 6.221],
  ])(
    "%d x %d at %d frames/s and %d bit/px: %d Mbit/s",
    (widthPx, heightPx, framesPerS, bitsPerPixel, mbps) => {
      near(streamMbps({ widthPx, heightPx, framesPerS, bitsPerPixel }), mbps, { within: 0.00051 });
    },
  );

  it("H.265 is planned at 0.7, never at the published half", () => {
    const video = { widthPx: 1920, heightPx: 1080, framesPerS: 25, bitsPerPixel: 0.07 };
    near(streamMbps({ ...video, codec: "H.265" }) / streamMbps(video), 0.7, { within: 1e-12 });
    expect(CODEC_RATIO["H.265"]).toBeGreaterThan(0.5);
  });
});

/** How: worked by hand, decimal gigabytes. */
describe("storage and data", () => {
  it("1 Mbit/s for a day is 10.8 GB, or 10.06 GiB", () => {
    near(storageGB({ streamMbps: 1, days: 1 }), 10.8, { within: 1e-9 });
    near((storageGB({ streamMbps: 1, days: 1 }) * 1e9) / 2 ** 30, 10.06, { within: 0.005 });
  });

  it("4 Mbit/s for 30 days is 1296 GB; half of it when recorded 12 hours a day", () => {
    near(storageGB({ streamMbps: 4, days: 30 }), 1296, { within: 1e-9 });
    near(storageGB({ streamMbps: 4, days: 30, hoursPerDay: 12 }), 648, { within: 1e-9 });
  });

  it("1 Mbit/s over a metered link is 328.5 GB a month", () => {
    near(monthlyDataGB({ streamMbps: 1 }), 328.5, { within: 1e-9 });
  });

  it("the peak is twice the mean (judgement)", () => {
    expect(peakMbps(3)).toBe(6);
    expect(PEAK_RATIO).toBe(2);
  });
});
