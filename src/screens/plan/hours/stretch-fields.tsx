import { Button } from '../../../parts/blocks/button';
import { HOURS_WORDS as WORDS } from '../../../words/plan/plan';
import { EMPTY_STRETCH, type StretchDraft, stretchProblem } from './hours-draft';
import { SpanFields } from './span-fields';

interface StretchFieldsProps {
  /** The day, and whether this is the booth. */
  readonly name: string;
  readonly from: string;
  readonly to: string;
  readonly stretches: readonly StretchDraft[];
  readonly onStretches: (stretches: readonly StretchDraft[]) => void;
  readonly isTried: boolean;
}

/** The stretches of one day, each with its way out but the first, and the way to one more. */
export function StretchFields({ name, from, to, stretches, onStretches, isTried }: StretchFieldsProps) {
  return (
    <div class="stack">
      {[...stretches.entries()].map(([index, stretch]) => {
        const problem = isTried ? stretchProblem(stretches, index) : undefined;
        const nth = WORDS.stretch(name, index + 1);
        return (
          <div key={index} class="stretch">
            <SpanFields
              from={WORDS.named(nth, from)}
              to={WORDS.named(nth, to)}
              span={stretch}
              onSpan={(changed) => onStretches(stretches.with(index, changed))}
              problem={problem && WORDS[problem]}
            />
            {index > 0 && (
              <Button kind="plain" icon="remove" onClick={() => onStretches(stretches.toSpliced(index, 1))}>
                {WORDS.takeOut}
                <span class="heard">, {nth}</span>
              </Button>
            )}
          </div>
        );
      })}
      <Button kind="plain" icon="add" addsRow onClick={() => onStretches([...stretches, EMPTY_STRETCH])}>
        {WORDS.another}
        <span class="heard">, {name}</span>
      </Button>
    </div>
  );
}
