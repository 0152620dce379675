import type { PieceId } from '../../actions/outlook/outlook';
import type { Shop } from '../../logbook/fold/fold';
import type { Piece } from '../../logbook/fold/piece/pieces';
import { awaitedOf, standingSign } from '../../parts/verdict/sign';
import type { Moment } from '../../verdicts/moments';
import type { Standing } from '../../verdicts/standing';

/** How a piece stands on the board: its word, and the time that is awaited. */
export interface BoardState {
  readonly id: PieceId;
  readonly name: string;
  readonly sign: ReturnType<typeof standingSign>;
  /** Wet: when it may be touched comes before everything else. */
  readonly isWet: boolean;
  readonly awaited: Moment | undefined;
}

const ORDER = ['wait', 'ready', 'stop', 'quiet'] as const;

/** Every open piece, what dries first on top, then what is ready. */
export function boardStates(
  { pieces }: Pick<Shop, 'pieces'>,
  standings: ReadonlyMap<PieceId, Standing>,
  nowMs: number,
): readonly BoardState[] {
  return [...pieces.values()]
    .filter(({ closedMs }) => closedMs === undefined)
    .map((piece) => stateOf(piece, standings.get(piece.id), nowMs))
    .sort(
      (one, other) =>
        ORDER.indexOf(one.sign.kind) - ORDER.indexOf(other.sign.kind) || soonestMs(one) - soonestMs(other),
    );
}

const soonestMs = ({ awaited }: BoardState): number => awaited?.likelyMs ?? Number.MAX_SAFE_INTEGER;

function stateOf({ id, name }: Piece, standing: Standing | undefined, nowMs: number): BoardState {
  const touch = standing?.touch;
  const isWet = touch !== undefined && touch.likelyMs > nowMs;
  const awaited = isWet ? touch : awaitedOf(standing);
  return { id, name, sign: standingSign(standing, nowMs), isWet, awaited };
}
