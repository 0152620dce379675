import { firstOpen, isHandwork } from '../../planner/compile';
import type { Band, Step } from '../../planner/step';
import { GROUND_STEPS, type GroundOn } from '../../shop/stack/grounds';
import { MINUTE_MS } from '../../units';

/** The steps of a plan with the waits of what was filled, sealed or glued ending when they really end; one that the plan lacks is put in. */
export function groundWaits(
  steps: readonly Step[],
  grounds: readonly GroundOn[],
  nowMs: number,
): readonly Step[] {
  const running = grounds.filter(({ until }) => until.lateMs > nowMs);
  return running.reduce(withWait, steps);
}

function withWait(
  steps: readonly Step[],
  { id, atMs, ground, until: { earliestMs, likelyMs, lateMs } }: GroundOn,
): readonly Step[] {
  const { until } = GROUND_STEPS[ground];
  const bandFrom = (fromMs: number): Band => ({
    earliest: Math.ceil((earliestMs - fromMs) / MINUTE_MS),
    likely: Math.ceil((likelyMs - fromMs) / MINUTE_MS),
    late: Math.ceil((lateMs - fromMs) / MINUTE_MS),
  });
  const [ends, minutes] = [bandFrom(0), bandFrom(atMs)];
  const open = firstOpen(steps);
  const next = steps.findIndex((step, at) => at >= open && isHandwork(step));
  const index = steps.findIndex(
    (step, at) => at >= open && (next < 0 || at < next) && step.kind === 'wait' && step.until === until,
  );
  if (index < 0) {
    const wait: Step = { kind: 'wait', id: `${id}:waits`, until, minutes, ends };
    return [...steps.slice(0, open), wait, ...steps.slice(open)];
  }
  return steps.map(
    (step, at): Step => (at === index && step.kind === 'wait' ? { ...step, minutes, ends } : step),
  );
}
