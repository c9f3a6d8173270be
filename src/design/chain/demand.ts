/**
 * What the post draws from its battery, hour by hour of each month's mean day: what the load stage reports and what the sun
 * stage needs to find the design month.
 */
import { sum } from "../../core/numerics/index.ts";
import { normalShareBelow } from "../../core/weather/index.ts";
import type { Brief, Device, Schedule } from "../brief.ts";
import type { ByMonth, Climate } from "../design.ts";
import { PERMITTED_DOD_FRAC } from "../practice/battery.ts";
import { batteryBoxLossWPerK } from "../practice/battery-box.ts";
import {
  BANK_SPAN_V_BY_BANK_V,
  BATTERY_WARM_C,
  CONTROLLER_OWN_W,
  CONVERTER_EFFICIENCY_FRAC,
  CONVERTER_IDLE_W,
  peakRatio,
  STAND_IN_BANK_DAYS,
  SWITCH_OWN_W,
  WIRE_EFFICIENCY_FRAC,
} from "../practice/loads.ts";
import { common, darkSpans, lightSpans, overlapH, runningSpans, type Span } from "./spans.ts";

/** Which way a device is fed: through the switch, through the regulator, or straight from the bank. */
export type Feed = "switch" | "converter" | "direct";

/** Day by day of the year, what a demand depends on. */
export interface Daylight {
  /** Hours of daylight on the mean day of each month. */
  readonly daylightHByMonth: ByMonth;
  readonly clockMinusSolarH: number;
  /** For what runs by a thermostat; without it, that runs all the time. */
  readonly air?: Air | null;
  /** Of the battery's box (batteryBoxLossWPerK), for its heater; without it, that of a bank of some days. */
  readonly boxLossWPerK?: number | null;
}

/** Hourly temperatures of each month, taken as spread by the bell curve about its mean. */
export interface Air {
  readonly meanTempCByMonth: ByMonth;
  readonly spreadK: number;
}

/**
 * The spread that puts the coldest hour of a usual year at the far end of the coldest month.
 * @source arithmetic: of some 740 hours of a month, the lowest lies three standard deviations below the mean
 */
export function airOf(climate: Climate | null): Air | null {
  if (climate === null) return null;
  const { meanTempCByMonth, designColdTempC, designHotTempC } = climate;
  const cold = Math.min(...meanTempCByMonth) - designColdTempC;
  const hot = designHotTempC - Math.max(...meanTempCByMonth);
  return { meanTempCByMonth, spreadK: Math.max(1, cold, hot) / 3 };
}

/** Points of the bell curve over which the battery heater's work is averaged. */
const WARMING_POINTS = 41;

/** Share of its power that a battery heater needs on the mean of a month: the heat that the box loses, up to all it has. */
function warmingFrac(
  heaterW: number,
  month: number,
  { air, boxLossWPerK }: { readonly air: Air | null | undefined; readonly boxLossWPerK: number },
): number {
  if (!air) return 1;
  const shares = Array.from({ length: WARMING_POINTS }, (_, i) => {
    const z = -3 + (6 * i) / (WARMING_POINTS - 1);
    const shortK = BATTERY_WARM_C - (air.meanTempCByMonth[month]! + z * air.spreadK);
    const frac = Math.min(1, (Math.max(0, shortK) * boxLossWPerK) / heaterW);
    return { weight: Math.exp(-(z ** 2) / 2), frac };
  });
  return sum(shares.map(({ weight, frac }) => weight * frac)) / sum(shares.map(({ weight }) => weight));
}

/** Box of the bank that stands in while none is known. */
export function standInBoxLossWPerK(brief: Brief): number {
  const others = drawsOf(brief).filter(({ keepsBatteryWarm }) => !keepsBatteryWarm);
  const dailyWh = 12 * sum(others.map(({ batteryRatio, dayW, nightW }) => batteryRatio * (dayW + nightW)));
  return batteryBoxLossWPerK((STAND_IN_BANK_DAYS * dailyWh) / PERMITTED_DOD_FRAC.lifepo4);
}

/** Share of a month's hours in which a thermostat has its device on. */
function thermostatFrac(schedule: Schedule, air: Air | null | undefined, month: number): number {
  if ((schedule.kind !== "cold" && schedule.kind !== "heat") || !air) return 1;
  const limitC = schedule.kind === "cold" ? schedule.belowC : schedule.aboveC;
  const belowFrac = normalShareBelow((limitC - air.meanTempCByMonth[month]!) / air.spreadK);
  return schedule.kind === "cold" ? belowFrac : 1 - belowFrac;
}

/** Without a place every day is taken as twelve hours long, by the clock as by the sun. */
export const UNKNOWN_DAYLIGHT: Daylight = {
  daylightHByMonth: Array.from({ length: 12 }, () => 12),
  clockMinusSolarH: 0,
};

/** One device, or one part that only serves the others. */
export interface Drawn {
  readonly name: string;
  readonly kind: Device["kind"] | "switch" | "converter" | "controller";
  readonly device: Device | null;
  readonly dayW: number;
  readonly nightW: number;
  /** What leaves the battery for each watt of it. */
  readonly batteryRatio: number;
  /** For a moment, at the battery. */
  readonly peakW: number;
  /** Runs in a month in which the post is laid up. */
  readonly isAlwaysOn: boolean;
  /** Of a part that keeps the battery warm: what it draws depends on the cold alone. */
  readonly keepsBatteryWarm: boolean;
}

/**
 * Every draw: the devices in the brief's order, then one switch for all PoE devices, one regulator for the DC devices that do
 * not bear the bank's own voltage, and the charge controller.
 */
export function drawsOf(brief: Brief): readonly Drawn[] {
  const { devices } = brief.loads;
  const feeds = devices.map((device) => feedOf(device, brief));
  let camera = 0;
  const drawn = devices.map((device, i): Drawn => {
    const scene = device.kind === "camera" ? brief.view.scenes[camera++] : undefined;
    const nightW = device.dayW.value + nightExtraW(device, brief);
    const batteryRatio = 1 / (WIRE_EFFICIENCY_FRAC * (feeds[i] === "direct" ? 1 : CONVERTER_EFFICIENCY_FRAC));
    const isTurning = scene?.kind.value === "turning";
    return {
      name: device.name,
      kind: device.kind,
      device,
      dayW: device.dayW.value,
      nightW,
      batteryRatio,
      peakW: nightW * batteryRatio * peakRatio({ kind: device.kind, isTurning }),
      isAlwaysOn: false,
      keepsBatteryWarm: false,
    };
  });
  if (feeds.includes("switch")) drawn.push(server("PoE switch", "switch", SWITCH_OWN_W));
  if (feeds.includes("converter")) drawn.push(server("DC converter, idle", "converter", CONVERTER_IDLE_W));
  drawn.push({ ...server("Charge controller", "controller", CONTROLLER_OWN_W), isAlwaysOn: true });
  const heaterW = brief.power.batteryHeaterW.value;
  if (heaterW > 0) {
    drawn.push({ ...server("Battery heater", "heater", heaterW), batteryRatio: 1, keepsBatteryWarm: true });
  }
  return drawn;
}

/** A part that draws the same day and night; the controller's own draw does not cross the load's wire, which is neglected. */
function server(name: string, kind: "switch" | "converter" | "controller" | "heater", ownW: number): Drawn {
  const batteryRatio = kind === "controller" ? 1 : 1 / WIRE_EFFICIENCY_FRAC;
  return {
    name,
    kind,
    device: null,
    dayW: ownW,
    nightW: ownW,
    batteryRatio,
    peakW: ownW * batteryRatio,
    isAlwaysOn: false,
    keepsBatteryWarm: false,
  };
}

/** Infrared light of a camera burns only where the builder wants infrared; anything else keeps its own figure. */
function nightExtraW(device: Device, brief: Brief): number {
  return device.kind === "camera" && brief.view.night.value !== "infrared" ? 0 : device.nightExtraW.value;
}

/**
 * A PoE device hangs on the switch. A DC device is fed through a regulated converter, because a bank swings from disconnect to
 * a cold morning's charge; only a radio of the builder's own whose data sheet covers that whole swing is fed directly.
 */
export function feedOf(device: Device, brief: Brief): Feed {
  const owned = device.kind === "radio" ? brief.parts.radio?.value : undefined;
  if (owned?.feed === "dc") {
    const banks = brief.power.bankV.value === "choose" ? ([12, 24] as const) : [brief.power.bankV.value];
    const covers = banks.every((bankV) => {
      const [minV, maxV] = BANK_SPAN_V_BY_BANK_V[bankV];
      return owned.minInputV <= minV && owned.maxInputV >= maxV;
    });
    return covers ? "direct" : "converter";
  }
  return device.feed === "poe" ? "switch" : "converter";
}

/** Hours of a day in which a draw runs, split into light and dark. */
export interface Running {
  readonly lightSpans: readonly Span[];
  readonly darkSpans: readonly Span[];
  /** Share of those hours in which a thermostat lets it run; 1 without one. */
  readonly onFrac: number;
}

export function runningOf(
  drawn: Drawn,
  when: { readonly brief: Brief; readonly month: number; readonly daylight: Daylight },
): Running {
  const { brief, month, daylight } = when;
  const daylightH = daylight.daylightHByMonth[month]!;
  if (!drawn.isAlwaysOn && !brief.hours.runsInMonth.value[month])
    return { lightSpans: [], darkSpans: [], onFrac: 1 };
  const running = drawn.device
    ? runningSpans({
        schedule: drawn.device.schedule,
        daylightH,
        clockMinusSolarH: daylight.clockMinusSolarH,
      })
    : [[0, 24] as const];
  return {
    lightSpans: common(running, lightSpans(daylightH)),
    darkSpans: common(running, darkSpans(daylightH)),
    onFrac: drawn.keepsBatteryWarm
      ? warmingFrac(drawn.dayW, month, {
          air: daylight.air,
          boxLossWPerK: daylight.boxLossWPerK ?? standInBoxLossWPerK(brief),
        })
      : drawn.device
        ? thermostatFrac(drawn.device.schedule, daylight.air, month)
        : 1,
  };
}

/** Energy of one draw on a day, at the battery. */
export function drawnWh(
  drawn: Drawn,
  running: Running,
): { readonly lightWh: number; readonly darkWh: number } {
  return {
    lightWh: drawn.batteryRatio * drawn.dayW * lengthH(running.lightSpans) * running.onFrac,
    darkWh: drawn.batteryRatio * drawn.nightW * lengthH(running.darkSpans) * running.onFrac,
  };
}

export function lengthH(spans: readonly Span[]): number {
  return sum(spans.map(([from, to]) => to - from));
}

/** Mean power from the battery in each hour of the mean day of each month, 12 x 24. */
export function batteryWByMonthAndHour(brief: Brief, daylight: Daylight): readonly (readonly number[])[] {
  return wByMonthAndHour(drawsOf(brief), brief, daylight);
}

/** The same of some of the draws. */
export function wByMonthAndHour(
  draws: readonly Drawn[],
  brief: Brief,
  daylight: Daylight,
): readonly (readonly number[])[] {
  return Array.from({ length: 12 }, (_, month) => {
    const running = draws.map((drawn) => runningOf(drawn, { brief, month, daylight }));
    return Array.from({ length: 24 }, (_, hour) => {
      const thisHour: readonly Span[] = [[hour, hour + 1]];
      return sum(
        draws.map(
          (drawn, i) =>
            drawn.batteryRatio *
            running[i]!.onFrac *
            (drawn.dayW * overlapH(running[i]!.lightSpans, thisHour) +
              drawn.nightW * overlapH(running[i]!.darkSpans, thisHour)),
        ),
      );
    });
  });
}

/** Energy from the battery on the mean day of each month. */
export function dailyWhByMonth(brief: Brief, daylight: Daylight): ByMonth {
  return batteryWByMonthAndHour(brief, daylight).map(sum);
}
