/** What each answer to the question of autonomy would come to at this post: the sizes that would be built. */
import type { Brief } from "../brief.ts";
import type { Design, World } from "../design.ts";
import { DARK_HOURS } from "../practice/battery.ts";
import { sizedOf } from "./sized.ts";

export interface Meaning {
  readonly consequence: "nuisance" | "worry" | "disaster" | "days";
  /** null where days are asked for. */
  readonly askedDarkHours: number | null;
  /** The days that stand in or were asked for; null where dark hours are. */
  readonly askedDays: number | null;
  readonly installedW: number;
  readonly bankAh: number;
  readonly bankV: number;
  /** The sizes keep what was asked. */
  readonly isReached: boolean;
}

/**
 * Each answer is taken as if it had been given, all others as they are.
 *
 * @returns nothing where no size can be worked
 */
export function meaningsOf(
  { brief, climate, sun }: Omit<Design, "findings">,
  world: World,
): readonly Meaning[] {
  return (["nuisance", "worry", "disaster", "days"] as const).flatMap((consequence) => {
    const answered: Brief = {
      ...brief,
      autonomy: { ...brief.autonomy, consequence: { ...brief.autonomy.consequence, value: consequence } },
    };
    const { reliability, battery, array } = sizedOf(answered, { climate, sun }, world);
    if (reliability === null || battery === null || array === null) return [];
    return [
      {
        consequence,
        askedDarkHours: consequence === "days" ? null : DARK_HOURS[consequence],
        askedDays: consequence === "days" ? brief.autonomy.askedDays.value : null,
        installedW: array.installedW,
        bankAh: battery.bankAh,
        bankV: battery.bankV,
        isReached: reliability.isReached,
      },
    ];
  });
}
