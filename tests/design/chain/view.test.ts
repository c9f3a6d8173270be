import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Scene, Schedule } from "../../../src/design/brief.ts";
import { viewStage } from "../../../src/design/chain/view.ts";
import { near } from "../../helpers/near.ts";
import { camera, changed, given, scene, typicalBrief } from "../fixtures.ts";

const seen = (changes: Partial<Scene>, smoothness: "occasional" | "normal" | "smooth" = "normal") =>
  viewStage(changed({ view: { scenes: [{ ...scene, ...changes }], smoothness: given(smoothness) } }));

describe("a fixed camera, worked by hand", () => {
  // 1/2.8 sensor, 1920 x 2.9 um = 5.568 mm: at 15 m an 8 mm lens spans 15 x 5.568 / 8 = 10.44 m, 12 mm only 6.96
  it("10 m at 15 m: the 8 mm lens, 10.44 m, 1920 / 10.44 = 183.9 px/m, enough to recognise (125)", () => {
    const [one] = seen({}).scenes;
    expect(one!.focalLengthMm).toBe(8);
    near(one!.sceneWidthM, 10.44, { within: 0.005 });
    near(one!.pxPerM, 183.9, { within: 0.05 });
    expect(one!.isEnough && one!.isWideEnough).toBe(true);
    expect(one!.pixelsAcross).toBe(1920);
  });
  it("to tell strangers (250) takes 2688 pixels on 5.376 mm: 8 mm spans 10.08 m, 266.7 px/m", () => {
    const [one] = seen({ purpose: given("identify") }).scenes;
    expect(one!.pixelsAcross).toBe(2688);
    near(one!.pxPerM, 266.7, { within: 0.05 });
  });
  it("1920 x 1080 x 15 x 0.12 = 3.73 Mbit/s; 14 days x 10.8 = 564 GB", () => {
    const { totalMbps, storageGB } = seen({});
    near(totalMbps, 3.732, { within: 0.001 });
    near(storageGB, 564.4, { within: 0.2 });
  });
  it("a camera by the clock, 06:30 to 18:00, fills 11.5/24 of that: 270.5 GB; from dawn to dusk the longest day counts", () => {
    const by = (schedule: Schedule) =>
      viewStage(changed({ loads: { devices: [{ ...camera, schedule }] } })).storageGB;
    near(by({ kind: "clock", fromMin: 390, toMin: 1080 }), 270.5, { within: 0.2 });
    // 40 N in June, mean day: 2/15 acos(-tan 40 tan 23.09) = 14.8 h, and twice half an hour: 15.8 of 24, 371.5 GB
    near(by({ kind: "daylight", marginH: 0.5 }), 371.5, { within: 2 });
  });
  it("15 m wide at 50 m: 16 mm on 5.568 mm spans 50 x 5.568 / 16 = 17.4 m with 110 px/m; 2688 on 5.376 give 160, enough to recognise", () => {
    const [one] = seen({ distanceM: given(50), widthM: given(15) }).scenes;
    expect([one!.focalLengthMm, one!.pixelsAcross, one!.isEnough]).toEqual([16, 2688, true]);
    near(one!.sceneWidthM, 16.8, { within: 0.01 });
  });
  it("what nothing sold can show is said, with the largest sensor's figures", () => {
    const [one] = seen({ purpose: given("identify"), widthM: given(30), distanceM: given(30) }).scenes;
    expect(one!.isEnough).toBe(false);
    expect(one!.pixelsAcross).toBe(3840);
  });
});

describe("a turning camera", () => {
  it("zooms: 125 px/m at 50 m is 125 x 5.568 x 50 / 1920 = 18.1 mm", () => {
    const [one] = seen({ kind: given("turning"), distanceM: given(50) }).scenes;
    near(one!.focalLengthMm, 18.2, { within: 0.05 });
    expect(one!.isEnough).toBe(true);
    expect(one!.isWideEnough).toBe(true);
  });
  it("ends at 120 mm: 250 px/m at 300 m would take 217", () => {
    const [one] = seen({ kind: given("turning"), distanceM: given(300), purpose: given("identify") }).scenes;
    expect(one!.focalLengthMm).toBe(120);
    expect(one!.isEnough).toBe(false);
  });
});

describe("laws", () => {
  it("more frames never a smaller stream; several cameras add up; a longer keep grows in proportion", () => {
    expect(seen({}, "occasional").totalMbps).toBeLessThan(seen({}, "normal").totalMbps);
    expect(seen({}, "normal").totalMbps).toBeLessThan(seen({}, "smooth").totalMbps);
    const two = viewStage(changed({ view: { scenes: [scene, scene] } }));
    near(two.totalMbps, 2 * viewStage(typicalBrief).totalMbps, { within: 1e-9 });
    const long = viewStage(changed({ view: { keepDays: given(28) } }));
    near(long.storageGB, 2 * viewStage(typicalBrief).storageGB, { within: 1e-6 });
  });
  it("a density that is said to be enough is enough", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 200, noNaN: true }),
        fc.double({ min: 1, max: 200, noNaN: true }),
        fc.constantFrom("notice" as const, "follow" as const, "recognise" as const, "identify" as const),
        fc.constantFrom("fixed" as const, "turning" as const),
        (distance, width, purpose, kind) => {
          const [one] = seen({
            kind: given(kind),
            distanceM: given(distance),
            widthM: given(width),
            purpose: given(purpose),
          }).scenes;
          expect(one!.isEnough).toBe(one!.pxPerM >= one!.wantedPxPerM - 1e-6);
          if (kind === "fixed") expect(one!.isWideEnough).toBe(one!.sceneWidthM >= width);
        },
      ),
    );
  });
});
