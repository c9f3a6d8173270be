import type { Brief } from "../brief.ts";
import type { ArraySizing, Battery } from "../design.ts";
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
            : `management system that stops charging below 0 °C and bears ${fixed(2 * array.chargeCurrentA, 0)} A${battery.inSeries > 1 ? `, allowed ${battery.inSeries} in series` : ""}`,
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
          ? `absorption ${fixed(battery.absorptionV, 1)} V and float ${fixed(battery.floatV, 1)} V at 25 °C, with a sensor for the battery's temperature`
          : `lithium iron phosphate: absorption ${fixed(battery.absorptionV, 1)} V, no temperature compensation`,
        `cuts the loads off at ${fixed(battery.lowVoltageDisconnectV, 1)} V and on again at ${fixed(battery.reconnectV, 1)} V`,
      ],
      price: prices.controllerBand({
        kind: array.controller,
        ratedA: array.controllerA,
        maxInputV: array.controllerMaxInputV,
      }),
      figures: ["array.controller", "array.controllerA", "array.controllerMaxInputV", "battery.absorptionV"],
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
