import { sum } from "../../core/numerics/index.ts";
import { sayingIn } from "../../core/units/index.ts";
import { classFor, POE_CLASSES, type PoeClass } from "../../core/wiring/index.ts";
import type { Brief, Device } from "../brief.ts";
import type { RadioPath } from "../design.ts";
import { BANK_SPAN_V_BY_BANK_V } from "../practice/loads.ts";
import * as prices from "../practice/prices.ts";
import { CONVERTER_HEADROOM_RATIO, DEVICE_SUPPLY_V } from "../practice/wiring.ts";
import { drawsOf, feedOf } from "./demand.ts";
import { type Draft, times, type Worked } from "./part-draft.ts";
import { fixed, plain } from "./words.ts";

export function deviceParts(brief: Brief, worked: Worked): readonly Draft[] {
  const { view, link, battery, climate } = worked;
  const draws = drawsOf(brief);
  const { devices } = brief.loads;
  const cameras = devices.filter(({ kind }) => kind === "camera");
  const answersOf = (some: readonly (Device | null)[]) =>
    some.flatMap((device) => (device ? [`brief.loads.devices.${devices.indexOf(device)}`] : []));
  const onSwitch = draws.filter(({ device }) => device && feedOf(device, brief) === "switch");
  const onConverter = draws.filter(({ device }) => device && feedOf(device, brief) === "converter");
  const converterW = Math.ceil(
    CONVERTER_HEADROOM_RATIO * sum(onConverter.map(({ peakW, batteryRatio }) => peakW / batteryRatio)),
  );
  const bankV = battery?.bankV;
  const spanV = bankV === 12 || bankV === 24 || bankV === 48 ? BANK_SPAN_V_BY_BANK_V[bankV] : null;
  const supply = spanV
    ? `input ${fixed(spanV[0], 0)} to ${fixed(spanV[1], 0)} V`
    : "input to suit the battery";
  const said = sayingIn(brief.units);
  const outdoors = climate
    ? `for ${said.bare(climate.designColdTempC, "°C")} to ${said(climate.designHotTempC, "°C")}, IP66`
    : "for the cold and heat of the place, IP66";
  // the class that the table of wires names, and what a switch sets aside for it
  const ports = onSwitch.map(({ name, dayW, nightW }) => ({ name, ...poeClassOf(Math.max(dayW, nightW)) }));
  const classWords = (of: (typeof ports)[number]) => `class ${of.poeClass}`;
  const cameraPorts = draws.flatMap((drawn) =>
    drawn.kind === "camera" ? [ports[onSwitch.indexOf(drawn)] ?? null] : [],
  );
  const parts: Draft[] = view.scenes.map((scene, i) => ({
    id: `camera.${i + 1}`,
    name: brief.view.scenes[i]?.kind.value === "turning" ? "Turning camera" : "Fixed camera",
    quantity: 1,
    unit: "",
    specification: [
      scene.name,
      `at least ${scene.pixelsAcross} x ${scene.pixelsDown} pixels, lens ${plain(scene.focalLengthMm)} mm`,
      `PoE to IEEE 802.3${cameraPorts[i] ? `, ${classWords(cameraPorts[i])} or lower` : ""}, at most ${plain(draws.filter(({ kind }) => kind === "camera")[i]?.nightW ?? 13)} W by night`,
      outdoors,
    ],
    price: brief.view.scenes[i]?.kind.value === "turning" ? prices.TURNING_CAMERA : prices.FIXED_CAMERA,
    figures: ["view.scenes", ...answersOf(cameras.slice(i, i + 1))],
  }));
  if (link?.radio) {
    const radio = link.radio;
    const radioPort = ports[onSwitch.findIndex(({ kind }) => kind === "radio")];
    parts.push({
      id: "radio",
      name: "Point-to-point radios, a pair",
      quantity: 1,
      unit: "pair",
      specification: [
        ...notYet(radio),
        `${radio.bandName}, ${antennas(radio)}, set at the post to at most ${fixed(radio.txPowerDbm, 0)} dBm (${fixed(radio.maxEirpDbm, 0)} dBm radiated is the limit assumed)`,
        ...(radio.phyMbps > 0
          ? [
              `receives ${fixed(radio.sensitivityDbm, 0)} dBm or better at ${fixed(radio.phyMbps, 0)} Mbit/s in ${radio.channelWidthMHz} MHz`,
            ]
          : []),
        radio.needsRadarCheck ? "with radar detection (DFS)" : "no radar detection needed in this band",
        `PoE to IEEE 802.3 at the post${radioPort ? `, ${classWords(radioPort)} or lower` : ""}, ${outdoors}`,
      ],
      price: prices.RADIO_PAIR,
      figures: ["link.radio"],
      isOwned: brief.parts.radio !== null,
    });
  }
  for (const { device } of draws) {
    // a heater is part of the camera's housing
    if (!device || ["camera", "radio", "heater"].includes(device.kind)) continue;
    parts.push({
      id: `device.${brief.loads.devices.indexOf(device) + 1}`,
      name: device.name,
      quantity: 1,
      unit: "",
      specification: [
        `at most ${plain(Math.max(device.dayW.value, device.dayW.value + device.nightExtraW.value))} W`,
        device.feed === "poe" ? "PoE to IEEE 802.3" : voltageWords(device),
        ...(device.kind === "cellular router" && link
          ? [`a plan for about ${fixed(link.monthlyGB, 0)} GB a month if every picture is sent`]
          : []),
      ],
      price:
        device.kind === "cellular router"
          ? prices.CELLULAR_ROUTER
          : device.kind === "recorder"
            ? prices.RECORDER
            : prices.OTHER_DEVICE,
      figures: answersOf([device]),
    });
  }
  if (onSwitch.length > 0) {
    const count = onSwitch.length + (link?.carrier === "cable" ? 1 : 0);
    parts.push({
      id: "switch",
      name: "PoE switch for a battery (with its own step-up, or a step-up before it)",
      quantity: 1,
      unit: "",
      specification: [
        `at least ${count === 1 ? "1 port" : `${count} ports`} to IEEE 802.3: ${ports.map((port) => `${port.name} ${classWords(port)}`).join(", ")}${count > ports.length ? ", one without power for the cable home" : ""}`,
        supply,
        `at least ${fixed(Math.ceil(sum(ports.map(({ sourceW }) => sourceW)) - 1e-9), 0)} W for all ports together, which is what it sets aside for these classes; a device of a higher class needs more`,
      ],
      price: prices.POE_SWITCH,
      figures: answersOf(onSwitch.map(({ device }) => device)),
    });
  }
  if (draws.some(({ kind }) => kind === "converter")) {
    parts.push({
      id: "converter",
      name: `Regulated DC converter, ${DEVICE_SUPPLY_V} V out`,
      quantity: 1,
      unit: "",
      specification: [
        supply,
        `output ${DEVICE_SUPPLY_V} V, at least ${fixed(converterW, 0)} W (${fixed(Math.ceil((10 * converterW) / DEVICE_SUPPLY_V) / 10, 1)} A) without a break`,
        "at most 0.5 W when idle",
      ],
      price: prices.CONVERTER,
      figures: ["battery.bankV", ...answersOf(onConverter.map(({ device }) => device))],
    });
  }
  if (view.storageGB > 0) {
    parts.push({
      id: "storage",
      name: "Storage for the recordings",
      quantity: 1,
      unit: "",
      specification: [`at least ${fixed(Math.ceil(view.storageGB - 1e-9), 0)} GB, made for constant writing`],
      price: times(prices.STORAGE_PER_TB, Math.max(1, view.storageGB / 1000)),
      figures: ["view.storageGB"],
    });
  }
  return parts;
}

function voltageWords({ takes12V }: Device): string {
  if (takes12V?.value === false)
    return `not for ${DEVICE_SUPPLY_V} V: needs a converter of its own for the voltage on its label`;
  return `${DEVICE_SUPPLY_V} V DC${takes12V?.origin === "assumed" ? " is taken and nobody has read its label: read it" : ""}`;
}

/** The class that powers a device; where none does, the highest there is. */
function poeClassOf(deviceW: number): PoeClass {
  const found = classFor(Math.min(deviceW, 1000));
  return found.kind === "class" ? found : POE_CLASSES.at(-1)!;
}

/** Before all else where the link does not work as it stands: what is then bought may be of the wrong class. */
function notYet({ carriesPicture, phyMbps }: RadioPath): readonly string[] {
  if (carriesPicture) return [];
  return [
    phyMbps === 0
      ? "DO NOT ORDER YET: as the path stands no radio works over it; order none before the path is cleared or shortened and worked anew"
      : "DO NOT ORDER YET: as it stands the link does not carry the picture; order none before the path is cleared or the pictures made smaller, and the link worked anew",
  ];
}

/** A pair alike, or the post's own and one wide enough for all posts. */
const antennas = ({ antennaGainDbi, farAntennaGainDbi }: RadioPath): string =>
  farAntennaGainDbi === antennaGainDbi
    ? `antenna ${plain(antennaGainDbi)} dBi each`
    : `antenna ${plain(antennaGainDbi)} dBi at the post, a sector of ${plain(farAntennaGainDbi)} dBi at the other end`;
