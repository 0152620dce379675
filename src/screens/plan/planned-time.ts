import { toInstantMs } from '../../planner/local-day';
import type { PlannedStep } from '../../planner/plan';
import { MINUTE_MS } from '../../units';
import { clockWords, likelyWords, whenWords } from '../../words/times';

/** How uncertain it is when a planned step begins and ends, minutes: by the widest band of the waits still to come before it. */
function doubt({ pieceId, stepId }: PlannedStep, steps: readonly PlannedStep[]) {
  const own = steps.filter((one) => one.pieceId === pieceId && !one.isDone);
  let before = 0;
  for (const { step, stepId: id } of own) {
    const band = step.kind === 'wait' ? (step.ends ?? step.minutes) : undefined;
    const after = Math.max(before, band ? band.late - band.earliest : 0);
    if (id === stepId) return { before, after };
    before = after;
  }
  return { before: 0, after: 0 };
}

/** A minute of a plan: with its clock only where that is known to hours, else its day. */
const words = (minute: number, uncertain: number, nowMs: number): string => {
  const atMs = toInstantMs(minute);
  return likelyWords({ earliestMs: atMs, likelyMs: atMs, lateMs: atMs + uncertain * MINUTE_MS }, nowMs);
};

/** When a planned step begins. */
export const startWords = (planned: PlannedStep, steps: readonly PlannedStep[], nowMs: number): string =>
  words(planned.start, doubt(planned, steps).before, nowMs);

/** When a planned step begins and ends. */
export function planTimes(planned: PlannedStep, steps: readonly PlannedStep[], nowMs: number): string {
  const { kind, start, end } = planned;
  if (Number.isNaN(start)) return ''; // there is no plan
  const { before, after } = doubt(planned, steps);
  const from = words(start, before, nowMs);
  const isWork = kind === 'work' || kind === 'gate';
  const isClock = from === whenWords(toInstantMs(start), nowMs);
  const to = isWork && isClock ? clockWords(toInstantMs(end)) : words(end, after, nowMs);
  return kind === 'hold' || end === start || to === from ? from : `${from} – ${to}`;
}
