import { sum } from "../../core/numerics/index.ts";
import { sayingIn } from "../../core/units/index.ts";
import { pvCircuitCurrents } from "../../core/wiring/index.ts";
import type { Brief } from "../brief.ts";
import type { ArraySizing, Battery, Run } from "../design.ts";
import * as prices from "../practice/prices.ts";
import { DEVICE_SUPPLY_V } from "../practice/wiring.ts";
import { feedOf } from "./demand.ts";
import type { Draft, Worked } from "./part-draft.ts";
import { shedFirst } from "./reliability-loads.ts";
import { isConverted } from "./wire-loads.ts";
import { conductorText, fixed, MAIN_RUN, plain } from "./words.ts";

const sign: Draft = {
  id: "sign",
  name: "Sign that says that it records",
  quantity: 1,
  unit: "",
  specification: ["with who runs it, what for and how to reach them, or what your local rules ask"],
  price: prices.SIGN,
  figures: [],
};

export function wireParts(brief: Brief, worked: Worked): readonly Draft[] {
  const { wiring, battery, link } = worked;
  const said = sayingIn(brief.units);
  const parts: Draft[] = [];
  if (wiring && battery) {
    const controllers = worked.array?.controllers ?? 1;
    const bySize = new Map<string, { areaMm2: number; lengthM: number; names: string[] }>();
    for (const run of wiring.runs) {
      const size = conductorText(said, run);
      const count = countOf(run, controllers);
      const found = bySize.get(size) ?? { areaMm2: run.areaMm2, lengthM: 0, names: [] };
      bySize.set(size, {
        areaMm2: Math.max(found.areaMm2, run.areaMm2),
        lengthM: found.lengthM + 2 * run.lengthM * count,
        names: [...found.names, count > 1 ? `${run.name}, ${count} times` : run.name],
      });
    }
    for (const [size, { areaMm2, lengthM, names }] of bySize) {
      parts.push({
        id: `wire.${plain(areaMm2)}.${parts.length + 1}`,
        name: `Copper wire ${size}, fit for outdoors`,
        quantity: Math.ceil(lengthM),
        unit: "m",
        specification: ["both conductors counted", ...names],
        price: prices.wirePerM(areaMm2),
        figures: controllers > 1 ? ["wiring.runs", "array.controllers"] : ["wiring.runs"],
      });
    }
    const mainRuns = wiring.runs.filter(({ from, to }) => from === "battery" || to === "battery");
    parts.push({
      id: "fuse.main",
      name: `${capital(wiring.mainFuseKind)} with holder, at the battery`,
      // each controller has a fuse of its own beside the one of the loads
      quantity: mainRuns.length - 1 + controllers,
      unit: "",
      specification: [
        mainRuns
          .map(({ name, fuseA }) => `${name}: ${fuseA === null ? "none fits" : `${plain(fuseA)} A`}`)
          .join("; "),
        `for direct current at ${fixed(battery.absorptionV * 1.1, 0)} V or more, interrupting at least ${fixed(Math.min(wiring.shortCircuitA, wiring.mainFuseInterruptA), 0)} A`,
      ],
      price: prices.MAIN_FUSE,
      figures: ["wiring.runs", "wiring.mainFuseKind"],
    });
    const branches = wiring.runs.filter(
      ({ fuseA, from, to }) => fuseA !== null && from !== "battery" && to !== "battery",
    );
    const block = (about: Pick<Draft, "id" | "name">, runs: readonly Run[]): Draft => ({
      ...about,
      quantity: runs.length,
      unit: "",
      specification: runs.map(({ name, fuseA }) => `${name}: ${plain(fuseA!)} A`),
      price: prices.SMALL_FUSE,
      figures: ["wiring.runs"],
    });
    parts.push(
      block(
        { id: "fuse.bus", name: "Fuses for the load bus, with block" },
        branches.filter((run) => !isConverted(run)),
      ),
      block(
        {
          id: "fuse.converter",
          name: `Fuses for the ${DEVICE_SUPPLY_V} V side, after the converter, with a block of their own`,
        },
        branches.filter(isConverted),
      ),
    );
    if (worked.array) parts.push(isolators(worked.array, battery, mainRuns));
    parts.push(loadDisconnect(battery, wiring.runs), ...voltageRelay(brief, battery, wiring.runs));
    if (wiring.stringFuseA !== null && worked.array) {
      parts.push({
        id: "fuse.string",
        name: "gPV fuse with holder, in each string of panels",
        quantity: worked.array.inParallel,
        unit: "",
        specification: [
          `${plain(wiring.stringFuseA)} A, at least ${fixed(worked.array.coldOpenCircuitV, 0)} V DC`,
        ],
        price: prices.STRING_FUSE,
        figures: ["wiring.stringFuseA"],
      });
    }
    if (wiring.blockFuseA !== null) {
      parts.push({
        id: "fuse.block",
        name: `${capital(wiring.mainFuseKind)} with holder, at each string of blocks`,
        quantity: battery.inParallel,
        unit: "",
        specification: [`${plain(wiring.blockFuseA)} A`],
        price: prices.MAIN_FUSE,
        figures: ["wiring.blockFuseA"],
      });
    }
    const dataM = sum(wiring.poeRuns.map(({ lengthM }) => lengthM + 1));
    parts.push({
      id: "dataCable",
      name: "Data cable, outdoor, solid bare copper",
      quantity: Math.ceil(dataM),
      unit: "m",
      specification: ["category 5e or better, ultraviolet-proof jacket"],
      price: prices.DATA_CABLE_PER_M,
      figures: ["mounting.cameraHeightM", "mounting.radioHeightM", "mounting.boxHeightM"],
    });
    if (wiring.runs[0]!.lengthM > 10) {
      parts.push({
        id: "surge.dc",
        name: "Surge protector for the panel's input (DC)",
        quantity: controllers,
        unit: "",
        specification: [`IEC 61643-31, above ${fixed(worked.array?.coldOpenCircuitV ?? 0, 0)} V`],
        price: prices.DC_SURGE,
        figures: ["wiring.runs"],
      });
    }
  }
  if (link?.carrier === "cable") {
    parts.push({
      id: "homeCable",
      name: "Data cable to the building, for burial or in pipe",
      quantity: Math.ceil(brief.link.distanceM.value + 5),
      unit: "m",
      specification: ["solid bare copper, water-blocked"],
      price: prices.DATA_CABLE_PER_M,
      figures: ["link.carrier", "brief.link.distanceM"],
    });
  }
  const outsideRuns = brief.loads.devices.filter((device) => feedOf(device, brief) === "switch").length;
  // a mobile network has no far end of one's own
  const hasFarEnd = link?.carrier === "radio" || link?.carrier === "cable";
  parts.push(
    {
      id: "surge.data",
      name: "Surge protector for data lines, PoE-rated",
      quantity: outsideRuns + (hasFarEnd ? 1 : 0),
      unit: "",
      specification: [
        `where each data line enters the box${hasFarEnd ? ", and one at the far building" : ""}`,
      ],
      price: prices.DATA_SURGE,
      figures: ["link.carrier"],
    },
    ...(brief.view.scenes.length === 0 ? [] : [sign]),
    {
      id: "glands",
      name: "Cable glands, ferrules, lugs, ties, sealant",
      quantity: 1,
      unit: "set",
      specification: ["glands for each cable's diameter, all entries from below"],
      price: prices.GLANDS,
      figures: [],
    },
  );
  return parts;
}

/** Most that the fuses let through, and what the panels can push: NEC 690.13 asks for a switch in both, from memory. */
function isolators(array: ArraySizing, battery: Battery, mainRuns: readonly Run[]): Draft {
  const { maxCurrentA } = pvCircuitCurrents({
    iscA: Math.min(array.shortCircuitA, 100),
    stringsInParallel: Math.min(Math.ceil(array.inParallel / array.controllers), 100),
  });
  return {
    id: "isolator",
    name: "Switch for direct current, to cut off panels or battery",
    quantity: array.controllers + 1,
    unit: "",
    specification: [
      `panels: at least ${fixed(Math.ceil(array.coldOpenCircuitV), 0)} V and ${fixed(Math.ceil(maxCurrentA), 0)} A DC`,
      `battery: at least ${fixed(battery.absorptionV * 1.1, 0)} V and ${fixed(sum(mainRuns.map((run) => (run.fuseA ?? 0) * countOf(run, array.controllers))), 0)} A DC`,
      "opens under load, lockable when open",
    ],
    price: prices.ISOLATOR,
    figures: ["array.coldOpenCircuitV", "array.shortCircuitA", "wiring.runs"],
  };
}

/**
 * What cuts the loads off before the battery is spoilt. The load bus hangs on the battery and not on the charge controller, whose
 * load output is too small for most posts.
 */
function loadDisconnect(battery: Battery, runs: readonly Run[]): Draft {
  const main = runs.find(({ name }) => name === MAIN_RUN);
  const carriesA = Math.ceil(main?.fuseA ?? main?.currentA ?? 1);
  return {
    id: "disconnect.load",
    name: "Low-voltage disconnect for the load bus",
    quantity: 1,
    unit: "",
    specification: [
      `for a battery of ${battery.bankV} V: off at ${fixed(battery.lowVoltageDisconnectV, 1)} V and on again at ${fixed(battery.reconnectV, 1)} V, both to be set`,
      `carries at least ${carriesA} A of direct current, and draws at most 5 mA itself`,
      "not needed where the charge controller has a load output for that current and the load bus is fed from it",
    ],
    price: prices.LOAD_DISCONNECT,
    figures: ["battery.lowVoltageDisconnectV", "battery.reconnectV", "wiring.runs"],
  };
}

/** Lets go what is shed first: a charge controller's load output has one voltage only. */
function voltageRelay(brief: Brief, battery: Battery, runs: readonly Run[]): readonly Draft[] {
  const names = shedFirst(brief).map(({ name }) => name);
  if (names.length === 0) return [];
  const throughIt = runs.filter(({ to }) => names.includes(to));
  return [
    {
      id: "relay.voltage",
      name: "Voltage relay, for what is let go first",
      quantity: 1,
      unit: "",
      specification: [
        `for ${names.join(", ")}: off at ${fixed(battery.earlyDisconnectV, 1)} V and on again at ${fixed(battery.earlyReconnectV, 1)} V, both to be set in steps of ${fixed(battery.bankV / 120, 1)} V or less`,
        `senses a battery of ${battery.bankV} V by wires of its own; contact for at least ${fixed(Math.max(1, Math.ceil(sum(throughIt.map(({ fuseA, currentA }) => fuseA ?? currentA)))), 0)} A of direct current`,
        "draws at most 20 mA itself; not needed where the charge controller has a second load output with voltages of its own",
      ],
      price: prices.VOLTAGE_RELAY,
      figures: ["battery.earlyDisconnectV", "battery.earlyReconnectV", "wiring.runs", "brief.loads.devices"],
    },
  ];
}

/** Each controller has runs of its own to the panels and to the battery. */
function countOf({ from, to }: Run, controllers: number): number {
  return from === "charge controller" || to === "charge controller" ? controllers : 1;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
