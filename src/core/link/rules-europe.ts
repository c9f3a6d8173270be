import { AS_OF, NO_RADAR, RADAR, WEATHER_RADAR } from "./radar-wait.ts";
import type { RadioBandRow } from "./radio-band.ts";

const REC_70_03 = "ERC Recommendation 70-03 annex 3 (read)";
const ECC_04_08 =
  "ECC Decision (04)08 as quoted in a public mail archive (read); outdoor condition of Decision (EU) 2022/179 from memory";

/**
 * Licence-free bands as far as they matter to a fixed outdoor link in the CEPT countries and the United Kingdom. STARTING VALUES, read or remembered in November
 * 2025, each with its source; not legal advice, and a radio's maker may have to set it lower. A range is split where
 * its rule or its radar wait changes.
 */
export const EUROPEAN_BANDS: readonly RadioBandRow[] = [...europeanRows("EU"), ...europeanRows("UK")];

/** Shared by the CEPT countries and, as far as remembered, by the United Kingdom. */
function europeanRows(region: "EU" | "UK"): readonly RadioBandRow[] {
  const prefix = region.toLowerCase();
  const kingdom = region === "UK" ? "; taken over for the United Kingdom from memory" : "";
  const fiveGHz = (
    row: Pick<RadioBandRow, "id" | "lowMHz" | "highMHz"> &
      Pick<RadioBandRow, "dfs" | "silenceAfterPowerCutS">,
  ): RadioBandRow => ({
    region,
    limit: { form: "eirp", eirpDbm: 30 },
    eirpDbmPerMHz: 17,
    withoutPowerControlDb: 3,
    outdoorAllowed: true,
    notes: "1 W EIRP and 50 mW/MHz with power control, half without: the usual licence-free link band.",
    source: `${ECC_04_08}${kingdom}`,
    asOf: AS_OF,
    ...row,
  });
  return [
    {
      id: `${prefix}-2400`,
      region,
      lowMHz: 2400,
      highMHz: 2483.5,
      limit: { form: "eirp", eirpDbm: 20 },
      eirpDbmPerMHz: 10,
      ...NO_RADAR,
      outdoorAllowed: true,
      notes: "The antenna counts: a 24 dBi dish needs the radio turned down to -4 dBm.",
      source: `${REC_70_03}${kingdom}`,
      asOf: AS_OF,
    },
    {
      id: `${prefix}-5150`,
      region,
      lowMHz: 5150,
      highMHz: 5250,
      limit: { form: "eirp", eirpDbm: 23 },
      eirpDbmPerMHz: 10,
      ...NO_RADAR,
      outdoorAllowed: false,
      notes: "Not on a fixed outdoor antenna nor on fixed infrastructure.",
      source: `${ECC_04_08}${kingdom}`,
      asOf: AS_OF,
    },
    {
      id: `${prefix}-5250`,
      region,
      lowMHz: 5250,
      highMHz: 5350,
      limit: { form: "eirp", eirpDbm: 23 },
      eirpDbmPerMHz: 10,
      withoutPowerControlDb: 3,
      ...RADAR,
      outdoorAllowed: false,
      notes: "Indoors only.",
      source: `${ECC_04_08}${kingdom}`,
      asOf: AS_OF,
    },
    fiveGHz({ id: `${prefix}-5470`, lowMHz: 5470, highMHz: 5600, ...RADAR }),
    fiveGHz({ id: `${prefix}-5600`, lowMHz: 5600, highMHz: 5650, ...WEATHER_RADAR }),
    fiveGHz({ id: `${prefix}-5650`, lowMHz: 5650, highMHz: 5725, ...RADAR }),
    {
      id: `${prefix}-5725`,
      region,
      lowMHz: 5725,
      highMHz: region === "UK" ? 5850 : 5875,
      limit: { form: "eirp", eirpDbm: 36 },
      eirpDbmPerMHz: 23,
      ...RADAR,
      outdoorAllowed: "ask",
      notes:
        "Fixed wireless access where the country offers it, often with a light licence or registration; elsewhere only 25 mW.",
      source: `ECC Recommendation (06)04 (read)${kingdom}`,
      asOf: AS_OF,
    },
    {
      id: `${prefix}-24050`,
      region,
      lowMHz: 24_050,
      highMHz: 24_250,
      limit: { form: "eirp", eirpDbm: 20 },
      ...NO_RADAR,
      outdoorAllowed: true,
      notes: "Short-range device allowance.",
      source: "EN 300 440, from memory",
      asOf: AS_OF,
    },
    {
      id: `${prefix}-57000`,
      region,
      lowMHz: 57_000,
      highMHz: 71_000,
      limit: { form: "eirp", eirpDbm: 40 },
      eirpDbmPerMHz: 23,
      maxConductedDbm: 27,
      ...NO_RADAR,
      outdoorAllowed: true,
      notes: "Fixed outdoor use under entry c2: 27 dBm at most into the antenna.",
      source: `${REC_70_03}${kingdom}`,
      asOf: AS_OF,
    },
    {
      id: `${prefix}-57000-fixed`,
      region,
      lowMHz: 57_000,
      highMHz: 71_000,
      limit: { form: "eirp", eirpDbm: 55 },
      eirpDbmPerMHz: 38,
      minGainDbi: 30,
      ...NO_RADAR,
      outdoorAllowed: true,
      notes: "Fixed outdoor installations only, entry c3, antenna of 30 dBi or more.",
      source: `${REC_70_03}${kingdom}`,
      asOf: AS_OF,
    },
  ];
}
