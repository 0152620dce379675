import type { Signal } from '@preact/signals';
import type { Limit } from '../../../logbook/limits';
import type { Unit } from '../../../logbook/unit';
import { Button } from '../../blocks/button';
import type { IconName } from '../../blocks/icons';
import { Choice, type ChoiceOption } from '../choice';
import { TextField } from '../text-field';
import { type Draft, draftProblem, TypedField } from '../typed-field';
import { Refusal } from './refusal';
import type { Form } from './use-form';

export interface QuantityProps<U extends Unit> {
  readonly label: string;
  readonly of: Signal<Draft<U>>;
  readonly limit: Limit<readonly [U, ...U[]]>;
  readonly form: Form;
  /** Where it stands in the entry. */
  readonly at: string;
  readonly hint?: string | undefined;
  readonly isOptional?: boolean | undefined;
}

/** A quantity of a form, held in a signal. */
export function Quantity<U extends Unit>({ of, form, at, ...field }: QuantityProps<U>) {
  return (
    <TypedField
      {...field}
      draft={of.value}
      onDraft={(draft) => {
        of.value = draft;
      }}
      isTried={form.isTried.value}
      refused={form.refused.value?.fields[at]}
    />
  );
}

/** Words of a form, held in a signal. */
export function Words({
  of,
  form,
  at,
  problem,
  ...field
}: {
  readonly label: string;
  readonly of: Signal<string>;
  readonly form: Form;
  readonly at: string;
  readonly hint?: string | undefined;
  readonly isLong?: boolean | undefined;
  /** Told once sending was tried. */
  readonly problem?: string | undefined;
}) {
  return (
    <TextField
      {...field}
      text={of.value}
      onText={(text) => {
        of.value = text;
      }}
      problem={(form.isTried.value ? problem : undefined) ?? form.refused.value?.fields[at]}
    />
  );
}

/** One of a few, held in a signal. */
export function OneOf<Value extends string>({
  of,
  ...choice
}: {
  readonly label: string;
  readonly of: Signal<Value | undefined> | Signal<Value>;
  readonly options: readonly ChoiceOption<Value>[];
  readonly problem?: string | undefined;
}) {
  return (
    <Choice
      {...choice}
      value={of.value}
      onChange={(value) => {
        of.value = value;
      }}
    />
  );
}

interface SendProps {
  readonly form: Form;
  readonly icon?: IconName | undefined;
  readonly children: string;
}

/** The foot of a form: why it was not taken, and the button that sends it. It stays at the foot of the screen while its form is read. */
export const Send = ({ form, icon, children }: SendProps) => (
  <>
    <Refusal refused={form.refused.value} />
    <div class="acts form-foot">
      <Button kind="main" icon={icon} isSubmit isWide>
        {children}
      </Button>
    </div>
  </>
);

const isEmpty = ({ text }: Draft): boolean => text.trim() === '';

/** Whether every quantity can be sent as it is. */
export const areWhole = (...fields: readonly (readonly [Signal<Draft>, Limit, 'optional'?])[]): boolean =>
  fields.every(
    ([of, limit, optional]) => draftProblem(of.value, limit, optional === 'optional') === undefined,
  );

/** What was typed under its name; nothing where nothing was. */
export const given = <Name extends string, U extends Unit>(
  name: Name,
  of: Signal<Draft<U>>,
): { readonly [N in Name]?: Draft<U> } =>
  (isEmpty(of.value) ? {} : { [name]: of.value }) as { readonly [N in Name]?: Draft<U> };
