import type { Band as BandS, Estimate } from '../../estimator/estimate';
import type { Piece } from '../../logbook/fold/pieces';
import { firstOpen } from '../../planner/compile';
import { toMinute } from '../../planner/local-day';
import type { Band, Step, WaitFor } from '../../planner/step';
import type { Outlook } from '../outlook/outlook';

type Milestone = 'recoat' | 'level' | 'rubOut';
const AWAITS: Partial<Record<WaitFor, Milestone>> = {
  recoat: 'recoat',
  'level-sand': 'level',
  'rub-out': 'rubOut',
};
/** Whether the drying model has a wait of its own for a step. */
export const hasEstimate = (step: Step, { coats }: Piece, outlook: Outlook | undefined): boolean =>
  step.kind === 'wait' &&
  AWAITS[step.until] !== undefined &&
  outlook?.state === 'ready' &&
  coats.some(({ how }) => how !== 'flash');

export interface WaitsOf {
  readonly piece: Piece;
  readonly outlook: Outlook | undefined;
  /** Whether the wait was set by hand. */
  readonly isOwn: (stepId: string) => boolean;
  readonly nowMs: number;
}

/** What never ends within the time looked at is planned as this. */
const LONGEST_MINUTES = 500 * 1440;

/**
 * The steps with the estimator's own waits in place of common practice, from the last coat on; waits set by hand stay.
 *
 * The milestones are those of the film as it is. A wait to recoat after a coat that is still to come is taken to be as long as now;
 * to level-sand and to rub out each further coat adds what one more coat adds now.
 */
export function estimatedWaits(
  steps: readonly Step[],
  { piece, outlook, isOwn, nowMs }: WaitsOf,
): readonly Step[] {
  const lastMs = piece.coats.findLast(({ how }) => how !== 'flash')?.atMs;
  if (outlook?.state !== 'ready' || lastMs === undefined) return steps;
  const after = afterLastCoat(outlook.estimate, (lastMs - outlook.startMs) / 1000, (nowMs - lastMs) / 1000);
  const open = firstOpen(steps);
  let coatsAhead = 0;
  let reached = (steps[open - 1]?.done?.to ?? toMinute(nowMs)) - toMinute(lastMs);
  return steps.map((step, index) => {
    if (index < open) return step;
    if (step.kind === 'work' && step.isCoat) {
      coatsAhead++;
      reached = 0;
    }
    const milestone = step.kind === 'wait' && !isOwn(step.id) ? AWAITS[step.until] : undefined;
    if (step.kind !== 'wait' || milestone === undefined) return step;
    const minutes = shifted(after(milestone, coatsAhead), -reached);
    reached += minutes.likely;
    return { ...step, minutes };
  });
}

type AfterCoat = (milestone: Milestone, coatsAhead: number) => Band;

/** Minutes from the last coat of a film to a milestone, when so many coats more are on it. */
function afterLastCoat({ milestones, oneMoreCoat }: Estimate, lastS: number, sinceS: number): AfterCoat {
  const laterS = { recoat: 0, level: oneMoreCoat?.levelS ?? 0, rubOut: oneMoreCoat?.rubOutS ?? 0 };
  return (milestone, coatsAhead) => {
    // What one more coat adds is counted from now on; the wait after it counts from that coat.
    const growthS = coatsAhead * Math.max(0, laterS[milestone] - sinceS);
    return minutesOf(milestones[milestone], growthS - lastS);
  };
}

function minutesOf({ earliestS, likelyS, lateS }: BandS, byS: number): Band {
  const minutes = (s: number): number => Math.min(LONGEST_MINUTES, Math.max(0, Math.ceil((s + byS) / 60)));
  return { earliest: minutes(earliestS), likely: minutes(likelyS), late: minutes(lateS) };
}

const shifted = ({ earliest, likely, late }: Band, by: number): Band => ({
  earliest: Math.max(0, earliest + by),
  likely: Math.max(0, likely + by),
  late: Math.max(0, late + by),
});
