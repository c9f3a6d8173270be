import { within } from "../numerics/index.ts";
import { CHECK_RULES, type PowerLimit, type RadioBand } from "./radio-band.ts";
import type { RadioRegion } from "./regions.ts";
import { AMERICAN_BANDS } from "./rules-america.ts";
import { UNKNOWN_COUNTRY_BANDS } from "./rules-elsewhere.ts";
import { EUROPEAN_BANDS } from "./rules-europe.ts";
import { PACIFIC_BANDS } from "./rules-pacific.ts";

const RADIO_BANDS = [...AMERICAN_BANDS, ...EUROPEAN_BANDS, ...PACIFIC_BANDS, ...UNKNOWN_COUNTRY_BANDS];

/**
 * Every licence-free band the tables know for a region, also those that a post may not use.
 *
 * @source per row, see rules-america.ts, rules-europe.ts and rules-pacific.ts. Starting values, not legal advice
 */
export function bandsOfRegion(region: RadioRegion): readonly RadioBand[] {
  return RADIO_BANDS.filter((band) => band.region === region).map((band) => ({
    ...band,
    caution: CHECK_RULES,
  }));
}

/**
 * The bands in which a fixed outdoor link may work in a region, or may once the country has been asked.
 *
 * @source per row, see rules-america.ts, rules-europe.ts and rules-pacific.ts. Starting values, not legal advice
 */
export function bandsForOutdoorPointToPoint(region: RadioRegion): readonly RadioBand[] {
  return bandsOfRegion(region).filter((band) => band.outdoorAllowed !== false);
}

/**
 * The most that may be radiated in a band through a given antenna.
 *
 * @param gainDbi          of the sending antenna, -10 to 60
 * @param widthMHz         channel width, 0.1 to 10 000; a narrow channel may be held lower by a limit per MHz
 * @param hasPowerControl  the radio turns itself down when it can; absent: it does not
 * @returns eirpDbm, and the power into the antenna that makes it, conductedDbm; undefined when the antenna has less
 *          gain than the rule demands
 * @throws RangeFault outside the ranges above
 * @source the band's own row. Check your own country's rules before switching on
 * @example US 5725-5850 MHz with 30 dBi: 60 dBm; EU 5470-5600 MHz: 27 dBm, or 30 dBm with power control
 */
export function powerLimitDbm(use: {
  readonly band: RadioBand;
  readonly gainDbi: number;
  readonly widthMHz: number;
  readonly hasPowerControl?: boolean;
}): { readonly eirpDbm: number; readonly conductedDbm: number } | undefined {
  const { band } = use;
  const gainDbi = within("gainDbi", use.gainDbi, -10, 60);
  const widthDb = 10 * Math.log10(within("widthMHz", use.widthMHz, 0.1, 10_000));
  if (band.minGainDbi !== undefined && gainDbi < band.minGainDbi) return undefined;
  const reduction = gainReductionDb({ limit: band.limit, gainDbi });
  const candidates = [limitEirpDbm({ limit: band.limit, gainDbi })];
  if (band.eirpDbmPerMHz !== undefined) candidates.push(band.eirpDbmPerMHz + widthDb);
  if (band.conductedDbmPerMHz !== undefined) {
    candidates.push(band.conductedDbmPerMHz + widthDb - reduction + gainDbi);
  }
  if (band.maxConductedDbm !== undefined) candidates.push(band.maxConductedDbm + gainDbi);
  const offDb = use.hasPowerControl ? 0 : (band.withoutPowerControlDb ?? 0);
  const capDbm = use.hasPowerControl ? undefined : band.withoutPowerControlEirpDbm;
  const eirpDbm = Math.min(Math.min(...candidates) - offDb, capDbm ?? Number.POSITIVE_INFINITY);
  return { eirpDbm, conductedDbm: eirpDbm - gainDbi };
}

function limitEirpDbm(use: { readonly limit: PowerLimit; readonly gainDbi: number }): number {
  const { limit, gainDbi } = use;
  switch (limit.form) {
    case "eirp":
      return limit.eirpDbm;
    case "conducted":
      return limit.conductedDbm - gainReductionDb(use) + gainDbi;
    case "by-gain":
      return Math.max(
        limit.floorDbm,
        limit.topDbm - limit.slopeDbPerDbi * Math.max(0, limit.topGainDbi - gainDbi),
      );
  }
}

/** What the power into the antenna must give up because of the antenna's gain. */
function gainReductionDb(use: { readonly limit: PowerLimit; readonly gainDbi: number }): number {
  const { limit, gainDbi } = use;
  if (limit.form !== "conducted" || limit.dbiPerReductionDb === undefined) return 0;
  return Math.max(0, gainDbi - limit.freeGainDbi) / limit.dbiPerReductionDb;
}
