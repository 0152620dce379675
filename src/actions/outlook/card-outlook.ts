import type { TimedReading } from '../../shop/card/next-weighing';
import type { HistoryFault } from '../../shop/stack/history';

/** What a test card says as it is known now. */
export type CardOutlook =
  | { readonly state: 'computing' }
  | { readonly state: 'failed'; readonly why: HistoryFault['kind'] | 'unsolvable' }
  | ({ readonly state: 'ready' } & TimedReading);

/** By card. */
export type CardOutlooks = ReadonlyMap<string, CardOutlook>;
