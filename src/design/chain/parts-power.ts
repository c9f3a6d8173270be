import { type Saying, sayingIn } from "../../core/units/index.ts";
import type { Brief } from "../brief.ts";
import type { ArraySizing, Battery, Climate } from "../design.ts";
import { batteryBoxFoamM2, FOAM_W_PER_M_K, FOAM_WALL_M } from "../practice/battery-box.ts";
import { BATTERY_WARM_C } from "../practice/loads.ts";
import * as prices from "../practice/prices.ts";
import { type Draft, splitOwned, times, type Worked } from "./part-draft.ts";
import { fixed, plain } from "./words.ts";

export function powerParts(brief: Brief, worked: Worked): readonly Draft[] {
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
  const heaterW = brief.power.batteryHeaterW.value;
  const said = sayingIn(brief.units);
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
        figures: ["array.panels", "array.panelW", "array.inSeries", "array.openCircuitV", "array.maxPowerV"],
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
            : `management system that stops charging below ${said(0, "°C")} and bears ${fixed(2 * array.chargeCurrentA, 0)} A${battery.inSeries > 1 ? `, allowed ${battery.inSeries} in series` : ""}`,
        ],
        price: times(
          prices.BLOCK_PER_AH[battery.chemistry],
          (battery.blockAh * battery.blockV) / (isLead ? 12 : 12.8),
        ),
        figures: ["battery.blocks", "battery.blockAh", "battery.blockV", "battery.chemistry"],
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
          ? `absorption ${fixed(battery.absorptionV, 1)} V and float ${fixed(battery.floatV, 1)} V at ${said(25, "°C")}, with a sensor for the battery's temperature`
          : `lithium iron phosphate: absorption ${fixed(battery.absorptionV, 1)} V, no temperature compensation`,
      ],
      price: prices.controllerBand({
        kind: array.controller,
        ratedA: array.controllerA,
        maxInputV: array.controllerMaxInputV,
      }),
      figures: ["array.controller", "array.controllerA", "array.controllerMaxInputV", "battery.absorptionV"],
      isOwned: ownsController(brief, { array, battery }),
    },
    ...(heaterW > 0 ? heaterParts(heaterW, { battery, climate, said }) : []),
  ];
}

/** Of the foam, as it is sold by: square feet, hours and Fahrenheit degrees for a British thermal unit. @source 5.678: NIST SP 811 (2008), appendix B.8; from memory */
const FOAM_R = (5.678 * FOAM_WALL_M) / FOAM_W_PER_M_K;

function heaterParts(
  heaterW: number,
  { battery, climate, said }: { readonly battery: Battery; readonly climate: Climate; readonly said: Saying },
): readonly Draft[] {
  const { boxLossWPerK, bankNominalV, bankAh, bankV } = battery;
  const heldC = Math.min(BATTERY_WARM_C, climate.designColdTempC + heaterW / boxLossWPerK);
  return [
    {
      id: "batteryHeater",
      name: "Heater pad for the battery, with thermostat",
      quantity: 1,
      unit: "",
      specification: [
        `${plain(heaterW)} W in all at ${bankV} V, made for batteries; none where the blocks have it built in`,
        `thermostat that switches on below ${said(BATTERY_WARM_C, "°C")}, with its feeler on a block`,
        `the box loses ${said.either(`${fixed(boxLossWPerK, 1)} W for each kelvin`, `${fixed(boxLossWPerK / 1.8, 1)} W for each °F`)}: this holds ${said(heldC, "°C")} in the coldest hour, ${said(climate.designColdTempC, "°C")}`,
      ],
      price: prices.BATTERY_HEATER,
      figures: ["brief.power.batteryHeaterW", "battery.boxLossWPerK", "battery.bankV"],
    },
    {
      id: "boxFoam",
      name: "Foam board to line the battery's part of the box",
      quantity: Math.ceil(10 * batteryBoxFoamM2(bankAh * bankNominalV)) / 10,
      unit: "m2",
      specification: [
        `${said(1000 * FOAM_WALL_M, "mm", { safe: "up" })}, ${said.either(`at most ${FOAM_W_PER_M_K} W per m and K`, `at least R-${fixed(FOAM_R, 1)}`)}, of a kind that goes out by itself`,
        "all six sides, joints taped",
      ],
      price: prices.FOAM_PER_M2,
      figures: ["battery.bankAh", "battery.bankNominalV"],
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
