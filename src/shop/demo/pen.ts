import { type Entry, type EntryBody, inItsVersion } from '../../logbook/entry';
import { zoneOffset } from '../../logbook/time/zone-offset';
import { atLocal, localDay, toInstantMs, toMinute } from '../../planner/local-day';
import { HOUR_MINUTES, MINUTE_MS } from '../../units';

/** What the demo is written with: a clock that stands still, a zone, and ids. */
export interface PenNeeds {
  readonly nowMs: number;
  readonly zone: string;
  readonly newId: () => string;
}

/** Writes invented entries around now. */
export interface Pen {
  readonly entries: readonly Entry[];
  readonly newId: () => string;
  /** Writes an entry and gives its id. */
  write(body: EntryBody, atMs: number): string;
  /** The instant of a wall-clock time so many days ago. */
  daysAgo(days: number, hour: number, minute?: number): number;
  minutesAgo(minutes: number): number;
}

/** A pen with an empty page. */
export function takePen({ nowMs, zone, newId }: PenNeeds): Pen {
  const entries: Entry[] = [];
  const offset = zoneOffset(zone);
  const today = localDay(toMinute(nowMs), offset);
  return {
    entries,
    newId,
    write(body, atMs) {
      const entry = inItsVersion({ ...body, id: newId(), at: new Date(atMs).toISOString(), zone }) as Entry;
      entries.push(entry);
      return entry.id;
    },
    daysAgo: (days, hour, minute = 0) =>
      toInstantMs(atLocal(today - days, hour * HOUR_MINUTES + minute, offset)),
    minutesAgo: (minutes) => nowMs - minutes * MINUTE_MS,
  };
}
