/**
 * Share of the standard normal distribution below a value.
 *
 * @returns 0 to 1
 * @accuracy 7.5e-8
 * @source Abramowitz and Stegun 1964, eq. 26.2.17
 */
export function normalShareBelow(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const series =
    t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  const tail = Math.exp(-0.5 * z * z) * 0.3989422804014327 * series;
  return z < 0 ? tail : 1 - tail;
}

/**
 * The value that has a share of the standard normal distribution below it.
 *
 * @param share  above 0 and below 1
 * @returns -8 to 8
 * @accuracy 1e-6 between shares of 0.001 and 0.999
 * @source normalShareBelow, halved down upon
 */
export function normalOfShare(share: number): number {
  let below = -8;
  let above = 8;
  for (let i = 0; i < 50; i += 1) {
    const middle = (below + above) / 2;
    if (normalShareBelow(middle) < share) below = middle;
    else above = middle;
  }
  return (below + above) / 2;
}
