/**
 * Current, in the one safe order: fuses out, bank, dead tests, controller on the battery, loads, and the panels last.
 *
 * @source battery before panel, and the reverse when it is taken apart: makers' manuals in general, from memory
 */

import { isConverted } from "../chain/wire-loads.ts";
import { HEATER_RUN } from "../chain/words.ts";
import type { Battery, Run, Wiring } from "../design.ts";
import { FOAM_WALL_M } from "../practice/battery-box.ts";
import { BATTERY_WARM_C } from "../practice/loads.ts";
import { DEVICE_SUPPLY_V } from "../practice/wiring.ts";
import * as cautions from "./cautions.ts";
import { amps, counted, listed, ohms, ratedAmps, volts } from "./figures.ts";
import { type MaybeStep, step } from "./list.ts";
import { isAtBattery, liftsOf, type Post } from "./post.ts";

export function connectSteps(post: Post): readonly MaybeStep[] {
  const { battery, wiring } = post.design;
  if (battery === null || wiring === null) return [];
  return [
    fuses(post, { battery, wiring }),
    heaterPad(post, { battery, wiring }),
    disconnect(post),
    relay(post),
    bank(post, battery),
    deadTests(post),
    controllerOn(post, { battery, wiring }),
    heaterOn(post, { battery, wiring }),
    loadsOn(post, { battery, wiring }),
    panelOn(post),
  ];
}

interface Powered {
  readonly battery: Battery;
  readonly wiring: Wiring;
}

const fuseOf = ({ name, fuseA }: Run): string =>
  `${name}: ${fuseA === null ? "none of this kind fits, see the findings" : ratedAmps(fuseA)}`;

function fuses(post: Post, { battery, wiring }: Powered): MaybeStep {
  const atBattery = wiring.runs.filter(isAtBattery);
  const branches = wiring.runs.filter((run) => !isAtBattery(run) && run.fuseA !== null);
  const onBus = branches.filter((run) => !isConverted(run));
  const behind = branches.filter(isConverted);
  const controllers = post.design.array?.controllers ?? 1;
  const places = [
    `At the battery's plus terminal, within ${post.say.said.either("0.2 m", "7 in")} (${wiring.mainFuseKind}): ${atBattery.map(fuseOf).join("; ")}.${controllers > 1 ? ` Each of the ${controllers} controllers has a fuse of its own.` : ""}`,
    ...(wiring.blockFuseA === null
      ? []
      : [
          `At the plus end of each of the ${battery.inParallel} strings of blocks: ${ratedAmps(wiring.blockFuseA)}.`,
        ]),
    ...(onBus.length === 0 ? [] : [`On the load bus: ${onBus.map(fuseOf).join("; ")}.`]),
    ...(behind.length === 0
      ? []
      : [
          `After the converter, on a block of its own for ${volts(DEVICE_SUPPLY_V)}, never on the load bus: ${behind.map(fuseOf).join("; ")}.`,
        ]),
    wiring.stringFuseA === null
      ? "In the panels' wire: none needed."
      : `In each string of panels: ${ratedAmps(wiring.stringFuseA)}.`,
  ];
  return step(
    "fuses",
    `Mount the fuse holders and the switches for panels and battery, every fuse left out and every switch open. ${places.join(" ")}`,
    {
      cautions: post.bank,
      why: "A fuse protects the wire behind it, so it sits where the current comes from. With all of them out, every wire is dead while you work. The switches for panels and battery stay open too.",
      expects: "Each holder bears a label with its rating and the name of its run.",
    },
  );
}

const heaterRunOf = ({ runs }: Wiring): Run | undefined => runs.find(({ name }) => name === HEATER_RUN);

function heaterPad(post: Post, { battery, wiring }: Powered): MaybeStep {
  const run = heaterRunOf(wiring);
  return (
    run !== undefined &&
    step(
      "heaterPad",
      `Line the battery's part of the box with ${post.say.said(1000 * FOAM_WALL_M, "mm", { safe: "up" })} of foam on all six sides. Lay the heater pad flat where the blocks will stand, put the thermostat's feeler where it will touch one, and lead the wire to its own fuse holder (${fuseOf(run)}), the fuse left out. Where the blocks have the heater built in, the foam alone is your work: follow the maker for the rest.`,
      {
        cautions: [cautions.heaterFire, ...post.bank],
        why: "It lies under the blocks, so it comes before them. It has a feed of its own, because a battery that is too cold to be charged must be warmed even when the loads are cut off.",
        expects: `Between its two wires about ${ohms(battery.bankNominalV ** 2 / post.design.brief.power.batteryHeaterW.value)} while the feeler is held in ice water, and no connection while it is warm.`,
      },
    )
  );
}

function heaterOn({ design, bank, say }: Post, { battery, wiring }: Powered): MaybeStep {
  const run = heaterRunOf(wiring);
  return (
    run !== undefined &&
    step(
      "heaterOn",
      `Put in the ${run.fuseA === null ? "heater's fuse" : `${ratedAmps(run.fuseA)} fuse of the battery heater`}. Hold a bag of ice to the thermostat's feeler until the heater pad warms up, then take it away.`,
      {
        cautions: [cautions.heaterFire, ...bank, cautions.polarity],
        why: "Before the first frost nobody would notice that it does nothing.",
        expects: `About ${amps(design.brief.power.batteryHeaterW.value / battery.bankNominalV)} while the feeler is cold, nothing once it is warmer than ${say.temperature(BATTERY_WARM_C)}.`,
      },
    )
  );
}

/** Before the bank is joined: everything that these two are wired to is still dead. */
function disconnect({ bank }: Post): MaybeStep {
  return step(
    "disconnect",
    "Mount the low-voltage disconnect in the plus wire from the battery to the load bus, behind that wire's fuse, and its minus wire at the battery's minus. Nothing else goes through it: not the charge controller, not a battery heater.",
    {
      cautions: bank,
      why: "The load bus hangs on the battery, so a charge controller's own load output would not see its current. A controller whose load output carries the whole bus can feed it instead.",
      expects: "With the battery dead, no connection between its two thick terminals, or as its maker says.",
    },
  );
}

function relay({ first, bank }: Post): MaybeStep {
  return (
    first.length > 0 &&
    step(
      "relay",
      `Mount the voltage relay beside the load bus: its sensing wires behind a fuse of the bus, its contact in the plus wire of ${listed(first)}.`,
      {
        cautions: bank,
        why: "It feels the battery's voltage, not that behind a converter. A charge controller with a second load output of its own settings does the same.",
        expects: "No other load's wire runs through its contact.",
      },
    )
  );
}

function bank(post: Post, battery: Battery): MaybeStep {
  const { inSeries, inParallel, blocks } = battery;
  const isLead = battery.chemistry === "agm";
  const layout =
    blocks === 1
      ? "Place the block in the box and connect nothing to it yet."
      : `Charge every block fully by itself. Place the ${blocks} blocks in the box and join ${inSeries > 1 ? `${inSeries} in series` : "none in series"}${
          inParallel > 1
            ? `, then the ${inParallel} strings side by side: plus taken from the first string, minus from the last`
            : ""
        }.`;
  return step("bank", layout, {
    cautions: [...liftsOf(post, "battery block"), ...post.bank, cautions.polarity],
    why: `${isLead ? "Lead-acid stands upright, held so that it cannot tip. The wire to minus is joined last and comes off first." : "The maker says how many may stand in series and in parallel. The wire to minus is joined last and comes off first."} ${blocks > 1 ? "Unequal blocks drive large currents into each other." : "It comes after everything heavy or sharp that could fall on it."}`,
    expects: `${isLead ? `Between ${volts((12.4 / 12) * battery.bankV)} and ${volts((13 / 12) * battery.bankV)}` : `Between ${volts((13 / 12.8) * battery.bankNominalV)} and ${volts((13.7 / 12.8) * battery.bankNominalV)}`} across ${inParallel > 1 ? "each string of blocks" : "the bank"} at rest (from memory)${blocks > 1 ? `, all blocks within ${volts(0.1)} of each other before they are joined` : ""}.`,
  });
}

function deadTests({ support, livePanel, bank }: Post): MaybeStep {
  return step(
    "deadTests",
    `With every fuse out and the panels covered, test with the meter's ohms: no short between plus and minus of any wire to a load, and a path from ${support === "mast" || support === "pole" ? support : "bracket"}, panel frame and box to the earth bar.`,
    {
      cautions: [...bank, livePanel],
      why: "A wrong wire costs a minute now and a controller later. Where your code asks for an insulation test, an electrician makes it here.",
      expects:
        "Open circuit or kiloohms between plus and minus, less than 1 ohm from metal to earth bar (common practice, no source).",
    },
  );
}

function controllerOn({ design, bank }: Post, { battery, wiring }: Powered): MaybeStep {
  const count = design.array?.controllers ?? 1;
  const charge = wiring.runs.find(({ to }) => to === "battery");
  const first = [
    ...(wiring.blockFuseA === null
      ? []
      : [`the ${ratedAmps(wiring.blockFuseA)} fuses of the strings of blocks`]),
    ...(charge?.fuseA == null ? ["the charge fuse"] : [`the ${ratedAmps(charge.fuseA)} charge fuse`]),
  ];
  return step(
    "controllerOn",
    `Connect the ${count > 1 ? `${count} controllers` : "controller"} to the battery, put in ${listed(first)}, close the battery's switch, and enter the charge settings.`,
    {
      cautions: [...bank, cautions.polarity],
      why: "Battery before panel: the controller learns the bank's voltage from it, and many are destroyed by a panel without a battery.",
      expects: `The controller shows the meter's voltage within ${volts(battery.bankV / 60)} and says ${battery.bankV} V. One small spark is normal.`,
    },
  );
}

function loadsOn(post: Post, { battery, wiring }: Powered): MaybeStep {
  const main = wiring.runs.find(({ from, to }) => from === "battery" && to === "load bus");
  const others = wiring.runs.filter((run) => !isAtBattery(run) && run.fuseA !== null);
  const put = (runs: readonly Run[]) => listed(runs.map(({ to, fuseA }) => `${to} ${ratedAmps(fuseA!)}`));
  const onBus = others.filter((run) => !isConverted(run));
  const behind = others.filter(isConverted);
  const isPassive = post.design.brief.parts.radio?.value.feed.startsWith("passive") === true;
  return step(
    "loadsOn",
    `Put in the ${main?.fuseA == null ? "load fuse" : `${ratedAmps(main.fuseA)} load fuse`}${onBus.length > 0 ? `, then the others one at a time: ${put(onBus)}` : ""}. ${behind.length > 0 ? `Measure the converter's output: only when it shows ${volts(DEVICE_SUPPLY_V)} put in the fuses behind it: ${put(behind)}. ` : ""}Wait after each until the device has started.`,
    {
      cautions: [
        ...post.bank,
        cautions.polarity,
        ...(isPassive && post.sender === "radio" ? [cautions.passivePoe] : []),
      ],
      why: `One at a time shows which one is wrong.${behind.length > 0 ? ` The load bus carries the battery's voltage, up to ${volts(battery.absorptionV)}: a device for ${volts(DEVICE_SUPPLY_V)} that is joined to it can be destroyed.` : ""}`,
      expects: `${behind.length > 0 ? `Between ${volts(0.95 * DEVICE_SUPPLY_V)} and ${volts(1.05 * DEVICE_SUPPLY_V)} behind the converter. ` : ""}Each device starts, and the battery falls by less than ${volts(battery.bankV / 60)}.`,
    },
  );
}

function panelOn({ design, livePanel }: Post): MaybeStep {
  const { array, wiring } = design;
  if (array === null || array.panels === 0) return null;
  const each = array.controllers > 1 ? ", each controller with its own strings" : "";
  return step(
    "panelOn",
    `With the panels still covered, lift the cover for a moment to check the polarity at the cable's end, cover again, and connect it to the controller${each}.${wiring === null || wiring.stringFuseA === null ? "" : ` Put in the ${counted(array.inParallel, "string fuse")} of ${ratedAmps(wiring.stringFuseA)}.`} Then uncover them and close their switch.`,
    {
      cautions: [livePanel, cautions.polarity],
      why: "The panels come last, and go first when it is taken apart: a controller wants its battery before its panels.",
      expects: `Panel voltage below ${volts(array.controllerMaxInputV)} at all times, and current into the battery as soon as the sun is on them.`,
    },
  );
}
