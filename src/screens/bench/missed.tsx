import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { Button } from '../../parts/button';
import { Notice } from '../../parts/notice';
import { remembered } from '../../parts/remembered';
import { linkTo } from '../../parts/route';
import { useDoor } from '../../parts/shop-context';
import { missedSince, type Standing } from '../../parts/standing';
import { BENCH_WORDS, MISSED_WORDS } from '../../words/bench';
import { whenWords } from '../../words/times';

const isInstant = (text: string): text is string => Number.isFinite(Number(text));
const lastSeen = remembered('coatwait-seen', '', isInstant);
/** A shorter look away is no pause. */
const PAUSE_MS = 15 * 60_000;

/** What came while nobody looked, on top until it is seen. */
export function Missed({ standings }: { readonly standings: readonly Standing[] }) {
  const { open } = useDoor();
  const nowMs = open.nowMs.value;
  const since = useSignal(
    lastSeen.now.peek() === '' ? Number.POSITIVE_INFINITY : Number(lastSeen.now.peek()),
  );
  const isPause = nowMs - since.value > PAUSE_MS;
  const missed = isPause ? missedSince(standings, since.value) : [];
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
        {missed.map(({ piece, may, moment }) => (
          <li key={piece.id}>
            <a href={linkTo('piece', piece.id)}>
              {MISSED_WORDS.line(
                piece.name,
                may && may !== 'first-coat' ? BENCH_WORDS.may[may] : '',
                whenWords(moment?.likelyMs ?? nowMs, nowMs),
              )}
            </a>
          </li>
        ))}
      </ul>
      <div class="acts">
        <Button onClick={markSeen}>{MISSED_WORDS.seen}</Button>
      </div>
    </Notice>
  );
}
