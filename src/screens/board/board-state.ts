import type { Outlook, PieceId } from '../../actions/outlook/outlook';
import type { Shop } from '../../logbook/fold/fold';
import type { Piece } from '../../logbook/fold/pieces';
import { type Moment, momentsOf } from '../../parts/time/moments';

/** How a piece stands on the board; `touch` is when it may be touched, and `after` what comes next for it. */
export interface BoardState {
  readonly id: PieceId;
  readonly name: string;
  readonly kind: 'now' | 'waiting' | 'bare' | 'unknown' | 'failed';
  readonly touch: Moment | undefined;
  readonly after: Moment | undefined;
}

const ORDER = ['waiting', 'now', 'unknown', 'failed', 'bare'] as const;

/** Every open piece, what dries first on top, then what may be touched. */
export function boardStates(
  { pieces }: Pick<Shop, 'pieces'>,
  outlooks: ReadonlyMap<PieceId, Outlook>,
  nowMs: number,
): readonly BoardState[] {
  return [...pieces.values()]
    .filter(({ closedMs }) => closedMs === undefined)
    .map((piece) => stateOf(piece, outlooks.get(piece.id), nowMs))
    .sort(
      (one, other) =>
        ORDER.indexOf(one.kind) - ORDER.indexOf(other.kind) || soonestMs(one) - soonestMs(other),
    );
}

const soonestMs = ({ kind, touch, after }: BoardState): number =>
  (kind === 'waiting' ? touch?.likelyMs : after?.likelyMs) ?? Number.MAX_SAFE_INTEGER;

function stateOf(piece: Piece, outlook: Outlook | undefined, nowMs: number): BoardState {
  const { id, name } = piece;
  const plain = (kind: BoardState['kind']): BoardState => ({
    id,
    name,
    kind,
    touch: undefined,
    after: undefined,
  });
  if (piece.coats.length === 0) return plain('bare');
  if (outlook?.state === 'failed') return plain('failed');
  const moments = momentsOf(piece, outlook, nowMs);
  const touch = moments.find((moment) => moment.name === 'touch');
  if (!touch) return plain('unknown');
  const after = moments.find(
    ({ name, state, likelyMs }) => name !== 'touch' && state !== 'done' && likelyMs > nowMs,
  );
  return { id, name, kind: touch.likelyMs > nowMs ? 'waiting' : 'now', touch, after };
}
