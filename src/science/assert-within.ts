/** Throws when a quantity lies outside the range its formula holds for. NaN is outside every range. */
export function assertWithin(
  name: string,
  value: number,
  lowest: number,
  highest: number,
  unit: string,
): void {
  // Written as "not inside" rather than "outside" so that NaN is refused.
  if (!(value >= lowest && value <= highest)) {
    throw new RangeError(
      `${name} is ${value} ${unit}; the formula holds from ${lowest} to ${highest} ${unit}.`,
    );
  }
}
