import type { Estimate } from '../../estimator/estimate';
import { LONGEST_S } from '../../estimator/read-off';
import type { Piece } from '../../logbook/fold/piece/pieces';
import { firstOpen } from '../../planner/compile';
import { toMinute } from '../../planner/local-day';
import type { Band, Step, WaitFor, WaitStep } from '../../planner/step';
import { MINUTE_MS, MINUTE_S } from '../../units';
import type { Moment } from '../../verdicts/moments';
import type { Outlook } from '../outlook/outlook';

type Milestone = 'recoat' | 'level' | 'rubOut';
const SANDED = { 'level-sand': 'level', 'rub-out': 'rubOut' } as const;
const AWAITS: Partial<Record<WaitFor, Milestone>> = { recoat: 'recoat', ...SANDED };

/** The moment of the film that a wait is for. A cure or a rest is for the sanding that follows, past the tries of the film alone. */
function awaited(steps: readonly Step[], index: number): Milestone | undefined {
  const step = steps[index];
  if (step?.kind !== 'wait') return undefined;
  if (step.until !== 'cure' && step.until !== 'rest') return AWAITS[step.until];
  const next = steps
    .slice(index + 1)
    .find((one) => one.kind === 'work' || (one.kind === 'gate' && ASKS_MORE.has(one.check)));
  return next && sandedAt(next);
}
/** Checks that a wait before them is for, and not for the film's hardness alone. */
const ASKS_MORE: ReadonlySet<string> = new Set(['sink', 'colour']);

const sandedAt = (step: Step): 'level' | 'rubOut' | undefined =>
  step.kind === 'work' && (step.task === 'level-sand' || step.task === 'rub-out')
    ? SANDED[step.task]
    : undefined;

/** Worked out now, or last: what is kept of it stands until it is worked out again. */
const isWorkedOut = (outlook: Outlook | undefined): outlook is Extract<Outlook, { estimate: unknown }> =>
  outlook !== undefined && 'estimate' in outlook;

/** Whether the drying model has a wait of its own for a step of a plan. A rest is common practice's, where it is longer. */
export const hasEstimate = (
  step: Step,
  steps: readonly Step[],
  { coats }: Piece,
  outlook: Outlook | undefined,
): boolean =>
  awaited(steps, steps.indexOf(step)) !== undefined &&
  !(step.kind === 'wait' && step.until === 'rest') &&
  isWorkedOut(outlook) &&
  coats.some(({ how }) => how !== 'flash');

/** Whether anything still to be done waits for a moment that only the drying model knows. */
export function asksTheModel(steps: readonly Step[], isOwn: WaitsOf['isOwn']): boolean {
  const open = firstOpen(steps);
  const mine = new Set(steps.flatMap((step, at) => (isOwn(step.id) ? [awaited(steps, at)] : [])));
  return steps.some((step, at) => {
    if (at < open) return false;
    const milestone = awaited(steps, at) ?? sandedAt(step);
    return milestone !== undefined && !mine.has(milestone);
  });
}

export interface WaitsOf {
  readonly piece: Piece;
  readonly outlook: Outlook | undefined;
  /** The moments of the film, as its page shows them. */
  readonly moments: readonly Moment[];
  /** Whether the wait was set by hand. */
  readonly isOwn: (stepId: string) => boolean;
  readonly nowMs: number;
}

/** What never ends within the time looked at is planned as this. */
const LONGEST_MINUTES = LONGEST_S / MINUTE_S;

/**
 * The steps with the film's own moments in place of common practice, from the last coat on; waits set by hand stay. A sanding without
 * a wait before it is given one.
 *
 * With every coat on, a wait ends at the very moment that the page of the piece shows. A wait to recoat after a coat that is still to
 * come is taken to be as long as now; to level-sand and to rub out each further coat adds less than the one before it.
 */
export function estimatedWaits(
  steps: readonly Step[],
  { piece, outlook, moments, isOwn, nowMs }: WaitsOf,
): readonly Step[] {
  const coats = piece.coats.filter(({ how }) => how !== 'flash');
  const lastMs = coats.at(-1)?.atMs;
  if (!isWorkedOut(outlook) || lastMs === undefined) return steps;
  const [lastS, sinceS] = [(lastMs - outlook.startMs) / 1000, (nowMs - lastMs) / 1000];
  const after = afterLastCoat(outlook.estimate, coats.length, lastS, sinceS);
  const open = firstOpen(steps);
  const lastMinute = toMinute(lastMs);
  let coatsAhead = 0;
  let reached = (steps[open - 1]?.done?.to ?? toMinute(nowMs)) - lastMinute;
  let awaitedSince = new Set<Milestone>();

  function waitFor(milestone: Milestone, wait: { readonly id: string; readonly until: WaitFor }): WaitStep {
    awaitedSince.add(milestone);
    const own = coatsAhead === 0 ? endsAt(moments, milestone, lastMinute) : undefined;
    const minutes = shifted(after(milestone, coatsAhead), -reached);
    reached += minutes.likely;
    return { ...wait, kind: 'wait', minutes, ...(own && { ends: own }) };
  }

  return steps.flatMap((step, index): readonly Step[] => {
    if (index < open) return [step];
    if (step.kind === 'work' && step.isCoat) {
      coatsAhead++;
      reached = 0;
      awaitedSince = new Set();
    }
    if (step.kind === 'wait') {
      const milestone = awaited(steps, index);
      if (milestone !== undefined && !isOwn(step.id)) return [waitFor(milestone, step)];
      if (milestone !== undefined) awaitedSince.add(milestone);
      reached += step.minutes.likely;
      return [step];
    }
    const milestone = sandedAt(step);
    if (milestone === undefined || awaitedSince.has(milestone)) return [step];
    const until = milestone === 'level' ? 'level-sand' : 'rub-out';
    const wait = waitFor(milestone, { id: `${step.id}:hardens`, until });
    return wait.minutes.late > 0 ? [wait, step] : [step];
  });
}

/** When a moment comes, UTC minutes, as the page of the piece shows it. */
function endsAt(moments: readonly Moment[], milestone: Milestone, lastMinute: number): Band | undefined {
  const moment = moments.find(({ name }) => name === milestone);
  if (!moment) return undefined;
  const minute = (ms: number): number =>
    Number.isFinite(ms) ? Math.ceil(ms / MINUTE_MS) : lastMinute + LONGEST_MINUTES;
  return {
    earliest: minute(moment.earliestMs),
    likely: minute(moment.likelyMs),
    late: minute(moment.lateMs),
  };
}

type AfterCoat = (milestone: Milestone, coatsAhead: number) => Band;

/**
 * Minutes from the last coat of a film to a milestone, when so many coats more are on it.
 *
 * What one more coat adds is counted from now on; the wait after it counts from that coat. The wait grows as the square root of the
 * coats: 12 coats of 12.5 um, asked when 1, 2, 3, 6 or 9 of them are on, come to 16, 13, 13, 14 and 13 days; run, to 12. Each coat adding
 * as much as the first came to 29, 18, 17, 15 and 14.
 */
function afterLastCoat(
  { milestones, oneMoreCoat }: Pick<Estimate, 'milestones' | 'oneMoreCoat'>,
  on: number,
  lastS: number,
  sinceS: number,
): AfterCoat {
  const laterS = { recoat: 0, level: oneMoreCoat?.levelS ?? 0, rubOut: oneMoreCoat?.rubOutS ?? 0 };
  const coatsOf = (ahead: number) => Math.sqrt(on + ahead) - Math.sqrt(on);
  return (milestone, ahead) => {
    const { earliestS, likelyS, lateS } = milestones[milestone];
    const growthS = ahead && (Math.max(0, laterS[milestone] - sinceS) * coatsOf(ahead)) / coatsOf(1);
    // Its band is as wide for its length as that of the film that is on.
    const times = Math.min(LONGEST_S, growthS) / Math.max(1, likelyS - lastS);
    const minutes = (s: number): number =>
      Math.min(LONGEST_MINUTES, Math.max(0, Math.ceil(((s - lastS) * (1 + times)) / MINUTE_S)));
    return { earliest: minutes(earliestS), likely: minutes(likelyS), late: minutes(lateS) };
  };
}

const shifted = ({ earliest, likely, late }: Band, by: number): Band => ({
  earliest: Math.max(0, earliest + by),
  likely: Math.max(0, likely + by),
  late: Math.max(0, late + by),
});
