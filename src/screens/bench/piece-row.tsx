import type { Piece } from '../../logbook/fold/pieces';
import { PieceFace } from '../../parts/film/piece-face';
import { linkTo } from '../../parts/frame/route';
import { Row, type RowProps } from '../../parts/frame/row';
import { useShop } from '../../parts/frame/shop-context';
import { MomentTime } from '../../parts/time/moment-time';
import { awaitedOf, standingSign } from '../../parts/verdict/sign';
import type { Standing } from '../../verdicts/standing';
import { BENCH_WORDS } from '../../words/bench';
import { likelyWords, whenWords } from '../../words/times';

interface PieceRowProps {
  readonly piece: Piece;
  readonly standing: Standing | undefined;
  readonly scaleUmMax: number;
}

/** One piece: its face, how it stands, and the moment it waits for. */
export function PieceRow({ piece, standing, scaleUmMax }: PieceRowProps) {
  const nowMs = useShop().nowMs.value;
  const awaited = awaitedOf(standing);
  const isReady = standing?.verdict?.word === 'ready';
  return (
    <Row
      href={linkTo('piece', piece.id)}
      title={piece.name}
      face={<PieceFace {...{ piece, scaleUmMax }} />}
      state={rowState(piece, standing, nowMs)}
    >
      {isReady && standing?.moment && (
        <p class="quiet">{BENCH_WORDS.since(likelyWords(standing.moment, nowMs))}</p>
      )}
      {awaited && <MomentTime moment={awaited} nowMs={nowMs} size="row" />}
    </Row>
  );
}

/** What the row says of a piece. */
export const rowState = (
  { closedMs }: Piece,
  standing: Standing | undefined,
  nowMs: number,
): NonNullable<RowProps['state']> =>
  closedMs === undefined
    ? standingSign(standing, nowMs)
    : { kind: 'quiet', icon: 'check', word: BENCH_WORDS.closed(whenWords(closedMs, nowMs)) };
