import { useEffect, useRef } from 'preact/hooks';
import { keep, kept } from '../../actions/keep/kept-text';
import type { Moment } from '../../verdicts/moments';
import { dayWords } from '../../words/times';

/** The likely times of a piece's moments as they were last shown on this phone, by name. */
export type ShownTimes = Readonly<Record<string, number>>;

/** The moments still to come that now fall on another day than was last shown, with the day shown then. */
export function movedSince(
  shown: ShownTimes | undefined,
  moments: readonly Moment[],
  nowMs: number,
): ReadonlyMap<string, string> {
  return new Map(
    moments.flatMap(({ name, state, likelyMs }) => {
      const beforeMs = shown?.[name] ?? Number.NaN;
      const isToCome = state === 'waiting' || state === 'perhaps';
      if (!isToCome || !Number.isFinite(beforeMs) || !Number.isFinite(likelyMs)) return [];
      const [before, now] = [beforeMs, likelyMs].map((atMs) => dayWords(atMs, nowMs));
      return before === now || before === undefined ? [] : [[name, before] as const];
    }),
  );
}

const KEY = 'coatwait-moments-shown';
/** The pieces looked at last; of older ones nothing is said. */
const MOST_PIECES = 40;

/** What moved since the page of the piece was last looked at: said for as long as the page stands, and not again. */
export function useMoved(
  pieceId: string,
  moments: readonly Moment[],
  nowMs: number,
): ReadonlyMap<string, string> {
  const first = useRef<ShownTimes | undefined>(undefined);
  first.current ??= shownTimes()[pieceId] ?? {};
  const times = JSON.stringify(Object.fromEntries(moments.map(({ name, likelyMs }) => [name, likelyMs])));
  useEffect(() => {
    const { [pieceId]: _before, ...others } = shownTimes();
    const newest = Object.entries(others).slice(1 - MOST_PIECES);
    keep(KEY, { ...Object.fromEntries(newest), [pieceId]: JSON.parse(times) as ShownTimes });
  }, [pieceId, times]);
  return movedSince(first.current, moments, nowMs);
}

/** By piece. */
const shownTimes = () => (kept(KEY) ?? {}) as Readonly<Record<string, ShownTimes>>;
