import type { Said } from '../../../actions/log';
import { Button } from '../../../parts/blocks/button';
import { Notice } from '../../../parts/blocks/notice';
import type { OddWeight } from '../../../shop/card/odd-weight';
import { ODD_WORDS as WORDS } from '../../../words/piece/card';

interface OddQuestionProps {
  readonly odd: OddWeight;
  /** What more is logged; undefined where it is changed first. */
  readonly onAnswer: (
    more: Partial<Pick<Said<'card-weighed'>, 'leftOut' | 'division' | 'mass'>> | undefined,
  ) => void;
}

/** An odd weight is asked about before it is believed: what was meant, or why it is left out. */
export function OddQuestion({ odd, onAnswer }: OddQuestionProps) {
  return (
    <Notice kind="caution" title={WORDS.title} isNew>
      <p>{wordsOf(odd)}</p>
      <div class="acts">
        <Button onClick={() => onAnswer(undefined)}>{WORDS.change}</Button>
        {odd.kind === 'milligrams' && (
          <Button kind="main" onClick={() => onAnswer({ mass: { text: odd.grams, unit: 'g' } })}>
            {WORDS.grams(odd.grams)}
          </Button>
        )}
        {odd.kind === 'scale' && (
          <Button onClick={() => onAnswer({ division: { text: odd.division, unit: 'g' } })}>
            {WORDS.other}
          </Button>
        )}
        <Button onClick={() => onAnswer({})}>{odd.kind === 'scale' ? WORDS.same : WORDS.right}</Button>
        {(LEFT_OUT[odd.kind] ?? []).map((leftOut) => (
          <Button key={leftOut} onClick={() => onAnswer({ leftOut })}>
            {WORDS.leaveOut[leftOut]}
          </Button>
        ))}
      </div>
    </Notice>
  );
}

const LEFT_OUT: Partial<Record<OddWeight['kind'], readonly (keyof typeof WORDS.leaveOut)[]>> = {
  below: ['torn'],
  up: ['dust', 'damp'],
  down: ['torn'],
};

function wordsOf(odd: OddWeight): string {
  if (odd.kind === 'milligrams') return WORDS.milligrams(odd.grams);
  return odd.kind === 'scale' ? WORDS.scale(odd.division) : WORDS[odd.kind];
}
