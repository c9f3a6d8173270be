import { formatQuantity } from "../../core/units/index.ts";
import type { Design } from "../design.ts";
import * as cautions from "./cautions.ts";
import { applicable, type List, step } from "./list.ts";

const shown = (value: number, unit: string, digits = 2) => formatQuantity({ value, unit, digits });

/** Proof that it works: what to measure, what it should be, and how far off is still right. */
export function commissioningList(design: Design): List {
  const { battery, array, loads, link, view, brief, wiring } = design;
  const radio = link?.radio ?? null;
  const devices = loads.lines.filter((line) => line.dayW > 0 && line.kind !== "converter");
  return {
    id: "commissioning",
    title: "Prove that it works",
    intro: "Write each value down with the date. They are what you compare with when something fails.",
    isOrdered: true,
    steps: applicable([
      battery !== null &&
        step("rest", "Measure the battery's voltage before anything is switched on.", {
          cautions: [cautions.batteryHandling],
          expects:
            battery.chemistry === "agm"
              ? `At least ${shown((12.4 / 12) * battery.bankV, "V", 3)}: three quarters charged (from memory). Below it, charge first.`
              : `About ${shown((13.1 / 12.8) * battery.bankNominalV, "V", 3)} or more (from memory). A meter cannot read the charge of this kind finely.`,
        }),
      ...devices.map((line) =>
        step(
          `load-${line.name}`,
          `${line.name}: measure what it draws by day${line.nightW > line.dayW ? " and with its light on at night" : ""}.`,
          {
            why:
              line.origin === "measured"
                ? ""
                : "The sums rest on a figure that nobody has measured here yet.",
            expects: `${shown(line.dayW, "W")} by day${line.nightW > line.dayW ? `, ${shown(line.nightW, "W")} at night` : ""}, within 20 percent. More than that: change the answer and look at the battery again.`,
          },
        ),
      ),
      array !== null &&
        step("charge", "Near noon under a clear sky, read the charge current on the controller.", {
          expects: `Between half and all of ${shown(array.chargeCurrentA, "A")} while the battery is not full. A third or less: shade, dirt or a wrong connection.`,
        }),
      wiring !== null &&
        step(
          "poe",
          "Read the supply voltage at the far end of the longest network cable, if the device shows it.",
          {
            expects:
              wiring.poeRuns.length > 0
                ? `About ${shown(Math.min(...wiring.poeRuns.map((run) => run.deviceV)), "V", 3)} or more.`
                : "Inside the range on the device's data sheet.",
          },
        ),
      radio !== null &&
        step("level", "Read the received level at both ends.", {
          cautions: [cautions.radioExposure(shown(radio.exposureDistanceM, "m"))],
          expects: `About ${Math.round(radio.rxLevelDbm)} dBm, within 5 dB, and alike at both ends. ${Math.round(radio.fadeMarginDb)} dB are to spare; less than 10 dB will fail in bad weather (common practice).`,
        }),
      link !== null &&
        step("throughput", "Send data across the link for ten minutes with all cameras running.", {
          expects: `At least ${shown(link.needMbps, "Mbit/s")} all the time, and no picture that stops.`,
        }),
      ...view.scenes.map((scene, i) =>
        step(
          `picture${i + 1}`,
          `${scene.name}: let somebody stand at the far edge of the scene with a large printed page, by day and by night.`,
          {
            expects: `Across one metre of the picture about ${Math.round(scene.pxPerM)} points (IEC 62676-4:2014 asks for ${scene.wantedPxPerM} for this purpose).`,
          },
        ),
      ),
      battery !== null &&
        step("firstNight", "Read the battery's voltage at dusk and just before dawn.", {
          expects: `The night should take about ${shown(loads.designDailyWh * loads.nightShareFrac, "Wh")} at most in the dark season, and the voltage must stay above ${shown(battery.lowVoltageDisconnectV, "V", 3)}.`,
        }),
      battery !== null &&
        array !== null &&
        step("firstWeek", "Look every day of the first week whether the battery reaches absorption.", {
          why: "Incomplete charging is what kills lead-acid batteries in solar use.",
          expects: "It does on every clear day.",
        }),
      step("power cut", "Take the load fuse out for a minute and put it back.", {
        why: "After a dark spell nobody will be there to press a button.",
        expects: `Everything comes back by itself${radio?.needsRadarCheck ? `, the radio after ${Math.ceil(radio.silenceAfterPowerCutS / 60)} minute(s) of listening for radar` : ""}.`,
      }),
      step("time", "Compare the time in the picture with a clock.", { expects: "Within a second." }),
      brief.view.keepDays.value > 0 &&
        step("keep", `After ${brief.view.keepDays.value} days, check that the oldest pictures are deleted.`, {
          why: "Keeping pictures longer than needed is against the law in many places.",
        }),
    ]),
  };
}
