/** Earth, battery, loads, wires, charge: what a meter must show. */
import { indexOfMin } from "../../core/numerics/index.ts";
import { monthName } from "../chain/words.ts";
import type { Battery, LoadLine, Wiring } from "../design.ts";
import * as cautions from "./cautions.ts";
import { amps, listed, percent, smallVolts, volts, wattHours, watts } from "./figures.ts";
import { type MaybeStep, step } from "./list.ts";
import type { Post } from "./post.ts";

/** How far a load may be off before the battery is looked at again. @source judgement */
const LOAD_TOLERANCE_FRAC = 0.2;

export function powerProofs(post: Post): readonly MaybeStep[] {
  const { battery, wiring } = post.design;
  return [
    earth(post),
    ...(battery === null
      ? loadProofs(post)
      : [
          rest(post, battery),
          ...loadProofs(post),
          total(post, battery),
          wiring !== null && drops(post, wiring),
          wiring !== null && wiring.poeRuns.length > 0 && poe(wiring),
          charge(post, battery),
          absorption(post, battery),
          letGo(post, battery),
          boxHeat(post),
        ]),
  ];
}

const earth = ({ standsFree }: Post): MaybeStep =>
  step("earth", `Measure the ${standsFree ? "earth rod" : "building's earth"}, or have it measured.`, {
    cautions: [cautions.lightning],
    why: "A rod in dry sand can look right and do nothing.",
    expects:
      "At most 25 ohm, or what your code asks; above it a second rod helps (NEC 250.53, from memory). Less than 1 ohm from any metal part to the earth bar.",
  });

const rest = ({ bank }: Post, battery: Battery): MaybeStep =>
  step("rest", "Measure the battery's voltage before anything is switched on.", {
    cautions: bank,
    expects:
      battery.chemistry === "agm"
        ? `At least ${volts((12.4 / 12) * battery.bankV)}, which is three quarters charged (from memory). Below it, charge first.`
        : `At least ${volts((13.1 / 12.8) * battery.bankNominalV)} (from memory). A meter cannot read the charge of this kind finely.`,
  });

/** What runs by its own thermostat is not to be had on the day of commissioning. */
const BY_THERMOSTAT: ReadonlySet<LoadLine["kind"]> = new Set(["heater", "fan"]);

/** One step for each device that somebody can put a meter on. */
function loadProofs({ design }: Post): readonly MaybeStep[] {
  return design.loads.lines
    .filter(
      ({ dayW, nightW, kind }) =>
        Math.max(dayW, nightW) > 0 && kind !== "converter" && !BY_THERMOSTAT.has(kind),
    )
    .map((line, i) =>
      step(`load${i + 1}`, `${line.name}: measure what it draws${wording(line)}.`, {
        why:
          line.origin === "measured"
            ? "It was measured before: here it runs on its own wire."
            : "The sums rest on a figure that nobody has measured here yet.",
        expects: `${loadWords(line)}, within ${percent(LOAD_TOLERANCE_FRAC)}. If it is more, change the answer and look at the battery again.`,
      }),
    );
}

const wording = ({ dayW, nightW }: LoadLine): string =>
  nightW > dayW && dayW > 0 ? ", by day and again at night with its light on" : "";

function loadWords({ dayW, nightW }: LoadLine): string {
  if (dayW === 0) return `${watts(nightW)} at night`;
  return nightW > dayW ? `${watts(dayW)} by day, ${watts(nightW)} at night` : watts(dayW);
}

function total({ design, bank }: Post, battery: Battery): MaybeStep {
  const { loads, sun } = design;
  const month = sun?.designMonth ?? indexOfMin(loads.dailyWhByMonth.map((wh) => -wh));
  const byHour = loads.batteryWByMonthAndHour[month]!;
  return step("total", "Read what everything together takes from the battery, at noon and at midnight.", {
    cautions: bank,
    why: "It is the one figure that counts converters and losses too.",
    expects: `${drawn(byHour[12]!, battery)} at noon and ${drawn(byHour[0]!, battery)} at midnight (${monthName(month)}), within ${percent(LOAD_TOLERANCE_FRAC)}.`,
  });
}

const drawn = (powerW: number, battery: Battery): string =>
  powerW === 0 ? "Nothing" : `${watts(powerW)} (${amps(powerW / battery.bankNominalV)})`;

/** The limits of the design, not its own figures: a drop below the limit is right whatever the cable's exact length. */
function drops({ bank }: Post, wiring: Wiring): MaybeStep {
  const limits = wiring.runs.map(
    ({ name, maxDropFrac, systemV }) => `${name} ${smallVolts(maxDropFrac * systemV)}`,
  );
  return step(
    "drops",
    "With everything on and the sun on the panels, measure the voltage at both ends of each run.",
    {
      cautions: bank,
      why: "A loose crimp shows as lost voltage long before it shows as heat.",
      expects: `At most so much less at the far end: ${listed(limits)}.`,
    },
  );
}

function poe(wiring: Wiring): MaybeStep {
  const at = wiring.poeRuns
    .filter(({ deviceV }) => deviceV > 0)
    .map(({ device, deviceV }) => `${device} ${volts(deviceV)}`);
  return (
    at.length > 0 &&
    step(
      "poe",
      "Read the supply voltage at the far end of each data cable, if the device or the PoE meter shows it.",
      {
        why: "The longest cable loses most, and a device that starts by day can fail when its infrared light comes on.",
        expects: `At least, with the light on: ${listed(at)}.`,
      },
    )
  );
}

function charge({ design, livePanel, bank, say }: Post, battery: Battery): MaybeStep {
  const { array } = design;
  return (
    array !== null &&
    array.panels > 0 &&
    step(
      "charge",
      "Near noon under a clear sky, read voltage and current from the panels and into the battery.",
      {
        cautions: [livePanel, ...bank],
        why: "Take it while the battery is not yet full: a full one takes little.",
        expects: `Between ${amps(0.5 * array.chargeCurrentA)} and ${amps(array.chargeCurrentA)} into the battery, and never more than ${volts(array.controllerMaxInputV)} from the panels. A third or less means shade, dirt or a wrong connection. The battery stays below ${volts(battery.absorptionV * 1.02)}${battery.compensationVPerK === 0 ? "" : ` at ${say.temperature(25)}, a little more in the cold`}.`,
      },
    )
  );
}

function absorption({ design, bank }: Post, battery: Battery): MaybeStep {
  const { loads, sun } = design;
  const nightWh = loads.designDailyWh * loads.nightShareFrac;
  const month = sun === null ? "the dark season" : monthName(sun.designMonth);
  return step(
    "firstWeek",
    "In the first week, look each day whether the battery reaches absorption, and read its voltage at dusk and before dawn.",
    {
      cautions: bank,
      why:
        battery.chemistry === "agm"
          ? "Incomplete charging is what kills lead-acid batteries in solar use."
          : "A bank that does not fill in good weather has no reserve for bad.",
      expects: `Absorption (${volts(battery.absorptionV)}) on every clear day. A night takes at most about ${wattHours(nightWh)} in ${month}, ${percent(nightWh / (battery.bankAh * battery.bankNominalV))} of the bank, and the voltage stays above ${volts(battery.lowVoltageDisconnectV)}.`,
    },
  );
}

function letGo({ bank, first }: Post, battery: Battery): MaybeStep {
  const relay =
    first.length === 0
      ? ""
      : `, the voltage relay ${volts(battery.earlyDisconnectV)} off and ${volts(battery.earlyReconnectV)} on again`;
  return step(
    "letGo",
    `Set the disconnect a little above the present voltage for a minute, watch the loads go off, and set it back.${first.length === 0 ? "" : " Then the same with the voltage relay."}`,
    {
      cautions: bank,
      why: "A disconnect that was never tried is a hope.",
      expects: `The loads go off and come back by themselves. Afterwards it reads ${volts(battery.lowVoltageDisconnectV)} off and ${volts(battery.reconnectV)} on again${relay}.`,
    },
  );
}

function boxHeat({ design, heat, say }: Post): MaybeStep {
  const { climate, mounting } = design;
  const rise = Math.max(1, Math.round(mounting.box.riseK));
  return (
    climate !== null &&
    step("boxHeat", "On the first hot afternoon, read the temperature inside the box, shut for an hour.", {
      cautions: [heat],
      why: `Electronics and batteries age twice as fast for every ${say.rise(10)} (from memory).`,
      expects: `About ${say.rise(rise)} above the air, within ${say.rise(5)}: up to ${say.temperature(climate.designHotTempC + rise)} in the hottest hours here. More means sun on the box.`,
    })
  );
}
