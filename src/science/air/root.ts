const CLOSE_ENOUGH = 1e-9;

/** Where a rising function crosses zero between two bounds: never above the crossing, and within 1e-9 of it. */
export function rootOfRising(rising: (x: number) => number, lowest: number, highest: number): number {
  let low = lowest;
  let high = highest;
  while (high - low > CLOSE_ENOUGH) {
    const middle = (low + high) / 2;
    if (rising(middle) > 0) high = middle;
    else low = middle;
  }
  return low;
}
