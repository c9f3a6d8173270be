// What counts as dark: laws of the tiers that the weather years switch.
import { describe, expect, it } from "vitest";
import { tiersOf } from "../../src/design/chain/reliability-loads.ts";
import { type Device, designOf } from "../../src/design/index.ts";
import { at, camera, changed, given, radio, simulatedWorld, sites } from "./fixtures.ts";

const withDevices = (devices: readonly Device[]) => at(sites.north40, changed({ loads: { devices } }));
const tiersFor = (devices: readonly Device[]) => {
  const brief = withDevices(devices);
  const { climate, sun } = designOf(brief, { ...simulatedWorld, simulation: null });
  return tiersOf(brief, { climate: climate!, sun: sun!, permittedDodFrac: 0.8, demandRatio: 1 });
};
const lamp: Device = { ...radio, name: "Lamp", kind: "lamp", dayW: given(3), feed: "dc", priority: 1 };
const carrying = (devices: readonly Device[]) =>
  tiersFor(devices)
    .filter(({ carriesPicture }) => carriesPicture)
    .map(({ devices: names }) => names);

describe("what the post is there for", () => {
  it("is the camera, and all that is no less important than it", () => {
    expect(carrying([camera, radio, lamp])).toHaveLength(1);
    expect(carrying([camera, radio, lamp])[0]).toContain("Camera");
    expect(carrying([camera, radio, lamp])[0]).toContain("Radio");
    expect(carrying([camera, radio, lamp])[0]).not.toContain("Lamp");
  });
  it("is the most important device where there is no camera, so that it can be dark", () => {
    expect(carrying([radio])).toHaveLength(1);
    expect(carrying([radio])[0]).toContain("Radio");
    expect(carrying([lamp, radio])[0]).toContain("Radio");
    expect(carrying([lamp, radio])[0]).not.toContain("Lamp");
    expect(carrying([lamp])[0]).toContain("Lamp");
  });
  it("a radio alone is as dark as the same watts with a camera's name", () => {
    const asCamera: Device = { ...radio, kind: "camera", name: "Camera" };
    const [alone, named] = [radio, asCamera].map((device) => designOf(withDevices([device]), simulatedWorld));
    expect(alone!.reliability!.handbook).toEqual(named!.reliability!.handbook);
    expect(alone!.reliability!.pairs).toEqual(named!.reliability!.pairs);
  });
  it.each([[[camera, radio]], [[radio]], [[lamp, radio]]])(
    "every watt of every device is in one tier",
    (devices) => {
      const brief = withDevices(devices);
      const { loads } = designOf(brief, { ...simulatedWorld, simulation: null });
      const wattHours = tiersFor(devices).reduce(
        (all, { wattsByHourOfYear }) => all + wattsByHourOfYear.slice(0, 24).reduce((a, w) => a + w, 0),
        0,
      );
      // the controller's own draw is the balance's, not a tier's
      expect(wattHours).toBeLessThan(loads.dailyWhByMonth[0]!);
      expect(wattHours).toBeGreaterThan(loads.dailyWhByMonth[0]! - 24 * 0.7);
    },
  );
});
