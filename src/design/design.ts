/**
 * Everything computed from a brief: never saved, always derivable. One interface a stage; a stage rests only on those
 * named before it in stageNames.
 * A stage is null where what it needs is not known (no place, no radio); `provisional` names the stages that rest on
 * questions still open.
 */
import type { ClimateRefused, OwnFigures, Climate as SiteClimate } from "../core/climate/index.ts";
import type { Brief, Chemistry, ControllerKind, Device, Origin, Purpose } from "./brief.ts";
import type { Finding } from "./finding.ts";

export const stageNames = [
  "climate",
  "sun",
  "loads",
  "battery",
  "array",
  "view",
  "link",
  "mounting",
  "wiring",
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
  /** Of the source that counts: the map, or the builder's own figures. */
  readonly ghiDailyKWhPerM2ByMonth: ByMonth;
  /** Who says so. */
  readonly sunSource: string;
  /** Of the source that does not count; null where there is only one. */
  readonly otherGhiDailyKWhPerM2ByMonth: ByMonth | null;
  readonly otherSunSource: string | null;
  readonly ghiUncertaintyFrac: number;
  /** Sixteen equally likely daily irradiations over the month's mean, dullest first. */
  readonly dailyGhiQuantilesByMonth: readonly ByMonth[];
  readonly meanTempCByMonth: ByMonth;
  /** Lowest hour of a typical year. */
  readonly designColdTempC: number;
  /** Lowest hour in some decades: for the highest voltage a string can reach. */
  readonly recordColdTempC: number;
  /** Highest hour of a typical year. */
  readonly designHotTempC: number;
  readonly elevationM: number;
  /** Rain rate exceeded for 0.01 % of the year. */
  readonly rainRateMmPerH: number;
  /** In the lowest 65 m, not exceeded for 1 % of the year; negative. */
  readonly refractivityGradientPerKm: number;
  readonly dataSource: string;
}

export interface Sun {
  readonly tiltDeg: number;
  readonly azimuthDeg: number;
  /** "south" or "north" (the equator's side). */
  readonly facing: "north" | "south";
  /** On the panel, after horizon and snow, before soiling. */
  readonly poaDailyKWhPerM2ByMonth: ByMonth;
  /** What stands round the panel takes this much straight from the sun, from the sky, and of all together. */
  readonly beamShadeFracByMonth: ByMonth;
  readonly diffuseShadeFrac: number;
  readonly shadeFracByMonth: ByMonth;
  /** The same as poaDailyKWhPerM2ByMonth at the latitude rule's tilt. */
  readonly latitudeTiltDeg: number;
  readonly latitudePoaDailyKWhPerM2ByMonth: ByMonth;
  /** Second tilt for the six lighter months, where the builder will climb twice a year; else null. */
  readonly summerTiltDeg: number | null;
  /** Hours of daylight on the mean day of each month. */
  readonly daylightHByMonth: ByMonth;
  /** Local clock time less solar time, hours: schedules by the clock are moved by it. */
  readonly clockMinusSolarH: number;
  /** Share of each month in which snow lies on the panel (already taken off the irradiation). */
  readonly snowFracByMonth: ByMonth;
  /** Month with the lowest ratio of sun on the panel to energy asked, among those in which the post runs; 0 = January. */
  readonly designMonth: number;
  /** Mean cell temperature while the sun shines. */
  readonly cellTempCByMonth: ByMonth;
}

/** One device's share of what the battery must give. */
export interface LoadLine {
  readonly name: string;
  readonly kind: Device["kind"] | "switch" | "converter" | "controller";
  /** At the device itself, by day and in the dark, while it runs. */
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
  /** In the design month (the longest night without a place). */
  readonly designDailyWh: number;
  /** In the month with the greatest demand. */
  readonly largestDailyWh: number;
  readonly peakW: number;
  readonly longestNightH: number;
  /** Share of the design month's energy that is drawn in the dark. */
  readonly nightShareFrac: number;
}

export interface Battery {
  readonly chemistry: Chemistry;
  readonly chemistryReason: string;
  readonly bankV: number;
  readonly bankVReason: string;
  /** What the chosen blocks make in series: 12, 24 or 48 of lead, 12.8, 25.6 or 51.2 of lithium iron phosphate. */
  readonly bankNominalV: number;
  readonly autonomyDays: number;
  readonly autonomyReason: string;
  /** The bank carries the post through months without sun: the days are those of polar stations. */
  readonly bridgesDarkMonths: boolean;
  readonly dailyAh: number;
  readonly permittedDodFrac: number;
  readonly permittedDodReason: string;
  /** Deepest discharge at which the electrolyte stays liquid on the coldest night; 1 for lithium iron phosphate. */
  readonly frostSafeDodFrac: number;
  readonly permittedDailyDodFrac: number;
  readonly temperatureC: number;
  readonly capacityAtTemperatureFrac: number;
  readonly unadjustedAh: number;
  readonly forDepthAh: number;
  readonly forDailyDepthAh: number;
  readonly forEndOfLifeAh: number;
  /** Added on top of the governing figure. */
  readonly marginFrac: number;
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
  /** A block heavier than the builder wanted to lift, because more than four strings would be needed otherwise. */
  readonly isHeavierThanAsked: boolean;
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
  /** All losses between the sun on the panel and the battery's terminals in the design month, heat and soiling included. */
  readonly systemLossFrac: number;
  readonly soilingFrac: number;
  /** Of the panel, by heat; negative in the cold, when it gains. */
  readonly heatLossFracByMonth: ByMonth;
  readonly controllerEfficiencyFrac: number;
  /** Of what is put into the battery, what comes out. */
  readonly batteryEfficiencyFrac: number;
  readonly requiredW: number;
  /** 0 where nothing is asked or the month has no sun to meet it (see darkMonths). */
  readonly requiredWByMonth: ByMonth;
  /** Months (0 = January) in which the post should run and no panel can carry it. */
  readonly darkMonths: readonly number[];
  readonly marginFrac: number;
  readonly panelW: number;
  readonly panels: number;
  readonly inSeries: number;
  readonly inParallel: number;
  readonly installedW: number;
  readonly areaM2: number;
  readonly panelKg: number;
  readonly layoutReason: string;
  /** One panel's, at 25 degrees C. */
  readonly openCircuitV: number;
  readonly maxPowerV: number;
  /** Whole string's at maximum power with the hottest cells, cable drop taken off. */
  readonly hotMaxPowerV: number;
  /** Whole string on the record cold morning. */
  readonly coldOpenCircuitV: number;
  /** Of one string. */
  readonly shortCircuitA: number;
  readonly maxPowerA: number;
  /** Into the bank at full sun. */
  readonly chargeCurrentA: number;
  /** The controller to buy: at least this current and this input voltage. */
  readonly controllerA: number;
  readonly controllerMaxInputV: number;
  /** More than one only where the current is beyond the largest sold; each then has an equal share of the strings. */
  readonly controllers: number;
  /** Monthly supply over demand; 0 in a month without sun, null where nothing is asked. */
  readonly supplyRatioByMonth: readonly (number | null)[];
  /** Days of the design month to refill the bank while carrying the load; null where it never refills in that month. */
  readonly recoveryDays: number | null;
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
  /** False where not even the thickest conductor of the table does: the figures are then that one's. */
  readonly isEnough: boolean;
  readonly decidedBy: "ampacity" | "voltage drop" | "fuse" | "smallest sold";
  /** null where the run needs none, with the reason. */
  readonly fuseA: number | null;
  readonly fuseReason: string;
}

export interface PoeRun {
  readonly device: string;
  /** 1 to 8; 0 where no class powers it. */
  readonly poeClass: number;
  readonly deviceW: number;
  readonly lengthM: number;
  readonly deviceV: number;
  readonly lossW: number;
}

export interface Wiring {
  readonly runs: readonly Run[];
  readonly poeRuns: readonly PoeRun[];
  /** Prospective, at the bank's terminals; deliberately high. */
  readonly shortCircuitA: number;
  readonly mainFuseKind: string;
  /** What a fuse of that kind commonly breaks safely. */
  readonly mainFuseInterruptA: number;
  /** In each string of panels; null where none is needed. */
  readonly stringFuseA: number | null;
  /** At each string of blocks, where there are several; else null. */
  readonly blockFuseA: number | null;
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
  /** Of the far end's air time, by this post and the others that share it; above 0.5 there is no room for bursts. */
  readonly airtimeFrac: number;
  /** The band's own words, and who says so. */
  readonly bandNotes: string;
  readonly bandSource: string;
  /** false: no fixed post may use it; "ask": depends on a licence or on a country not known here. */
  readonly outdoorAllowed: boolean | "ask";
  readonly channelWidthMHz: number;
  readonly exposureDistanceM: number;
  readonly carriesPicture: boolean;
}

export interface Lift {
  readonly what: string;
  readonly weightKg: number;
  readonly people: number;
  /** Too heavy even for two pairs of hands: a hoist, a hand truck, or smaller pieces. */
  readonly needsHoist: boolean;
}

export interface Mounting {
  /** As in the sun stage; null while the place is unknown. */
  readonly tiltDeg: number | null;
  readonly azimuthDeg: number | null;
  /** A large array stands on a frame of its own beside the mast. */
  readonly panelMount: "mast" | "ground frame";
  /** Middle of the panels, of the camera, of the radio and of the box above ground. */
  readonly panelHeightM: number;
  readonly cameraHeightM: number;
  readonly radioHeightM: number;
  readonly boxHeightM: number;
  readonly mastHeightM: number;
  /** Above and below ground. */
  readonly tubeLengthM: number;
  readonly gustMPerS: number;
  readonly velocityPressurePa: number;
  /** On the panels wherever they stand, 0.6 of the gust's (for checks against allowable stress and soil values). */
  readonly panelForceN: number;
  /** On everything on the mast, the mast itself included where it is new; 0.6 of the gust's. */
  readonly totalForceN: number;
  readonly groundMomentNm: number;
  /** null where a pole, wall or roof stands already. Where isEnough is false the figures are the stoutest tube's. */
  readonly tube: {
    readonly name: string;
    readonly outsideMm: number;
    readonly wallMm: number;
    readonly stressShareFrac: number;
    readonly tipDeflectionM: number;
    readonly weightKg: number;
    readonly isEnough: boolean;
  } | null;
  readonly footing: {
    readonly depthM: number;
    readonly diameterM: number;
    readonly frostDepthM: number;
    readonly concreteM3: number;
    readonly bags25Kg: number;
    readonly mustRedesign: boolean;
  } | null;
  readonly box: {
    /** On the mast, or on the ground at its foot where the bank is too heavy to hang. */
    readonly stands: "mast" | "ground";
    /** Least inside volume for bank, controller, switch and fuses. */
    readonly volumeL: number;
    /** Over the air, from what is inside, behind a sun shield. */
    readonly riseK: number;
    /** Free opening low down and again high up; 0 for a battery that gives off no gas. */
    readonly openingCm2: number;
  };
  readonly lifts: readonly Lift[];
  /** Level distance from the mast's foot to the nearest overhead line, at least. */
  readonly keepClearM: number;
}

export interface SceneView {
  readonly name: string;
  readonly purpose: Purpose;
  readonly wantedPxPerM: number;
  readonly focalLengthMm: number;
  readonly pixelsAcross: number;
  readonly pixelsDown: number;
  /** What the picture spans at the distance. */
  readonly sceneWidthM: number;
  readonly fieldOfViewDeg: number;
  /** The picture spans the asked width (a turning camera turns to it). */
  readonly isWideEnough: boolean;
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
  /** Of the whole line in the money stage's currency; 0 where it is owned. */
  readonly lowPrice: number;
  readonly highPrice: number;
  readonly isOwned: boolean;
  /** Figures that fix it, by path ("mounting.tube"), and answers it takes directly ("brief.link.distanceM"). */
  readonly figures: readonly string[];
  /** A stand-in of something that can be found out enters one of them within its own stage: confirm before buying. */
  readonly restsOnAssumed: boolean;
}
export interface Parts {
  readonly lines: readonly Part[];
}

export interface Money {
  /** The brief's, or USD where no rate for it is known. */
  readonly currency: string;
  /** Units of that currency for one US dollar, in which the price bands are kept. */
  readonly unitsPerUsd: number;
  /** Of the parts alone. */
  readonly lowParts: number;
  readonly highParts: number;
  readonly lowTotal: number;
  readonly highTotal: number;
  readonly contingencyFrac: number;
  readonly ceiling: number;
}

/** Why a stage could not be worked at all. */
export interface Withheld {
  readonly stage: StageName;
  readonly because: string;
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
  readonly withheld: readonly Withheld[];
}

/** What the design needs to know of the world besides the brief; commands hands it in, bound to the embedded grids. */
export interface World {
  readonly climateAt: (site: {
    readonly latitudeDeg: number;
    readonly longitudeDeg: number;
    readonly elevationM: number | null;
  }) => SiteClimate | ClimateRefused;
  /** Where the grids hold nothing: the builder's own sun with the world's maps of the rest. */
  readonly climateOfOwn: (
    site: { readonly longitudeDeg: number; readonly elevationM: number | null },
    own: OwnFigures,
  ) => SiteClimate;
  /** Offset of local clock time from solar time, hours, for schedules by the clock. */
  readonly clockMinusSolarH: (site: {
    readonly latitudeDeg: number;
    readonly longitudeDeg: number;
  }) => number;
}
