import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { Button } from '../../parts/button';
import { Notice } from '../../parts/notice';
import { remembered } from '../../parts/remembered';
import { linkTo } from '../../parts/route';
import { useShop } from '../../parts/shop-context';
import { missedSince, type Standing } from '../../parts/standing';
import { BENCH_WORDS, MISSED_WORDS } from '../../words/bench';
import { whenWords } from '../../words/times';

const isInstant = (text: string): text is string => Number.isFinite(Number(text));
const lastSeen = remembered('coatwait-seen', '', isInstant);
/** A shorter look away is no pause. */
const PAUSE_MS = 15 * 60_000;

/** What came while nobody looked, on top until it is seen. */
export function Missed({ standings }: { readonly standings: readonly Standing[] }) {
  const nowMs = useShop().nowMs.value;
  const since = useSignal(sinceMs());
  const missed = nowMs - since.value > PAUSE_MS ? missedSince(standings, since.value) : [];
  useEffect(() => {
    if (missed.length === 0) lastSeen.set(String(nowMs));
  }, [missed.length, nowMs]);
  if (missed.length === 0) return null;

  function markSeen(): void {
    since.value = nowMs;
    lastSeen.set(String(nowMs));
  }
  return (
    <Notice kind="note" title={MISSED_WORDS.title}>
      <ul class="missed">
        {missed.map((standing) => (
          <li key={standing.piece.id}>
            <a href={linkTo('piece', standing.piece.id)}>{lineOf(standing, nowMs)}</a>
          </li>
        ))}
      </ul>
      <div class="acts">
        <Button onClick={markSeen}>{MISSED_WORDS.seen}</Button>
      </div>
    </Notice>
  );
}

/** On the very first look nothing can have been missed. */
const sinceMs = (): number =>
  lastSeen.now.peek() === '' ? Number.POSITIVE_INFINITY : Number(lastSeen.now.peek());

function lineOf({ piece, may, moment }: Standing, nowMs: number): string {
  const what = may === undefined || may === 'first-coat' ? '' : BENCH_WORDS.may[may];
  return MISSED_WORDS.line(piece.name, what, whenWords(moment?.likelyMs ?? nowMs, nowMs));
}
