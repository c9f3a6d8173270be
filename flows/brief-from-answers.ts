/**
 * The only map from question ids to engineering names. Arithmetic here is at most a change of unit; judgement lives in
 * src/design.
 */

import { readCoordinates } from "../src/core/place/index.ts";
import type { HorizonProfile } from "../src/core/sun/index.ts";
import {
  type Brief,
  type CameraKind,
  type Device,
  type Given,
  type OwnedBattery,
  type OwnedController,
  type OwnedPanel,
  type OwnedRadio,
  type Purpose,
  type Scene,
  type Spot,
  type TopicId,
  topicIds,
} from "../src/design/brief.ts";
import {
  LOOKED_CLEAR_M,
  SOILING_FRAC,
  TWILIGHT_MARGIN_H,
  WALL_AZIMUTH_DEG,
} from "../src/design/stand-ins.ts";
import type { Walked } from "../src/interview/conversation.ts";
import type { KnownAfter, Topic } from "../src/interview/define.ts";
import { monthIds } from "./hours.ts";
import type { moneyTopic } from "./money.ts";

/** Every answer of this flow, by id. */
type Known = KnownAfter<typeof moneyTopic>;
/** The ids of single questions: those of repeated blocks hold lists and are read by `each`. */
type SingleId = {
  [Id in keyof Known]: Known[Id] extends HorizonProfile
    ? Id
    : Known[Id] extends readonly unknown[]
      ? never
      : Id;
}[keyof Known] &
  string;
type BlockId = Exclude<keyof Known & string, SingleId>;
type Each<Id extends BlockId> = Known[Id] extends readonly (infer One)[] ? One : never;

interface Read {
  <Id extends SingleId>(id: Id): Given<Known[Id]>;
  /** Every instance of a repeated block: each hands out its own answers by name. */
  each<Id extends BlockId>(
    id: Id,
  ): readonly (<N extends keyof Each<Id> & string>(name: N) => Given<Each<Id>[N]>)[];
}

function givenOf({ answer, isAsked, own }: Walked): Given<unknown> {
  const { value, rule } = own;
  const ends = value.kind === "quantity" ? { low: value.low, high: value.high } : {};
  return {
    value: rule,
    origin: answer?.origin ?? "assumed",
    isAnswered: answer !== null || !isAsked,
    ...ends,
  };
}

/** Reads answers by id; a question that is not asked counts with its stand-in. */
function reader(topics: readonly Topic[], walked: readonly Walked[]): Read {
  const byId = new Map(walked.map((one) => [one.id, one]));
  const read = (id: string) => {
    const found = byId.get(id);
    if (found === undefined) throw new Error(`no question ${id} in the flow`);
    return givenOf(found);
  };
  const each = (id: string) => {
    const block = topics.flatMap((topic) => topic.steps).find((step) => step.id === id);
    if (block?.step !== "repeat") throw new Error(`no block ${id} in the flow`);
    const gate = block.block[0]!.id.slice("each.".length);
    const instances: ((name: string) => Given<unknown>)[] = [];
    for (let i = 1; i <= block.atMost; i++) {
      const found = byId.get(`${id}.${i}.${gate}`);
      if (found === undefined || !found.isAsked || found.own.rule === "none") break;
      instances.push((name) => read(`${id}.${i}.${name}`));
    }
    return instances;
  };
  // The public types tie each id to its value; inside, values are looked up by plain text.
  return Object.assign(read, { each }) as unknown as Read;
}

/** The same given with its value put into other words or another unit. */
const as = <T, U>(given: Given<T>, change: (value: T) => U): Given<U> => {
  const { low: _low, high: _high, ...rest } = given;
  return { ...rest, value: change(given.value) };
};
const inHundredths = (given: Given<number>) => as(given, (percent) => percent / 100);
const zero: Given<number> = { value: 0, origin: "estimate", isAnswered: true };
const nothingNamed: Given<string> = { value: "", origin: "estimate", isAnswered: true };

const always = { kind: "always" } as const;

function scenesOf(read: Read): readonly Scene[] {
  const first: Scene = {
    kind: as(read("view.cameras"), (cameras): CameraKind => (cameras === "turning" ? "turning" : "fixed")),
    purpose: read("view.purpose"),
    distanceM: read("view.distance"),
    widthM: read("view.width"),
  };
  const more = read.each("view.more").map((camera) => ({
    kind: as(camera("kind"), (kind): CameraKind => (kind === "turning" ? "turning" : "fixed")),
    purpose: camera("purpose") as Given<Purpose>,
    distanceM: camera("distance"),
    widthM: camera("width"),
  }));
  return read("view.cameras").value === "several" ? [first, ...more] : [first];
}

/** When the camera runs, and with it the radio that carries its picture. */
function cameraSchedule(read: Read): Device["schedule"] {
  switch (read("hours.when").value) {
    case "daylight":
      return { kind: "daylight", marginH: TWILIGHT_MARGIN_H };
    case "clock":
      return { kind: "clock", ...read("hours.clock").value };
    default:
      return always;
  }
}

/** Extra devices shed first, then the cameras; the radio last, for without it nobody sees why. */
const shedding = { extra: 1, camera: 2, radio: 3 } as const;

function devicesOf(read: Read, scenes: readonly Scene[]): readonly Device[] {
  const schedule = cameraSchedule(read);
  const hasInfrared = read("view.night").value === "infrared";
  const cameras = scenes.map((scene, i): Device => {
    const isTurning = scene.kind.value === "turning";
    const infraredW = isTurning ? read("loads.turningInfrared") : read("loads.infrared");
    return {
      name: scenes.length > 1 ? `Camera ${i + 1}` : "Camera",
      kind: "camera",
      dayW: isTurning ? read("loads.turning") : read("loads.camera"),
      nightExtraW: hasInfrared ? infraredW : zero,
      feed: "poe",
      schedule,
      priority: shedding.camera,
    };
  });
  const names = {
    recorder: "Recorder",
    lamp: "Lamp",
    sensor: "Sensor",
    other: "Other device",
    none: "",
  } as const;
  const kinds = {
    recorder: "recorder",
    lamp: "lamp",
    sensor: "sensor",
    other: "other device",
    none: "other device",
  } as const;
  const extras = read.each("loads.extra").map((device, i): Device => {
    const kind = device("kind").value;
    const runs = device("runs").value;
    return {
      name: `${names[kind]} ${i + 1}`,
      kind: kinds[kind],
      dayW: runs === "night" ? zero : device("power"),
      nightExtraW: runs === "night" ? device("power") : zero,
      feed: "dc",
      takes12V: as(device("volts"), (answer) => answer === "yes"),
      schedule: runs === "day" ? { kind: "daylight", marginH: 0 } : always,
      priority: shedding.extra,
    };
  });
  const heaterBelowC = read("loads.heaterBelow").value;
  const fanAboveC = read("loads.fanAbove").value;
  const byThermostat = [
    {
      name: "Heater",
      kind: "heater",
      dayW: read("loads.heater"),
      schedule: { kind: "cold", belowC: heaterBelowC },
      // a frosted window shows as little as a dark one
      priority: shedding.camera,
    },
    {
      name: "Box fan",
      kind: "fan",
      dayW: read("loads.fan"),
      schedule: { kind: "heat", aboveC: fanAboveC },
      priority: shedding.camera,
    },
  ] as const;
  const climateDevices = byThermostat
    .filter(({ dayW }) => dayW.value > 0)
    .map((device): Device => ({ ...device, nightExtraW: zero, feed: "dc" }));
  const carrier = read("link.carrier").value;
  const sender: Device[] =
    carrier === "radio" || carrier === "cellular"
      ? [
          {
            name: carrier === "radio" ? "Radio" : "Cellular router",
            kind: carrier === "radio" ? "radio" : "cellular router",
            dayW: carrier === "radio" ? read("link.radioPower") : read("link.routerPower"),
            nightExtraW: zero,
            feed: carrier === "radio" ? "poe" : "dc",
            schedule,
            priority: shedding.radio,
          },
        ]
      : [];
  return [...cameras, ...sender, ...climateDevices, ...extras];
}

function runsInMonth(read: Read): Given<readonly boolean[]> {
  return as(read("hours.when"), (when) => {
    if (when !== "season") return monthIds.map(() => true);
    const from = monthIds.indexOf(read("hours.fromMonth").value);
    const to = monthIds.indexOf(read("hours.toMonth").value);
    // A season may run over the turn of the year.
    return monthIds.map((_, month) =>
      from <= to ? month >= from && month <= to : month >= from || month <= to,
    );
  });
}

function ownedOf(read: Read): Brief["parts"] {
  const owned = (kind: string) => read.each("parts.owned").find((part) => part("kind").value === kind);
  const battery = owned("battery");
  const panel = owned("panel");
  const controller = owned("controller");
  const radio = owned("radio");
  const feeds = { standard: "802.3", passive24: "passive24", passive48: "passive48", dc: "dc" } as const;
  return {
    battery: battery
      ? as(
          battery("batteryAh"),
          (blockAh): OwnedBattery => ({
            chemistry: battery("batteryKind").value,
            blockV: battery("batteryVolts").value,
            blockAh,
            blocks: battery("batteryCount").value,
          }),
        )
      : null,
    panel: panel
      ? as(
          panel("panelWatts"),
          (ratedW): OwnedPanel => ({
            ratedW,
            openCircuitV: panel("panelVolts").value,
            count: panel("panelCount").value,
          }),
        )
      : null,
    controller: controller
      ? as(
          controller("controllerAmps"),
          (maxChargeA): OwnedController => ({
            kind: controller("controllerKind").value,
            maxInputV: controller("controllerVolts").value,
            maxChargeA,
            chargesLifepo4: controller("controllerLithium").value === "yes",
          }),
        )
      : null,
    radio: radio
      ? as(
          radio("radioFeed"),
          (feed): OwnedRadio => ({
            feed: feeds[feed],
            minInputV: radio("radioLowVolts").value,
            maxInputV: radio("radioHighVolts").value,
          }),
        )
      : null,
  };
}

/**
 * Coordinates of the other end, where the distance was given by them; only as good as the post's own, which must be
 * coordinates too.
 */
function farOf(walked: readonly Walked[]): Spot | null {
  const distance = walked.find(({ id }) => id === "link.distance")?.own.value;
  const where = walked.find(({ id }) => id === "place.where")?.answer?.typed ?? "";
  const spot = distance?.kind === "quantity" ? distance.spot : undefined;
  return spot !== undefined && readCoordinates(where).kind === "coordinates" ? spot : null;
}

/**
 * @param walked  every question, also those not asked
 */
export function briefFromAnswers(
  topics: readonly Topic[],
  walked: readonly Walked[],
  about: Pick<Brief, "name" | "currency" | "units">,
): Brief {
  const read = reader(topics, walked);
  const scenes = scenesOf(read);
  const open = new Set<TopicId>(
    walked.filter((one) => one.isAsked && one.answer === null).map((one) => one.topic.id),
  );
  const isAsked = (id: string) => walked.some((one) => one.isAsked && one.id === id);
  const hasSnow = isAsked("place.snow");
  return {
    name: about.name,
    currency: about.currency,
    units: about.units,
    openTopics: topicIds.filter((id) => open.has(id)),
    place: {
      site: read("place.where"),
      ownSun: read("place.sun"),
      trustedSun: read("place.trust"),
      horizon: read("place.shade"),
      soilingFrac: as(read("place.dirt"), (dirt) => SOILING_FRAC[dirt]),
      snowWeeks: hasSnow ? read("place.snow") : zero,
    },
    view: {
      scenes,
      night: read("view.night"),
      smoothness: read("view.smoothness"),
      recordsSound: as(read("view.sound"), (sound) => sound === "yes"),
      keepDays: read("parts.keepDays"),
    },
    loads: { devices: devicesOf(read, scenes) },
    hours: { runsInMonth: runsInMonth(read) },
    autonomy: {
      consequence: read("autonomy.consequence"),
      askedDays: read("autonomy.days"),
      askedDarkHours: read("autonomy.darkHours"),
      visitDays: read("autonomy.visit"),
    },
    power: {
      chemistry: read("power.chemistry"),
      batteryHeaterW: read("power.chemistry").value === "lifepo4" ? read("power.batteryHeater") : zero,
      heaviestBlockKg: read("power.lift"),
      bankV: as(read("power.bankVolts"), (volts) =>
        volts === "choose" ? "choose" : (Number(volts) as 12 | 24 | 48),
      ),
      controller: read("power.controller"),
      marginFrac: inHundredths(read("power.margin")),
      largestPanelW: read("power.largestPanel"),
      isTiltChanged: as(read("power.tiltChange"), (answer) => answer === "yes"),
      sizing: read("power.sizing"),
    },
    mounting: {
      overheadLine: as(read("mounting.overhead"), (overhead) => (overhead === "noneFar" ? "no" : overhead)),
      freeGroundM:
        read("mounting.overhead").value === "yes"
          ? read("mounting.wireDistance")
          : as(read("mounting.overhead"), (overhead) => LOOKED_CLEAR_M[overhead]),
      support: read("mounting.support"),
      wallAzimuthDeg: as(read("mounting.wallFacing"), (wind) => WALL_AZIMUTH_DEG[wind]),
      cameraHeightM: read("mounting.cameraHeight"),
      poleDiameterMm:
        read("mounting.support").value === "existingPole" ? read("mounting.poleDiameter") : zero,
      poleHeightM: read("mounting.support").value === "existingPole" ? read("mounting.poleHeight") : zero,
      gustMPerS: read("mounting.gust"),
      soil: read("mounting.soil"),
      frostDepthM: read("mounting.frost"),
    },
    link: {
      carrier: read("link.carrier"),
      distanceM: read("link.distance"),
      far: as(read("link.distance"), () => farOf(walked)),
      sight: read("link.sight"),
      between: isAsked("link.between") ? read("link.between") : nothingNamed,
      ground: read("link.ground"),
      farHeightM: read("link.farHeight"),
      otherPosts: read("link.otherPosts"),
    },
    parts: ownedOf(read),
    money: {
      ceiling: read("money.ceiling"),
      contingencyFrac: inHundredths(read("money.contingency")),
    },
  };
}
