import { useId } from 'preact/hooks';
import { Icon } from '../../parts/blocks/icons';
import { Problem } from '../../parts/fields/choice';

export interface TickOption {
  readonly value: string;
  readonly label: string;
  readonly hint?: string | undefined;
}

interface TicksProps {
  readonly label: string;
  readonly options: readonly TickOption[];
  readonly ticked: ReadonlySet<string>;
  readonly onTick: (value: string, isTicked: boolean) => void;
  readonly hint?: string | undefined;
  readonly problem?: string | undefined;
}

/** Any of a few, as big tiles; each ticked one is filled. */
export function Ticks({ label, options, ticked, onTick, hint, problem }: TicksProps) {
  const id = useId();
  return (
    <fieldset class="choice" aria-describedby={`${id}-hint ${id}-problem`}>
      <legend>{label}</legend>
      <p id={`${id}-hint`} class="quiet small">
        {hint}
      </p>
      <div class="tiles">
        {options.map(({ value, label: said, hint: more }) => (
          <label key={value} class="tile">
            <input
              type="checkbox"
              checked={ticked.has(value)}
              onChange={(event) => onTick(value, event.currentTarget.checked)}
            />
            <Icon name="check" />
            <span>
              {said}
              {more && <small>{more}</small>}
            </span>
          </label>
        ))}
      </div>
      <Problem id={`${id}-problem`} text={problem} />
    </fieldset>
  );
}
