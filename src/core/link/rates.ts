import { within } from "../numerics/index.ts";
import {
  type ChannelWidthMHz,
  MODULATION_ROWS,
  type RadioStandard,
  SINGLE_CARRIER_ROWS,
  VHT_EXCLUDED,
  WIFI_SHAPES,
} from "./modulation-tables.ts";

export type AirInterface = {
  readonly standard: RadioStandard;
  readonly widthMHz: ChannelWidthMHz;
  /** Spatial streams, 1 to 4; 802.11ad single carrier has 1. */
  readonly streams: number;
  /** 400 or 800 for 802.11n and ac, 800, 1600 or 3200 for ax. Absent: the longest, the cautious one outdoors. */
  readonly guardIntervalNs?: number;
};

/** What a radio's own data sheet says of one row, in place of the standard's minimum. */
export type RadioRow = {
  readonly mcs: number;
  readonly sensitivityDbm: number;
  /** How much less the transmitting end sends at this row than its full power; 0 when absent. */
  readonly powerBackoffDb?: number;
};

export type RateStep = {
  readonly mcs: number;
  readonly phyMbps: number;
  readonly sensitivityDbm: number;
  readonly powerBackoffDb: number;
  readonly sensitivityFrom: "data sheet" | "minimum of the standard";
};

/**
 * Raw rate on the air of one row of one interface.
 *
 * @param mcs  row, 0 to 11; for 802.11n without the streams (row 0 to 7), for 802.11ad 1 to 12
 * @returns Mbit/s; undefined where the standard has no such combination
 * @throws RangeFault when mcs lies outside 0 to 12 or streams outside 1 to 4
 * @source IEEE 802.11 clauses 19, 21 and 27 (from memory): subcarriers x bits x code rate x streams / symbol time;
 *         802.11ad from its published table of rates
 * @example phyRateMbps({ standard: "802.11ac", widthMHz: 80, streams: 2, guardIntervalNs: 400, mcs: 9 })  // 866.7
 */
export function phyRateMbps(air: AirInterface & { readonly mcs: number }): number | undefined {
  const mcs = within("mcs", air.mcs, 0, 12);
  const streams = within("streams", air.streams, 1, 4);
  if (!Number.isInteger(mcs) || !Number.isInteger(streams)) return undefined;
  if (air.standard === "802.11ad") {
    if (streams !== 1 || air.widthMHz !== 2160) return undefined;
    return SINGLE_CARRIER_ROWS.find((row) => row.mcs === mcs)?.phyMbps;
  }
  const shape = WIFI_SHAPES[air.standard];
  const subcarriers = shape.subcarriers[air.widthMHz];
  const guardNs = air.guardIntervalNs ?? shape.guardNs.at(-1)!;
  const row = MODULATION_ROWS[mcs];
  if (!row || mcs >= shape.rows || subcarriers === undefined || !shape.guardNs.includes(guardNs)) {
    return undefined;
  }
  if (air.standard === "802.11ac" && isExcluded({ widthMHz: air.widthMHz, mcs, streams })) return undefined;
  const bits = subcarriers * row.bitsPerSymbol * row.codeRatio * streams;
  return bits / (shape.symbolUs + guardNs / 1000);
}

/**
 * The least sensitivity that the standard allows a receiver at one row.
 *
 * @param mcs  row of the table, 0 to 12
 * @returns dBm; undefined where the standard has no such row or width
 * @throws RangeFault when mcs lies outside 0 to 12
 * @source IEEE 802.11 minimum sensitivity tables, see modulation-tables.ts
 */
export function minimumSensitivityDbm(row: {
  readonly standard: RadioStandard;
  readonly widthMHz: ChannelWidthMHz;
  readonly mcs: number;
}): number | undefined {
  const mcs = within("mcs", row.mcs, 0, 12);
  if (row.standard === "802.11ad") {
    return row.widthMHz === 2160
      ? SINGLE_CARRIER_ROWS.find((single) => single.mcs === mcs)?.sensitivityDbm
      : undefined;
  }
  const shape = WIFI_SHAPES[row.standard];
  const doublings = shape.widths.indexOf(row.widthMHz);
  const found = MODULATION_ROWS[mcs];
  if (!found || mcs >= shape.rows || doublings < 0) return undefined;
  return found.sensitivityDbm + 3 * doublings;
}

/**
 * Every rate of an interface, slowest first, with the level each needs.
 *
 * @param radioRows  the radio's data sheet; when given, only its rows count, and each pairs its own power and
 *                   sensitivity (transmit power falls as the rate rises)
 * @returns rising by phyMbps
 * @throws RangeFault when streams lies outside 1 to 4
 * @source see {@link phyRateMbps} and {@link minimumSensitivityDbm}
 */
export function rateSteps(
  air: AirInterface & { readonly radioRows?: readonly RadioRow[] },
): readonly RateStep[] {
  const { standard, widthMHz } = air;
  const steps: RateStep[] = [];
  for (let mcs = 0; mcs <= 12; mcs++) {
    const phyMbps = phyRateMbps({ ...air, mcs });
    const minimumDbm = minimumSensitivityDbm({ standard, widthMHz, mcs });
    const own = air.radioRows?.find((row) => row.mcs === mcs);
    if (phyMbps === undefined || minimumDbm === undefined || (air.radioRows && !own)) continue;
    steps.push({
      mcs,
      phyMbps,
      sensitivityDbm: own?.sensitivityDbm ?? minimumDbm,
      powerBackoffDb: own?.powerBackoffDb ?? 0,
      sensitivityFrom: own ? "data sheet" : "minimum of the standard",
    });
  }
  return steps.sort((a, b) => a.phyMbps - b.phyMbps);
}

/**
 * The fastest rate that keeps a wanted fade margin in one direction.
 *
 * @param rxLevelDbm    received level at the transmitter's full power, -200 to 30
 * @param fadeMarginDb  margin wanted above the sensitivity, 0 to 80
 * @param radioRows     data sheet of the receiving end's sensitivity and the sending end's power, row by row
 * @returns the row with its margin; undefined when even the slowest rate lacks the margin
 * @throws RangeFault outside the ranges above
 * @source highest PHY rate whose level less sensitivity reaches the margin; tables as in modulation-tables.ts
 */
export function bestRate(
  want: AirInterface & {
    readonly rxLevelDbm: number;
    readonly fadeMarginDb: number;
    readonly radioRows?: readonly RadioRow[];
  },
): (RateStep & { readonly marginDb: number }) | undefined {
  const rxLevelDbm = within("rxLevelDbm", want.rxLevelDbm, -200, 30);
  const fadeMarginDb = within("fadeMarginDb", want.fadeMarginDb, 0, 80);
  return rateSteps(want)
    .map((step) => ({ ...step, marginDb: rxLevelDbm - step.powerBackoffDb - step.sensitivityDbm }))
    .filter((step) => step.marginDb >= fadeMarginDb)
    .at(-1);
}

/**
 * Thermal noise in a channel at 290 K.
 *
 * @param widthMHz  0.001 to 10 000
 * @returns dBm
 * @throws RangeFault outside the range above
 * @source k T B with -174 dBm/Hz
 */
export function thermalNoiseDbm(widthMHz: number): number {
  return -174 + 10 * Math.log10(within("widthMHz", widthMHz, 0.001, 10_000) * 1e6);
}

function isExcluded(row: {
  readonly widthMHz: ChannelWidthMHz;
  readonly mcs: number;
  readonly streams: number;
}): boolean {
  return VHT_EXCLUDED.some(
    (out) => out.widthMHz === row.widthMHz && out.mcs === row.mcs && out.streams.includes(row.streams),
  );
}
