import { loggedMs } from '../logbook/time/clock';
import type { HubTrouble } from './hub-failure';

/** How it stands between this phone and the hub. */
export interface HubStatus {
  readonly line: 'opening' | 'open' | 'cut';
  readonly trouble: HubTrouble | undefined;
  /** Entries of this logbook, and how many of them are on the hub. */
  readonly entries: number;
  readonly there: number;
  /** Messages of the hub that are none of this shop's. */
  readonly foreign: number;
  /** Entries of the hub that are still to be read, where it is known. */
  readonly coming: number;
  readonly photosWaiting: number;
  /** When the hub was last heard, ms since 1970; undefined where it was not since the app was opened. */
  readonly heardMs: number | undefined;
  /** Since when something waits; undefined while nothing does. */
  readonly waitingSinceMs: number | undefined;
}

export const NOTHING_HEARD: HubStatus = {
  line: 'opening',
  trouble: undefined,
  entries: 0,
  there: 0,
  foreign: 0,
  coming: 0,
  photosWaiting: 0,
  heardMs: undefined,
  waitingSinceMs: undefined,
};

/** How much of a logbook is on the hub, and since when the first of the rest waits. */
export type Waiting = Pick<HubStatus, 'entries' | 'there' | 'waitingSinceMs'>;

/** When the first of those that are not on the hub was logged; undefined where all are. */
export function waitingSince(ids: Iterable<string>, isThere: (id: string) => boolean): number | undefined {
  for (const id of ids) if (!isThere(id)) return loggedMs(id);
  return undefined;
}

/** How much of a logbook waits for a hub that cannot be reached, by what was known of it last. */
export function waitingAsKnown(
  entries: ReadonlyMap<string, unknown>,
  isThere: (id: string) => boolean,
): Waiting {
  const there = [...entries.keys()].filter(isThere).length;
  return { entries: entries.size, there, waitingSinceMs: waitingSince(entries.keys(), isThere) };
}
