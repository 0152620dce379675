import type { Outlook } from '../../actions/outlook/outlook';
import type { Piece } from '../../logbook/fold/piece/pieces';
import { Icon } from '../../parts/blocks/icons';
import { Notice } from '../../parts/blocks/notice';
import { useShop } from '../../parts/frame/shop-context';
import { MomentTime } from '../../parts/time/moment-time';
import { sinceMs } from '../../parts/time/row-standing';
import { Reasons } from '../../parts/verdict/reasons';
import { awaitedOf, standingSign } from '../../parts/verdict/sign';
import { SetAside } from '../../parts/verdict/why-anyway';
import type { Moment } from '../../verdicts/moments';
import type { Standing } from '../../verdicts/standing';
import { PIECE_WORDS } from '../../words/piece/piece';
import { bandWords, likelyWords } from '../../words/times';

interface HeadlineProps {
  readonly piece: Piece;
  readonly outlook: Outlook | undefined;
  /** Only how it stands and when: the reasons are on the page of the piece. */
  readonly isBrief?: boolean | undefined;
}

/** What may be done now, and the time awaited, in digits that are read across the shop. */
export function Headline({ piece, outlook, isBrief }: HeadlineProps) {
  const { standings, nowMs } = useShop();
  const standing = standings.value.get(piece.id);
  const awaited = awaitedOf(standing);
  const isTimeFirst = standing?.verdict?.word === 'wait'; // what is awaited is looked for first
  return (
    <>
      {outlook?.state === 'failed' && (
        <Notice kind="stop" title={PIECE_WORDS.failed}>
          <p>{PIECE_WORDS.failedText(outlook.message)}</p>
        </Notice>
      )}
      <div class="headline" aria-live="polite" data-empty={outlook?.state === 'computing' || undefined}>
        {isTimeFirst && awaited && <Awaited moment={awaited} nowMs={nowMs.value} />}
        <Now {...{ piece, standing }} nowMs={nowMs.value} />
        {!isTimeFirst && awaited && <Awaited moment={awaited} nowMs={nowMs.value} />}
        {outlook?.state === 'ready' && outlook.stale && (
          <p class="state">
            <Icon name="waiting" />
            {PIECE_WORDS.stale}
          </p>
        )}
      </div>
      {!isBrief && (
        <>
          <Reasons isTimeShown pieceId={piece.id} verdict={standing?.verdict} />
          <SetAside pieceId={piece.id} verdict={standing?.verdict} />
        </>
      )}
    </>
  );
}

interface NowProps {
  readonly piece: Piece;
  readonly standing: Standing | undefined;
  readonly nowMs: number;
}

function Now({ piece, standing, nowMs }: NowProps) {
  const { kind, icon, word } = standingSign(standing, nowMs);
  const isReady = standing?.verdict?.word === 'ready';
  return (
    <div>
      <p class="state headline-may" data-kind={kind}>
        <Icon name={icon} />
        {kind === 'quiet' ? PIECE_WORDS.computing : word}
      </p>
      {isReady && (
        <p class="quiet">
          {standing.moment
            ? PIECE_WORDS.sinceAbout(
                likelyWords({ ...standing.moment, likelyMs: sinceMs(piece, standing.moment) }, nowMs),
              )
            : PIECE_WORDS.firstCoatText}
        </p>
      )}
    </div>
  );
}

/** A time of this day fills the width; a day to come is told smaller. */
function Awaited({ moment, nowMs }: { readonly moment: Moment; readonly nowMs: number }) {
  const isClock =
    bandWords(moment, nowMs).day === undefined && moment.lateMs - moment.earliestMs < 72_000_000;
  return <MomentTime moment={moment} nowMs={nowMs} size={isClock ? 'board' : 'page'} />;
}
