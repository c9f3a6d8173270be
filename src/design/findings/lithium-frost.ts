import { sayingIn } from "../../core/units/index.ts";
import type { Brief } from "../brief.ts";
import { chainUnder } from "../chain/chain.ts";
import { fixed } from "../chain/words.ts";
import type { Battery, World } from "../design.ts";
import { BATTERY_WARM_C } from "../practice/loads.ts";
import type { Rule, Worked } from "./rule.ts";

/** Below this lithium iron phosphate may not even be discharged. @source makers' limits, from memory */
const NO_DISCHARGE_BELOW_C = -20;

/** Above this nobody sells one, and it would drink the post empty. @source judgement; the interview takes no more either */
const STRONGEST_HEATER_W = 200;

/** Lithium charged in frost is spoilt for good. */
export const lithiumFrost: Rule = (design, world) => {
  const { brief, climate, battery } = design;
  if (!climate || !battery?.needsWarmth) return null;
  const said = sayingIn(brief.units);
  const cold = said(climate.designColdTempC, "°C");
  const neededW = neededHeaterW(design, battery, world);
  const isHopeless = battery.temperatureC < NO_DISCHARGE_BELOW_C;
  const heater =
    neededW === null
      ? " (to keep so large a lithium battery warm would take more than any heater made for it)"
      : `; or buy a battery with its own heater of ${fixed(neededW, 0)} W or more (all blocks together, in a box of ${said(30, "mm")} of foam) and a low-temperature cut-off, and answer with the heater's watts`;
  return {
    id: "battery.lithiumFrost",
    severity: isHopeless ? "stop" : "caution",
    says: isHopeless
      ? `The coldest month averages ${said(battery.temperatureC, "°C")}: lithium iron phosphate may then be neither charged nor discharged.`
      : `It freezes here (${cold} in the coldest hour), and lithium iron phosphate charged below ${said(0, "°C")} is spoilt for good.`,
    change: `Choose sealed lead-acid (AGM)${heater}.`,
    numbers: {
      designColdTempC: climate.designColdTempC,
      coldestMonthTempC: battery.temperatureC,
      ...(neededW === null ? {} : { neededHeaterW: neededW }),
    },
    topics: ["power.chemistry", "power.batteryHeater", "place.where"],
  };
};

/**
 * Watts that hold the box of the bank that they themselves ask for, by the worksheets; no less than what the bank with the
 * answered heater asks. null where no heater that is sold gives them.
 */
function neededHeaterW({ brief, climate, sun }: Worked, battery: Battery, world: World): number | null {
  const shortK = BATTERY_WARM_C - climate!.designColdTempC;
  const holdsW = ({ boxLossWPerK }: Battery) => Math.ceil(boxLossWPerK * shortK);
  let heaterW = brief.power.batteryHeaterW.value > 0 ? holdsW(battery) : 1;
  while (heaterW <= STRONGEST_HEATER_W) {
    const warmed = chainUnder(
      withHeater(brief, heaterW),
      { climate, sun, refusal: null },
      { ...world, simulation: null },
    );
    const neededW = holdsW(warmed.battery!);
    if (neededW <= heaterW) return heaterW;
    heaterW = neededW;
  }
  return null;
}

function withHeater(brief: Brief, heaterW: number): Brief {
  const { power } = brief;
  return { ...brief, power: { ...power, batteryHeaterW: { ...power.batteryHeaterW, value: heaterW } } };
}
