import type { Shop } from '../../logbook/fold/fold';
import type { Check, Coat, Piece, Sanding } from '../../logbook/fold/piece/pieces';
import type { PiecePlan } from '../../logbook/fold/shop/plans';
import type { Task } from '../../planner/step';
import { GROUND_STEPS } from '../stack/grounds';

/** Something logged of a piece, as its plan understands it. */
export type Happening =
  | { readonly kind: 'coat'; readonly atMs: number; readonly tasks: readonly Task[] }
  | { readonly kind: 'ground'; readonly atMs: number; readonly task: Task }
  | { readonly kind: 'sanded'; readonly atMs: number; readonly task: Task }
  | { readonly kind: 'tried'; readonly atMs: number; readonly gate: string; readonly passes: boolean }
  | { readonly kind: 'marked'; readonly atMs: number; readonly stepId: string; readonly isDone: boolean };

const SANDED: Record<Sanding['stage'], Task> = {
  scuff: 'scuff',
  level: 'level-sand',
  'rub-out': 'rub-out',
};
const TRIED: Partial<Record<Check['test'], string>> = { print: 'no-print', gum: 'powders' };
const FILMS: readonly Task[] = ['coat', 'seal', 'toner-coat', 'opaque-coat'];
const TINTED: readonly Task[] = ['toner-coat', 'opaque-coat'];
const CLEAR: readonly Task[] = ['coat', 'seal'];

/** What was logged of a piece since its plan counts, in time order. */
export function happenings(
  plan: PiecePlan,
  piece: Piece,
  shop: Pick<Shop, 'jars' | 'stepMarks'>,
): Happening[] {
  const sinceMs = plan.since === undefined ? Number.NEGATIVE_INFINITY : Date.parse(plan.since);
  const marks = shop.stepMarks.filter((mark) => mark.piece === piece.id);
  return [
    ...piece.coats.map(
      (coat): Happening => ({ kind: 'coat', atMs: coat.atMs, tasks: tasksOf(coat, plan, shop) }),
    ),
    ...piece.sandings.map(({ atMs, stage }): Happening => ({ kind: 'sanded', atMs, task: SANDED[stage] })),
    ...piece.grounds.map(
      ({ atMs, ground }): Happening => ({ kind: 'ground', atMs, task: GROUND_STEPS[ground].task }),
    ),
    ...piece.checks.flatMap(({ atMs, test, result }): Happening[] => {
      const gate = TRIED[test];
      return gate === undefined ? [] : [{ kind: 'tried', atMs, gate, passes: result === 'passes' }];
    }),
    ...marks.map(
      ({ atMs, step, as }): Happening => ({ kind: 'marked', atMs, stepId: step, isDone: as === 'done' }),
    ),
  ]
    .filter(({ atMs }) => atMs >= sinceMs)
    .sort((one, other) => one.atMs - other.atMs);
}

/** The steps that a coat may be. A pigmented jar lays colour and a clear one clear, where the plan tells them apart. */
export function tasksOf(
  { how, jar }: Coat,
  { steps }: PiecePlan,
  { jars }: Pick<Shop, 'jars'>,
): readonly Task[] {
  if (how === 'flash') return ['flash-coat'];
  if (how === 'brush-fill') return ['drop-fill'];
  const has = (some: readonly Task[]) =>
    steps.some((step) => step.kind === 'work' && some.includes(step.task));
  if (how === 'pad' && has(['pad'])) return ['pad'];
  const own = jars.get(jar)?.pigment ? TINTED : CLEAR;
  return has(own) ? own : FILMS;
}
