import type { Openings } from './openings';

/** The times the person has already been given something to do. */
export interface Busy {
  /** The first minute, not before `from`, where the work falls into an opening and the person is free for it and the move after it. */
  fit(openings: Openings, from: number, minutes: number, moveMinutes: number): number;
  take(from: number, to: number): void;
}

/** A person with nothing to do yet. */
export function createBusy(): Busy {
  const starts: number[] = [];
  const ends: number[] = [];

  /** The first taken time that ends after the minute. */
  function search(minute: number): number {
    let low = 0;
    let high = ends.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((ends[middle] as number) > minute) high = middle;
      else low = middle + 1;
    }
    return low;
  }

  return {
    fit(openings, from, minutes, moveMinutes) {
      let at = openings.fit(from, minutes);
      for (let i = search(at); i < starts.length; i++) {
        if (at + minutes + moveMinutes <= (starts[i] as number)) return at;
        if ((ends[i] as number) > at) at = openings.fit(ends[i] as number, minutes);
      }
      return at;
    },
    take(from, to) {
      const i = search(from);
      const joinsBefore = i > 0 && ends[i - 1] === from;
      const joinsAfter = starts[i] === to;
      if (joinsBefore && joinsAfter) {
        ends.splice(i - 1, 1);
        starts.splice(i, 1);
      } else if (joinsBefore) ends[i - 1] = to;
      else if (joinsAfter) starts[i] = from;
      else {
        starts.splice(i, 0, from);
        ends.splice(i, 0, to);
      }
    },
  };
}
