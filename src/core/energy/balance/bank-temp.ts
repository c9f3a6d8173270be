import { within } from "../../numerics/index.ts";

/**
 * Temperature of a bank in a closed box: the air outside, smoothed by a first-order lag.
 *
 * The lag starts from the mean of the first day, so that the first hours do not jump. Sun on the box is not in it.
 *
 * @param box.ambientTempC    hourly, at least one entry
 * @param box.timeConstantH   0 to 200: about 10 for a small plastic box, 24 to 48 for a large bank, more in the ground (common
 *         practice, no source); 0 gives the air itself
 * @throws RangeFault outside the ranges above
 * @source first-order lag, exact for air that is steady within the hour
 */
export function bankTempC(box: {
  readonly ambientTempC: Float64Array;
  readonly timeConstantH: number;
}): Float64Array {
  const { ambientTempC } = box;
  within("entries of ambientTempC", ambientTempC.length, 1, 1e8);
  const lagH = within("timeConstantH", box.timeConstantH, 0, 200);
  const kept = lagH === 0 ? 0 : Math.exp(-1 / lagH);
  const firstDay = ambientTempC.subarray(0, 24);
  let tempC = firstDay.reduce((total, ambientC) => total + ambientC, 0) / firstDay.length;
  const bank = new Float64Array(ambientTempC.length);
  for (let hour = 0; hour < bank.length; hour++) {
    const ambientC = within("ambientTempC", ambientTempC[hour]!, -90, 65);
    tempC = ambientC + kept * (tempC - ambientC);
    bank[hour] = tempC;
  }
  return bank;
}
