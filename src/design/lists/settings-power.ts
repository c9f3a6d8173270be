/** Charge controller: how the bank is filled, when the loads let go, when they run. */

import { isConverted } from "../chain/wire-loads.ts";
import { monthSpans } from "../chain/words.ts";
import type { Battery } from "../design.ts";
import { switchingOf } from "../practice/switching.ts";
import { DEVICE_SUPPLY_V } from "../practice/wiring.ts";
import { amps, counted, listed, percent, ratedAmps, volts } from "./figures.ts";
import { type MaybeStep, step } from "./list.ts";
import type { Post } from "./post.ts";

export function powerSettings(post: Post): readonly MaybeStep[] {
  const { battery } = post.design;
  return [
    battery !== null && charge(post, battery),
    battery !== null && chargeEnd(post, battery),
    battery !== null && disconnect(post, battery),
    converter(post),
    controllerLimits(post),
    ...schedules(post),
  ];
}

function charge({ say }: Post, battery: Battery): MaybeStep {
  const isLead = battery.chemistry === "agm";
  const millivolts = Math.abs(1000 * battery.compensationVPerK).toFixed(0);
  return step(
    "charge",
    `Controller, ${isLead ? "sealed lead-acid (AGM)" : "lithium iron phosphate"} at ${battery.bankV} V: absorption ${volts(battery.absorptionV)}, float ${volts(battery.floatV)}, equalising off, ${
      battery.compensationVPerK === 0
        ? "temperature compensation off"
        : `temperature compensation ${millivolts} mV less for each ${say.said.either("degree", "degree Celsius (1.8 °F)")} above ${say.temperature(25)} and as much more below, its sensor taped to a block`
    }.`,
    {
      why: `Typical values for this kind of battery (from memory): the battery maker's own figures come first. ${isLead ? "Equalising dries a sealed battery out." : "Equalising and compensation are for lead and overcharge lithium."}`,
    },
  );
}

/** Current at which a bank counts as full, over its capacity. @source common practice from memory */
const TAIL_FRAC = { agm: 0.01, lifepo4: 0.05 } as const;

function chargeEnd({ say }: Post, battery: Battery): MaybeStep {
  const tail = amps(TAIL_FRAC[battery.chemistry] * battery.bankAh);
  return battery.chemistry === "agm"
    ? step(
        "chargeEnd",
        `Controller: hold absorption for 2 to 4 hours, or until the current has fallen to ${tail}.`,
        {
          why: "The last tenth of the charge goes in slowly, and a lead-acid bank that never gets it dies early (common practice from memory).",
        },
      )
    : step(
        "chargeEnd",
        `Controller: end absorption when the current has fallen to ${tail}. Stop charging below ${say.temperature(5)} at the battery, where the controller can.`,
        {
          why: `The battery's own management system is the last guard against frost, not the first (makers' limit ${say.temperature(0)}, from memory).`,
        },
      );
}

function disconnect({ first }: Post, battery: Battery): MaybeStep {
  const isLead = battery.chemistry === "agm";
  const { main, early } = switchingOf(battery.permittedDodFrac);
  const relay =
    first.length === 0
      ? ""
      : ` Voltage relay of ${listed(first)}: off at ${volts(battery.earlyDisconnectV)} and on again at ${volts(battery.earlyReconnectV)}, so that ${first.length > 1 ? "they go" : "it goes"} first and the rest, all together, later.`;
  const byCharge = `off at ${percent(main.offSocFrac)} and on at ${percent(main.backSocFrac)}${first.length === 0 ? "" : `, ${listed(first)} off at ${percent(early.offSocFrac)} and on at ${percent(early.backSocFrac)}`}`;
  return step(
    "disconnect",
    `Low-voltage disconnect of the load bus: off at ${volts(battery.lowVoltageDisconnectV)} and on again at ${volts(battery.reconnectV)}.${relay}${
      isLead
        ? ""
        : ` Where a management system or a battery monitor can switch by charge, let that do it instead: ${byCharge}.`
    }`,
    {
      why: `Below the first voltage ${isLead ? "the battery ages fast and can freeze" : "the management system cuts everything off, the controller too"}. ${
        isLead
          ? `On again means about ${percent(main.backSocFrac)} charged: under charge a battery stands higher than at rest (common practice, no source). In strong sun it comes back earlier, in weak sun later.`
          : "Lithium iron phosphate keeps nearly one voltage from 20 to 90 % of its charge, so by voltage the loads may come back anywhere between."
      }`,
    },
  );
}

function converter({ design }: Post): MaybeStep {
  const behind = design.wiring?.runs.filter(isConverted) ?? [];
  return (
    behind.length > 0 &&
    step(
      "converter",
      `DC converter: output ${volts(DEVICE_SUPPLY_V)}, measured before anything is joined to it. It feeds ${listed(behind.map(({ to }) => to))}, each through its own fuse behind the converter.`,
      {
        why: `The load bus carries the battery's voltage, which ${behind.length > 1 ? "these devices do" : "this device does"} not bear. A converter that can be set often comes set to something else.`,
      },
    )
  );
}

function controllerLimits({ design }: Post): MaybeStep {
  const { array } = design;
  return (
    array !== null &&
    step(
      "controllerLimits",
      `Limits of ${array.controllers > 1 ? `each of the ${array.controllers} controllers` : "the controller"}, to be read on its label: at least ${volts(array.controllerMaxInputV)} from the panels and ${ratedAmps(array.controllerA)} of charge.`,
      {
        why: `On the coldest morning the panels reach ${volts(array.coldOpenCircuitV)}, in full sun they charge with ${amps(array.chargeCurrentA)}${array.controllers > 1 ? " in all" : ""}.`,
      },
    )
  );
}

function schedules({ design, say }: Post): readonly MaybeStep[] {
  const { brief } = design;
  const timed = brief.loads.devices.flatMap(({ name, schedule, dayW, nightExtraW }) => {
    if (schedule.kind === "daylight") return [`${name} ${byDaylight(schedule.marginH)}`];
    if (schedule.kind === "clock")
      return [`${name} from ${clock(schedule.fromMin)} to ${clock(schedule.toMin)}`];
    if (schedule.kind === "cold") return [`${name} on below ${say.temperature(schedule.belowC)}`];
    if (schedule.kind === "heat") return [`${name} on above ${say.temperature(schedule.aboveC)}`];
    return dayW.value === 0 && nightExtraW.value > 0 ? [`${name} from sunset to sunrise`] : [];
  });
  const months = brief.hours.runsInMonth.value.flatMap((runs, month) => (runs ? [month] : []));
  return [
    timed.length > 0 &&
      step("schedule", `Switching times: ${listed(timed)}.`, {
        why: "The battery is sized for these hours and no more. Use a timer that keeps its time without power.",
      }),
    months.length < 12 &&
      step(
        "season",
        months.length === 0
          ? "Season: no month was named in which the post runs."
          : `Season: the loads run in ${monthSpans(months)} (${counted(months.length, "month")} a year) and are switched off in the others.`,
        { why: "In the months between, the panels keep the battery full." },
      ),
  ];
}

function byDaylight(marginH: number): string {
  const minutes = Math.round(60 * marginH);
  return minutes === 0
    ? "from sunrise to sunset"
    : `from ${counted(minutes, "minute")} before sunrise to as long after sunset`;
}

const clock = (minute: number): string =>
  `${String(Math.floor(minute / 60)).padStart(2, "0")}:${String(Math.round(minute) % 60).padStart(2, "0")}`;
