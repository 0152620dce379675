import type { Span } from '../span';

/** The times when something may be done. */
export interface Openings {
  /** The first minute, not before `from`, at which so many minutes fit in without a break; Infinity if none. */
  fit(from: number, minutes: number): number;
}

/** Openings that are worked out day by day, as far as they are asked for, and no further than the last day. */
export function createOpenings(
  spansOfDay: (day: number) => readonly Span[],
  firstDay: number,
  lastDay: number,
): Openings {
  const from: number[] = [];
  const to: number[] = [];
  let nextDay = firstDay;

  function addDay(): void {
    for (const span of spansOfDay(nextDay++)) {
      const last = to.length - 1;
      if (last >= 0 && span.from <= (to[last] as number)) to[last] = Math.max(to[last] as number, span.to);
      else {
        from.push(span.from);
        to.push(span.to);
      }
    }
  }

  /** The first opening that ends at or after the minute, or the last one known. */
  function search(minute: number): number {
    let low = 0;
    let high = to.length - 1;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((to[middle] as number) >= minute) high = middle;
      else low = middle + 1;
    }
    return low;
  }

  return {
    fit(earliest, minutes) {
      for (let i = search(earliest + minutes); ; i++) {
        // The last opening known may run on into the next day, so one more is worked out before it is judged.
        while (i >= to.length - 1 && nextDay <= lastDay) addDay();
        if (i >= to.length) return Number.POSITIVE_INFINITY;
        const at = Math.max(earliest, from[i] as number);
        if (at + minutes <= (to[i] as number)) return at;
      }
    },
  };
}
