import type { Entry, Kind } from '../entry';
import type { Shop } from '../fold/fold';
import { onOpenPiece } from './piece-or-jar';

export type PlanGround = 'unknown-piece' | 'piece-closed' | 'unknown-step' | 'unknown-closure';

type Rules = {
  readonly [K in Kind]?: (entry: Extract<Entry, { kind: K }>, shop: Shop) => PlanGround | undefined;
};

/** What the entries of plans and opening hours ask of the shop. */
export const PLAN_RULES: Rules = {
  'piece-planned': onOpenPiece,
  'piece-promised': onOpenPiece,
  'step-marked': (mark, shop) =>
    onOpenPiece(mark, shop) ??
    (shop.plans.get(mark.piece)?.steps.some(({ id }) => id === mark.step) ? undefined : 'unknown-step'),
  'closure-lifted': ({ closure: id }, { closures }) =>
    closures.some(({ closure }) => closure === id) ? undefined : 'unknown-closure',
};
