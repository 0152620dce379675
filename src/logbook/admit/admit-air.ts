import type { Entry, Kind } from '../entry';
import type { Shop } from '../fold/fold';
import { onJar, onOpenPiece } from './piece-or-jar';

export type AirGround =
  | 'unknown-piece'
  | 'piece-closed'
  | 'unknown-jar'
  | 'unknown-filter'
  | 'filter-there-already';

type Rules = {
  readonly [K in Kind]?: (entry: Extract<Entry, { kind: K }>, shop: Shop) => AirGround | undefined;
};

const isKnown = (filter: string, { filters }: Shop): AirGround | undefined =>
  filters.has(filter) ? undefined : 'unknown-filter';

/** What the entries of air, breath and old finishes ask of the shop. */
export const AIR_RULES: Rules = {
  'spot-tested': onOpenPiece,
  'old-finish-seen': onOpenPiece,
  'lead-tested': onOpenPiece,
  'sheet-entered': onJar,
  'filter-opened': ({ filter }, { filters }) => (filters.has(filter) ? 'filter-there-already' : undefined),
  'filter-thrown-out': ({ filter }, shop) => isKnown(filter, shop),
  'spraying-ended': ({ filters }, shop) =>
    filters.map((filter) => isKnown(filter, shop)).find((ground) => ground !== undefined),
};

/** When the filter that this entry is about was opened. */
export const filterBeginningMs = (entry: Entry, { filters }: Shop): number | undefined =>
  entry.kind === 'filter-thrown-out' ? filters.get(entry.filter)?.openedMs : undefined;

/** Whether striking this entry would leave wear with no filter under it. */
export const airLeansOn = (entry: Entry, { filters }: Shop): 'still-used' | undefined =>
  entry.kind === 'filter-opened' && (filters.get(entry.filter)?.wornS ?? 0) > 0 ? 'still-used' : undefined;
