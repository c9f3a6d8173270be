/** A typical brief, ways to change it, and a made-up but plausible world. */
import { remembering } from "../../src/commands/remember.ts";
import { type Climate, type ClimateRefused, withOwnFigures } from "../../src/core/climate/index.ts";
import { extraterrestrialDailyKWhPerM2, MEAN_DAY_BY_MONTH } from "../../src/core/sun/index.ts";
import type { Brief, Device, Given, Origin, Scene, Site } from "../../src/design/brief.ts";
import type { World } from "../../src/design/design.ts";

export function given<T>(value: T, origin: Origin = "estimate"): Given<T> {
  return { value, origin, isAnswered: true };
}

/** A fixed camera, 5 W and 4 W of infrared light, on a PoE switch. */
export const camera: Device = {
  name: "Camera",
  kind: "camera",
  dayW: given(5, "datasheet"),
  nightExtraW: given(4, "datasheet"),
  feed: "poe",
  schedule: { kind: "always" },
  priority: 2,
};

/** A 5 GHz point-to-point radio, 7 W. */
export const radio: Device = {
  name: "Radio",
  kind: "radio",
  dayW: given(7, "datasheet"),
  nightExtraW: given(0, "datasheet"),
  feed: "poe",
  schedule: { kind: "always" },
  priority: 3,
};

export const scene: Scene = {
  kind: given("fixed"),
  purpose: given("recognise"),
  distanceM: given(15),
  widthM: given(10),
};

/** Places for which the synthetic world below gives plain climates. */
export const sites = {
  north40: { label: "40 N", latitudeDeg: 40, longitudeDeg: -3.7, elevationM: 650, countryCode: "ES" },
  north60: { label: "60 N", latitudeDeg: 60, longitudeDeg: 25, elevationM: 20, countryCode: "FI" },
  south5: { label: "5 S", latitudeDeg: -5, longitudeDeg: 36, elevationM: 600, countryCode: "TZ" },
  north71: { label: "71 N", latitudeDeg: 71, longitudeDeg: 25, elevationM: 20, countryCode: "NO" },
  colorado: { label: "Colorado", latitudeDeg: 40, longitudeDeg: -105, elevationM: 1600, countryCode: "US" },
} satisfies Record<string, Site>;

/** One fixed camera with infrared light and one radio, 40 N, nothing bought, everything answered. */
export const typicalBrief: Brief = {
  name: "field gate",
  currency: "USD",
  units: "metric",
  openTopics: [],
  place: {
    site: given<Site | null>(sites.colorado),
    ownSun: given(null),
    trustedSun: given("lower"),
    horizon: given([]),
    soilingFrac: given(0.05),
    snowWeeks: given(0),
  },
  view: {
    scenes: [scene],
    night: given("infrared"),
    smoothness: given("normal"),
    recordsSound: given(false),
    keepDays: given(14),
  },
  loads: { devices: [camera, radio] },
  hours: { runsInMonth: given<readonly boolean[]>(Array.from({ length: 12 }, () => true)) },
  autonomy: {
    consequence: given("worry"),
    askedDays: given(5),
    askedDarkHours: given(88),
    visitDays: given(3),
  },
  power: {
    chemistry: given("choose"),
    batteryHeaterW: given(0),
    heaviestBlockKg: given(25),
    bankV: given("choose"),
    controller: given("mppt"),
    marginFrac: given(0.2),
    largestPanelW: given(200),
    isTiltChanged: given(false),
    sizing: given("recommended"),
  },
  mounting: {
    overheadLine: given("no"),
    freeGroundM: given(12),
    support: given("newMast"),
    wallAzimuthDeg: given<number | null>(null),
    cameraHeightM: given(3),
    poleDiameterMm: given(0),
    poleHeightM: given(0),
    gustMPerS: given(45),
    soil: given("clay"),
    frostDepthM: given(0.6),
  },
  link: {
    carrier: given("radio"),
    distanceM: given(800),
    sight: given("clear"),
    far: given(null),
    between: given(""),
    ground: given(null),
    farHeightM: given(6),
    otherPosts: given(0),
  },
  parts: { battery: null, panel: null, controller: null, radio: null },
  money: { ceiling: given(0), contingencyFrac: given(0.15) },
};

type Changed<T> = { readonly [Topic in keyof T]?: T[Topic] extends object ? Partial<T[Topic]> : T[Topic] };

/** The same brief with some answers changed, topic by topic. */
export function changed(changes: Changed<Brief>, brief: Brief = typicalBrief): Brief {
  const topics = Object.entries(changes).map(([topic, answers]) => [
    topic,
    typeof answers === "object" && !Array.isArray(answers)
      ? { ...(brief[topic as keyof Brief] as object), ...answers }
      : answers,
  ]);
  return { ...brief, ...Object.fromEntries(topics) } as Brief;
}

export function at(site: Site | null, brief: Brief = typicalBrief): Brief {
  return changed({ place: { site: given<Site | null>(site) } }, brief);
}

/** Sixteen shares of a plausible spread of days, mean 1: from a quarter of the mean to half as much again. */
const DAY_SHARES = Array.from({ length: 16 }, (_, i) => 0.25 + (i * 1.5) / 15);

/**
 * A world made of two rules of thumb: clearness 0.5 everywhere, and temperature falling from 27 degrees C at the equator by
 * 0.4 K per degree, swinging with the seasons by a quarter of a kelvin per degree of latitude. No data set, no truth.
 */
export const syntheticWorld: World = {
  climateAt: (site) => syntheticClimate(site),
  climateOfOwn: ({ elevationM }, own) =>
    withOwnFigures(syntheticClimate({ latitudeDeg: own.latitudeDeg, elevationM }) as Climate, own),
  clockMinusSolarH: () => 0,
  simulation: null,
};

/** The same with weather years, remembered as the program does: a task whose facts are not all told would turn a test red. */
export const simulatedWorld: World = {
  ...syntheticWorld,
  simulation: { remember: remembering() },
};

export function syntheticClimate(
  site: { readonly latitudeDeg: number; readonly elevationM: number | null },
  clearness = 0.5,
): Climate | ClimateRefused {
  const { latitudeDeg } = site;
  const north = latitudeDeg < 0 ? -1 : 1;
  const meanTempCByMonth = MEAN_DAY_BY_MONTH.map(
    (_, month) =>
      27 -
      0.4 * Math.abs(latitudeDeg) -
      north * 0.25 * Math.abs(latitudeDeg) * Math.cos(((month - 0.5) * Math.PI) / 6),
  );
  return {
    kind: "climate",
    ghiDailyKWhPerM2ByMonth: MEAN_DAY_BY_MONTH.map(
      ({ dayOfYear }) => clearness * extraterrestrialDailyKWhPerM2({ dayOfYear, latitudeDeg }),
    ),
    clearnessFracByMonth: Array.from({ length: 12 }, () => clearness),
    ghiUncertaintyFrac: 0.08,
    dailyGhiQuantilesByMonth: Array.from({ length: 12 }, () => DAY_SHARES),
    meanTempCByMonth,
    designColdTempC: Math.min(...meanTempCByMonth) - 18,
    recordColdTempC: Math.min(...meanTempCByMonth) - 25,
    designHotTempC: Math.max(...meanTempCByMonth) + 13,
    rainRate001MmPerH: 42,
    refractivityGradientPerKm: -200,
    terrainRoughnessM: 50,
    groundElevationM: 100,
    elevationM: site.elevationM ?? 100,
    source: {
      irradiation: "made up",
      temperature: "made up",
      rain: "made up",
      refractivity: "made up",
      elevation: "made up",
    },
  };
}
