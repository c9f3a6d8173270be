import { clamp } from "../../core/numerics/index.ts";
import {
  classFor,
  type FuseFamily,
  fuseKind,
  interruptingAdvice,
  pickFuse,
  poeAtDevice,
  pvCircuitCurrents,
  stringFuse,
  typicalShortCircuitA,
} from "../../core/wiring/index.ts";
import type { Brief } from "../brief.ts";
import type { ArraySizing, Battery, Climate, Loads, Mounting, PoeRun, Run, Wiring } from "../design.ts";
import { GROUND_FRAME_AWAY_M } from "../practice/mounting.ts";
import {
  BANK_LEAD_M,
  DATA_CABLE_AWG,
  MOST_DROP_FRAC,
  panelLabelFuseA,
  SELECTIVITY_RATIO,
  SLACK_M,
  WIRE_RISE_K,
  wireFamily,
} from "../practice/wiring.ts";
import { drawsOf, feedOf } from "./demand.ts";
import { cableM, largestFuseA, loadRuns } from "./wire-loads.ts";
import { runOf, type Surroundings } from "./wire-run.ts";

export { wiringNotes } from "./wiring-notes.ts";

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
  const runs = [
    panelsToController(ctx, { array, mounting }),
    controllerToBank(ctx, { array, battery, mainFuse }),
    ...loadRuns(ctx, { brief, loads, battery, mounting, mainFuse }),
  ];
  const atBattery = runs.filter(({ from, to }) => from === "battery" || to === "battery");
  return {
    runs,
    poeRuns: poeRunsOf(brief, { mounting, wireTempC }),
    shortCircuitA,
    mainFuseKind: FUSE_WORDS[mainFuse],
    mainFuseInterruptA: fuseKind(mainFuse).interruptingA,
    stringFuseA: stringFuseOf(array),
    blockFuseA: blockFuseOf({ battery, loads, array, mainFuse, behindA: largestFuseA(atBattery) }),
  };
}

const FUSE_WORDS: Readonly<Record<FuseFamily, string>> = {
  blade: "blade fuse",
  strip: "bolt-down strip fuse",
  "class-t": "class T fuse",
  gpv: "gPV cartridge fuse",
  breaker: "DC breaker",
};

/** Strings on the controller that has most of them: the runs to and from a controller are sized for that one. */
function stringsOfOne({ inParallel, controllers }: ArraySizing): number {
  return Math.ceil(inParallel / controllers);
}

function panelsToController(
  ctx: Surroundings,
  given: { readonly array: ArraySizing; readonly mounting: Mounting },
): Run {
  const { array, mounting } = given;
  const strings = stringsOfOne(array);
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
    currentA: (array.chargeCurrentA * stringsOfOne(array)) / array.inParallel,
    lengthM: BANK_LEAD_M,
    systemV: battery.bankNominalV,
    maxDropFrac: MOST_DROP_FRAC.bank,
    fuse: mainFuse,
    fuseReason: "at the battery's positive terminal, because a short there has the whole bank behind it",
  });
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
    stringsInParallel: Math.min(stringsOfOne(array), 100),
    maxSeriesFuseA: labelA,
    conductorAmpacityA: 1000,
    batteryCanBackfeed: false,
  });
  return found.kind === "fuse" ? found.ratingA : null;
}

/** Several strings of blocks: a short in one is fed by the others, so each has a fuse that bears twice its share, and together they outlast those behind them. */
function blockFuseOf(given: {
  readonly battery: Battery;
  readonly loads: Loads;
  readonly array: ArraySizing;
  readonly mainFuse: FuseFamily;
  /** Largest fuse at the battery that they all feed. */
  readonly behindA: number;
}): number | null {
  const { battery, loads, array, mainFuse, behindA } = given;
  if (battery.inParallel < 2) return null;
  const largestA = Math.max(loads.peakW / battery.lowVoltageDisconnectV, array.chargeCurrentA);
  const leastA = Math.max(1.25 * 2 * largestA, SELECTIVITY_RATIO * behindA) / battery.inParallel;
  const pick = pickFuse({
    continuousCurrentA: Math.min(leastA, 5000),
    ampacityA: 6000,
    family: mainFuse,
    factor: 1,
  });
  return pick.kind === "picked" ? pick.ratingA : null;
}
