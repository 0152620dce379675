import type { Act } from '../../verdicts/act';
import type { Facts } from '../../verdicts/facts';
import type { Moment, MomentState } from '../../verdicts/moments';
import { verdictOn } from '../../verdicts/verdict';
import { MOMENT_STATE } from '../../words/piece/moments';
import { VERDICT_WORDS } from '../../words/verdicts/words';
import type { RowProps } from '../blocks/row';
import { signOf } from './sign';

type Sign = NonNullable<RowProps['state']>;

const STATES: { readonly [S in MomentState]: Pick<Sign, 'icon' | 'kind'> } = {
  waiting: { icon: 'waiting', kind: 'quiet' },
  perhaps: { icon: 'clock', kind: 'wait' },
  reached: { icon: 'ready', kind: 'ready' },
  done: { icon: 'check', kind: 'quiet' },
};

/** The act that a moment allows; no act waits for the others. */
const ACTS: { readonly [M in Moment['name']]?: Act } = {
  recoat: 'coat',
  level: 'level-sand',
  rubOut: 'rub-out',
};

/** What the judge says of the act that a moment allows; of the other moments, how far they have come. */
export function momentSign({ name, state, isFoundSoft }: Moment, facts: Facts): Sign {
  if (isFoundSoft) return { icon: 'stop', kind: 'stop', word: VERDICT_WORDS.hold };
  const act = ACTS[name];
  if (act === undefined || state === 'done') return { ...STATES[state], word: MOMENT_STATE[state] };
  const verdict = verdictOn({ act }, facts);
  return { ...signOf(verdict, facts.nowMs), word: VERDICT_WORDS[verdict.word] };
}
