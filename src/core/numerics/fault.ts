/**
 * A value outside the range for which a core function promises its accuracy. It is our own bug when it reaches
 * a user: what the builder types is refused long before, as data, by the interview.
 */
export class RangeFault extends Error {
  override readonly name = "RangeFault";
  readonly quantity: string;
  readonly got: number;
  readonly min: number;
  readonly max: number;

  constructor(quantity: string, got: number, min: number, max: number) {
    super(`${quantity} is ${got}; it must lie between ${min} and ${max}`);
    this.quantity = quantity;
    this.got = got;
    this.min = min;
    this.max = max;
  }
}

/**
 * Passes a value through if it is finite and lies in [min, max].
 *
 * @throws RangeFault otherwise (also for NaN)
 */
export function within(quantity: string, value: number, min: number, max: number): number {
  if (!(value >= min && value <= max)) throw new RangeFault(quantity, value, min, max);
  return value;
}
