import { monthlyPoa } from "../../core/sun/index.ts";
import { fixed, monthName } from "../chain/words.ts";
import { ALBEDO } from "../practice/sun.ts";
import type { Rule } from "./rule.ts";

/** What stands round the panel may take this much of the design month before it is said. @source judgement */
const BEARABLE_FRAC = 0.1;

/** Trees and hills take most in the month that has least. */
export const shade: Rule = ({ brief, climate, sun }) => {
  const site = brief.place.site.value;
  const horizon = brief.place.horizon.value;
  const horizonDeg = Math.max(0, ...horizon.map(({ elevationDeg }) => elevationDeg));
  if (!site || !climate || !sun || horizonDeg <= 0) return null;
  const plane = {
    ghiDailyKWhPerM2ByMonth: climate.ghiDailyKWhPerM2ByMonth,
    latitudeDeg: site.latitudeDeg,
    albedoByMonth: climate.ghiDailyKWhPerM2ByMonth.map(() => ALBEDO),
    tiltDeg: sun.tiltDeg,
    azimuthDeg: sun.azimuthDeg,
  };
  const month = sun.designMonth;
  const open = monthlyPoa(plane).poaDailyKWhPerM2ByMonth[month]!;
  const shaded = monthlyPoa({ ...plane, horizon }).poaDailyKWhPerM2ByMonth[month]!;
  const lostFrac = open > 0 ? 1 - shaded / open : 0;
  if (lostFrac <= BEARABLE_FRAC) return null;
  return {
    id: "sun.shade",
    severity: "caution",
    says: `What stands round the panel (up to ${fixed(horizonDeg, 0)}° high) takes ${fixed(100 * lostFrac, 0)} % of the sun in ${monthName(month)}, the month that decides.`,
    change:
      "Move the panel to where the sky toward the equator is open, raise it, or cut what shades it; a panel may stand apart from the camera.",
    numbers: { horizonDeg, lostFrac, openKWhPerM2: open, shadedKWhPerM2: shaded },
    topics: ["place.shade"],
  };
};
