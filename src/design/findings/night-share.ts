import type { Brief, Device } from "../brief.ts";
import { arrayStage } from "../chain/array.ts";
import { batteryStage } from "../chain/battery.ts";
import { loadsStage } from "../chain/loads.ts";
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
export const nightShare: Rule = ({ brief, climate, sun, loads, battery, array }) => {
  const runsAtNight = brief.loads.devices.some(
    ({ kind, schedule }) => kind === "camera" && schedule.kind !== "daylight",
  );
  if (!runsAtNight || !battery || !array) return null;
  const day = byDaylight(brief);
  const dayLoads = loadsStage(day, sun, climate);
  const dayBattery = batteryStage(day, climate, sun, dayLoads);
  const dayArray = arrayStage(day, climate, sun, dayLoads, dayBattery);
  if (!dayBattery || !dayArray) return null;
  const savedWh = loads.designDailyWh - dayLoads.designDailyWh;
  if (savedWh < WORTH_SAYING_FRAC * loads.designDailyWh) return null;
  // banks of different voltage compare in energy only
  const savedAh =
    (battery.requiredAh * battery.bankNominalV - dayBattery.requiredAh * dayBattery.bankNominalV) /
    battery.bankNominalV;
  return {
    id: "loads.night",
    severity: "note",
    says: `The dark hours take ${fixed(100 * loads.nightShareFrac, 0)} % of a day's energy in the month that decides; running camera and radio by daylight only would save ${fixed(savedWh, 0)} Wh a day, ${fixed(savedAh, 0)} Ah of battery at ${battery.bankV} V and ${fixed(array.requiredW - dayArray.requiredW, 0)} W of panels.`,
    change: "If the night does not matter to you, run camera and radio by daylight only.",
    numbers: {
      nightShareFrac: loads.nightShareFrac,
      savedWh,
      savedAh,
      savedW: array.requiredW - dayArray.requiredW,
    },
    topics: ["hours.when", "view.night"],
  };
};
