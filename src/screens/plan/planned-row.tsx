import type { Piece } from '../../logbook/fold/pieces';
import { PieceFace } from '../../parts/film/piece-face';
import { linkTo } from '../../parts/frame/route';
import { Row, type RowProps } from '../../parts/frame/row';
import { useShop } from '../../parts/frame/shop-context';
import { BandTime } from '../../parts/time/band-time';
import { firstOpen } from '../../planner/compile';
import type { PlannedPiece } from '../../planner/plan';
import { PLAN_WORDS } from '../../words/plan/plan';
import { PROMISE_WORDS } from '../../words/plan/planner';
import { verdictWords } from '../../words/verdicts/words';
import { readyBand } from './ready-band';
import { usePlan } from './use-plan';

/** One planned piece: when it is ready, and whether its promise holds. */
export function PlannedRow({ piece }: { readonly piece: Piece }) {
  const { nowMs } = useShop();
  const { bench, plan } = usePlan().planned.value;
  const found = plan.ok ? plan.value.pieces.find(({ pieceId }) => pieceId === piece.id) : undefined;
  const { steps, isLeftOut } = bench.pieces.find(({ id }) => id === piece.id) ?? { steps: [] };
  const isDone = steps.length > 0 && firstOpen(steps) === steps.length;
  const state = isDone ? FINISHED : isLeftOut ? LEFT_OUT : found?.isHeld ? HELD : found && promiseSign(found);
  return (
    <Row
      href={linkTo('plan', piece.id)}
      title={piece.name}
      face={<PieceFace piece={piece} />}
      {...(state && { state })}
    >
      {found && !isDone && (
        <BandTime label={PLAN_WORDS.readyAbout} size="row" {...readyBand(found, nowMs.value)} />
      )}
    </Row>
  );
}

type State = NonNullable<RowProps['state']>;
const FINISHED: State = { icon: 'ready', word: PLAN_WORDS.finished, kind: 'ready' };
const LEFT_OUT: State = { icon: 'stop', word: PLAN_WORDS.leftOutTitle, kind: 'stop' };
const HELD: State = { icon: 'stop', word: verdictWords('hold', 'promise'), kind: 'stop' };
const SIGNS: Record<Exclude<PlannedPiece['promiseState'], 'none'>, Omit<State, 'word'>> = {
  kept: { icon: 'check', kind: 'ready' },
  soft: { icon: 'caution', kind: 'wait' },
  held: { icon: 'stop', kind: 'stop' },
  tight: { icon: 'caution', kind: 'wait' },
  missed: { icon: 'stop', kind: 'stop' },
  past: { icon: 'stop', kind: 'stop' },
};

function promiseSign({ promiseState }: PlannedPiece): State | undefined {
  if (promiseState === 'none') return undefined;
  return { ...SIGNS[promiseState], word: PROMISE_WORDS[promiseState] };
}
