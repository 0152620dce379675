import type { Outlook } from '../../actions/outlook/outlook';
import { PieceFace } from '../../parts/film/piece-face';
import type { IconName } from '../../parts/frame/icons';
import { linkTo } from '../../parts/frame/route';
import { Row, type RowProps } from '../../parts/frame/row';
import { useShop } from '../../parts/frame/shop-context';
import { MomentTime } from '../../parts/time/moment-time';
import type { Standing } from '../../parts/time/standing';
import { BENCH_WORDS } from '../../words/bench';
import { spanWords, whenWords } from '../../words/times';

interface PieceRowProps {
  readonly standing: Standing;
  readonly scaleUmMax: number;
}

/** One piece: its face, how it stands, and the moment it waits for. */
export function PieceRow({ standing, scaleUmMax }: PieceRowProps) {
  const { outlooks, nowMs } = useShop();
  const { piece, after, moment, may } = standing;
  const outlook = outlooks.value.get(piece.id);
  const state = stateOf(standing, outlook, nowMs.value);
  const awaited = may === undefined ? moment : after;
  return (
    <Row
      href={linkTo('piece', piece.id)}
      title={piece.name}
      face={<PieceFace {...{ piece, scaleUmMax }} />}
      {...(state && { state })}
    >
      {may !== undefined && moment && (
        <p class="quiet">{BENCH_WORDS.since(whenWords(moment.likelyMs, nowMs.value))}</p>
      )}
      {awaited && <MomentTime moment={awaited} nowMs={nowMs.value} size="row" />}
    </Row>
  );
}

type State = NonNullable<RowProps['state']>;
const sign = (kind: State['kind'], icon: IconName, word: string): State => ({ kind, icon, word });

function stateOf({ piece, group, may, moment }: Standing, outlook: Outlook | undefined, nowMs: number) {
  if (group === 'closed')
    return sign('quiet', 'check', BENCH_WORDS.closed(whenWords(piece.closedMs ?? 0, nowMs)));
  if (may === 'first-coat') return sign('ready', 'ready', BENCH_WORDS.firstCoat);
  if (may !== undefined && moment) return sign('ready', 'ready', BENCH_WORDS.may[may]);
  if (outlook?.state === 'failed') return sign('stop', 'stop', BENCH_WORDS.failed);
  if (moment) return sign('wait', 'waiting', BENCH_WORDS.inAbout(spanWords(moment.likelyMs - nowMs)));
  return outlook?.state === 'ready' ? undefined : sign('quiet', 'waiting', BENCH_WORDS.computing);
}
