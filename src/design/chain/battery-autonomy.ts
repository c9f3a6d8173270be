import { autonomyDaysSuggestion } from "../../core/energy/index.ts";
import { clamp } from "../../core/numerics/index.ts";
import type { Brief } from "../brief.ts";
import type { Battery, Sun } from "../design.ts";
import {
  allowedDarkHours,
  daysForDarkHours,
  MOST_VISIT_DAYS,
  POLAR_USABLE_FRAC,
} from "../practice/battery.ts";
import { fixed, plain } from "./words.ts";

/** Days by the fits, held between what practice calls too few and enough, and never shorter than the way of whoever comes. */
export function autonomyOf(
  brief: Brief,
  given: { readonly sun: Sun; readonly darkMonths: number },
): Pick<Battery, "autonomyDays" | "autonomyReason" | "bridgesDarkMonths"> {
  const { autonomy, place } = brief;
  const sunHours = given.sun.poaDailyKWhPerM2ByMonth[given.sun.designMonth]!;
  const isDark = given.darkMonths > 0;
  const darkHours = allowedDarkHours(autonomy);
  if (darkHours === null) {
    const days = autonomy.askedDays.value;
    return {
      autonomyDays: days,
      autonomyReason: `the ${plain(days)} days you asked for`,
      bridgesDarkMonths: false,
    };
  }
  const latitudeDeg = place.site.value!.latitudeDeg;
  const suggestion = (availability: 0.95 | 0.99, peakSunHours: number) =>
    autonomyDaysSuggestion({ availability, peakSunHours, latitudeDeg });
  if (isDark) {
    const days = POLAR_USABLE_FRAC * suggestion(darkHours > 200 ? 0.95 : 0.99, sunHours).days;
    return {
      autonomyDays: days,
      autonomyReason: `${fixed(days, 0)} days while it is new, because ${given.darkMonths} of the months asked for bring practically no sun here and the bank alone must carry them, as at polar stations`,
      bridgesDarkMonths: true,
    };
  }
  // where the array carries even a dull month by itself, no season has to be stored: the fits end at 1.5 and are held there
  const held = clamp(sunHours, 1.5, 15);
  const fitted = daysForDarkHours(
    {
      at95: suggestion(0.95, held).days,
      at99: suggestion(0.99, held).days,
      at99WhereFitsEnd: suggestion(0.99, 1.5).days,
      sunHours: held,
    },
    darkHours,
  );
  const visitDays = Math.min(autonomy.visitDays.value, MOST_VISIT_DAYS);
  const days = Math.max(fitted, visitDays);
  const worst = `${fixed(sunHours, 1)} kWh/m2 a day fall on the panel in the worst month`;
  return {
    autonomyDays: days,
    autonomyReason:
      days > fitted
        ? `${fixed(days, 0)} days, because it can take that long until somebody comes by (the sun alone would ask for ${fixed(fitted, 1)})`
        : `${fixed(days, 1)} days, because ${worst} and at most about ${fixed(darkHours, 0)} hours a year may be dark`,
    bridgesDarkMonths: false,
  };
}
