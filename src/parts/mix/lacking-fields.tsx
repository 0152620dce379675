import { useSignal } from '@preact/signals';
import { type FilledIn, fillIn, usualText } from '../../actions/mix/fill-in';
import type { Refused } from '../../actions/shop';
import { LIMITS } from '../../logbook/limits';
import type { Result } from '../../result';
import type { Lacking, LackingFact } from '../../shop/recipe/lacking';
import { LACKING_WORDS as WORDS } from '../../words/mix/lacking';
import { Section } from '../blocks/page';
import { type Draft, draftProblem, TypedField } from '../fields/typed-field';
import { useShop } from '../frame/shop-context';

type Asked = Exclude<LackingFact, 'solvents'>;
const FIELDS = {
  density: { limit: LIMITS.density, unit: 'g/mL' },
  volumeSolids: { limit: LIMITS.solids, unit: '%' },
  pigmentOfSolids: { limit: LIMITS.pigment, unit: '%' },
  dropMass: { limit: LIMITS.dropMass, unit: 'g' },
} as const;
const isAsked = (fact: LackingFact): fact is Asked => fact !== 'solvents';

/** What is not known of some ingredients, being filled in: at its usual value until it is touched. */
export function useLacking(lacking: readonly Lacking[]) {
  const { needs } = useShop();
  const typed = useSignal<FilledIn>({});
  const textOf = (one: Lacking, fact: Asked): string =>
    typed.value[one.ingredient.id]?.[fact] ?? usualText(one, fact) ?? '';
  return {
    lacking,
    textOf,
    patch(id: string, fact: Asked, text: string): void {
      typed.value = { ...typed.value, [id]: { ...typed.value[id], [fact]: text } };
    },
    /** Every field can be sent as it is. */
    isWhole: (): boolean =>
      lacking.every((one) => one.facts.filter(isAsked).every((fact) => !problemOf(textOf(one, fact), fact))),
    /** Notes the facts with their ingredients, then does what needed them. */
    async before<Value>(act: () => Promise<Result<Value, Refused>>): Promise<Result<Value, Refused>> {
      const filled = await fillIn(needs, lacking, typed.value);
      return filled.ok ? act() : filled;
    },
  };
}
export type LackingForm = ReturnType<typeof useLacking>;

const problemOf = (text: string, fact: Asked): string | undefined =>
  draftProblem({ text, unit: FIELDS[fact].unit }, FIELDS[fact].limit);

/** Asks, in one place, for all that is not known, with its usual value filled in; nothing where all is known. */
export function LackingFields({ form, isTried }: { readonly form: LackingForm; readonly isTried: boolean }) {
  if (form.lacking.length === 0) return null;
  return (
    <Section title={WORDS.title}>
      <p class="quiet">{WORDS.lead}</p>
      {form.lacking.map((one) => (
        <fieldset key={one.ingredient.id} class="lacking">
          <legend>{one.ingredient.name}</legend>
          <div class="pair">
            {one.facts.filter(isAsked).map((fact) => (
              <LackingField key={fact} {...{ form, one, fact, isTried }} />
            ))}
          </div>
          {one.facts.includes('solvents') && <p class="quiet small">{WORDS.solvents}</p>}
        </fieldset>
      ))}
    </Section>
  );
}

interface LackingFieldProps {
  readonly form: LackingForm;
  readonly one: Lacking;
  readonly fact: Asked;
  readonly isTried: boolean;
}

function LackingField({ form, one, fact, isTried }: LackingFieldProps) {
  const text = form.textOf(one, fact);
  const { limit, unit } = FIELDS[fact];
  const draft: Draft<typeof unit> = { text, unit };
  return (
    <TypedField
      label={WORDS.facts[fact]}
      limit={{ ...limit, units: [unit] }}
      draft={draft}
      onDraft={(next) => form.patch(one.ingredient.id, fact, next.text)}
      hint={text === usualText(one, fact) ? WORDS.usual : WORDS.typed}
      isTried={isTried}
    />
  );
}
