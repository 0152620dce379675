import type { CardReading, Expected } from '../../estimator/card/card';
import { DAY_S, HOUR_S } from '../../units';
import { counted, type TestCard } from './cards';

/** What is said of a card, and the instant from which its seconds count. */
export interface TimedReading {
  readonly reading: CardReading;
  readonly startMs: number;
  /** Nobody read the humidity near some weighing. */
  readonly isGuessed: boolean;
}

/** What to do with a card next. */
export type NextWeighing =
  | { readonly do: 'weigh' | 'dry-warm'; readonly atMs: number }
  /** Nothing more would tell. */
  | { readonly do: 'nothing' };

/** Less than this, in nats, is not worth a walk: the band would be narrower by a thirtieth. */
const WORTH = 0.03;
/** As good as the best (judgement, no source). */
const NEARLY = 0.9;
/** A film is given so long to lose its solvent in the open before any warmth (common practice, no source). */
const OPEN_FIRST_S = 2 * DAY_S;
const SOON_S = 0.5 * HOUR_S;

/**
 * When the next weighing tells most: looked at are the times until the card is twice as old, for one may always wait longer and learn
 * more by one weighing, and less by all.
 */
export function nextWeighing(
  card: TestCard,
  { reading, startMs }: TimedReading,
  nowMs: number,
): NextWeighing {
  const lastS = ((card.coats.at(-1)?.atMs ?? startMs) - startMs) / 1000;
  const nowS = (nowMs - startMs) / 1000;
  const ageS = Math.max(nowS - lastS, 0);
  const lines = counted(card);
  const from = Math.max(nowS, lastS + 6 * HOUR_S) - SOON_S;
  const until = lastS + Math.max(DAY_S, 2 * ageS);
  const looked = reading.expected.filter(({ atS }) => atS >= from && atS <= until);
  const most = Math.max(0, ...looked.map(({ gain }) => gain));
  const isDried = lines.some(({ warm }) => warm);
  const isAired = ageS >= OPEN_FIRST_S && lines.length > 1;
  if (!isDried && isAired && reading.warmGain > Math.max(most, WORTH)) return { do: 'dry-warm', atMs: nowMs };
  if (most < WORTH) {
    if (isDried || ageS > OPEN_FIRST_S) return { do: 'nothing' };
    return { do: 'weigh', atMs: startMs + (lastS + OPEN_FIRST_S) * 1000 };
  }
  const best = looked.find(({ gain }) => gain >= NEARLY * most) as Expected;
  return { do: 'weigh', atMs: startMs + Math.max(best.atS, nowS) * 1000 };
}
