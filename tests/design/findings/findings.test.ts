import { describe, expect, it } from "vitest";
import type { Climate } from "../../../src/core/climate/index.ts";
import type { Brief, Device, OwnedController, Site } from "../../../src/design/brief.ts";
import { climateStage } from "../../../src/design/chain/climate.ts";
import type { World } from "../../../src/design/design.ts";
import { rules } from "../../../src/design/findings/index.ts";
import { designOf, type Severity } from "../../../src/design/index.ts";
import { metricIn } from "../../helpers/metric.ts";
import {
  at,
  camera,
  changed,
  given,
  radio,
  scene,
  simulatedWorld,
  sites,
  syntheticClimate,
  syntheticWorld,
  typicalBrief,
} from "../fixtures.ts";

interface Case {
  readonly id: string;
  readonly severity: Severity;
  /** Fires here ... */
  readonly fires: Brief;
  /** ... and is gone when its own advice was taken. */
  readonly gone: Brief;
  /** Words its sentence must hold. */
  readonly says: RegExp;
  readonly world?: World;
}

/** A place that never freezes, so that lithium is chosen. */
const tropics = at(sites.south5);
/** Bright and mild, five days of nuisance: a small, plain post. */
const easy = changed({ autonomy: { consequence: given("nuisance") } }, tropics);
const link = (changes: Partial<Brief["link"]>) => changed({ link: changes });
const mounting = (changes: Partial<Brief["mounting"]>) => changed({ mounting: changes });
const owns = (parts: Partial<Brief["parts"]>, brief = typicalBrief) => changed({ parts }, brief);
const controller = (figures: Partial<OwnedController>) => ({
  controller: given<OwnedController>({
    kind: "mppt",
    maxInputV: 150,
    maxChargeA: 60,
    chargesLifepo4: true,
    ...figures,
  }),
});
const devices = (...list: readonly Device[]) => changed({ loads: { devices: list } });
const watts = (device: Device, dayW: number, nightExtraW = 0): Device => ({
  ...device,
  dayW: given(dayW),
  nightExtraW: given(nightExtraW),
});
const site = (changes: Partial<Site>): Site => ({ ...sites.colorado, ...changes });
const wideHorizon = (horizonDeg: number) =>
  changed({ place: { horizon: given([{ azimuthDeg: 0, elevationDeg: horizonDeg }]) } });
/** Figures of one's own that are this share of the map's. */
const ownSun = (share: number) => {
  const ghi = climateStage(typicalBrief, syntheticWorld)!.ghiDailyKWhPerM2ByMonth.map(
    (value) => share * value,
  );
  return changed({
    place: {
      ownSun: given({
        ghiDailyKWhPerM2ByMonth: ghi,
        meanTempCByMonth: null,
        dailyQuantilesByMonth: null,
        lag1ByMonth: null,
        hours: null,
        source: "a station",
      }),
    },
  });
};
const seaWorld: World = { ...syntheticWorld, climateAt: () => ({ kind: "refused", why: "at-sea" }) };
const months = (...asleep: readonly number[]) =>
  given<readonly boolean[]>(Array.from({ length: 12 }, (_, month) => !asleep.includes(month)));
const trees = {
  sight: given("trees" as const),
  between: given("trees 10 m high and 20 m deep at 400 m"),
};
const barn = {
  sight: given("buildings" as const),
  between: given("barn 10 m high at 400 m"),
};
/** A day's end and beginning every day, in a band where radars go first. */
const byDaylight: Device = { ...radio, schedule: { kind: "daylight", marginH: 1 } };
/** Half of the synthetic world's sun: December at 60 N is then dull but not dark. */
const dullWorld: World = { ...syntheticWorld, climateAt: (where) => syntheticClimate(where, 0.3) };

/** In Europe, 27 dBm radiated. */
const link14km = (distanceM: Brief["link"]["distanceM"]) =>
  at(sites.north40, link({ distanceM, farHeightM: given(100) }));
/** A coast where layers of air lie over the sea, and a post that may be dark for an hour a year. */
const layeredWorld: World = {
  ...syntheticWorld,
  climateAt: (where) => ({
    ...(syntheticClimate(where) as Climate),
    refractivityGradientPerKm: -1000,
    terrainRoughnessM: 0,
  }),
};
const oneHour = (distanceM: number) =>
  changed(
    { autonomy: { consequence: given("darkHours"), askedDarkHours: given(1) } },
    link({ distanceM: given(distanceM), farHeightM: given(100) }),
  );
const level600 = {
  profile: [
    { distanceFromNearM: 0, groundM: 100 },
    { distanceFromNearM: 600, groundM: 100 },
  ],
  source: "a map",
};

const cases: readonly Case[] = [
  {
    id: "mounting.overheadLine",
    severity: "stop",
    fires: mounting({ overheadLine: given("yes"), freeGroundM: given(0) }),
    gone: mounting({ overheadLine: given("no") }),
    says: /can be killed/,
  },
  // 9 m up, 1.5 m and more in the ground, 3.05 m beyond: more than the 12 m that were looked at, less than 25
  {
    id: "mounting.overheadLine",
    severity: "stop",
    fires: mounting({ cameraHeightM: given(9) }),
    gone: mounting({ cameraHeightM: given(9), freeGroundM: given(25) }),
    says: /looked for overhead lines out to 12 m, and that is no longer far enough.*part that will be buried/,
  },
  {
    id: "mounting.overheadLine",
    severity: "caution",
    fires: mounting({ overheadLine: given("yes"), freeGroundM: given(11.5) }),
    gone: mounting({ overheadLine: given("no") }),
    says: /hangs 11.5 m from the spot: .* enough for lines up to 50 kV/,
  },
  {
    id: "mounting.overheadLine",
    severity: "stop",
    fires: mounting({ overheadLine: given("notLooked") }),
    gone: mounting({ overheadLine: given("no") }),
    says: /Nobody has looked/,
  },
  // 2 x 120 W reach from 2 to 3.1 m
  {
    id: "mounting.poleHeight",
    severity: "stop",
    fires: mounting({ support: given("existingPole"), poleHeightM: given(3) }),
    gone: mounting({ support: given("existingPole"), poleHeightM: given(3.2) }),
    says: /ends at 3 m, and the upper edge of the panels would reach 3.1 m/,
  },
  {
    id: "mounting.poleHeight",
    severity: "stop",
    fires: mounting({ support: given("existingPole"), poleHeightM: given(4), cameraHeightM: given(5) }),
    gone: mounting({ support: given("existingPole"), poleHeightM: given(5), cameraHeightM: given(5) }),
    says: /ends at 4 m, and what is to hang on it would reach 5 m/,
  },
  // 40 N: the panels face south
  {
    id: "mounting.wallFacing",
    severity: "caution",
    fires: mounting({ support: given("wall") }),
    gone: mounting({ support: given("wall"), wallAzimuthDeg: given(180) }),
    says: /Nobody has looked which way the wall faces, and the panels must face south \(azimuth 180°\)/,
  },
  {
    id: "mounting.wallFacing",
    severity: "caution",
    fires: mounting({ support: given("wall"), wallAzimuthDeg: given(120) }),
    gone: mounting({ support: given("wall"), wallAzimuthDeg: given(135) }),
    says: /60° to the side of it/,
  },
  {
    id: "mounting.wallFacing",
    severity: "stop",
    fires: mounting({ support: given("wall"), wallAzimuthDeg: given(0) }),
    gone: mounting({ support: given("newMast") }),
    says: /180° to the side of it: they would look along the wall or into it/,
  },
  {
    id: "loads.voltage",
    severity: "stop",
    fires: devices(camera, {
      ...camera,
      name: "Recorder 1",
      kind: "recorder",
      feed: "dc",
      takes12V: given(false),
    }),
    gone: devices(camera, {
      ...camera,
      name: "Recorder 1",
      kind: "recorder",
      feed: "dc",
      takes12V: given(true),
    }),
    says: /Recorder 1: not made for 12 V/,
  },
  {
    id: "place.unknown",
    severity: "stop",
    fires: at(null),
    gone: typicalBrief,
    says: /the place is not known/,
  },
  {
    id: "loads.none",
    severity: "stop",
    fires: devices(),
    gone: devices(camera),
    says: /charge controller alone/,
  },
  {
    id: "sun.dark",
    severity: "stop",
    fires: at(sites.north71),
    gone: changed({ hours: { runsInMonth: months(0, 10, 11) } }, at(sites.north71)),
    says: /practically no sun/,
  },
  {
    id: "sun.dim",
    severity: "caution",
    fires: at(sites.north60),
    gone: changed({ hours: { runsInMonth: months(0, 10, 11) } }, at(sites.north60)),
    says: /alone asks for \d+ W of panels and [\d.]+ kWh/,
    world: dullWorld,
  },
  {
    id: "sun.shade",
    severity: "caution",
    fires: wideHorizon(25),
    gone: wideHorizon(5),
    says: /25° high.*% of the sun/,
  },
  {
    // A third less than the map all year is half as much again the other way round: far beyond a tenth.
    id: "sun.twoSources",
    severity: "caution",
    fires: ownSun(2 / 3),
    gone: ownSun(1.05),
    says: /a station.*differ by 50 %.*use the lower/,
  },
  {
    id: "battery.lithiumFrost",
    severity: "caution",
    fires: changed({ power: { chemistry: given("lifepo4") } }),
    gone: changed({ power: { chemistry: given("agm") } }),
    says: /below 0 °C is spoilt/,
  },
  {
    id: "battery.lithiumFrost",
    severity: "stop",
    // 27 - 0.4 x 83 - 0.25 x 83 = -27 degrees C in the coldest month of the synthetic world
    fires: changed({ power: { chemistry: given("lifepo4") } }, at(site({ latitudeDeg: 83 }))),
    gone: changed({ power: { chemistry: given("agm") } }, at(site({ latitudeDeg: 83 }))),
    says: /neither charged nor discharged/,
  },
  {
    id: "battery.leadFreezing",
    severity: "note",
    fires: changed({ power: { chemistry: given("agm") } }),
    gone: changed({ power: { chemistry: given("agm") } }, tropics),
    says: /emptied by more than \d+ %/,
  },
  {
    id: "battery.leadFreezing",
    severity: "stop",
    // coldest hour -27 - 18 = -45, bank 5 K above it, 5 K of margin: nothing may be taken out below -45
    fires: changed({ power: { chemistry: given("agm") } }, at(site({ latitudeDeg: 83 }))),
    gone: changed({ power: { chemistry: given("agm") } }, tropics),
    says: /leaves no usable battery/,
  },
  {
    id: "battery.recovery",
    severity: "note",
    fires: typicalBrief,
    gone: changed({ power: { marginFrac: given(0.9) } }),
    says: /about \d+ days to fill again/,
  },
  {
    id: "battery.manyStrings",
    severity: "caution",
    fires: changed({ power: { bankV: given(12) }, autonomy: { consequence: given("disaster") } }),
    gone: changed({ power: { bankV: given(48) }, autonomy: { consequence: given("disaster") } }),
    says: /strings of blocks side by side/,
  },
  {
    id: "battery.heavyBlock",
    severity: "caution",
    fires: typicalBrief,
    gone: changed({ power: { heaviestBlockKg: given(30) } }),
    says: /weighs 30 kg, more than the 25 kg/,
  },
  {
    id: "battery.chargeCurrent",
    severity: "note",
    fires: typicalBrief,
    gone: changed({ autonomy: { consequence: given("nuisance") }, power: { marginFrac: given(0.9) } }),
    says: /a twentieth of the capacity/,
  },
  {
    id: "battery.chargeCurrent",
    severity: "caution",
    fires: changed(
      {
        autonomy: { consequence: given("days"), askedDays: given(1), visitDays: given(1) },
        power: { marginFrac: given(1), chemistry: given("lifepo4"), bankV: given(12) },
      },
      at(sites.north60),
    ),
    gone: changed({
      autonomy: { consequence: given("days"), askedDays: given(14) },
      power: { marginFrac: given(0.2), chemistry: given("lifepo4"), bankV: given(12) },
    }),
    says: /should not get more than/,
  },
  {
    id: "autonomy.visit",
    severity: "caution",
    fires: changed({ autonomy: { consequence: given("days"), askedDays: given(3), visitDays: given(7) } }),
    gone: changed({ autonomy: { consequence: given("days"), askedDays: given(8), visitDays: given(7) } }),
    says: /3 days, but it can take 7 days/,
  },
  {
    id: "autonomy.secondWay",
    severity: "note",
    fires: changed({ autonomy: { consequence: given("disaster") } }),
    gone: changed({ autonomy: { consequence: given("worry") } }),
    says: /stolen panel/,
  },
  {
    id: "battery.owned",
    severity: "stop",
    fires: owns(
      { battery: given({ chemistry: "lifepo4", blockV: 12.8, blockAh: 100, blocks: 20 }) },
      changed({ power: { chemistry: given("agm") } }),
    ),
    gone: owns(
      { battery: given({ chemistry: "lifepo4", blockV: 12.8, blockAh: 100, blocks: 20 }) },
      changed({ power: { chemistry: given("lifepo4") } }),
    ),
    says: /must never be mixed/,
  },
  {
    id: "battery.owned",
    severity: "stop",
    fires: owns(
      { battery: given({ chemistry: "agm", blockV: 24, blockAh: 200, blocks: 20 }) },
      changed({ power: { bankV: given(12) } }),
    ),
    gone: owns({ battery: given({ chemistry: "agm", blockV: 24, blockAh: 200, blocks: 20 }) }),
    says: /24 V cannot make a bank of 12 V/,
  },
  {
    id: "battery.owned",
    severity: "caution",
    fires: owns({ battery: given({ chemistry: "agm", blockV: 12, blockAh: 100, blocks: 2 }) }),
    gone: owns({ battery: given({ chemistry: "agm", blockV: 12, blockAh: 100, blocks: 40 }) }),
    says: /and you own 2/,
  },
  {
    id: "array.ownedPanel",
    severity: "stop",
    fires: owns({ panel: given({ ratedW: 200, openCircuitV: 5, count: 9 }) }),
    gone: owns({ panel: given({ ratedW: 200, openCircuitV: 25, count: 9 }) }),
    says: /one of the two figures is wrong/,
  },
  {
    id: "array.ownedPanel",
    severity: "caution",
    fires: owns({ panel: given({ ratedW: 50, openCircuitV: 22, count: 1 }) }),
    gone: owns({ panel: given({ ratedW: 50, openCircuitV: 22, count: 9 }) }),
    says: /you own 1/,
  },
  {
    id: "array.inputVoltage",
    severity: "stop",
    fires: owns(controller({ maxInputV: 40 })),
    gone: owns({ controller: null }),
    says: /V that your controller bears: it would be destroyed/,
  },
  {
    id: "array.controllerCurrent",
    severity: "caution",
    fires: owns(controller({ maxChargeA: 5 })),
    gone: owns({ controller: null }),
    says: /your controller stops at 5 A/,
  },
  {
    id: "array.controllerCurrent",
    severity: "stop",
    fires: owns(controller({ kind: "pwm", maxChargeA: 5 })),
    gone: owns(controller({ kind: "pwm", maxChargeA: 40 })),
    says: /it would be overloaded/,
  },
  {
    id: "array.controllerChemistry",
    severity: "stop",
    fires: owns(controller({ chargesLifepo4: false }), tropics),
    gone: owns(
      controller({ chargesLifepo4: false }),
      changed({ power: { chemistry: given("agm") } }, tropics),
    ),
    says: /cannot be set for lithium/,
  },
  {
    id: "array.controllers",
    severity: "caution",
    fires: changed({ power: { bankV: given(12) } }, at(sites.north60)),
    gone: changed({ power: { bankV: given(48) } }, at(sites.north60)),
    says: /takes \d+ controllers/,
    world: dullWorld,
  },
  {
    id: "parts.radioFeed",
    severity: "stop",
    fires: owns({ radio: given({ feed: "passive24", minInputV: 20, maxInputV: 28 }) }),
    gone: owns({ radio: given({ feed: "802.3", minInputV: 37, maxInputV: 57 }) }),
    says: /passive 24 V PoE/,
  },
  {
    id: "parts.radioFeed",
    severity: "stop",
    fires: owns({ radio: given({ feed: "dc", minInputV: 20, maxInputV: 28 }) }),
    gone: owns({ radio: null }),
    says: /20 to 28 V DC/,
  },
  {
    id: "wiring.poeClass",
    severity: "caution",
    fires: devices(watts(camera, 18, 15), radio),
    gone: devices(watts(camera, 18, 5), radio),
    says: /PoE class 5/,
  },
  {
    id: "wiring.poeClass",
    severity: "stop",
    fires: devices(watts(camera, 80), radio),
    gone: devices({ ...watts(camera, 80), feed: "dc" }, radio),
    says: /more than the 71 W/,
  },
  {
    id: "wiring.size",
    severity: "stop",
    fires: changed({
      power: { bankV: given(12) },
      loads: { devices: Array.from({ length: 14 }, () => ({ ...watts(camera, 200), feed: "dc" as const })) },
    }),
    gone: changed({ power: { bankV: given(48) }, loads: { devices: [watts(camera, 20)] } }),
    says: /not even the thickest wire/,
  },
  {
    id: "wiring.shortCircuit",
    severity: "caution",
    fires: changed({ power: { bankV: given(12) } }),
    gone: changed({ power: { bankV: given(24) } }),
    says: /more than the 20 kA/,
  },
  {
    id: "link.cableLength",
    severity: "stop",
    fires: link({ carrier: given("cable"), distanceM: given(120) }),
    gone: link({ carrier: given("cable"), distanceM: given(80) }),
    says: /90 m at most; it is 120 m/,
  },
  {
    id: "link.trees",
    severity: "stop",
    fires: link(trees),
    gone: link({ ...trees, farHeightM: given(100) }),
    says: /leaves and growth/,
  },
  {
    id: "link.blocked",
    severity: "stop",
    fires: link(barn),
    // half way the line is the mean of both ends: 2 x (10 + 0.6 x 3.40 m at 5200 MHz + bulge 0.01) - 6 = 18.1 m
    gone: link({ ...barn, farHeightM: given(18.2) }),
    says: /below the top of the barn 400 m from the post/,
  },
  {
    id: "link.blocked",
    severity: "caution",
    // half way over 7 km: 0.6 x 10 m of room and a bulge of 0.7 m are wanted over level ground
    fires: link({ distanceM: given(7000), farHeightM: given(7) }),
    gone: link({ distanceM: given(7000), farHeightM: given(9) }),
    says: /next to nothing of the signal/,
  },
  {
    id: "link.growth",
    severity: "caution",
    fires: link({ ...trees, farHeightM: given(23) }),
    gone: link({ ...trees, farHeightM: given(40) }),
    says: /They keep growing/,
  },
  {
    id: "link.margin",
    severity: "stop",
    fires: link14km(given(14_000)),
    gone: link14km(given(1500)),
    says: /of the 15 dB wanted even at the slowest rate/,
  },
  {
    id: "link.otherCarrier",
    severity: "note",
    fires: link14km(given(14_000)),
    gone: link14km(given(1500)),
    says: /cellular network, where it reaches/,
  },
  {
    id: "link.availability",
    severity: "caution",
    fires: oneHour(30_000),
    gone: oneHour(2000),
    says: /Layers of air that bend the beam would take the link away for .* the picture may be dark for 1\./,
    world: layeredWorld,
  },
  {
    id: "link.cableInstead",
    severity: "note",
    fires: link({ distanceM: given(60) }),
    gone: link({ distanceM: given(800) }),
    says: /60 m is within the 90 m/,
  },
  {
    id: "link.otherClass",
    severity: "note",
    fires: link({ otherPosts: given(15), distanceM: given(200) }),
    gone: link({ otherPosts: given(0), distanceM: given(200) }),
    says: /60 GHz radio is taken here/,
  },
  {
    id: "link.hiddenPosts",
    severity: "note",
    fires: link({ otherPosts: given(3), distanceM: given(3000) }),
    gone: link({ otherPosts: given(0) }),
    says: /Of the 6 pairs among 4 posts/,
  },
  {
    id: "link.unread",
    severity: "stop",
    fires: link({ ...trees, distanceM: given(300) }),
    gone: link({ ...trees, distanceM: given(800) }),
    says: /400 m lies beyond the far end, which is 300 m away/,
  },
  {
    id: "link.unread",
    severity: "stop",
    fires: link({ ground: given(level600), distanceM: given(800) }),
    gone: link({ ground: given(level600), distanceM: given(600) }),
    says: /ends 600 m from the post; the other end is 800 m away/,
  },
  {
    id: "link.far",
    severity: "stop",
    fires: link({ distanceM: given(20_000), farHeightM: given(100) }),
    gone: link({ distanceM: given(2000), farHeightM: given(100) }),
    says: /20 km is farther/,
  },
  {
    id: "link.capacity",
    severity: "stop",
    fires: link({ otherPosts: given(30), distanceM: given(3000), farHeightM: given(12) }),
    gone: link({ otherPosts: given(0), distanceM: given(3000), farHeightM: given(12) }),
    says: /shared by 31 posts/,
  },
  {
    id: "link.sightUnknown",
    severity: "caution",
    fires: link({ sight: given("unknown") }),
    gone: link({ sight: given("clear") }),
    says: /Nobody has seen the far end/,
  },
  {
    id: "link.region",
    severity: "caution",
    fires: tropics,
    gone: typicalBrief,
    says: /No radio rules of this country/,
  },
  {
    id: "link.radarSilence",
    severity: "note",
    fires: at(sites.north40),
    gone: link({ carrier: given("cable"), distanceM: given(50) }),
    says: /after every power cut/,
  },
  {
    id: "link.radarSilence",
    severity: "caution",
    fires: at(sites.north40, devices(camera, byDaylight)),
    gone: at(sites.north40, devices(camera, radio)),
    // one silent minute on each of 365.25 mornings
    says: /about 6 hours a year are lost/,
  },
  {
    id: "link.cellularData",
    severity: "caution",
    fires: link({ carrier: given("cellular") }),
    gone: link({ carrier: given("radio") }),
    says: /GB a month/,
  },
  {
    id: "view.detail",
    severity: "caution",
    fires: changed({
      view: { scenes: [{ ...scene, purpose: given("identify"), widthM: given(20), distanceM: given(20) }] },
    }),
    gone: changed({
      view: { scenes: [{ ...scene, purpose: given("notice"), widthM: given(20), distanceM: given(20) }] },
    }),
    says: /takes 250 pixels per metre/,
  },
  {
    id: "view.width",
    severity: "caution",
    fires: changed({ view: { scenes: [{ ...scene, widthM: given(40), distanceM: given(5) }] } }),
    gone: changed({ view: { scenes: [{ ...scene, widthM: given(40), distanceM: given(40) }] } }),
    says: /you asked for 40 m/,
  },
  {
    id: "view.infraredReach",
    severity: "caution",
    fires: changed({ view: { scenes: [{ ...scene, distanceM: given(60) }] } }),
    gone: changed({ view: { scenes: [{ ...scene, distanceM: given(20) }] } }),
    says: /60 m away and will be black/,
  },
  {
    id: "view.sound",
    severity: "caution",
    fires: changed({ view: { recordsSound: given(true) } }),
    gone: changed({ view: { recordsSound: given(false) } }),
    says: /Recording sound/,
  },
  {
    id: "mounting.footing",
    severity: "stop",
    fires: mounting({ soil: given("soft") }),
    gone: mounting({ soil: given("sand") }),
    says: /engineer's work/,
  },
  {
    id: "mounting.tube",
    severity: "stop",
    fires: mounting({ cameraHeightM: given(15), gustMPerS: given(90) }),
    gone: mounting({ cameraHeightM: given(4), gustMPerS: given(45) }),
    says: /No common tube bears/,
  },
  {
    id: "mounting.gust",
    severity: "caution",
    fires: mounting({ gustMPerS: given(28) }),
    gone: mounting({ gustMPerS: given(45) }),
    says: /28 m\/s is unusually low/,
  },
  {
    id: "mounting.tall",
    severity: "caution",
    fires: mounting({ cameraHeightM: given(8) }),
    gone: mounting({ cameraHeightM: given(5) }),
    says: /mast of 8 m/,
  },
  {
    id: "mounting.support",
    severity: "caution",
    fires: mounting({ support: given("existingPole"), poleDiameterMm: given(300) }),
    gone: mounting({ support: given("newMast") }),
    says: /this pole is 300 mm/,
  },
  {
    id: "mounting.groundFrame",
    severity: "caution",
    fires: at(sites.north60),
    gone: easy,
    says: /stand on a ground frame/,
    world: dullWorld,
  },
  {
    id: "loads.night",
    severity: "note",
    fires: typicalBrief,
    gone: devices(
      { ...camera, schedule: { kind: "daylight", marginH: 0.5 } },
      { ...radio, schedule: { kind: "daylight", marginH: 0.5 } },
    ),
    says: /save 25\d Wh a day/,
  },
  {
    id: "link.trees",
    severity: "caution",
    // the line passes above them and keeps its margin: only the room round it lacks
    fires: link({
      sight: given("trees"),
      between: given("row of trees 6 m high and 10 m deep half way"),
      distanceM: given(450),
      farHeightM: given(12),
    }),
    gone: link({
      sight: given("trees"),
      between: given("row of trees 6 m high and 10 m deep half way"),
      distanceM: given(450),
      farHeightM: given(16),
    }),
    says: /passes only [\d.]+ m above the trees 225 m from the post/,
  },
  {
    id: "reliability.missed",
    severity: "stop",
    // months of frost in which lithium without a heater takes no charge
    fires: changed({ power: { chemistry: given("lifepo4") } }, at(sites.north71)),
    gone: changed({ power: { chemistry: given("agm") } }, at(sites.north71)),
    says: /No panels and battery that were tried .* below 88 dark hours/,
    world: simulatedWorld,
  },
  {
    id: "reliability.missed",
    severity: "caution",
    fires: changed({
      autonomy: { consequence: given("darkHours"), askedDarkHours: given(1) },
      power: { sizing: given("handbook"), marginFrac: given(1) },
    }),
    gone: changed({
      autonomy: { consequence: given("darkHours"), askedDarkHours: given(1) },
      power: { marginFrac: given(1) },
    }),
    says: /The size you chose has about \d+ dark hours/,
    world: simulatedWorld,
  },
  {
    id: "reliability.methods",
    severity: "note",
    fires: typicalBrief,
    gone: at(null),
    says: /The handbook's size, \d+ W with \d+ Ah, would have .* by 30 weather years/,
    world: simulatedWorld,
  },
  {
    id: "battery.frostHours",
    severity: "caution",
    // electrolyte freezes at -52 degrees C at three quarters of its charge (US Army TM 10-6140-200-14 table 1-1)
    fires: changed({ power: { chemistry: given("agm") } }),
    gone: changed({ power: { chemistry: given("lifepo4") } }),
    says: /acid of the emptied bank would be frozen for about \d+ hours/,
    world: {
      ...simulatedWorld,
      climateAt: (site) => ({
        ...(syntheticClimate(site) as Climate),
        meanTempCByMonth: [-48, -45, -30, -15, 0, 12, 15, 10, 2, -15, -35, -46],
        designColdTempC: -64,
        recordColdTempC: -68,
      }),
    },
  },
  {
    id: "money.ceiling",
    severity: "caution",
    fires: changed({ money: { ceiling: given(500) } }),
    gone: changed({ money: { ceiling: given(50_000) } }),
    says: /you named 500/,
  },
  {
    id: "money.currency",
    severity: "note",
    fires: { ...typicalBrief, currency: "XXX" },
    gone: typicalBrief,
    says: /No rate for XXX/,
  },
  {
    id: "assumed.confirm",
    severity: "note",
    fires: mounting({ gustMPerS: given(45, "assumed") }),
    gone: mounting({ gustMPerS: given(45, "measured") }),
    says: /design gust \(45 m\/s\), \d+ USD/,
  },
];

const findingsOf = (brief: Brief, world = syntheticWorld) => designOf(brief, world).findings;

describe.each(cases)("$id ($severity)", ({ id, severity, fires, gone, says, world }) => {
  const found = findingsOf(fires, world).find((one) => one.id === id);
  it("fires, with its numbers in the sentence and a change that is a sentence", () => {
    expect(found?.severity).toBe(severity);
    expect(found!.says).toMatch(says);
    if (severity !== "note") expect(found!.change).not.toBe("");
    expect(Object.keys(found!.numbers).length).toBeGreaterThan(0);
    expect(found!.topics.length).toBeGreaterThan(0);
  });
  it("goes away when its advice was taken", () => {
    const after = findingsOf(gone, world).filter((one) => one.id === id);
    expect(after.filter((one) => one.severity === severity)).toEqual([]);
  });
  it("says the same in feet and pounds, without a metric figure", () => {
    const inFeet = findingsOf({ ...fires, units: "us" }, world).find((one) => one.id === id)!;
    expect(metricIn(`${inFeet.says}\n${inFeet.change}`)).toEqual([]);
    expect({ ...inFeet, says: "", change: "", numbers: {} }).toEqual({
      ...found,
      says: "",
      change: "",
      numbers: {},
    });
  });
});

describe("a line through trees and ground", () => {
  const ground = (...points: readonly (readonly [number, number])[]) =>
    given({
      profile: points.map(([distanceFromNearM, groundM]) => ({ distanceFromNearM, groundM })),
      source: "a map",
    });
  const hill = { ground: ground([0, 100], [400, 110], [800, 100]) };
  const says = (changes: Partial<Brief["link"]>) =>
    findingsOf(link(changes)).find(({ id }) => id === "link.trees" || id === "link.blocked")!;

  it("parts what the trees take from what the ground takes, and does not promise that cutting clears it", () => {
    const { loss } = designOf(link({ ...hill, ...trees }), syntheticWorld).link!;
    const groundDb = designOf(link(hill), syntheticWorld).link!.loss!.diffractionDb;
    const found = says({ ...hill, ...trees });
    expect(found.id).toBe("link.trees");
    // the line at 106 m, the ground at 110 m
    expect(found.says).toContain("the ground 400 m from the post stands 4 m above the line too");
    expect(found.says).toContain(`without the trees ${groundDb.toFixed(0)} dB would still be lost`);
    expect(found.says).toContain(`grown ${(loss!.betweenGrownDb - groundDb).toFixed(0)} dB`);
    expect(found.change).not.toContain(", cut the trees");
    expect(found.change).toContain(`cutting the trees alone would leave ${groundDb.toFixed(0)} dB`);
  });
  it("over level ground the trees are all there is: cut them", () => {
    const found = says(trees);
    expect(found.says).not.toContain("ground");
    expect(found.change).toContain(", cut the trees, or move");
  });
  it("where something else governs, the trees' part is said too", () => {
    const found = says({
      sight: given("trees"),
      between: given("row of trees 9 m high and 20 m deep at 450 m; barn 12 m high, 300 m from the post"),
    });
    expect(found.id).toBe("link.blocked");
    expect(found.says).toMatch(/Without the trees \d+ dB of the signal are lost; they add \d+ dB today/);
    expect(found.change).not.toContain(", cut the trees");
  });
  it("a post's radio above what a hand-raised mast carries is an engineered mast, raised alone or together", () => {
    const { change } = says({
      distanceM: given(3000),
      farHeightM: given(6),
      ground: ground([0, 100], [200, 108], [1500, 100], [2800, 108], [3000, 100]),
    });
    expect(change).toMatch(/^Raise the far end to .* \(an engineered mast\) together/);
  });
  it("every post's height in an advice that is above 6 m says so", () => {
    for (const brief of cases.map(({ fires }) => fires))
      for (const { change } of findingsOf(brief))
        for (const [, heightM, mast] of change.matchAll(
          /the post's radio to ([\d.]+) m( \(an engineered mast\))?/g,
        ))
          expect(mast !== undefined, change).toBe(Number(heightM) > 6);
  });
});

describe("weather where the link does not work in clear air", () => {
  const shared = changed({ link: { otherPosts: given(8) } }, oneHour(25_000));
  it.each([
    ["no rate holds its margin", oneHour(60_000), "link.margin"],
    ["a rate holds, but nine posts do not fit", shared, "link.capacity"],
  ])("is not counted beside the stop that says so: %s", (_what, brief, stop) => {
    const { link: way, findings } = designOf(brief, layeredWorld);
    expect(way!.availability!.lostHPerYear).toBeGreaterThan(way!.availability!.askedHPerYear);
    const ids = findings.map(({ id }) => id);
    expect(ids).toContain(stop);
    expect(ids).not.toContain("link.availability");
  });
});

describe("a second way to know", () => {
  it("does not say that the design aims at what it misses", () => {
    const disaster = changed({
      autonomy: { consequence: given("disaster") },
      power: { chemistry: given("agm"), marginFrac: given(1) },
    });
    const says = (brief: Brief, world: World) =>
      findingsOf(brief, world).find(({ id }) => id === "autonomy.secondWay")!.says;
    expect(says(at(sites.north71, disaster), simulatedWorld)).toMatch(
      /misses the 9 dark hours .*about \d+ dark hours/,
    );
    expect(says(disaster, syntheticWorld)).toMatch(/aims at about 9 dark hours/);
  });
});

describe("all findings", () => {
  const everywhere = cases.flatMap(({ fires, world }) => findingsOf(fires, world));
  it("are plain sentences without noise of arithmetic", () => {
    for (const { id, says, change } of everywhere) {
      for (const text of [says, change].filter((one) => one !== "")) {
        expect(text, id).toMatch(/^[A-Z0-9]/);
        expect(text, id).toMatch(/[.]$/);
        expect(text, id).not.toMatch(/NaN|undefined|null|Infinity|\d\.\d{4}/);
      }
      expect(says.split(/[.!?] /).length, `${id}: ${says}`).toBeLessThanOrEqual(3);
    }
  });
  it("stand in the order stop, caution, note, and the overhead line before every other stop", () => {
    const found = findingsOf(
      changed({ mounting: { overheadLine: given("yes"), freeGroundM: given(5), soil: given("soft") } }),
    );
    const grave = { stop: 0, caution: 1, note: 2 } as const;
    const ranks = found.map(({ severity }) => grave[severity]);
    expect(ranks).toEqual(ranks.toSorted());
    expect(found[0]!.id).toBe("mounting.overheadLine");
  });
  it("every rule has a case here that fires it", () => {
    const worked = cases.map(({ fires, world = syntheticWorld }) => ({
      design: designOf(fires, world),
      world,
    }));
    const silent = rules.filter((rule) => !worked.some(({ design, world }) => rule(design, world)));
    expect(silent).toEqual([]);
  });
  it("a place in the sea says so", () => {
    const [first] = findingsOf(typicalBrief, seaWorld);
    expect(first!.id).toBe("place.unknown");
    expect(first!.says).toContain("open sea");
    expect(first!.change).toContain("sun figures of your own");
    expect(findingsOf(ownSun(1), seaWorld).map(({ id }) => id)).not.toContain("place.unknown");
  });
});

describe("too few pixels", () => {
  it("names the longer lens: 25 mm on 7.68 mm spans 50 x 7.68 / 25 = 15.4 m, 3840 / 15.36 = 250 px/m", () => {
    const far = { ...scene, purpose: given("identify" as const), widthM: given(20), distanceM: given(50) };
    const found = (brief: Brief) =>
      designOf(brief, syntheticWorld).findings.find(({ id }) => id === "view.detail");
    expect(found(changed({ view: { scenes: [far] } }))?.change).toContain(
      "A longer lens, 25 mm, would do for a scene 15.4 m wide.",
    );
    expect(found(changed({ view: { scenes: [{ ...far, widthM: given(15.3) }] } }))).toBeUndefined();
  });
});
