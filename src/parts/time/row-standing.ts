import type { Piece } from '../../logbook/fold/piece/pieces';
import { HOUR_MS } from '../../units';
import type { Act } from '../../verdicts/act';
import type { Standing } from '../../verdicts/standing';
import type { VerdictWord } from '../../verdicts/verdict';
import type { BandMs } from '../../words/times';

/** How a row stands: the judge's word, or why there is none. */
export type RowWord = VerdictWord | 'bare' | 'working' | 'closed';

/** Where a piece stands: its next act, the word on it, and when. */
export interface RowStanding {
  readonly piece: Piece;
  readonly word: RowWord;
  readonly act?: Act | undefined;
  readonly band?: BandMs | undefined;
  /** When it may be done could not be worked out. */
  readonly isFailed?: boolean;
}

/** A row of the bench, from what the judge says of its piece. */
export function rowStanding(
  piece: Piece,
  standing: Standing | undefined,
  clock: { readonly state: string } | undefined,
): RowStanding {
  if (piece.closedMs !== undefined) return { piece, word: 'closed' };
  const verdict = standing?.verdict;
  const isWorking = !verdict || verdict.reasons.some(({ says }) => says === 'computing');
  if (isWorking && verdict?.word !== 'hold') return { piece, word: 'working' };
  const { word, act, until } = verdict;
  if (piece.coats.length === 0 && word === 'ready') return { piece, word: 'bare', act };
  const band = (word === 'ready' ? undefined : until) ?? standing?.moment;
  return { piece, word, act, band, isFailed: clock?.state === 'failed' };
}

/** Since when something is ready: the film allowed it, and what is sanded before it was sanded. */
export const sinceMs = ({ sandings }: Pick<Piece, 'sandings'>, { likelyMs }: BandMs): number =>
  Math.max(likelyMs, sandings.at(-1)?.atMs ?? 0);

const ORDER: Record<RowWord, number> = {
  ready: 1,
  perhaps: 2,
  wait: 3,
  hold: 3,
  working: 4,
  bare: 5,
  closed: 6,
};

/** What is due or became due within the hour first, then what is ready (the newest first), what waits (the soonest first), and what has no coat. */
export function byUrgency(rows: readonly RowStanding[], nowMs: number): readonly RowStanding[] {
  const key = ({ piece, word, band }: RowStanding): readonly [number, number] => {
    const likelyMs = band?.likelyMs ?? piece.startedMs;
    if (band && word !== 'hold' && Math.abs(likelyMs - nowMs) <= HOUR_MS) return [0, likelyMs];
    return [ORDER[word], word === 'ready' || word === 'closed' ? -(piece.closedMs ?? likelyMs) : likelyMs];
  };
  return rows
    .map((row) => ({ row, key: key(row) }))
    .sort(({ key: [a, b] }, { key: [c, d] }) => a - c || b - d)
    .map(({ row }) => row);
}
