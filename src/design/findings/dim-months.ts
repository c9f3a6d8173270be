import { chainOf } from "../chain/chain.ts";
import { atVoltage } from "../chain/settled-bank.ts";
import { fixed, monthSpans } from "../chain/words.ts";
import { MUCH_SNOW_FRAC } from "../practice/sun.ts";
import type { Rule } from "./rule.ts";

/** Below this a month is dull enough to set a size that the rest of the year does not need. @source judgement */
const DIM_KWH_PER_M2 = 1;
/** Less than this saved is not worth a dark winter. @source judgement */
const LEAST_SAVING_RATIO = 0.95;

/** A dull winter multiplies the size: said with what sleeping through it would save. */
export const dimMonths: Rule = ({ brief, sun, array, battery, money }, world) => {
  if (!sun || !array || !battery || array.darkMonths.length > 0) return null;
  const runs = brief.hours.runsInMonth.value;
  const dim = runs.map((isOn, month) => isOn && sun.poaDailyKWhPerM2ByMonth[month]! < DIM_KWH_PER_M2);
  const names = monthSpans(dim.flatMap((isDim, month) => (isDim ? [month] : [])));
  if (names === "" || runs.every((isOn, month) => !isOn || dim[month])) return null;
  const asleep = chainOf(
    {
      ...atVoltage(brief, battery.bankV),
      hours: {
        runsInMonth: {
          ...brief.hours.runsInMonth,
          value: runs.map((isOn, month) => isOn && !dim[month]),
        },
      },
    },
    world,
  );
  if (!asleep.array || !asleep.battery || asleep.money.highTotal > LEAST_SAVING_RATIO * money.highTotal)
    return null;
  const isSnowy = sun.snowFracByMonth.some((frac, month) => dim[month] && frac > MUCH_SNOW_FRAC);
  const worst = sun.poaDailyKWhPerM2ByMonth[sun.designMonth]!;
  const bankWh = battery.bankAh * battery.bankNominalV;
  const asleepBankWh = asleep.battery.bankAh * asleep.battery.bankNominalV;
  return {
    id: "sun.dim",
    severity: "caution",
    says: `The dull season (${names}, down to ${fixed(worst, 1)} kWh/m2 a day on the panel${isSnowy ? ", much of it under snow" : ""}) alone asks for ${fixed(array.installedW, 0)} W of panels and ${fixed(bankWh / 1000, 1)} kWh of battery; without it ${fixed(asleep.array.installedW, 0)} W and ${fixed(asleepBankWh / 1000, 1)} kWh would do.`,
    change: `${isSnowy ? "Set the panels upright or clear them of snow; let" : "Let"} the post sleep in ${names}, or plan another source of power for them.`,
    numbers: {
      worstKWhPerM2: worst,
      installedW: array.installedW,
      asleepInstalledW: asleep.array.installedW,
      bankWh,
      asleepBankWh,
    },
    topics: ["hours.when", "hours.fromMonth", "hours.toMonth"],
  };
};
