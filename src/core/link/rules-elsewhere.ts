import { AS_OF, NO_RADAR, WEATHER_RADAR } from "./radar-wait.ts";
import type { RadioBandRow } from "./radio-band.ts";

/** No law at all: the lowest of the regions above, to size with until the country's authority has been asked. */
export const UNKNOWN_COUNTRY_BANDS: readonly RadioBandRow[] = [
  {
    id: "other-2400",
    region: "other",
    lowMHz: 2400,
    highMHz: 2483.5,
    limit: { form: "eirp", eirpDbm: 20 },
    eirpDbmPerMHz: 10,
    ...NO_RADAR,
    outdoorAllowed: "ask",
    notes: "No rule of this country is known here. The lowest figure of the known regions, to size with.",
    source: "judgement: the lowest of the regions in this table",
    asOf: AS_OF,
  },
  {
    id: "other-5470",
    region: "other",
    lowMHz: 5470,
    highMHz: 5725,
    limit: { form: "eirp", eirpDbm: 30 },
    eirpDbmPerMHz: 17,
    withoutPowerControlDb: 3,
    ...WEATHER_RADAR,
    outdoorAllowed: "ask",
    notes: "No rule of this country is known here. The lowest figure of the known regions, to size with.",
    source: "judgement: the lowest of the regions in this table",
    asOf: AS_OF,
  },
  {
    id: "other-57000",
    region: "other",
    lowMHz: 57_000,
    highMHz: 64_000,
    limit: { form: "eirp", eirpDbm: 40 },
    eirpDbmPerMHz: 23,
    maxConductedDbm: 27,
    ...NO_RADAR,
    outdoorAllowed: "ask",
    notes: "No rule of this country is known here. The lowest figure of the known regions, to size with.",
    source: "judgement: the lowest of the regions in this table",
    asOf: AS_OF,
  },
];
