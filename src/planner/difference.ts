import type { Bound, Plan, PlannedStep } from './plan';

/** What moved a step: a step that now takes longer or shorter, was done at another time, came in or fell away; or a rule of the shop. */
export type Why =
  | { readonly by: 'length'; readonly stepId: string; readonly minutes: number }
  | { readonly by: 'done'; readonly stepId: string; readonly minutes: number }
  | { readonly by: 'new-step'; readonly stepId: string }
  | Exclude<Bound, { by: 'step' } | { by: 'person' } | { by: 'done' }>
  | { readonly by: 'order' };

/** One step that begins at another time than before. */
export interface Moved {
  readonly pieceId: string;
  readonly stepId: string;
  readonly from: number;
  readonly to: number;
  readonly why: Why;
}

/** What moved from one plan to the next, soonest first, and why. */
export interface Difference {
  readonly moved: readonly Moved[];
  readonly added: readonly string[];
  readonly removed: readonly string[];
  /** Pieces whose likely end moved, minutes later (below 0: sooner). */
  readonly pieces: readonly { readonly pieceId: string; readonly minutes: number }[];
}

/** Compares a plan with the one before it. */
export function difference(before: Plan, after: Plan): Difference {
  const then = byId(before);
  const now = byId(after);
  const moved = after.steps.flatMap((step) => {
    const old = then.get(step.stepId);
    if (!old || old.start === step.start) return [];
    const { pieceId, stepId } = step;
    return [{ pieceId, stepId, from: old.start, to: step.start, why: rootOf(stepId, then, now) }];
  });
  return {
    moved: moved.sort((a, b) => a.to - b.to),
    added: after.steps.filter(({ stepId }) => !then.has(stepId)).map(({ stepId }) => stepId),
    removed: before.steps.filter(({ stepId }) => !now.has(stepId)).map(({ stepId }) => stepId),
    pieces: movedPieces(before, after),
  };
}

type Steps = ReadonlyMap<string, PlannedStep>;

const byId = ({ steps }: Plan): Steps => new Map(steps.map((step) => [step.stepId, step]));

function movedPieces(before: Plan, after: Plan): { pieceId: string; minutes: number }[] {
  const then = new Map(before.pieces.map(({ pieceId, likely }) => [pieceId, likely]));
  return after.pieces
    .map(({ pieceId, likely }) => ({ pieceId, minutes: likely - (then.get(pieceId) ?? likely) }))
    .filter(({ minutes }) => minutes !== 0);
}

/** Follows a moved step back along what it waits for, to the first thing that is not itself only moved. */
function rootOf(stepId: string, then: Steps, now: Steps): Why {
  const seen = new Set<string>();
  for (let id = stepId; !seen.has(id); ) {
    seen.add(id);
    const old = then.get(id);
    const step = now.get(id);
    if (!step) return { by: 'order' };
    if (!old) return { by: 'new-step', stepId: id };
    if (step.isDone) return { by: 'done', stepId: id, minutes: step.end - old.end };
    const grown = step.end - step.start - (old.end - old.start);
    if (id !== stepId && grown !== 0) return { by: 'length', stepId: id, minutes: grown };
    // What holds a later step now; or what no longer holds it, if it comes sooner.
    const { bound } = step.start > old.start ? step : old;
    if (bound.by !== 'step' && bound.by !== 'person') return bound.by === 'done' ? { by: 'order' } : bound;
    id = bound.stepId;
    const held = now.get(id);
    if (held && then.get(id)?.end === held.end && !seen.has(id)) return { by: 'order' };
  }
  return { by: 'order' };
}
