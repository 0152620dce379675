import type { Piece } from '../../logbook/fold/piece/pieces';
import { Row } from '../../parts/blocks/row';
import { PieceFace } from '../../parts/film/piece-face';
import { linkTo } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import { BandTime } from '../../parts/time/band-time';
import { firstOpen } from '../../planner/compile';
import { PLAN_WORDS } from '../../words/plan/plan';
import { promiseSign } from './promise/promise-sign';
import { readyBand } from './ready-band';
import { usePlan } from './use-plan';

/** One planned piece: when it is ready, and whether its promise holds. */
export function PlannedRow({ piece }: { readonly piece: Piece }) {
  const { nowMs } = useShop();
  const { bench, plan } = usePlan().planned.value;
  const found = plan.ok ? plan.value.pieces.find(({ pieceId }) => pieceId === piece.id) : undefined;
  const { steps, isLeftOut } = bench.pieces.find(({ id }) => id === piece.id) ?? { steps: [] };
  const isDone = steps.length > 0 && firstOpen(steps) === steps.length;
  const state = promiseSign(found, isDone, isLeftOut);
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
