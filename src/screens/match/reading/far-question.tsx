import { useEffect, useRef } from 'preact/hooks';
import type { Match } from '../../../logbook/fold/piece/matches';
import { Notice } from '../../../parts/blocks/notice';
import { SelectField } from '../../../parts/fields/select-field';
import type { FarReading } from '../../../shop/colour/far-reading';
import { MATCH_WORDS } from '../../../words/match/match';
import { READ_WORDS as WORDS } from '../../../words/match/read';
import { differenceText, labText } from '../colour-text';
import type { ReadOf } from './read-of';

interface FarQuestionProps {
  readonly match: Match;
  readonly of: ReadOf;
  readonly far: FarReading;
  /** It was of something else after all; what was typed stays. */
  readonly onOther: (path: readonly string[]) => void;
}

/** Asks about a reading that is far from what was read here before: nothing is averaged in without a word. */
export function FarQuestion({ match, of, far, onOther }: FarQuestionProps) {
  const others = [
    ...match.trials.map(({ id, number }) => ({ value: `trial/${id}`, label: MATCH_WORDS.trial(number) })),
    { value: 'target', label: MATCH_WORDS.target },
  ];
  const own = of.as === 'trial' ? `trial/${of.id}` : of.as;
  const asked = useRef<HTMLDivElement>(null);
  useEffect(() => asked.current?.scrollIntoView({ block: 'center' }), []);
  return (
    <div ref={asked}>
      <Notice kind="caution" title={WORDS.far(differenceText(far.dE00))} isNew>
        <p>{far.before ? WORDS.farText(labText(far.before)) : WORDS.farAmong}</p>
        <SelectField
          label={WORDS.farOf}
          options={[
            { value: own, label: WORDS.farSame(of.title) },
            ...others.filter(({ value }) => value !== own),
          ]}
          value={own}
          onChange={(path) => onOther(path.split('/'))}
        />
      </Notice>
    </div>
  );
}
