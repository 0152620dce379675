import type { Standing } from '../../verdicts/standing';
import type { Verdict, VerdictWord } from '../../verdicts/verdict';
import { BENCH_WORDS } from '../../words/bench';
import { spanWords } from '../../words/times';
import { verdictWords } from '../../words/verdicts/words';
import type { IconName } from '../blocks/icons';
import type { RowProps } from '../blocks/row';

type Sign = NonNullable<RowProps['state']>;

const LOOKS: { readonly [W in VerdictWord]: readonly [Sign['kind'], IconName] } = {
  ready: ['ready', 'ready'],
  perhaps: ['wait', 'clock'],
  wait: ['wait', 'waiting'],
  hold: ['stop', 'stop'],
};

/** A verdict as every page shows it: a shape, and its own word. */
export function signOf(verdict: Verdict, nowMs: number): Sign {
  const { word, act, until } = verdict;
  const [kind, icon] = LOOKS[word];
  const isSpan = word === 'wait' && until !== undefined && Number.isFinite(until.likelyMs);
  return {
    kind,
    icon,
    word: isSpan ? BENCH_WORDS.wait(spanWords(until.likelyMs - nowMs)) : verdictWords(word, act),
  };
}

/** How a piece stands, as every page shows it; until the judge has come it is being worked out. */
export function standingSign(standing: Standing | undefined, nowMs: number): Sign {
  const verdict = standing?.verdict;
  const isWorking = !verdict || verdict.reasons.some(({ says }) => says === 'computing');
  return isWorking && verdict?.word !== 'hold'
    ? { kind: 'quiet', icon: 'waiting', word: BENCH_WORDS.computing }
    : signOf(verdict as Verdict, nowMs);
}

/** The moment that a page speaks of beside the word: the one awaited. */
export const awaitedOf = (standing: Standing | undefined): Standing['moment'] =>
  standing?.verdict?.word === 'ready' ? standing.after : standing?.moment;
