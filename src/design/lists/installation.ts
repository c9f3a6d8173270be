import { formatQuantity } from "../../core/units/index.ts";
import type { Design } from "../design.ts";
import * as cautions from "./cautions.ts";
import { applicable, type List, step } from "./list.ts";

const shown = (value: number, unit: string) => formatQuantity({ value, unit, digits: 2 });

/** The order in which to build it: each step says why it comes then. */
export function installationList(design: Design): List {
  const { brief, mounting, battery, array, sun, link, wiring } = design;
  const support = brief.mounting.support.value;
  const isNewMast = support === "newMast";
  const keepClear = shown(mounting.keepClearM, "m");
  const lift = (what: string) => {
    const found = mounting.lifts.find((one) => one.what.startsWith(what));
    return found ? [cautions.lifting(found.what, shown(found.weightKg, "kg"), found.people)] : [];
  };
  const heaviest = mounting.lifts.map((one) =>
    cautions.lifting(one.what, shown(one.weightKg, "kg"), one.people),
  );
  const chemistryCaution = battery?.chemistry === "lifepo4" ? cautions.lithium : cautions.acid;
  const { footing, tube } = mounting;
  const direction = sun?.facing ?? "the midday sun's side";
  return {
    id: "installation",
    title: "Build it in this order",
    intro: cautions.localCodes,
    isOrdered: true,
    steps: applicable([
      step(
        "lookUp",
        `Go to the spot and look up. Check that no wire is within ${keepClear} of where the mast, a ladder or a long part will move.`,
        {
          cautions: [cautions.overheadLines(keepClear)],
          why: "It comes first because nothing else matters if it is wrong.",
          expects: `No wire within ${keepClear}.`,
        },
      ),
      step(
        "bench",
        "Put the whole system together on a table at home: battery, controller, fuses, camera, radio or router. Set passwords, addresses and charge settings there and let it run for two days.",
        {
          cautions: [cautions.batteryHandling, chemistryCaution, cautions.polarity],
          why: "A part that does not fit is found on the table, not on the ladder.",
          expects: "A picture at the other end, and every voltage of the settings sheet.",
        },
      ),
      isNewMast &&
        step("marks", "Have buried pipes and cables marked, and wait until all have answered.", {
          cautions: [cautions.digging],
          why: "It takes days, so it is asked for before the concrete is bought.",
        }),
      isNewMast &&
        footing !== null &&
        step(
          "hole",
          footing.mustRedesign
            ? "Do not dig yet: the footing needs an engineer's design, a smaller panel or better ground."
            : `Dig the hole: ${shown(footing.depthM, "m")} deep and ${shown(footing.diameterM, "m")} across, with a hand's width of gravel at the bottom.`,
          {
            cautions: [cautions.digging, cautions.openHole],
            why:
              footing.frostDepthM > 0
                ? `It reaches below the frost, taken as ${shown(footing.frostDepthM, "m")}; ask the building office for the local depth.`
                : "The ground must hold the mast against the strongest gust.",
          },
        ),
      isNewMast &&
        footing !== null &&
        !footing.mustRedesign &&
        step(
          "mast",
          `Stand the mast in the hole${tube === null ? "" : ` (${tube.name}, ${shown(mounting.tubeLengthM, "m")} in all)`}, prop it plumb in two directions and fill with ${footing.bags25Kg} bags of concrete (25 kg each). Slope the top so that water runs off.`,
          {
            cautions: [
              cautions.overheadLines(keepClear),
              cautions.fallingMast,
              ...lift("mast tube"),
              cautions.concrete,
            ],
            why: "Concrete needs a day or two before anything hangs on it and a week before a storm, so it comes early.",
            expects: "Plumb within one finger's width over its height, in both directions.",
          },
        ),
      support === "existingPole" &&
        step(
          "pole",
          `Measure the pole's outside diameter at each clamp (${shown(brief.mounting.poleDiameterMm.value, "mm")} was said) and look for rust, cracks and rot at the ground.`,
          {
            cautions: [cautions.fallingMast],
            why: `The panel pushes with up to ${shown(mounting.panelForceN, "N")} in the strongest gust; a tired pole breaks at the ground. Its owner or an engineer says whether it can take that.`,
          },
        ),
      (support === "wall" || support === "roof") &&
        step(
          "anchor",
          `Fix the brackets into masonry or timber that can hold ${shown(mounting.panelForceN, "N")} in the strongest gust, with a fixing rated for it. Never into cladding alone.`,
          {
            cautions: [cautions.ladder],
            why: "Everything hangs on it. If you cannot see what is behind the surface, ask a builder.",
          },
        ),
      step(
        "earth",
        "Drive the earth rod, bond mast, panel frame, box and surge arresters to it with one short straight conductor.",
        {
          cautions: [cautions.digging, cautions.thunder],
          why: "Every metal part and arrester is bonded to one earth before any cable is connected. Rod, size and method follow your local code.",
        },
      ),
      step(
        "box",
        `Mount the box on the mast's shaded side at chest height, glands downwards, and the brackets for camera${link?.carrier === "radio" ? ", radio" : ""} and panel.`,
        {
          cautions: [cautions.ladder],
          why: "Brackets go up empty, so that nothing heavy is held on the ladder while holes are found not to match.",
        },
      ),
      array !== null &&
        sun !== null &&
        step(
          "panel",
          `Fix the ${array.panels > 1 ? `${array.panels} panels` : "panel"} face covered: tilt ${shown(sun.tiltDeg, "deg")} from flat, facing true ${direction} (azimuth ${shown(sun.azimuthDeg, "deg")}). Correct a compass for the local declination.`,
          {
            cautions: [cautions.ladder, ...lift("panel"), cautions.liveDc],
            why: "It is the largest thing the wind can push, so the mast must have hardened; covered, it cannot give current yet.",
            expects: "Tilt within 3 degrees, direction within 10.",
          },
        ),
      step(
        "cables",
        "Pull the cables with a drip loop at every gland, label both ends, tie them every half metre. Connect nothing yet.",
        {
          cautions: [cautions.ladder],
          why: "Water runs along a cable into a box unless it drips off first; a label saves an hour later.",
        },
      ),
      battery !== null &&
        step(
          "battery",
          `Place the ${battery.blocks > 1 ? `${battery.blocks} blocks` : "block"} in ${battery.chemistry === "agm" ? "a ventilated" : "an"} box: ${battery.inSeries} in series, ${battery.inParallel} in parallel. Take the main fuse out, then wire the bank.`,
          {
            cautions: [
              ...(battery.blocks > 0 ? lift("battery block") : []),
              cautions.batteryHandling,
              chemistryCaution,
            ],
            why: "With the main fuse out, the wires behind it are dead while you work.",
            expects: `${shown(battery.bankNominalV, "V")} nominal between the bank's ends; all blocks within 0.1 V of each other before they are joined in parallel.`,
          },
        ),
      battery !== null &&
        step(
          "controllerOn",
          "Connect the battery to the controller: check the polarity, then put the main fuse in. Set the charge settings of the settings sheet.",
          {
            cautions: [cautions.polarity],
            why: "Battery first: the controller learns the bank's voltage from it, and many are damaged by a panel without a battery.",
          },
        ),
      step("loadsOn", "Connect the loads one at a time: switch or converter, camera, then radio or router.", {
        cautions: [cautions.polarity],
        why: "One at a time shows which one is wrong.",
        expects:
          wiring === null
            ? ""
            : "Each device starts, and the battery's voltage does not fall by more than a few tenths.",
      }),
      array !== null &&
        step(
          "panelOn",
          "With the panel still covered, connect its cable to the controller, then uncover it.",
          {
            cautions: [cautions.liveDc, cautions.polarity],
            why: "The panel comes last, and goes first when you take it apart: a controller wants its battery before its panel.",
            expects: `About ${shown(array.openCircuitV, "V")} open circuit before it is connected, a little more in the cold.`,
          },
        ),
      link?.radio != null &&
        step(
          "aim",
          "Aim the radio: roughly by eye, then a few degrees left, right, up and down at each end until the received level is best, then tighten.",
          {
            cautions: [cautions.ladder, cautions.radioExposure(shown(link.radio.exposureDistanceM, "m"))],
            why: "Aiming needs both radios on and the mast hard.",
            expects: `Received level about ${Math.round(link.radio.rxLevelDbm)} dBm, within 5 dB.`,
          },
        ),
      step(
        "look",
        "Aim the camera, focus at the right distance, mask what is not yours, look at it once by day and once by night.",
        {
          cautions: [cautions.ladder],
          why: "The picture is what it is all for, and night shows spider threads and reflections that day hides.",
        },
      ),
      step(
        "close",
        "Tighten every terminal to the torque on its label, close the glands, lock the box, stick the wiring sketch and the settings sheet inside the lid.",
        {
          why: "Whoever comes in two years needs them, and it may be you.",
        },
      ),
      heaviest.length > 0 &&
        step(
          "takeDown",
          "Keep the order for taking it down: panel off first (covered), then loads, battery last.",
          {
            cautions: [cautions.liveDc, cautions.batteryHandling],
            why: "The same order backwards.",
          },
        ),
    ]),
  };
}
