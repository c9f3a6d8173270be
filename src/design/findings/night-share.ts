import type { Brief, Device } from "../brief.ts";
import { chainUnder } from "../chain/chain.ts";
import { fixed } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

/** Less than this is not worth saying. @source judgement */
const WORTH_SAYING_FRAC = 0.1;

/** A camera by daylight only, and the radio that carries its picture with it. */
function byDaylight(brief: Brief): Brief {
  const devices = brief.loads.devices.map(
    (device): Device =>
      device.kind === "camera" || device.kind === "radio" || device.kind === "cellular router"
        ? { ...device, schedule: { kind: "daylight", marginH: 0.5 } }
        : device,
  );
  return { ...brief, loads: { devices } };
}

/** Night hours cost most and have no sun: what leaving them out would save. */
export const nightShare: Rule = (design, world) => {
  const { brief, climate, sun, loads, battery, array } = design;
  const runsAtNight = brief.loads.devices.some(
    ({ kind, schedule }) => kind === "camera" && schedule.kind !== "daylight",
  );
  if (!runsAtNight || !battery || !array) return null;
  const day = byDaylight(brief);
  // sized as the post itself is: a simulated pair is taken over in proportion
  const byDay = chainUnder(day, { climate, sun, refusal: null }, world, design);
  const { loads: dayLoads, battery: dayBattery, array: dayArray } = byDay;
  if (!dayBattery || !dayArray) return null;
  const savedWh = loads.designDailyWh - dayLoads.designDailyWh;
  if (savedWh < WORTH_SAYING_FRAC * loads.designDailyWh) return null;
  // banks of different voltage compare in energy only
  const savedAh =
    (battery.wantedAh * battery.bankNominalV - dayBattery.wantedAh * dayBattery.bankNominalV) /
    battery.bankNominalV;
  return {
    id: "loads.night",
    severity: "note",
    says: `The dark hours take ${fixed(100 * loads.nightShareFrac, 0)} % of a day's energy in the month that decides; running camera and radio by daylight only would save ${fixed(savedWh, 0)} Wh a day, ${fixed(savedAh, 0)} Ah of battery at ${battery.bankV} V and ${fixed(array.wantedW - dayArray.wantedW, 0)} W of panels.`,
    change: "If the night does not matter to you, run camera and radio by daylight only.",
    numbers: {
      nightShareFrac: loads.nightShareFrac,
      savedWh,
      savedAh,
      savedW: array.wantedW - dayArray.wantedW,
    },
    topics: ["hours.when", "view.night"],
  };
};
