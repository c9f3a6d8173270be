import { sum } from "../../core/numerics/index.ts";
import { type FuseFamily, fuseKind } from "../../core/wiring/index.ts";
import type { Brief, Device } from "../brief.ts";
import type { Battery, Loads, Mounting, Run } from "../design.ts";
import {
  BANK_LEAD_M,
  DEVICE_SUPPLY_V,
  INRUSH_RATIO,
  INSIDE_LEAD_M,
  MOST_DROP_FRAC,
  SELECTIVITY_RATIO,
  SLACK_M,
} from "../practice/wiring.ts";
import { drawsOf, feedOf } from "./demand.ts";
import { runOf, type Surroundings } from "./wire-run.ts";
import { HEATER_RUN, MAIN_RUN } from "./words.ts";

/**
 * Bank to its heater, bank to bus, bus to switch and converter, converter to each DC device. The branches are worked first:
 * the fuse at the bank is chosen by theirs. What stands behind the converter is held by the converter's own current limit; the
 * fuse of each device there sits on the converter's side, for the bank's own voltage would destroy the device. The heater does
 * not hang on the bus: once the loads are cut off, a bank too cold to be charged would never come back.
 */
export function loadRuns(
  ctx: Surroundings,
  given: {
    readonly brief: Brief;
    readonly loads: Loads;
    readonly battery: Battery;
    readonly mounting: Mounting;
    readonly mainFuse: FuseFamily;
  },
): readonly Run[] {
  const { brief, loads, battery, mounting, mainFuse } = given;
  // current is greatest when the bank is about to be cut off
  const lowestV = battery.lowVoltageDisconnectV;
  const draws = drawsOf(brief);
  const peakA = (through: "switch" | "converter" | "direct") =>
    sum(
      draws
        .filter((drawn) => (drawn.device ? feedOf(drawn.device, brief) === through : drawn.kind === through))
        .map((drawn) => drawn.peakW),
    ) / lowestV;
  const onBus = {
    from: "load bus",
    lengthM: INSIDE_LEAD_M,
    systemV: battery.bankNominalV,
    maxDropFrac: MOST_DROP_FRAC.load / 3,
    fuse: busFuse(battery),
    fuseReason: "at the bus, so that one faulty load does not take the others down",
  } as const;
  const runs: Run[] = [];
  if (draws.some(({ kind }) => kind === "switch")) {
    runs.push(
      runOf(ctx, {
        ...onBus,
        name: "Load bus to PoE switch",
        to: "step-up and PoE switch",
        ...surge(peakA("switch")),
      }),
    );
  }
  if (draws.some(({ kind }) => kind === "converter")) {
    runs.push(
      runOf(ctx, {
        ...onBus,
        name: "Load bus to DC converter",
        to: CONVERTER,
        ...surge(peakA("converter")),
      }),
    );
  }
  for (const drawn of draws) {
    if (!drawn.device) continue;
    const feed = feedOf(drawn.device, brief);
    if (feed === "switch") continue;
    const isBehind = feed === "converter";
    const supplyV = isBehind ? DEVICE_SUPPLY_V : battery.bankNominalV;
    runs.push(
      runOf(ctx, {
        name: isBehind
          ? `Feed of ${drawn.name}, ${DEVICE_SUPPLY_V} V from the converter`
          : `Feed of ${drawn.name}`,
        from: isBehind ? CONVERTER : "load bus",
        to: drawn.name,
        ...surge(drawn.peakW / drawn.batteryRatio / (isBehind ? supplyV : lowestV)),
        lengthM: cableM(drawn.device, mounting),
        systemV: supplyV,
        maxDropFrac: MOST_DROP_FRAC.load,
        fuse: isBehind ? "blade" : busFuse(battery),
        fuseReason: isBehind
          ? `after the converter, on its ${DEVICE_SUPPLY_V} V side, never at the load bus: the battery's voltage can destroy a ${DEVICE_SUPPLY_V} V device`
          : "at the bus, so that one faulty load does not take the others down",
      }),
    );
  }
  const heater = draws.find(({ keepsBatteryWarm }) => keepsBatteryWarm);
  const main = runOf(ctx, {
    name: MAIN_RUN,
    from: "battery",
    to: "load bus",
    ...surge((loads.peakW - (heater?.peakW ?? 0)) / lowestV),
    lengthM: BANK_LEAD_M,
    systemV: battery.bankNominalV,
    maxDropFrac: MOST_DROP_FRAC.load / 3,
    fuse: mainFuse,
    leastFuseA: SELECTIVITY_RATIO * largestFuseA(runs.filter(({ from }) => from === "load bus")),
    fuseReason: `at the battery's positive terminal, because a short there has the whole bank behind it; at least ${SELECTIVITY_RATIO} times the largest on the bus, so that a faulty load blows its own fuse first`,
  });
  return [...(heater === undefined ? [] : [heaterRun(ctx, given, heater.dayW)]), main, ...runs];
}

/** A resistance: it draws its watts at the nominal voltage, and more current the higher the bank stands. */
function heaterRun(
  ctx: Surroundings,
  { battery, mainFuse }: { readonly battery: Battery; readonly mainFuse: FuseFamily },
  heaterW: number,
): Run {
  const { bankNominalV, absorptionV } = battery;
  return runOf(ctx, {
    name: HEATER_RUN,
    from: "battery",
    to: "battery heater",
    currentA: ((heaterW / bankNominalV) * absorptionV) / bankNominalV,
    lengthM: BANK_LEAD_M,
    systemV: bankNominalV,
    maxDropFrac: MOST_DROP_FRAC.load,
    fuse: mainFuse,
    fuseReason:
      "at the battery's positive terminal, because a short there has the whole bank behind it; not on the bus, so that the battery stays warm enough to be charged when the loads are cut off",
  });
}

const CONVERTER = "DC converter";

/** Runs that begin behind the converter, at the devices' own voltage. */
export const isConverted = ({ from }: Run): boolean => from === CONVERTER;

/** Of the fuses that there are; 0 where there is none. */
export function largestFuseA(runs: readonly Run[]): number {
  return Math.max(0, ...runs.map(({ fuseA }) => fuseA ?? 0));
}

/** A load's current, and what its fuse must let pass. */
function surge(currentA: number): { readonly currentA: number; readonly continuousCurrentA: number } {
  return { currentA, continuousCurrentA: INRUSH_RATIO * currentA };
}

/** Blade fuses end at 32 V: a 48 V bus needs fuses made for more. */
function busFuse(battery: Battery): FuseFamily {
  return battery.absorptionV * 1.1 <= fuseKind("blade").maxDcV ? "blade" : "class-t";
}

/** From the box up or down to the device: cameras and radios at their heights, everything else beside the box. */
export function cableM(device: Device, mounting: Mounting): number {
  const heightM =
    device.kind === "camera"
      ? mounting.cameraHeightM
      : device.kind === "radio" || device.kind === "cellular router"
        ? mounting.radioHeightM
        : mounting.boxHeightM;
  return Math.abs(heightM - mounting.boxHeightM) + SLACK_M;
}
