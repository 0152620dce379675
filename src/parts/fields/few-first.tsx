import { useSignal } from '@preact/signals';
import { Button } from '../blocks/button';
import { Choice, type ChoiceProps } from './choice';

/** So many tiles are looked over at a glance. */
const FEW = 6;

interface FewFirstProps<Value extends string> extends ChoiceProps<Value> {
  /** "All 14 jars" */
  readonly allWords: (count: number) => string;
}

/** One of perhaps many: the likeliest, which come first, and what is chosen; the others on asking. */
export function FewFirst<Value extends string>({ allWords, ...choice }: FewFirstProps<Value>) {
  const isAll = useSignal(false);
  const { options, value } = choice;
  const shown = isAll.value ? options : options.filter((option, i) => i < FEW || option.value === value);
  return (
    <>
      <Choice {...choice} options={shown} />
      {shown.length < options.length && (
        <div class="acts">
          <Button
            kind="plain"
            onClick={() => {
              isAll.value = true;
            }}
          >
            {allWords(options.length)}
          </Button>
        </div>
      )}
    </>
  );
}
