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
