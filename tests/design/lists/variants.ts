/** Briefs that between them reach every turn the lists can take, and the designs they make. */
import type { Brief, Device } from "../../../src/design/brief.ts";
import { type Design, designOf } from "../../../src/design/index.ts";
import {
  at,
  camera,
  changed,
  given,
  radio,
  scene,
  simulatedWorld,
  sites,
  syntheticWorld,
  typicalBrief,
} from "../fixtures.ts";

const device = (name: string, kind: Device["kind"], watts: number, about: Partial<Device> = {}): Device => ({
  name,
  kind,
  dayW: given(watts),
  nightExtraW: given(0),
  feed: "dc",
  schedule: { kind: "always" },
  priority: 1,
  ...about,
});
const router = device("Cellular router", "cellular router", 5, { priority: 3 });
const withoutRadio = { devices: [camera] };
const months = (runs: (month: number) => boolean) =>
  given<readonly boolean[]>(Array.from({ length: 12 }, (_, month) => runs(month)));
const battery = { chemistry: "agm" as const, blockV: 12, blockAh: 100, blocks: 2 };
const controller = { kind: "mppt" as const, maxInputV: 250, maxChargeA: 100, chargesLifepo4: true };
/** Sun all the year, so that the bank is small enough to hang. */
const small = at(
  sites.south5,
  changed({
    loads: { devices: [{ ...camera, dayW: given(2), nightExtraW: given(0) }] },
    link: { carrier: given("none") },
    autonomy: { consequence: given("nuisance") },
  }),
);

export const briefs: Readonly<Record<string, Brief>> = {
  "new mast, radio, nothing owned": typicalBrief,
  "small post in a sunny place": small,
  "small post with lithium": changed({ power: { chemistry: given("lifepo4") } }, small),
  "lithium in frost": changed({ power: { chemistry: given("lifepo4") } }),
  "lithium kept warm": changed({ power: { chemistry: given("lifepo4"), batteryHeaterW: given(130) } }),
  "lead in the tropics": at(sites.south5, changed({ power: { chemistry: given("agm") } })),
  "an old pole": changed({
    mounting: { support: given("existingPole"), poleDiameterMm: given(76), poleHeightM: given(5) },
  }),
  "a pole nobody measured": changed({
    mounting: { support: given("existingPole"), poleDiameterMm: given(0, "assumed") },
  }),
  "a wall": changed({ mounting: { support: given("wall") } }),
  "a roof": changed({ mounting: { support: given("roof") } }),
  "a roof by cable": changed({
    mounting: { support: given("roof") },
    loads: withoutRadio,
    link: { carrier: given("cable"), distanceM: given(40) },
  }),
  "by cable": changed({
    loads: withoutRadio,
    link: { carrier: given("cable"), distanceM: given(60) },
  }),
  "by the mobile network": changed({
    loads: { devices: [camera, router] },
    link: { carrier: given("cellular") },
  }),
  "recorded at the post": changed({
    loads: { devices: [camera, device("Recorder 1", "recorder", 10)] },
    link: { carrier: given("none") },
  }),
  "panels on a ground frame": changed({ loads: { devices: [{ ...camera, dayW: given(40) }, radio] } }),
  "many panels in parallel": changed({
    loads: { devices: [{ ...camera, dayW: given(60) }, radio] },
    power: { largestPanelW: given(100), controller: given("pwm"), bankV: given(12) },
  }),
  "several controllers at 48 V": changed({
    loads: { devices: [{ ...camera, dayW: given(300) }, radio] },
    power: { bankV: given(48), largestPanelW: given(450) },
  }),
  "battery, panel and controller owned": changed({
    parts: {
      battery: given(battery),
      panel: given({ ratedW: 120, openCircuitV: 23, count: 1 }),
      controller: given(controller),
    },
  }),
  "lithium battery owned": at(
    sites.south5,
    changed({
      parts: { battery: given({ chemistry: "lifepo4" as const, blockV: 12.8, blockAh: 100, blocks: 4 }) },
    }),
  ),
  "passive radio owned": changed({
    parts: { radio: given({ feed: "passive24" as const, minInputV: 18, maxInputV: 28 }) },
  }),
  "direct-current radio owned": changed({
    parts: { radio: given({ feed: "dc" as const, minInputV: 9, maxInputV: 60 }) },
  }),
  "no place": at(null),
  "no place, on a wall, by the mobile network": at(
    null,
    changed({
      mounting: { support: given("wall") },
      loads: { devices: [camera, router] },
      link: { carrier: given("cellular") },
    }),
  ),
  "rests in winter": changed({ hours: { runsInMonth: months((month) => month > 2 && month < 10) } }),
  "rests in winter with lithium": changed({
    hours: { runsInMonth: months((month) => month > 2 && month < 10) },
    power: { chemistry: given("lifepo4") },
  }),
  "runs in no month": changed({ hours: { runsInMonth: months(() => false) } }),
  "by daylight, and a lamp by night": changed({
    loads: {
      devices: [
        { ...camera, schedule: { kind: "daylight", marginH: 0.5 } },
        radio,
        device("Lamp 1", "lamp", 0, { nightExtraW: given(10) }),
        device("Sensor 1", "sensor", 1, { schedule: { kind: "daylight", marginH: 0 } }),
      ],
    },
  }),
  "by the clock": changed({
    loads: {
      devices: [{ ...camera, schedule: { kind: "clock", fromMin: 390, toMin: 1200 } }, radio],
    },
  }),
  "tilted twice a year": changed({ power: { isTiltChanged: given(true) } }),
  "a wire too near": changed({ mounting: { overheadLine: given("yes"), freeGroundM: given(5) } }),
  "nobody has looked for wires": changed({ mounting: { overheadLine: given("notLooked") } }),
  "soft ground": changed({ mounting: { soil: given("soft") } }),
  "rock without frost": changed({ mounting: { soil: given("rock"), frostDepthM: given(0) } }),
  "a wind that no tube bears": changed({
    mounting: { gustMPerS: given(95), cameraHeightM: given(12) },
  }),
  "sound wanted": changed({ view: { recordsSound: given(true) } }),
  "three cameras, one turning, and other posts": changed({
    view: { scenes: [scene, { ...scene, kind: given("turning") }, scene], night: given("ambient") },
    loads: {
      devices: [
        { ...camera, name: "Camera 1" },
        { ...camera, name: "Camera 2", dayW: given(18) },
        { ...camera, name: "Camera 3" },
        radio,
      ],
    },
    link: { otherPosts: given(2) },
  }),
  "no camera": changed({ view: { scenes: [] }, loads: { devices: [radio] } }),
  "snow and dust": at(sites.north60, changed({ place: { snowWeeks: given(6), soilingFrac: given(0.15) } })),
  "one week of snow": changed({ place: { snowWeeks: given(1) } }),
  "a radar band": at(sites.north40),
  "coordinates of both ends": changed({
    link: {
      far: given({ latitudeDeg: 40, longitudeDeg: -104.99 }),
      sight: given("trees"),
      between: given("trees 3 m high and 10 m deep half way"),
      farHeightM: given(20),
    },
  }),
  "nothing kept": changed({ view: { keepDays: given(0), night: given("none") } }),
  "everything assumed": changed({
    mounting: { gustMPerS: given(45, "assumed"), soil: given("clay", "assumed") },
    place: { horizon: given([{ azimuthDeg: 0, elevationDeg: 10 }], "assumed") },
    loads: { devices: [{ ...camera, dayW: given(5, "assumed") }, radio] },
  }),
};

export const designs: readonly (readonly [name: string, design: Design])[] = [
  ...Object.entries(briefs).map(([name, brief]) => [name, designOf(brief, syntheticWorld)] as const),
  ["weather years", designOf(changed({ power: { isTiltChanged: given(true) } }), simulatedWorld)],
];
export const designNamed = (name: string): Design => designs.find(([one]) => one === name)![1];
