import type { RowProps } from '../../../parts/blocks/row';
import type { PlannedPiece } from '../../../planner/plan';
import { PLAN_WORDS } from '../../../words/plan/plan';
import { PROMISE_WORDS } from '../../../words/plan/planner';
import { verdictWords } from '../../../words/verdicts/words';

type Sign = NonNullable<RowProps['state']>;

const FINISHED: Sign = { icon: 'ready', word: PLAN_WORDS.finished, kind: 'ready' };
const LEFT_OUT: Sign = { icon: 'stop', word: PLAN_WORDS.leftOutTitle, kind: 'stop' };
const HELD: Sign = { icon: 'stop', word: verdictWords('hold', 'promise'), kind: 'stop' };
const SIGNS: Record<Exclude<PlannedPiece['promiseState'], 'none'>, Omit<Sign, 'word'>> = {
  kept: { icon: 'check', kind: 'ready' },
  soft: { icon: 'caution', kind: 'wait' },
  held: { icon: 'stop', kind: 'stop' },
  tight: { icon: 'caution', kind: 'wait' },
  missed: { icon: 'stop', kind: 'stop' },
  past: { icon: 'stop', kind: 'stop' },
};

/** How a planned piece stands with its promise; nothing where none was given and nothing is held. */
export function promiseSign(
  found: PlannedPiece | undefined,
  isDone: boolean,
  isLeftOut = false,
): Sign | undefined {
  if (isDone) return FINISHED;
  if (isLeftOut) return LEFT_OUT;
  if (found?.isHeld) return HELD;
  if (!found || found.promiseState === 'none') return undefined;
  return { ...SIGNS[found.promiseState], word: PROMISE_WORDS[found.promiseState] };
}
