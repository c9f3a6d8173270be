/**
 * What is missing from a full bank after a while of charging: straight down at the rate offered until that exceeds what the
 * bank accepts, then ever more slowly. Exact, so that the step length does not matter.
 */
export function missingAfter(
  missingWh: number,
  charge: { readonly acceptanceH: number },
  rateW: number,
  hours: number,
): number {
  const { acceptanceH } = charge;
  if (acceptanceH === 0) return Math.max(0, missingWh - rateW * hours);
  const bendWh = acceptanceH * rateW;
  if (missingWh <= bendWh) return missingWh * Math.exp(-hours / acceptanceH);
  const straightH = (missingWh - bendWh) / rateW;
  if (straightH >= hours) return missingWh - rateW * hours;
  return bendWh * Math.exp(-(hours - straightH) / acceptanceH);
}

/** Hours until no more than `targetWh` is missing; Infinity: never. The inverse of the above. */
export function hoursUntilMissing(
  missingWh: number,
  charge: { readonly acceptanceH: number },
  rateW: number,
  targetWh: number,
): number {
  if (missingWh <= targetWh) return 0;
  if (rateW <= 0) return Number.POSITIVE_INFINITY;
  const bendWh = charge.acceptanceH * rateW;
  if (targetWh >= bendWh) return (missingWh - targetWh) / rateW;
  const straightH = Math.max(0, missingWh - bendWh) / rateW;
  return straightH + charge.acceptanceH * Math.log(Math.min(missingWh, bendWh) / targetWh);
}
