/**
 * Everything computed from a brief: never saved, always derivable. One interface a stage, in the order of the chain.
 * A stage is null where what it needs is not known (no place, no radio); `provisional` names the stages that rest on
 * questions still open.
 */
import type { Brief, Chemistry, ControllerKind, Device, Origin, Purpose } from "./brief.ts";
import type { Finding } from "./finding.ts";

export const stageNames = [
  "climate",
  "sun",
  "loads",
  "battery",
  "array",
  "wiring",
  "link",
  "mounting",
  "view",
  "parts",
  "money",
] as const;
export type StageName = (typeof stageNames)[number];

/** Twelve values, January first. */
export type ByMonth = readonly number[];

/** How a figure is made and who says so: kept beside the stage that computes it, one a field, none missing. */
export interface Note {
  readonly what: string;
  /** As one would write it on paper. */
  readonly formula: string;
  /** Paths of what goes in: "brief.loads.devices", "sun.poaDailyKWhPerM2ByMonth". */
  readonly inputs: readonly string[];
  /** Standard or publication with section, data set, "common practice, no source" or "from memory". */
  readonly source: string;
}
export type Notes<Stage> = { readonly [Field in keyof Stage]-?: Note };

export interface Climate {
  readonly ghiDailyKWhPerM2ByMonth: ByMonth;
  readonly ghiUncertaintyFrac: number;
  readonly meanTempCByMonth: ByMonth;
  readonly designColdTempC: number;
  readonly designHotTempC: number;
  readonly elevationM: number;
  /** Rain rate exceeded for 0.01 % of the year. */
  readonly rainRateMmPerH: number;
  readonly dataSource: string;
}

export interface Sun {
  readonly tiltDeg: number;
  readonly azimuthDeg: number;
  /** "south" or "north" (the equator's side). */
  readonly facing: "north" | "south";
  /** On the panel, after horizon and snow, before soiling. */
  readonly poaDailyKWhPerM2ByMonth: ByMonth;
  /** The same at the latitude rule's tilt. */
  readonly latitudeTiltDeg: number;
  readonly latitudePoaDailyKWhPerM2ByMonth: ByMonth;
  /** Second tilt and the months it serves, where the builder will climb twice a year; else null. */
  readonly summerTiltDeg: number | null;
  /** Hours of daylight on the mean day of each month. */
  readonly daylightHByMonth: ByMonth;
  /** Month with the lowest ratio of sun on the panel to energy asked, 0 = January. */
  readonly designMonth: number;
  /** Mean cell temperature while the sun shines. */
  readonly cellTempCByMonth: ByMonth;
}

/** One device's share, at the battery. */
export interface LoadLine {
  readonly name: string;
  readonly kind: Device["kind"] | "switch" | "converter" | "controller";
  readonly dayW: number;
  readonly nightW: number;
  /** Hours it runs on a day of the design month (of the longest night without a place). */
  readonly hoursPerDay: number;
  /** At the battery, after conversion, on a day of the design month. */
  readonly dailyWh: number;
  readonly origin: Origin;
}

export interface Loads {
  readonly lines: readonly LoadLine[];
  /** Power drawn from the battery in each hour of the mean day: [month][hour of solar day], 12 x 24. */
  readonly batteryWByMonthAndHour: readonly (readonly number[])[];
  readonly dailyWhByMonth: ByMonth;
  /** In the month with the greatest demand. */
  readonly largestDailyWh: number;
  readonly peakW: number;
  readonly longestNightH: number;
  readonly nightShareFrac: number;
}

export interface Battery {
  readonly chemistry: Chemistry;
  readonly chemistryReason: string;
  readonly bankV: number;
  readonly bankVReason: string;
  readonly autonomyDays: number;
  readonly autonomyReason: string;
  readonly dailyAh: number;
  readonly permittedDodFrac: number;
  readonly permittedDodReason: string;
  readonly temperatureC: number;
  readonly capacityAtTemperatureFrac: number;
  readonly unadjustedAh: number;
  readonly forDepthAh: number;
  readonly forDailyDepthAh: number;
  readonly forEndOfLifeAh: number;
  readonly governing: "depth of discharge" | "daily depth" | "end of life";
  readonly requiredAh: number;
  readonly functionalHourRateH: number;
  readonly blockAh: number;
  readonly blockV: number;
  readonly blockKg: number;
  readonly inSeries: number;
  readonly inParallel: number;
  readonly blocks: number;
  readonly layoutReason: string;
  readonly bankAh: number;
  readonly bankKg: number;
  readonly usableWh: number;
  readonly absorptionV: number;
  readonly floatV: number;
  readonly lowVoltageDisconnectV: number;
  readonly reconnectV: number;
  readonly compensationVPerK: number;
  /** Does the bank reach below 0 degC where lithium may not be charged? */
  readonly needsWarmth: boolean;
}

export interface ArraySizing {
  readonly controller: ControllerKind;
  readonly arrayToLoadRatio: number;
  readonly systemLossFrac: number;
  readonly soilingFrac: number;
  readonly requiredW: number;
  readonly requiredWByMonth: ByMonth;
  readonly marginFrac: number;
  readonly panelW: number;
  readonly panels: number;
  readonly inSeries: number;
  readonly inParallel: number;
  readonly installedW: number;
  readonly areaM2: number;
  readonly panelKg: number;
  readonly layoutReason: string;
  readonly openCircuitV: number;
  /** Whole string on the record cold morning. */
  readonly coldOpenCircuitV: number;
  readonly shortCircuitA: number;
  readonly chargeCurrentA: number;
  /** The controller to buy: at least this current and this input voltage. */
  readonly controllerA: number;
  readonly controllerMaxInputV: number;
  /** Monthly supply over demand. */
  readonly supplyRatioByMonth: ByMonth;
  readonly recoveryDays: number;
}

export interface Run {
  readonly name: string;
  readonly from: string;
  readonly to: string;
  readonly currentA: number;
  readonly lengthM: number;
  readonly systemV: number;
  readonly areaMm2: number;
  readonly awg: string;
  readonly dropV: number;
  readonly dropFrac: number;
  readonly maxDropFrac: number;
  readonly decidedBy: "ampacity" | "voltage drop" | "smallest sold";
  /** null where the run needs none, with the reason. */
  readonly fuseA: number | null;
  readonly fuseReason: string;
}

export interface PoeRun {
  readonly device: string;
  readonly poeClass: number;
  readonly deviceW: number;
  readonly lengthM: number;
  readonly deviceV: number;
  readonly lossW: number;
}

export interface Wiring {
  readonly runs: readonly Run[];
  readonly poeRuns: readonly PoeRun[];
  readonly shortCircuitA: number;
  readonly mainFuseInterruptA: number;
  readonly stringFuseA: number | null;
}

export interface Link {
  readonly carrier: "cable" | "radio" | "cellular";
  readonly needMbps: number;
  readonly monthlyGB: number;
  /** null for cable and cellular. */
  readonly radio: RadioPath | null;
}

export interface RadioPath {
  readonly distanceM: number;
  readonly frequencyMHz: number;
  readonly region: string;
  readonly bandName: string;
  readonly maxEirpDbm: number;
  readonly needsRadarCheck: boolean;
  readonly silenceAfterPowerCutS: number;
  readonly nearHeightM: number;
  readonly farHeightM: number;
  readonly fresnelRadiusM: number;
  readonly clearanceM: number;
  /** Clearance at the worst point as a share of the first Fresnel radius. */
  readonly clearanceFrac: number;
  /** Post's radio height that clears 0.6 of the first zone; null when it clears already. */
  readonly clearingNearHeightM: number | null;
  readonly clearingFarHeightM: number | null;
  readonly freeSpaceLossDb: number;
  readonly diffractionLossDb: number;
  readonly vegetationLossDb: number;
  readonly rainLossDb: number;
  readonly txPowerDbm: number;
  readonly antennaGainDbi: number;
  readonly rxLevelDbm: number;
  readonly modulation: string;
  readonly phyMbps: number;
  readonly availableMbps: number;
  readonly sensitivityDbm: number;
  readonly fadeMarginDb: number;
  readonly wantedFadeMarginDb: number;
  readonly channelWidthMHz: number;
  readonly exposureDistanceM: number;
  readonly carriesPicture: boolean;
}

export interface Lift {
  readonly what: string;
  readonly weightKg: number;
  readonly people: number;
}

export interface Mounting {
  readonly tiltDeg: number;
  readonly azimuthDeg: number;
  readonly mastHeightM: number;
  /** Above and below ground. */
  readonly tubeLengthM: number;
  readonly gustMPerS: number;
  readonly velocityPressurePa: number;
  readonly panelForceN: number;
  readonly totalForceN: number;
  readonly groundMomentNm: number;
  /** null where a pole, wall or roof stands already. */
  readonly tube: {
    readonly name: string;
    readonly outsideMm: number;
    readonly wallMm: number;
    readonly stressShareFrac: number;
    readonly tipDeflectionM: number;
  } | null;
  readonly footing: {
    readonly depthM: number;
    readonly diameterM: number;
    readonly frostDepthM: number;
    readonly concreteM3: number;
    readonly bags25Kg: number;
    readonly mustRedesign: boolean;
  } | null;
  readonly lifts: readonly Lift[];
  readonly keepClearM: number;
}

export interface SceneView {
  readonly name: string;
  readonly purpose: Purpose;
  readonly wantedPxPerM: number;
  readonly focalLengthMm: number;
  readonly pixelsAcross: number;
  readonly sceneWidthM: number;
  readonly pxPerM: number;
  readonly isEnough: boolean;
  readonly bitrateMbps: number;
}
export interface View {
  readonly scenes: readonly SceneView[];
  readonly totalMbps: number;
  readonly storageGB: number;
}

/** One line of what to buy: a generic part and the least specification to buy by. */
export interface Part {
  readonly id: string;
  readonly name: string;
  readonly quantity: number;
  readonly unit: string;
  readonly specification: readonly string[];
  readonly lowPrice: number;
  readonly highPrice: number;
  readonly isOwned: boolean;
  /** Stages whose figures fix it. */
  readonly because: readonly StageName[];
  /** Origins of the answers it rests on; "assumed" says "confirm before buying". */
  readonly restsOnAssumed: boolean;
}
export interface Parts {
  readonly lines: readonly Part[];
}

export interface Money {
  readonly currency: string;
  readonly lowTotal: number;
  readonly highTotal: number;
  readonly contingencyFrac: number;
  readonly ceiling: number;
}

export interface Design {
  readonly schemaVersion: 1;
  readonly name: string;
  readonly brief: Brief;
  readonly climate: Climate | null;
  readonly sun: Sun | null;
  readonly loads: Loads;
  readonly battery: Battery | null;
  readonly array: ArraySizing | null;
  readonly wiring: Wiring | null;
  readonly link: Link | null;
  readonly mounting: Mounting;
  readonly view: View;
  readonly parts: Parts;
  readonly money: Money;
  readonly findings: readonly Finding[];
  readonly provisional: readonly StageName[];
}

/** What the design needs to know of the world besides the brief; commands hands it in. */
export interface World {
  readonly climateAt: (site: {
    readonly latitudeDeg: number;
    readonly longitudeDeg: number;
    readonly elevationM: number | null;
  }) => Climate | { readonly refused: string };
  /** Offset of local clock time from solar time, hours, for schedules by the clock. */
  readonly clockMinusSolarH: (site: {
    readonly latitudeDeg: number;
    readonly longitudeDeg: number;
  }) => number;
}
