import { useId } from 'preact/hooks';
import { Problem } from './choice';

export interface TextFieldProps {
  readonly label: string;
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly hint?: string | undefined;
  readonly problem?: string | undefined;
  readonly isLong?: boolean | undefined;
}

/** A line of words, or a few lines when `isLong`. */
export function TextField({ label, text, onText, hint, problem, isLong }: TextFieldProps) {
  const id = useId();
  const shared = {
    id,
    value: text,
    'aria-invalid': problem !== undefined,
    'aria-describedby': `${id}-hint ${id}-problem`,
  };
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <div class="entry">
        {isLong ? (
          <textarea {...shared} rows={3} onInput={(event) => onText(event.currentTarget.value)} />
        ) : (
          <input
            {...shared}
            type="text"
            autocomplete="off"
            onInput={(event) => onText(event.currentTarget.value)}
          />
        )}
      </div>
      <p id={`${id}-hint`} class="hint">
        {hint}
      </p>
      <Problem id={`${id}-problem`} text={problem} />
    </div>
  );
}
