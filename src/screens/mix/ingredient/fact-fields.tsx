import { usualIngredient } from '../../../actions/mix/usual-ingredient';
import { LIMITS } from '../../../logbook/limits';
import { Choice } from '../../../parts/fields/choice';
import { TypedField } from '../../../parts/fields/typed-field';
import { typedWords } from '../../../parts/fields/typed-words';
import { useUnits } from '../../../parts/frame/shop-context';
import { FACT_FROM, INGREDIENT_WORDS } from '../../../words/mix/ingredient';
import type { UnitSystem } from '../../../words/quantities';
import { BlendRows } from '../jar/blend-rows';
import { type FactDraft, type IngredientDraft, isColour, isPigmented, isVolatile } from './ingredient-draft';

export interface IngredientPartProps {
  readonly draft: IngredientDraft;
  readonly patch: (some: Partial<IngredientDraft>) => void;
  readonly isTried: boolean;
}

type FactKey = 'density' | 'volumeSolids' | 'weightSolids' | 'pigmentOfSolids' | 'criticalPigment';

/** The facts that mixing needs of the sort of ingredient; each says where it is from. */
export function FactFields(props: IngredientPartProps) {
  const { is } = props.draft;
  const keys: FactKey[] = [
    'density',
    ...(isVolatile(is) ? [] : (['volumeSolids', 'weightSolids'] as const)),
    ...(isPigmented(is) ? (['pigmentOfSolids', 'criticalPigment'] as const) : []),
  ];
  return (
    <>
      {keys.map((key) => (
        <Fact key={key} name={key} {...props} />
      ))}
      {isColour(is) && <Strength {...props} />}
      {is !== 'let-down' && <Solvents {...props} />}
    </>
  );
}

const LIMIT = {
  density: LIMITS.density,
  volumeSolids: LIMITS.solids,
  weightSolids: LIMITS.solids,
  pigmentOfSolids: LIMITS.pigment,
  criticalPigment: LIMITS.critical,
} as const;

function Fact({ name, draft, patch, isTried }: IngredientPartProps & { readonly name: FactKey }) {
  const fact = draft[name] as FactDraft<'g/mL' | '%'>;
  const usual = name === 'weightSolids' ? undefined : usualIngredient(draft.is, draft.finish)[name];
  return (
    <TypedField
      label={INGREDIENT_WORDS[name]}
      limit={LIMIT[name] as typeof LIMITS.solids}
      draft={fact as FactDraft<'%'>}
      onDraft={(typed) => patch({ [name]: { ...typed, from: 'data-sheet' } })}
      hint={hintOf(name, fact, usual, useUnits())}
      isOptional
      isTried={isTried}
    />
  );
}

function hintOf(
  name: FactKey,
  fact: FactDraft<'g/mL' | '%'>,
  usual: string | undefined,
  units: UnitSystem,
): string | undefined {
  if (fact.text !== '' && fact.from === 'usual') return FACT_FROM.usual;
  if (usual !== undefined)
    return INGREDIENT_WORDS.usual(
      typedWords({ text: usual, unit: name === 'density' ? 'g/mL' : '%' }, units),
    );
  return name === 'weightSolids' ? INGREDIENT_WORDS.weightSolidsHint : undefined;
}

const Strength = ({ draft, patch }: IngredientPartProps) => (
  <Choice
    label={INGREDIENT_WORDS.strength}
    options={(['weak', 'medium', 'strong'] as const).map((value) => ({
      value,
      ...INGREDIENT_WORDS.strengths[value],
    }))}
    value={draft.strength}
    onChange={(strength) => patch({ strength })}
  />
);

function Solvents({ draft, patch, isTried }: IngredientPartProps) {
  return (
    <>
      <Choice
        label={INGREDIENT_WORDS.solvents}
        options={[
          { value: 'usual', label: INGREDIENT_WORDS.usualSolvents },
          { value: 'own', label: INGREDIENT_WORDS.ownSolvents },
          { value: 'unknown', label: INGREDIENT_WORDS.unknownSolvents },
        ]}
        value={draft.solventsFrom}
        onChange={(solventsFrom) => patch({ solventsFrom })}
      />
      {draft.solventsFrom === 'own' && (
        <BlendRows
          legend={INGREDIENT_WORDS.solvents}
          blend={draft.blend}
          onBlend={(blend) => patch({ blend })}
          isTried={isTried}
        />
      )}
    </>
  );
}
