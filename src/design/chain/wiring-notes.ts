import type { Notes, Wiring } from "../design.ts";
import { INRUSH_RATIO, MOST_DROP_FRAC, SELECTIVITY_RATIO, SLACK_M, WIRE_RISE_K } from "../practice/wiring.ts";

export const wiringNotes = {
  runs: {
    what: "each run: current, length, conductor, drop, fuse at its source",
    formula: `thinnest sold conductor with ampacity at ${WIRE_RISE_K} K above the hottest hour for 1.25 x the lasting current (panels: 1.5625 x short-circuit current; loads: ${INRUSH_RATIO} x their peak, for switching on), drop 2 x length x current x ohm per m within ${MOST_DROP_FRAC.panel} (panels), ${MOST_DROP_FRAC.bank} (bank), ${MOST_DROP_FRAC.load} (to a device; a third of it to and on the bus); a battery's heater: watts / nominal V, at the absorption voltage; fuse 1.25 x current up to the conductor's limit, at the battery for the loads at least ${SELECTIVITY_RATIO} x the largest on the bus; with several controllers each has its own two runs, sized for the one with most strings; lengths from the heights + ${SLACK_M} m`,
    inputs: [
      "array.maxPowerA",
      "array.shortCircuitA",
      "array.chargeCurrentA",
      "array.inParallel",
      "array.controllers",
      "loads.peakW",
      "brief.power.batteryHeaterW",
      "battery.absorptionV",
      "battery.lowVoltageDisconnectV",
      "mounting.panelHeightM",
      "mounting.cameraHeightM",
      "mounting.radioHeightM",
      "mounting.boxHeightM",
      "climate.designHotTempC",
    ],
    source:
      "NEC 690.8, 310.16, 240.4(D) and chapter 9 table 8; IEC 60228 and 60364-5-52; drop limits and ratio of fuses common practice, no source; lengths judgement",
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
    formula: `the larger of 1.25 x twice the string's share of the largest current and ${SELECTIVITY_RATIO} x its share of the largest fuse at the battery, next size`,
    inputs: ["battery.inParallel", "loads.peakW", "array.chargeCurrentA", "wiring.runs"],
    source: "common practice, no source",
  },
} satisfies Notes<Wiring>;
