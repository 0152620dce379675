import { useId } from 'preact/hooks';
import { Field, tied } from './field';

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
  const shared = { ...tied(id, problem), value: text };
  return (
    <Field {...{ id, label, hint, problem }}>
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
    </Field>
  );
}
