import { clamp, sum } from "../../core/numerics/index.ts";
import {
  type ConductorFamily,
  type ConductorFit,
  classFor,
  type FuseFamily,
  fuseKind,
  interruptingAdvice,
  pickConductor,
  pickFuse,
  poeAtDevice,
  pvCircuitCurrents,
  stringFuse,
  typicalShortCircuitA,
  type WireRun,
} from "../../core/wiring/index.ts";
import type { Brief, Device } from "../brief.ts";
import type {
  ArraySizing,
  Battery,
  Climate,
  Loads,
  Mounting,
  Notes,
  PoeRun,
  Run,
  Wiring,
} from "../design.ts";
import { GROUND_FRAME_AWAY_M } from "../practice/mounting.ts";
import {
  BANK_LEAD_M,
  DATA_CABLE_AWG,
  DEVICE_SUPPLY_V,
  INRUSH_RATIO,
  INSIDE_LEAD_M,
  MOST_DROP_FRAC,
  panelLabelFuseA,
  SLACK_M,
  WIRE_RISE_K,
  wireFamily,
} from "../practice/wiring.ts";
import { drawsOf, feedOf } from "./demand.ts";

/** Every run with its conductor and its fuse at the source, and what reaches each PoE device. */
export function wiringStage(
  brief: Brief,
  climate: Climate | null,
  loads: Loads,
  battery: Battery | null,
  array: ArraySizing | null,
  mounting: Mounting,
): Wiring | null {
  if (!climate || !battery || !array) return null;
  const family = wireFamily(brief.place.site.value?.countryCode ?? null);
  const wireTempC = clamp(climate.designHotTempC + WIRE_RISE_K, 30, 75);
  const ctx: Surroundings = { family, wireTempC };
  const chemistry = battery.chemistry === "agm" ? "lead-acid" : "lithium";
  const shortCircuitA = typicalShortCircuitA({ capacityAh: clamp(battery.bankAh, 1, 10_000), chemistry });
  const advice = interruptingAdvice({
    prospectiveA: Math.min(shortCircuitA, 1e6),
    maxChargeV: battery.absorptionV * 1.1,
    capacityAh: clamp(battery.bankAh, 1, 10_000),
    chemistry,
  });
  const mainFuse: FuseFamily =
    advice.useClassT || advice.families.length === 0 ? "class-t" : advice.families[0]!;
  const panelRun = panelsToController(ctx, { array, mounting });
  return {
    runs: [
      panelRun,
      controllerToBank(ctx, { array, battery, mainFuse }),
      ...loadRuns(ctx, { brief, loads, battery, mounting, mainFuse }),
    ],
    poeRuns: poeRunsOf(brief, { mounting, wireTempC }),
    shortCircuitA,
    mainFuseKind: FUSE_WORDS[mainFuse],
    mainFuseInterruptA: fuseKind(mainFuse).interruptingA,
    stringFuseA: stringFuseOf(array),
    blockFuseA: blockFuseOf({ battery, loads, array, mainFuse }),
  };
}

const FUSE_WORDS: Readonly<Record<FuseFamily, string>> = {
  blade: "blade fuse",
  strip: "bolt-down strip fuse",
  "class-t": "class T fuse",
  gpv: "gPV cartridge fuse",
  breaker: "DC breaker",
};

interface Surroundings {
  readonly family: ConductorFamily;
  readonly wireTempC: number;
}

type Wanted = Pick<WireRun, "currentA" | "lengthM" | "systemV" | "maxDropFrac"> & {
  readonly name: string;
  readonly from: string;
  readonly to: string;
  readonly continuousCurrentA?: number;
  /** Fuse at the source, or why there is none. */
  readonly fuse: FuseFamily | { readonly none: string };
  readonly fuseReason?: string;
};

function runOf(ctx: Surroundings, wanted: Wanted): Run {
  const { name, from, to, fuse, fuseReason, ...electrical } = wanted;
  const fuseFamily = typeof fuse === "string" ? fuse : undefined;
  const pickIn = (family: ConductorFamily) => {
    const pick = pickConductor({
      ...electrical,
      family,
      ambientTempC: ctx.wireTempC,
      conductorTempC: ctx.wireTempC,
      ...(fuseFamily ? { fuseFamily } : {}),
    });
    return pick.kind === "picked"
      ? { fit: pick as ConductorFit, decidedBy: pick.decidedBy[0], isEnough: true }
      : { fit: pick.thickest, decidedBy: pick.thickest.failsOn[0], isEnough: false };
  };
  const metric = pickIn("mm2");
  const american = pickIn("awg");
  const used = ctx.family === "mm2" ? metric : american;
  const rating = used.fit.fuse?.kind === "picked" ? used.fit.fuse.ratingA : null;
  return {
    name,
    from,
    to,
    currentA: wanted.currentA,
    lengthM: wanted.lengthM,
    systemV: wanted.systemV,
    areaMm2: metric.fit.conductor.areaMm2,
    awg: american.fit.conductor.name,
    dropV: used.fit.dropV,
    dropFrac: used.fit.dropFrac,
    maxDropFrac: wanted.maxDropFrac,
    isEnough: used.isEnough,
    decidedBy: used.decidedBy === "voltage-drop" ? "voltage drop" : (used.decidedBy ?? "smallest sold"),
    fuseA: rating,
    fuseReason:
      typeof fuse === "string"
        ? (fuseReason ?? "at the source, so that it protects the whole wire")
        : fuse.none,
  };
}

function panelsToController(
  ctx: Surroundings,
  given: { readonly array: ArraySizing; readonly mounting: Mounting },
): Run {
  const { array, mounting } = given;
  const strings = Math.ceil(array.inParallel / array.controllers);
  const awayM = mounting.panelMount === "mast" ? 0 : GROUND_FRAME_AWAY_M;
  return runOf(ctx, {
    name: "Panels to controller",
    from: "panels",
    to: "charge controller",
    currentA: array.maxPowerA * strings,
    continuousCurrentA: pvCircuitCurrents({
      iscA: Math.min(array.shortCircuitA, 100),
      stringsInParallel: Math.min(strings, 100),
    }).maxCurrentA,
    lengthM: Math.abs(mounting.panelHeightM - mounting.boxHeightM) + awayM + SLACK_M,
    systemV: array.maxPowerV * array.inSeries,
    maxDropFrac: MOST_DROP_FRAC.panel,
    fuse: {
      none: "panels cannot give more than the wire bears; each string has its own fuse where several stand in parallel and the sum asks for it",
    },
  });
}

function controllerToBank(
  ctx: Surroundings,
  given: { readonly array: ArraySizing; readonly battery: Battery; readonly mainFuse: FuseFamily },
): Run {
  const { array, battery, mainFuse } = given;
  return runOf(ctx, {
    name: "Controller to battery",
    from: "charge controller",
    to: "battery",
    currentA: array.chargeCurrentA / array.controllers,
    lengthM: BANK_LEAD_M,
    systemV: battery.bankNominalV,
    maxDropFrac: MOST_DROP_FRAC.bank,
    fuse: mainFuse,
    fuseReason: "at the battery's positive terminal, because a short there has the whole bank behind it",
  });
}

/** Bank to bus, bus to switch and converter, converter to each DC device. */
function loadRuns(
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
  const runs: Run[] = [
    runOf(ctx, {
      name: "Battery to load bus",
      from: "battery",
      to: "load bus",
      ...surge(loads.peakW / lowestV),
      lengthM: BANK_LEAD_M,
      systemV: battery.bankNominalV,
      maxDropFrac: MOST_DROP_FRAC.load / 3,
      fuse: mainFuse,
      fuseReason: "at the battery's positive terminal, because a short there has the whole bank behind it",
    }),
  ];
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
        to: "DC converter",
        ...surge(peakA("converter")),
      }),
    );
  }
  for (const drawn of draws) {
    if (!drawn.device) continue;
    const feed = feedOf(drawn.device, brief);
    if (feed === "switch") continue;
    const supplyV = feed === "converter" ? DEVICE_SUPPLY_V : battery.bankNominalV;
    runs.push(
      runOf(ctx, {
        name: `Feed of ${drawn.name}`,
        from: feed === "converter" ? "DC converter" : "load bus",
        to: drawn.name,
        ...surge(drawn.peakW / drawn.batteryRatio / (feed === "converter" ? supplyV : lowestV)),
        lengthM: cableM(drawn.device, mounting),
        systemV: supplyV,
        maxDropFrac: MOST_DROP_FRAC.load,
        fuse: busFuse(battery),
        fuseReason: "at the bus, so that one faulty load does not take the others down",
      }),
    );
  }
  return runs;
}

/** A load's current, and what its fuse must let pass. */
function surge(currentA: number): { readonly currentA: number; readonly continuousCurrentA: number } {
  return { currentA, continuousCurrentA: INRUSH_RATIO * currentA };
}

/** Blade fuses end at 32 V: a 48 V bus needs breakers made for it. */
function busFuse(battery: Battery): FuseFamily {
  return battery.absorptionV * 1.1 <= fuseKind("blade").maxDcV ? "blade" : "class-t";
}

/** From the box up or down to the device: cameras and radios at their heights, everything else beside the box. */
function cableM(device: Device, mounting: Mounting): number {
  const heightM =
    device.kind === "camera"
      ? mounting.cameraHeightM
      : device.kind === "radio" || device.kind === "cellular router"
        ? mounting.radioHeightM
        : mounting.boxHeightM;
  return Math.abs(heightM - mounting.boxHeightM) + SLACK_M;
}

function poeRunsOf(
  brief: Brief,
  given: { readonly mounting: Mounting; readonly wireTempC: number },
): readonly PoeRun[] {
  return drawsOf(brief)
    .filter((drawn) => drawn.device && feedOf(drawn.device, brief) === "switch")
    .map((drawn): PoeRun => {
      const deviceW = Math.max(drawn.dayW, drawn.nightW);
      const lengthM = clamp(cableM(drawn.device!, given.mounting), 0.1, 300);
      const found = classFor(Math.min(deviceW, 1000));
      const at = poeAtDevice({
        sourceV: found.kind === "class" ? found.minSourceV : 52,
        deviceW: Math.min(deviceW, 200),
        lengthM,
        pairs: found.kind === "class" ? found.pairs : 4,
        awg: DATA_CABLE_AWG,
        tempC: given.wireTempC,
      });
      return {
        device: drawn.name,
        poeClass: found.kind === "class" ? found.poeClass : 0,
        deviceW,
        lengthM,
        deviceV: at.kind === "carried" ? at.loadV : 0,
        lossW: at.kind === "carried" ? at.lossW : 0,
      };
    });
}

function stringFuseOf(array: ArraySizing): number | null {
  const labelA = panelLabelFuseA(array.shortCircuitA);
  const found = stringFuse({
    iscA: clamp(array.shortCircuitA, 0.1, 100),
    stringsInParallel: Math.min(Math.ceil(array.inParallel / array.controllers), 100),
    maxSeriesFuseA: labelA,
    conductorAmpacityA: 1000,
    batteryCanBackfeed: false,
  });
  return found.kind === "fuse" ? found.ratingA : null;
}

/** Several strings of blocks: a short in one is fed by the others, so each has a fuse that bears twice its share. */
function blockFuseOf(given: {
  readonly battery: Battery;
  readonly loads: Loads;
  readonly array: ArraySizing;
  readonly mainFuse: FuseFamily;
}): number | null {
  const { battery, loads, array, mainFuse } = given;
  if (battery.inParallel < 2) return null;
  const largestA = Math.max(loads.peakW / battery.lowVoltageDisconnectV, array.chargeCurrentA);
  const pick = pickFuse({
    continuousCurrentA: Math.min((2 * largestA) / battery.inParallel, 5000),
    ampacityA: 6000,
    family: mainFuse,
  });
  return pick.kind === "picked" ? pick.ratingA : null;
}

export const wiringNotes = {
  runs: {
    what: "each run: current, length, conductor, drop, fuse at its source",
    formula:
      "thinnest sold conductor with ampacity at 15 K above the hottest hour for 1.25 x the lasting current (panels: 1.5625 x short-circuit current; loads: 2 x their peak, for switching on), drop 2 x length x current x ohm per m within 2 % (panels), 1 % (bank), 1 % + 1 % + 3 % (to bus, on bus, to a device); fuse 1.25 x current up to the conductor's limit; lengths from the heights + 1 m",
    inputs: [
      "array.maxPowerA",
      "array.shortCircuitA",
      "array.chargeCurrentA",
      "loads.peakW",
      "battery.lowVoltageDisconnectV",
      "mounting.panelHeightM",
      "mounting.cameraHeightM",
      "mounting.radioHeightM",
      "mounting.boxHeightM",
      "climate.designHotTempC",
    ],
    source:
      "NEC 690.8, 310.16, 240.4(D) and chapter 9 table 8; IEC 60228 and 60364-5-52; drop limits common practice, no source; lengths judgement",
  },
  poeRuns: {
    what: "each PoE device: its class, and voltage and loss at its end of the data cable",
    formula:
      "weakest class that powers it by night; V at the device from P = I (V - I R) at the class's lowest source voltage",
    inputs: ["brief.loads.devices", "mounting.cameraHeightM", "mounting.radioHeightM", "mounting.boxHeightM"],
    source: "IEEE 802.3-2018 clauses 33 and 145; 9.38 ohm per 100 m of 24 AWG: TIA-568 (from memory)",
  },
  shortCircuitA: {
    what: "current that a dead short draws from the bank",
    formula: "40 A per Ah of lead-acid, 64 A per Ah of lithium iron phosphate; high on purpose",
    inputs: ["battery.bankAh", "battery.chemistry"],
    source: "IEEE 946 (from memory); the maker's internal resistance goes first",
  },
  mainFuseKind: {
    what: "kind of fuse at the battery",
    formula: "weakest kind that breaks the short; class T above 100 Ah of lead or 50 Ah of lithium",
    inputs: ["wiring.shortCircuitA", "battery.bankAh"],
    source: "common practice, no source; Sandia suggested practices: 20 kA for banks up to 1000 Ah",
  },
  mainFuseInterruptA: {
    what: "current that a fuse of that kind commonly breaks safely",
    formula: "by kind",
    inputs: ["wiring.mainFuseKind"],
    source: "usual ratings from memory; the fuse's own marking counts",
  },
  stringFuseA: {
    what: "fuse in each string of panels; none where the others cannot harm one",
    formula:
      "needed if (strings - 1) x 1.25 x short-circuit current exceeds the panel's label; 1.5625 x to 2.4 x short-circuit current",
    inputs: ["array.inParallel", "array.shortCircuitA"],
    source: "NEC 690.9, IEC 62548 clause 6.5 (from memory); label of usual panels from memory",
  },
  blockFuseA: {
    what: "fuse at each string of blocks where there are several",
    formula: "1.25 x twice the string's share of the largest current, next size",
    inputs: ["battery.inParallel", "loads.peakW", "array.chargeCurrentA"],
    source: "common practice, no source",
  },
} satisfies Notes<Wiring>;
