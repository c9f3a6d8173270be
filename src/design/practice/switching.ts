/**
 * At which charge loads are let go and come back. The weather years switch by these shares, and the voltages of the settings
 * sheet are worked from them: one truth for both.
 */

/**
 * Loads come back when the bank is half charged.
 * @source judgement after common practice: on again at 12.6 V for each 12 V, which while it is charged at C/20 is about half
 */
const BACK_SOC_FRAC = 0.5;
/** Where frost lets the loads go earlier: still this far above. @source judgement */
const LEAST_BAND_FRAC = 0.15;
/** What may go first goes while the bank still has this much more, and comes back this much later. @source judgement */
const EARLY_FRAC = 0.1;
/** Nothing waits for the last twentieth, which goes in ever more slowly. @source judgement */
const LATEST_BACK_SOC_FRAC = 0.95;

/**
 * Charge current over capacity at which the sheet's voltages hold.
 * @source common practice, no source: the least current that lead-acid should be charged with. In our own weather years the
 *         current at the moment of return was C/28 to C/37 in the median (four lead-acid designs, two places), and between C/110
 *         and C/16 in eight returns of ten: the bank may come back anywhere from 0.3 to 0.7 of its charge
 */
export const SWITCHING_C_RATE = 1 / 20;

/** Shares of what the bank can give: off below the one, on again above the other. */
export interface Switching {
  readonly offSocFrac: number;
  readonly backSocFrac: number;
}

/** @param permittedDodFrac  deepest discharge that the bank is spared beyond, 0.2 to 0.9 */
export function switchingOf(permittedDodFrac: number): {
  /** The picture, and all that it needs. */
  readonly main: Switching;
  /** What is shed first. */
  readonly early: Switching;
} {
  const offSocFrac = 1 - permittedDodFrac;
  const backAfter = (socFrac: number, later: number): number =>
    Math.min(LATEST_BACK_SOC_FRAC, Math.max(BACK_SOC_FRAC, socFrac + LEAST_BAND_FRAC) + later);
  return {
    main: { offSocFrac, backSocFrac: backAfter(offSocFrac, 0) },
    early: { offSocFrac: offSocFrac + EARLY_FRAC, backSocFrac: backAfter(offSocFrac, EARLY_FRAC) },
  };
}

const percent = (frac: number): string => `${Math.round(100 * frac)} %`;

/** The same in words, for the notes. */
export const SWITCHING_WORDS = `loads back at ${percent(BACK_SOC_FRAC)} of the charge, or ${percent(LEAST_BAND_FRAC)} above where they went off if that is more; extras off ${percent(EARLY_FRAC)} earlier and back ${percent(EARLY_FRAC)} later`;
