import type { Outlook } from '../../actions/outlook/outlook';
import type { Piece } from '../../logbook/fold/pieces';
import { Icon } from '../../parts/frame/icons';
import { Notice } from '../../parts/frame/notice';
import { useShop } from '../../parts/frame/shop-context';
import { MomentTime } from '../../parts/time/moment-time';
import type { Moment } from '../../parts/time/moments';
import { type Standing, standingOf } from '../../parts/time/standing';
import { BENCH_WORDS } from '../../words/bench';
import { PIECE_WORDS } from '../../words/piece/piece';
import { bandWords, spanWords, whenWords } from '../../words/times';

interface HeadlineProps {
  readonly piece: Piece;
  readonly outlook: Outlook | undefined;
}

/** What may be done now, and the time awaited, in digits that are read across the shop. */
export function Headline({ piece, outlook }: HeadlineProps) {
  const nowMs = useShop().nowMs.value;
  const standing = standingOf(piece, outlook, nowMs);
  const awaited = standing.may === undefined ? standing.moment : standing.after;
  if (outlook?.state === 'failed')
    return (
      <Notice kind="stop" title={PIECE_WORDS.failed}>
        <p>{PIECE_WORDS.failedText(outlook.message)}</p>
      </Notice>
    );
  return (
    <div class="headline" aria-live="polite" data-empty={outlook?.state === 'computing' || undefined}>
      <MayNow standing={standing} nowMs={nowMs} />
      {awaited && <Awaited moment={awaited} nowMs={nowMs} />}
      {isWorking(piece, outlook) && (
        <p class="state">
          <Icon name="waiting" />
          {outlook?.state === 'ready' ? PIECE_WORDS.stale : PIECE_WORDS.computing}
        </p>
      )}
    </div>
  );
}

const isWorking = (piece: Piece, outlook: Outlook | undefined): boolean =>
  piece.coats.length > 0 && (outlook?.state !== 'ready' || outlook.stale);

function MayNow({
  standing: { may, moment },
  nowMs,
}: {
  readonly standing: Standing;
  readonly nowMs: number;
}) {
  if (may === undefined) return null;
  const words = may === 'first-coat' ? PIECE_WORDS.firstCoat : BENCH_WORDS.may[may];
  return (
    <div>
      <p class="state headline-may" data-kind="ready">
        <Icon name="ready" />
        {words}
      </p>
      <p class="quiet">
        {moment ? PIECE_WORDS.sinceAbout(whenWords(moment.likelyMs, nowMs)) : PIECE_WORDS.firstCoatText}
      </p>
    </div>
  );
}

/** A time of this day fills the width; a day to come is told smaller. */
function Awaited({ moment, nowMs }: { readonly moment: Moment; readonly nowMs: number }) {
  const isClock =
    bandWords(moment, nowMs).day === undefined && moment.lateMs - moment.earliestMs < 72_000_000;
  return (
    <div>
      <MomentTime moment={moment} nowMs={nowMs} size={isClock ? 'board' : 'page'} />
      <p class="quiet">{BENCH_WORDS.inAbout(spanWords(moment.likelyMs - nowMs))}</p>
    </div>
  );
}
