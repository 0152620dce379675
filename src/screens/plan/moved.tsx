import { Button } from '../../parts/blocks/button';
import { Notice } from '../../parts/blocks/notice';
import { toInstantMs } from '../../planner/local-day';
import { whyWords } from '../../planner/say';
import { MINUTE_MS } from '../../units';
import { MOVED_WORDS } from '../../words/plan/plan';
import { dayWords, spanWords } from '../../words/times';
import { startWords } from './planned-time';
import { useNames, usePlan } from './use-plan';

const MOST_STEPS = 12;

/** What the last entry moved, and why; until it is seen. */
export function Moved({ pieceId }: { readonly pieceId?: string }) {
  const { moved, planned, seen } = usePlan();
  const names = useNames();
  const found = moved.value;
  const { plan } = planned.value;
  if (!found || !plan.ok) return null;
  const nowMs = toInstantMs(plan.value.now);
  const isAsked = (one: { readonly pieceId: string }) => pieceId === undefined || one.pieceId === pieceId;
  const pieces = found.pieces.filter(isAsked);
  const steps = found.moved.filter(isAsked);
  if (pieces.length + steps.length === 0) return null;
  const startOf = (stepId: string): string => {
    const step = plan.value.steps.find((one) => one.stepId === stepId);
    return step ? startWords(step, plan.value.steps, nowMs) : '';
  };
  const likelyMs = (id: string): number =>
    toInstantMs(plan.value.pieces.find((one) => one.pieceId === id)?.likely ?? plan.value.now);
  return (
    <div class="not-printed">
      <Notice kind="note" title={MOVED_WORDS.title}>
        {pieces.length > 0 && (
          <ul class="missed">
            {pieces.map(({ pieceId: id, minutes }) => (
              <li key={id}>
                {MOVED_WORDS.piece(names.piece(id), byWords(minutes), dayWords(likelyMs(id), nowMs))}
              </li>
            ))}
          </ul>
        )}
        {steps.length > 0 && (
          <details>
            <summary>{MOVED_WORDS.more(steps.length)}</summary>
            <ul class="missed">
              {steps.slice(0, MOST_STEPS).map(({ pieceId: id, stepId, why }) => (
                <li key={stepId}>
                  {MOVED_WORDS.step(
                    names.step(stepId),
                    names.piece(id),
                    startOf(stepId),
                    whyWords(why, names),
                  )}
                </li>
              ))}
            </ul>
          </details>
        )}
        <div class="acts">
          <Button onClick={seen}>{MOVED_WORDS.seen}</Button>
        </div>
      </Notice>
    </div>
  );
}

const byWords = (minutes: number): string => {
  const span = spanWords(Math.abs(minutes) * MINUTE_MS);
  return minutes > 0 ? MOVED_WORDS.later(span) : MOVED_WORDS.sooner(span);
};
