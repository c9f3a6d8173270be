/** Briefs at random, within what the flow's questions accept. */
import * as fc from "fast-check";
import type { Brief, Device, Given, Scene, Site } from "../../src/design/brief.ts";
import { given, typicalBrief } from "./fixtures.ts";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const quantity = (min: number, max: number) => number(min, max).map((value) => given(value));
const one = <const T extends readonly unknown[]>(...values: T) =>
  fc.constantFrom(...values).map((value) => given(value as T[number]));

const site: fc.Arbitrary<Site> = fc.record({
  label: fc.constant("somewhere"),
  latitudeDeg: number(-59, 83),
  longitudeDeg: number(-180, 180),
  elevationM: fc.option(number(-400, 5000), { nil: null }),
  countryCode: fc.constantFrom("US", "DE", "GB", "AU", "NZ", "CA", "TZ", null),
});

const schedule: fc.Arbitrary<Device["schedule"]> = fc.oneof(
  fc.constant({ kind: "always" as const }),
  fc.record({ kind: fc.constant("daylight" as const), marginH: number(0, 3) }),
  fc.record({
    kind: fc.constant("clock" as const),
    fromMin: fc.integer({ min: 0, max: 1439 }),
    toMin: fc.integer({ min: 0, max: 1439 }),
  }),
  fc.record({ kind: fc.constant("cold" as const), belowC: number(-30, 15) }),
  fc.record({ kind: fc.constant("heat" as const), aboveC: number(20, 50) }),
);

export const device: fc.Arbitrary<Device> = fc.record({
  name: fc.constantFrom("A", "B", "C"),
  kind: fc.constantFrom(
    "camera",
    "radio",
    "cellular router",
    "recorder",
    "lamp",
    "sensor",
    "heater",
    "fan",
    "other device",
  ),
  dayW: quantity(0, 60),
  nightExtraW: quantity(0, 30),
  feed: fc.constantFrom("poe", "dc"),
  schedule,
  priority: fc.integer({ min: 1, max: 3 }),
});

const scene: fc.Arbitrary<Scene> = fc.record({
  kind: one("fixed", "turning"),
  purpose: one("notice", "follow", "recognise", "identify"),
  distanceM: quantity(1, 500),
  widthM: quantity(1, 500),
});

const between = fc
  .record({
    noun: fc.constantFrom("trees", "barn", "rise", "nothing"),
    heightM: fc.integer({ min: 1, max: 60 }),
    place: fc.constantFrom("half way", "at 30 m", "at 300 m", "100 m from the far end"),
    deep: fc.constantFrom("", " and 20 m deep"),
  })
  .map(({ noun, heightM, place, deep }) =>
    noun === "nothing" ? "" : `${noun} ${heightM} m high${deep} ${place}`,
  );

const ground = fc
  .record({ lengthM: number(20, 40_000), heights: fc.array(number(0, 300), { minLength: 2, maxLength: 12 }) })
  .map(({ lengthM, heights }) => ({
    profile: heights.map((groundM, i) => ({
      distanceFromNearM: (lengthM * i) / (heights.length - 1),
      groundM,
    })),
    source: "somebody",
  }));

const maybe = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<Given<T> | null> =>
  fc.option(
    value.map((it) => given(it)),
    { nil: null },
  );

export const anyBrief: fc.Arbitrary<Brief> = fc.record({
  name: fc.constant("any"),
  currency: fc.constantFrom("USD", "EUR", "XXX"),
  units: fc.constantFrom("metric" as const, "us" as const),
  openTopics: fc.subarray(["place", "loads", "link", "money"] as const),
  place: fc.record({
    site: fc.option(site, { nil: null, freq: 8 }).map((value) => given<Site | null>(value)),
    ownSun: fc.constant({ value: null, origin: "estimate" as const, isAnswered: true }),
    trustedSun: fc.constant({ value: "lower" as const, origin: "estimate" as const, isAnswered: true }),
    horizon: quantity(0, 60).map(({ value, origin, isAnswered }) => ({
      value: [{ azimuthDeg: 0, elevationDeg: value }],
      origin,
      isAnswered,
    })),
    soilingFrac: quantity(0.03, 0.15),
    snowWeeks: quantity(0, 26),
  }),
  view: fc.record({
    scenes: fc.array(scene, { maxLength: 3 }),
    night: one("none", "infrared", "ambient"),
    smoothness: one("occasional", "normal", "smooth"),
    recordsSound: one(true, false),
    keepDays: quantity(1, 365),
  }),
  loads: fc.record({ devices: fc.array(device, { maxLength: 5 }) }),
  hours: fc.record({
    runsInMonth: fc
      .array(fc.boolean(), { minLength: 12, maxLength: 12 })
      .map((months) => given<readonly boolean[]>(months)),
  }),
  autonomy: fc.record({
    consequence: one("nuisance", "worry", "disaster", "days", "darkHours"),
    askedDays: quantity(0.5, 60),
    askedDarkHours: quantity(1, 2000),
    visitDays: quantity(0, 120),
  }),
  power: fc.record({
    chemistry: one("agm", "lifepo4", "choose"),
    batteryHeaterW: one(0, 5, 30, 100),
    heaviestBlockKg: quantity(3, 80),
    bankV: one(12, 24, 48, "choose"),
    controller: one("mppt", "pwm"),
    marginFrac: quantity(0, 1),
    largestPanelW: quantity(20, 450),
    isTiltChanged: one(true, false),
    sizing: one("recommended", "handbook", "simulation"),
  }),
  mounting: fc.record({
    overheadLine: one("no", "yes", "notLooked"),
    freeGroundM: one(0, 12, 25),
    support: one("newMast", "existingPole", "wall", "roof"),
    wallAzimuthDeg: one(null, 0, 45, 180, 270),
    cameraHeightM: quantity(1, 15),
    poleDiameterMm: quantity(0, 600),
    poleHeightM: one(0, 3, 8),
    gustMPerS: quantity(20, 95),
    soil: one("rock", "gravel", "sand", "clay", "soft"),
    frostDepthM: quantity(0, 4),
  }),
  link: fc.record({
    carrier: one("cable", "radio", "cellular", "none"),
    distanceM: quantity(1, 40_000),
    sight: one("clear", "trees", "buildings", "ground", "unknown"),
    far: fc
      .option(
        fc.record({
          latitudeDeg: fc.double({ min: 39.7, max: 40.3, noNaN: true }),
          longitudeDeg: fc.double({ min: -105.4, max: -104.6, noNaN: true }),
        }),
        { nil: null, freq: 2 },
      )
      .map((value) => given(value)),
    between: between.map((value) => given(value)),
    ground: fc.option(ground, { nil: null, freq: 2 }).map((value) => given(value)),
    farHeightM: quantity(0.5, 100),
    otherPosts: fc.integer({ min: 0, max: 40 }).map((value) => given(value)),
  }),
  parts: fc.record({
    battery: maybe(
      fc.record({
        chemistry: fc.constantFrom("agm", "lifepo4"),
        blockV: number(6, 52),
        blockAh: number(1, 1000),
        blocks: fc.integer({ min: 1, max: 40 }),
      }),
    ),
    panel: maybe(
      fc.record({
        ratedW: number(5, 700),
        openCircuitV: number(5, 80),
        count: fc.integer({ min: 1, max: 40 }),
      }),
    ),
    controller: maybe(
      fc.record({
        kind: fc.constantFrom("mppt", "pwm"),
        maxInputV: number(15, 600),
        maxChargeA: number(1, 200),
        chargesLifepo4: fc.boolean(),
      }),
    ),
    radio: maybe(
      fc.record({
        feed: fc.constantFrom("802.3", "passive24", "passive48", "dc"),
        minInputV: number(3, 57),
        maxInputV: number(5, 60),
      }),
    ),
  }),
  money: fc.record({ ceiling: quantity(0, 20_000), contingencyFrac: quantity(0, 0.5) }),
});

/** The typical brief at a random place on land-like latitudes. */
export const typicalSomewhere: fc.Arbitrary<Brief> = site.map((value) => ({
  ...typicalBrief,
  place: { ...typicalBrief.place, site: given<Site | null>(value) },
}));
