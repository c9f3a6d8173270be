import { within } from "../numerics/index.ts";

/**
 * Fade margins to plan with: 10 to 15 dB is fine, 20 dB should be safe enough, by an open field textbook (Wireless
 * Networking in the Developing World, read). Where rain or multipath asks for more, that decides.
 */
export const FADE_MARGIN_DB = { least: 10, ordinary: 15, safe: 20 } as const;

/** Allowance for imperfect aim and ageing, dB, on top of the weather's. Judgement, no source. */
export const AGEING_DB = 3;

/**
 * Equivalent isotropically radiated power.
 *
 * @param txPowerDbm  at the transmitter, -60 to 60
 * @param txLossDb    cable, connectors, 0 to 60
 * @param txGainDbi   antenna, -20 to 70
 * @returns dBm
 * @throws RangeFault outside the ranges above
 * @source definition (ITU Radio Regulations)
 */
export function eirpDbm(end: {
  readonly txPowerDbm: number;
  readonly txLossDb: number;
  readonly txGainDbi: number;
}): number {
  return (
    within("txPowerDbm", end.txPowerDbm, -60, 60) -
    within("txLossDb", end.txLossDb, 0, 60) +
    within("txGainDbi", end.txGainDbi, -20, 70)
  );
}

/**
 * Received level of ONE direction. The other direction is a second call with the ends exchanged: power, and the
 * sensitivity of the receiving end, usually differ.
 *
 * @param txPowerDbm   at the transmitter, -60 to 60
 * @param txGainDbi    -20 to 70
 * @param txLossDb     cable and connectors of the transmitting end, 0 to 60
 * @param rxGainDbi    -20 to 70
 * @param rxLossDb     cable and connectors of the receiving end, 0 to 60
 * @param pathLossDb   free space, 0 to 300
 * @param otherLossDb  diffraction, vegetation, gas, rain, misalignment together, 0 to 300
 * @returns rxLevelDbm, and the radiated power eirpDbm which the law limits
 * @throws RangeFault outside the ranges above
 * @source sum of gains and losses, Recommendation ITU-R P.341 (from memory)
 */
export function linkBudget(link: {
  readonly txPowerDbm: number;
  readonly txGainDbi: number;
  readonly txLossDb: number;
  readonly rxGainDbi: number;
  readonly rxLossDb: number;
  readonly pathLossDb: number;
  readonly otherLossDb: number;
}): { readonly rxLevelDbm: number; readonly eirpDbm: number } {
  const radiatedDbm = eirpDbm(link);
  return {
    eirpDbm: radiatedDbm,
    rxLevelDbm:
      radiatedDbm -
      within("pathLossDb", link.pathLossDb, 0, 300) -
      within("otherLossDb", link.otherLossDb, 0, 300) +
      within("rxGainDbi", link.rxGainDbi, -20, 70) -
      within("rxLossDb", link.rxLossDb, 0, 60),
  };
}

/**
 * Voltage across 50 ohm at a power level.
 *
 * @param levelDbm  -200 to 60
 * @returns V, root mean square
 * @throws RangeFault outside the range above
 * @source Ohm's law, P = V^2/50
 */
export function levelV(levelDbm: number): number {
  return Math.sqrt(50 * 10 ** (within("levelDbm", levelDbm, -200, 60) / 10 - 3));
}
