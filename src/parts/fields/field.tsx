import type { ComponentChildren } from 'preact';
import { Problem } from './choice';

export interface FieldProps {
  /** Of the control inside; its hint and its problem are named after it. */
  readonly id: string;
  readonly label: string;
  readonly hint?: string | undefined;
  readonly problem?: string | undefined;
  readonly children: ComponentChildren;
}

/** A control under its label, over its hint and what is wrong with it. */
export function Field({ id, label, hint, problem, children }: FieldProps) {
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <div class="entry">{children}</div>
      <p id={`${id}-hint`} class="hint">
        {hint}
      </p>
      <Problem id={`${id}-problem`} text={problem} />
    </div>
  );
}

/** Ties a control to its field, so that a screen reader tells hint and problem with it. */
export const tied = (id: string, problem: string | undefined) => ({
  id,
  'aria-invalid': problem !== undefined,
  'aria-describedby': `${id}-hint ${id}-problem`,
});
