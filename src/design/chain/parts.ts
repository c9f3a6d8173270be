import { sum } from "../../core/numerics/index.ts";
import type { Brief, TopicId } from "../brief.ts";
import type {
  ArraySizing,
  Battery,
  Climate,
  Link,
  Loads,
  Mounting,
  Notes,
  Part,
  Parts,
  StageName,
  View,
  Wiring,
} from "../design.ts";
import { BANK_SPAN_V_BY_BANK_V } from "../practice/loads.ts";
import { CLAMP_MM } from "../practice/mounting.ts";
import * as prices from "../practice/prices.ts";
import { COMMON_PORT_CLASS } from "../practice/wiring.ts";
import { drawsOf, feedOf } from "./demand.ts";
import { assumedAnswers, topicsUnder } from "./order.ts";
import { fixed, plain } from "./words.ts";

/** Everything the parts are read from. */
export interface Worked {
  readonly climate: Climate | null;
  readonly loads: Loads;
  readonly battery: Battery | null;
  readonly array: ArraySizing | null;
  readonly view: View;
  readonly link: Link | null;
  readonly mounting: Mounting;
  readonly wiring: Wiring | null;
}

/** What to buy: generic parts with the least specification to buy by. */
export function partsStage(brief: Brief, worked: Worked): Parts {
  const { unitsPerUsd } = prices.priceCurrency(brief.currency);
  const assumedTopics = new Set<TopicId>(assumedAnswers(brief).map(({ topic }) => topic));
  const drafts = [
    ...powerParts(brief, worked),
    ...deviceParts(brief, worked),
    ...mountParts(brief, worked),
    ...wireParts(brief, worked),
  ];
  return {
    lines: drafts
      .filter(({ quantity }) => quantity > 0)
      .map(({ price, because, isOwned = false, ...part }): Part => {
        const [low, high] = isOwned ? [0, 0] : price;
        const topics = new Set(because.flatMap((stage) => [...topicsUnder(stage)]));
        return {
          ...part,
          lowPrice: round(low * part.quantity * unitsPerUsd),
          highPrice: round(high * part.quantity * unitsPerUsd),
          isOwned,
          because,
          restsOnAssumed: [...topics].some((topic) => assumedTopics.has(topic)),
        };
      }),
  };
}

function round(amount: number): number {
  return Math.round(amount * 100) / 100;
}

/** A line before its price is worked: in dollars, for one unit. */
interface Draft {
  readonly id: string;
  readonly name: string;
  readonly quantity: number;
  readonly unit: string;
  readonly specification: readonly string[];
  readonly price: prices.Band;
  readonly because: readonly StageName[];
  readonly isOwned?: boolean;
}

function times([low, high]: prices.Band, factor: number): prices.Band {
  return [low * factor, high * factor];
}

/** How many of what is needed stand in the shed, as one line, and how many are to be bought, as another. */
function splitOwned(draft: Draft, ownedCount: number): readonly Draft[] {
  const used = Math.min(ownedCount, draft.quantity);
  return [
    { ...draft, quantity: used, isOwned: true },
    { ...draft, id: used > 0 ? `${draft.id}.more` : draft.id, quantity: draft.quantity - used },
  ];
}

function powerParts(brief: Brief, worked: Worked): readonly Draft[] {
  const { battery, array, climate } = worked;
  if (!battery || !array || !climate) return [];
  const ownedBattery = brief.parts.battery?.value;
  const ownedPanel = brief.parts.panel?.value;
  const ownsBlocks =
    ownedBattery !== undefined &&
    ownedBattery.chemistry === battery.chemistry &&
    ownedBattery.blockAh === battery.blockAh &&
    ownedBattery.blockV === battery.blockV;
  const isLead = battery.chemistry === "agm";
  return [
    ...splitOwned(
      {
        id: "panel",
        name: "Solar panel",
        quantity: array.panels,
        unit: "",
        specification: [
          `${plain(array.panelW)} W`,
          `open-circuit voltage at most ${plain(array.openCircuitV)} V, voltage at maximum power at least ${fixed(array.maxPowerV * 0.95, 1)} V`,
          array.panels > 1
            ? `${array.inSeries} in series, ${array.inParallel} in parallel: all of one kind`
            : "one alone",
          "glass and frame made for the wind and snow of the place",
        ],
        price: times(prices.PANEL_PER_W, array.panelW),
        because: ["array"],
      },
      ownedPanel?.count ?? 0,
    ),
    ...splitOwned(
      {
        id: "battery",
        name: isLead
          ? "Sealed lead-acid battery (AGM), deep-cycle"
          : "Lithium iron phosphate battery with management system",
        quantity: battery.blocks,
        unit: "",
        specification: [
          `${plain(battery.blockV)} V, at least ${plain(battery.blockAh)} Ah${isLead ? " at the 20-hour rate" : ""}`,
          battery.blocks > 1
            ? `${battery.inSeries} in series, ${battery.inParallel} in parallel: all of one kind and age`
            : "one alone",
          isLead
            ? "deep-cycle, not a starter battery"
            : `management system that stops charging below 0 °C and bears ${fixed(2 * array.chargeCurrentA, 0)} A${battery.inSeries > 1 ? `, allowed ${battery.inSeries} in series` : ""}`,
        ],
        price: times(
          prices.BLOCK_PER_AH[battery.chemistry],
          (battery.blockAh * battery.blockV) / (isLead ? 12 : 12.8),
        ),
        because: ["battery"],
      },
      ownsBlocks ? ownedBattery.blocks : 0,
    ),
    {
      id: "controller",
      name:
        array.controller === "mppt"
          ? "Charge controller, tracking (MPPT)"
          : "Charge controller, direct (PWM)",
      quantity: array.controllers,
      unit: "",
      specification: [
        `${battery.bankV} V bank, at least ${array.controllerA} A, input at least ${array.controllerMaxInputV} V`,
        isLead
          ? `absorption ${fixed(battery.absorptionV, 1)} V and float ${fixed(battery.floatV, 1)} V at 25 °C, with a sensor for the battery's temperature`
          : `lithium iron phosphate: absorption ${fixed(battery.absorptionV, 1)} V, no temperature compensation`,
        `cuts the loads off at ${fixed(battery.lowVoltageDisconnectV, 1)} V and on again at ${fixed(battery.reconnectV, 1)} V`,
      ],
      price: prices.CONTROLLER[array.controller],
      because: ["array", "battery"],
      isOwned: ownsController(brief, { array, battery }),
    },
  ];
}

/** The controller in the shed serves only where nothing of the design goes beyond it. */
function ownsController(
  brief: Brief,
  { array, battery }: { readonly array: ArraySizing; readonly battery: Battery },
): boolean {
  const owned = brief.parts.controller?.value;
  return (
    owned !== undefined &&
    (battery.chemistry === "agm" || owned.chargesLifepo4) &&
    array.controllers === 1 &&
    owned.maxInputV >= array.coldOpenCircuitV &&
    owned.maxChargeA >= array.chargeCurrentA
  );
}

function deviceParts(brief: Brief, worked: Worked): readonly Draft[] {
  const { view, link, wiring, battery, climate } = worked;
  const draws = drawsOf(brief);
  const onSwitch = draws.filter(({ device }) => device && feedOf(device, brief) === "switch");
  const bankV = battery?.bankV;
  const spanV = bankV === 12 || bankV === 24 || bankV === 48 ? BANK_SPAN_V_BY_BANK_V[bankV] : null;
  const supply = spanV
    ? `input ${fixed(spanV[0], 0)} to ${fixed(spanV[1], 0)} V`
    : "input to suit the battery";
  const outdoors = climate
    ? `for ${fixed(climate.designColdTempC, 0)} to ${fixed(climate.designHotTempC, 0)} °C, IP66`
    : "for the cold and heat of the place, IP66";
  const highestClass = Math.max(
    COMMON_PORT_CLASS,
    ...(wiring?.poeRuns.map(({ poeClass }) => poeClass) ?? []),
  );
  const parts: Draft[] = view.scenes.map((scene, i) => ({
    id: `camera.${i + 1}`,
    name: brief.view.scenes[i]?.kind.value === "turning" ? "Turning camera" : "Fixed camera",
    quantity: 1,
    unit: "",
    specification: [
      scene.name,
      `at least ${scene.pixelsAcross} x ${scene.pixelsDown} pixels, lens ${plain(scene.focalLengthMm)} mm`,
      `PoE to IEEE 802.3, at most ${plain(draws.filter(({ kind }) => kind === "camera")[i]?.nightW ?? 13)} W by night`,
      outdoors,
    ],
    price: brief.view.scenes[i]?.kind.value === "turning" ? prices.TURNING_CAMERA : prices.FIXED_CAMERA,
    because: ["view", "loads"],
  }));
  if (link?.radio) {
    const radio = link.radio;
    parts.push({
      id: "radio",
      name: "Point-to-point radios, a pair",
      quantity: 1,
      unit: "pair",
      specification: [
        `${radio.bandName}, antenna ${plain(radio.antennaGainDbi)} dBi each, set to at most ${fixed(radio.txPowerDbm, 0)} dBm (${fixed(radio.maxEirpDbm, 0)} dBm radiated is the limit assumed)`,
        `receives ${fixed(radio.sensitivityDbm, 0)} dBm or better at ${fixed(radio.phyMbps, 0)} Mbit/s in ${radio.channelWidthMHz} MHz`,
        radio.needsRadarCheck ? "with radar detection (DFS)" : "no radar detection needed in this band",
        `PoE to IEEE 802.3 at the post, ${outdoors}`,
      ],
      price: prices.RADIO_PAIR,
      because: ["link"],
      isOwned: brief.parts.radio !== null,
    });
  }
  for (const { device } of draws) {
    if (!device || device.kind === "camera" || device.kind === "radio") continue;
    parts.push({
      id: `device.${brief.loads.devices.indexOf(device) + 1}`,
      name: device.name,
      quantity: 1,
      unit: "",
      specification: [
        `at most ${plain(Math.max(device.dayW.value, device.dayW.value + device.nightExtraW.value))} W`,
        device.feed === "poe" ? "PoE to IEEE 802.3" : "12 V DC",
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
      because: ["loads"],
    });
  }
  if (onSwitch.length > 0) {
    parts.push({
      id: "switch",
      name: "PoE switch for a battery (with its own step-up, or a step-up before it)",
      quantity: 1,
      unit: "",
      specification: [
        `at least ${onSwitch.length + (link?.carrier === "cable" ? 1 : 0)} ports to IEEE 802.3, class ${highestClass} each`,
        supply,
        `at least ${fixed(sum(onSwitch.map(({ dayW, nightW }) => Math.max(dayW, nightW))) * 1.2, 0)} W for all ports together`,
      ],
      price: prices.POE_SWITCH,
      because: ["loads", "wiring"],
    });
  }
  if (draws.some(({ kind }) => kind === "converter")) {
    parts.push({
      id: "converter",
      name: "Regulated DC converter, 12 V out",
      quantity: 1,
      unit: "",
      specification: [supply, "at most 0.5 W when idle"],
      price: prices.CONVERTER,
      because: ["loads"],
    });
  }
  if (view.storageGB > 0) {
    parts.push({
      id: "storage",
      name: "Storage for the recordings",
      quantity: 1,
      unit: "",
      specification: [`at least ${fixed(view.storageGB, 0)} GB, made for constant writing`],
      price: times(prices.STORAGE_PER_TB, Math.max(1, view.storageGB / 1000)),
      because: ["view"],
    });
  }
  return parts;
}

function mountParts(brief: Brief, worked: Worked): readonly Draft[] {
  const { mounting, battery, array } = worked;
  const { tube, footing, box } = mounting;
  const parts: Draft[] = [
    {
      id: "box",
      name: "Box for battery and electronics, lockable",
      quantity: 1,
      unit: "",
      specification: [
        `at least ${fixed(box.volumeL, 0)} litres inside, white, with a sun shield`,
        battery?.chemistry === "agm"
          ? `vented: at least ${fixed(box.openingCm2, 1)} cm2 free low down and again high up, behind insect screens; electronics apart from the battery's air`
          : "IP65, with a breather",
        box.stands === "ground" ? "stands on the ground" : "hangs on the mast",
      ],
      // usual boxes hold about 60 litres
      price: times(prices.BOX, Math.max(1, box.volumeL / 60)),
      because: ["mounting", "battery"],
    },
    {
      id: "earth",
      name: "Earth rod, clamp and bonding wire",
      quantity: 1,
      unit: "set",
      specification: [
        "rod of at least 2.4 m (8 ft) and 16 mm (5/8 in), or what your code asks; 16 mm2 (6 AWG) copper",
        "one electrode for mast, panel frames, box and surge protectors",
      ],
      price: prices.EARTH_SET,
      because: ["mounting"],
    },
  ];
  if (tube) {
    parts.push({
      id: "mast",
      name: "Mast tube, galvanised steel",
      quantity: 1,
      unit: "",
      specification: [
        `${tube.name}: ${fixed(tube.outsideMm, 1)} mm outside, wall ${fixed(tube.wallMm, 1)} mm`,
        `${fixed(mounting.tubeLengthM, 1)} m long (${fixed(mounting.mastHeightM, 1)} m above ground)`,
      ],
      price: times(prices.MAST_PER_M, mounting.tubeLengthM),
      because: ["mounting"],
    });
  }
  if (footing) {
    parts.push({
      id: "concrete",
      name: "Concrete mix",
      quantity: footing.bags25Kg,
      unit: "bags of 25 kg",
      specification: [`hole ${fixed(footing.diameterM, 2)} m across and ${fixed(footing.depthM, 2)} m deep`],
      price: prices.CONCRETE_PER_BAG,
      because: ["mounting"],
    });
  }
  if (array) {
    const onMast = mounting.panelMount === "mast";
    parts.push({
      id: "panelMount",
      name: onMast ? "Panel bracket for a pole" : "Ground frame for the panels",
      quantity: 1,
      unit: "",
      specification: [
        `for ${array.panels} panels of ${plain(array.panelW)} W (${fixed(array.areaM2, 1)} m2, ${fixed(array.panels * array.panelKg, 0)} kg)`,
        mounting.tiltDeg === null ? "tilt to be set" : `tilt ${fixed(mounting.tiltDeg, 0)}°`,
        `bears ${fixed(mounting.panelForceN, 0)} N of wind (0.6 of the design gust)`,
      ],
      price: onMast ? prices.PANEL_BRACKET : times(prices.GROUND_FRAME_PER_M2, array.areaM2),
      because: ["mounting", "array"],
    });
  }
  const poleMm = tube?.outsideMm ?? brief.mounting.poleDiameterMm.value;
  parts.push({
    id: "clamps",
    name: poleMm > 0 ? "Pole clamps for camera, radio and box" : "Wall brackets for camera, radio and box",
    quantity: 1,
    unit: "set",
    specification:
      poleMm > 0
        ? [
            `for ${fixed(poleMm, 0)} mm outside diameter`,
            ...(poleMm < CLAMP_MM.narrowest || poleMm > CLAMP_MM.widest
              ? [`usual clamps span ${CLAMP_MM.narrowest} to ${CLAMP_MM.widest} mm: order to measure`]
              : []),
          ]
        : ["with fixings for the wall or roof as it is"],
    price: prices.POLE_CLAMPS,
    because: ["mounting"],
  });
  return parts;
}

function wireParts(brief: Brief, worked: Worked): readonly Draft[] {
  const { wiring, battery, link } = worked;
  const parts: Draft[] = [];
  if (wiring && battery) {
    const bySize = new Map<string, { areaMm2: number; lengthM: number; names: string[] }>();
    for (const run of wiring.runs) {
      const size = `${plain(run.areaMm2)} mm2 (${run.awg})`;
      const found = bySize.get(size) ?? { areaMm2: run.areaMm2, lengthM: 0, names: [] };
      bySize.set(size, {
        areaMm2: run.areaMm2,
        lengthM: found.lengthM + 2 * run.lengthM,
        names: [...found.names, run.name],
      });
    }
    for (const [size, { areaMm2, lengthM, names }] of bySize) {
      parts.push({
        id: `wire.${plain(areaMm2)}.${parts.length + 1}`,
        name: `Copper wire ${size}, fit for outdoors`,
        quantity: Math.ceil(lengthM),
        unit: "m",
        specification: ["both conductors counted", ...names],
        price: prices.wirePerM(areaMm2),
        because: ["wiring"],
      });
    }
    const mainRuns = wiring.runs.filter(({ from, to }) => from === "battery" || to === "battery");
    parts.push({
      id: "fuse.main",
      name: `${capital(wiring.mainFuseKind)} with holder, at the battery`,
      quantity: mainRuns.length,
      unit: "",
      specification: [
        mainRuns
          .map(({ name, fuseA }) => `${name}: ${fuseA === null ? "none fits" : `${plain(fuseA)} A`}`)
          .join("; "),
        `for direct current at ${fixed(battery.absorptionV * 1.1, 0)} V or more, interrupting at least ${fixed(Math.min(wiring.shortCircuitA, wiring.mainFuseInterruptA), 0)} A`,
      ],
      price: prices.MAIN_FUSE,
      because: ["wiring"],
    });
    const busRuns = wiring.runs.filter(
      ({ fuseA, from, to }) => fuseA !== null && from !== "battery" && to !== "battery",
    );
    parts.push({
      id: "fuse.bus",
      name: "Fuses for the load bus, with block",
      quantity: busRuns.length,
      unit: "",
      specification: busRuns.map(({ name, fuseA }) => `${name}: ${plain(fuseA!)} A`),
      price: prices.SMALL_FUSE,
      because: ["wiring"],
    });
    if (wiring.stringFuseA !== null && worked.array) {
      parts.push({
        id: "fuse.string",
        name: "gPV fuse with holder, in each string of panels",
        quantity: worked.array.inParallel,
        unit: "",
        specification: [
          `${plain(wiring.stringFuseA)} A, at least ${fixed(worked.array.coldOpenCircuitV, 0)} V DC`,
        ],
        price: prices.STRING_FUSE,
        because: ["wiring"],
      });
    }
    if (wiring.blockFuseA !== null) {
      parts.push({
        id: "fuse.block",
        name: `${capital(wiring.mainFuseKind)} with holder, at each string of blocks`,
        quantity: battery.inParallel,
        unit: "",
        specification: [`${plain(wiring.blockFuseA)} A`],
        price: prices.MAIN_FUSE,
        because: ["wiring", "battery"],
      });
    }
    const dataM = sum(wiring.poeRuns.map(({ lengthM }) => lengthM + 1));
    parts.push({
      id: "dataCable",
      name: "Data cable, outdoor, solid bare copper",
      quantity: Math.ceil(dataM),
      unit: "m",
      specification: ["category 5e or better, ultraviolet-proof jacket"],
      price: prices.DATA_CABLE_PER_M,
      because: ["wiring", "mounting"],
    });
    if (wiring.runs[0]!.lengthM > 10) {
      parts.push({
        id: "surge.dc",
        name: "Surge protector for the panel's input (DC)",
        quantity: 1,
        unit: "",
        specification: [`IEC 61643-31, above ${fixed(worked.array?.coldOpenCircuitV ?? 0, 0)} V`],
        price: prices.DC_SURGE,
        because: ["wiring"],
      });
    }
  }
  if (link?.carrier === "cable") {
    parts.push({
      id: "homeCable",
      name: "Data cable to the building, for burial or in pipe",
      quantity: Math.ceil(brief.link.distanceM.value + 5),
      unit: "m",
      specification: ["solid bare copper, water-blocked"],
      price: prices.DATA_CABLE_PER_M,
      because: ["link"],
    });
  }
  const outsideRuns = brief.loads.devices.filter((device) => feedOf(device, brief) === "switch").length;
  parts.push(
    {
      id: "surge.data",
      name: "Surge protector for data lines, PoE-rated",
      quantity: outsideRuns + (link ? 1 : 0),
      unit: "",
      specification: ["where each data line enters the box, and one at the far building"],
      price: prices.DATA_SURGE,
      because: ["wiring", "link"],
    },
    {
      id: "glands",
      name: "Cable glands, ferrules, lugs, ties, sealant",
      quantity: 1,
      unit: "set",
      specification: ["glands for each cable's diameter, all entries from below"],
      price: prices.GLANDS,
      because: ["wiring"],
    },
  );
  return parts;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

export const partsNotes = {
  lines: {
    what: "what to buy, with the least specification and a price band",
    formula: "quantities and figures of the stages before; price of one x quantity x currency rate",
    inputs: [
      "array.panels",
      "battery.blocks",
      "view.scenes",
      "link.radio",
      "mounting.tube",
      "wiring.runs",
      "brief.parts",
    ],
    source: "price bands and rates from memory (2026), without tax and carriage",
  },
} satisfies Notes<Parts>;
