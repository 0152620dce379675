import type { Said } from '../../../actions/log';
import { type IngredientSort, usualIngredient } from '../../../actions/mix/usual-ingredient';
import type { ShopIngredient } from '../../../logbook/fold/ingredients';
import { LIMITS } from '../../../logbook/limits';
import type { Finish } from '../../../logbook/own-solvents';
import { parseNumber } from '../../../logbook/typed';
import { type Draft, draftProblem } from '../../../parts/typed-field';
import { INGREDIENT_WORDS } from '../../../words/mix-ingredient';
import { type BlendRow, blendProblem, blendSum } from '../jar/draft';

export type Origin = 'data-sheet' | 'measured' | 'usual';
/** A fact being typed, with where it is from: common practice until it is touched. */
export interface FactDraft<U extends 'g/mL' | 'lb/gal' | '%'> extends Draft<U> {
  readonly from: Origin;
}

/** The ingredient form as it stands. */
export interface IngredientDraft {
  readonly is: IngredientSort;
  readonly name: string;
  readonly finish: Finish;
  readonly density: FactDraft<'g/mL' | 'lb/gal'>;
  readonly volumeSolids: FactDraft<'%'>;
  readonly weightSolids: FactDraft<'%'>;
  readonly pigmentOfSolids: FactDraft<'%'>;
  readonly criticalPigment: FactDraft<'%'>;
  readonly strength: 'weak' | 'medium' | 'strong';
  readonly solventsFrom: 'usual' | 'own' | 'unknown';
  readonly blend: readonly BlendRow[];
  readonly dropsG: string;
  readonly dropsCount: string;
  readonly contains: 'none' | 'isocyanate' | 'acid' | 'oil';
  readonly letDownOf: string | undefined;
  readonly letDownIn: string | undefined;
  readonly letDownStrength: '0.1' | '0.01';
  readonly source: string;
  readonly lot: string;
  readonly opened: string;
  readonly useBy: string;
  readonly note: string;
}

export type IngredientSaid = Omit<Said<'ingredient-described'>, 'ingredient'>;

const usualFact = <U extends 'g/mL' | '%'>(text: string | undefined, unit: U): FactDraft<U> => ({
  text: text ?? '',
  unit,
  from: 'usual',
});

/** The facts of a sort at common practice. */
export function usualFacts(is: IngredientSort, finish: Finish) {
  const usual = usualIngredient(is, finish);
  return {
    density: usualFact(usual.density, 'g/mL'),
    volumeSolids: usualFact(usual.volumeSolids, '%'),
    weightSolids: usualFact(undefined, '%'),
    pigmentOfSolids: usualFact(usual.pigmentOfSolids, '%'),
    criticalPigment: usualFact(usual.criticalPigment, '%'),
    strength: usual.strength ?? 'medium',
    solventsFrom: usual.solvents ? 'usual' : 'unknown',
  } as const;
}

/** A new ingredient of a sort. */
export const newIngredient = (is: IngredientSort, finish: Finish = 'nitrocellulose'): IngredientDraft => ({
  is,
  name: '',
  finish,
  ...usualFacts(is, finish),
  blend: [{ solvent: undefined, share: '100' }],
  dropsG: '',
  dropsCount: '20',
  contains: 'none',
  letDownOf: undefined,
  letDownIn: undefined,
  letDownStrength: '0.1',
  source: '',
  lot: '',
  opened: '',
  useBy: '',
  note: '',
});

/** The form with another sort: facts that nobody has touched move to the new sort's usual. */
export function withSort(draft: IngredientDraft, is: IngredientSort, finish: Finish): IngredientDraft {
  const usual = usualFacts(is, finish);
  const untouched = <
    K extends 'density' | 'volumeSolids' | 'weightSolids' | 'pigmentOfSolids' | 'criticalPigment',
  >(
    key: K,
  ): IngredientDraft[K] => (draft[key].from === 'usual' ? (usual[key] as IngredientDraft[K]) : draft[key]);
  return {
    ...draft,
    is,
    finish,
    density: untouched('density'),
    volumeSolids: untouched('volumeSolids'),
    weightSolids: untouched('weightSolids'),
    pigmentOfSolids: untouched('pigmentOfSolids'),
    criticalPigment: untouched('criticalPigment'),
    strength: usual.strength,
    solventsFrom: draft.solventsFrom === 'own' ? 'own' : usual.solventsFrom,
  };
}

export const isPigmented = (is: IngredientSort): boolean => ['white-base', 'tinter', 'flatting'].includes(is);
export const isColour = (is: IngredientSort): boolean => ['tinter', 'dye', 'flatting'].includes(is);
export const isVolatile = (is: IngredientSort): boolean => is === 'thinner' || is === 'retarder';
export const isBase = (is: IngredientSort): boolean => is === 'clear' || is === 'white-base';

const DAY = /^\d{4}-\d\d-\d\d$/;
export const dayProblem = (text: string): string | undefined =>
  text === '' || (DAY.test(text) && !Number.isNaN(Date.parse(text)))
    ? undefined
    : INGREDIENT_WORDS.dayProblem;

/** Mass of one drop as the form says it, g; undefined while it does not. */
export function dropG({ dropsG, dropsCount }: IngredientDraft): number | undefined {
  const grams = parseNumber(dropsG);
  const drops = parseNumber(dropsCount);
  return grams !== undefined && grams > 0 && drops !== undefined && drops > 0 ? grams / drops : undefined;
}

export const dropProblem = (draft: IngredientDraft): string | undefined => {
  if (draft.dropsG.trim() === '') return undefined;
  const one = dropG(draft);
  if (one === undefined) return INGREDIENT_WORDS.dropsCountProblem;
  return draftProblem({ text: String(one), unit: 'g' }, LIMITS.dropMass);
};

/** What is wrong with the form, in its order; empty when it can be sent. */
export function ingredientProblems(draft: IngredientDraft): readonly string[] {
  const problems = [
    draft.name.trim() === '' ? INGREDIENT_WORDS.noName : undefined,
    draftProblem(draft.density, LIMITS.density, true),
    draftProblem(draft.volumeSolids, LIMITS.solids, true),
    draftProblem(draft.weightSolids, LIMITS.solids, true),
    draftProblem(draft.pigmentOfSolids, LIMITS.pigment, true),
    draftProblem(draft.criticalPigment, LIMITS.critical, true),
    draft.solventsFrom === 'own' ? blendProblem(draft.blend) : undefined,
    draft.is === 'let-down' ? letDownProblem(draft) : undefined,
    dropProblem(draft),
    dayProblem(draft.opened),
    dayProblem(draft.useBy),
  ];
  return problems.filter((problem) => problem !== undefined);
}

const letDownProblem = ({ letDownOf, letDownIn }: IngredientDraft): string | undefined => {
  if (letDownOf === undefined) return INGREDIENT_WORDS.chooseOf;
  return letDownIn === undefined ? INGREDIENT_WORDS.chooseIn : undefined;
};

const given = <U extends 'g/mL' | 'lb/gal' | '%'>({ text, unit, from }: FactDraft<U>) =>
  text.trim() === '' ? undefined : { value: { text: text.trim(), unit }, from };
const words = (text: string): string | undefined => (text.trim() === '' ? undefined : text.trim());

/** What the form says, for the logbook; what is empty is left out. Only of a form without problems. */
export function ingredientSaid(draft: IngredientDraft): IngredientSaid {
  const { is, finish, blend, solventsFrom } = draft;
  const one = dropG(draft);
  const sum = blendSum(blend);
  const usual = usualIngredient(is, finish).solvents;
  const own = blend.flatMap(({ solvent, share }) =>
    solvent === undefined ? [] : [{ solvent, share: (parseNumber(share) ?? 0) / sum }],
  );
  const solvents =
    solventsFrom === 'own'
      ? { value: own, from: 'data-sheet' as const }
      : solventsFrom === 'usual' && usual
        ? { value: usual, from: 'usual' as const }
        : undefined;
  const all = {
    name: draft.name.trim(),
    is,
    finish: isVolatile(is) || isColour(is) ? undefined : finish,
    density: given(draft.density),
    dropMass:
      one === undefined
        ? undefined
        : {
            value: { text: String(Number(one.toPrecision(4))), unit: 'g' as const },
            from: 'measured' as const,
          },
    volumeSolids: isVolatile(is) ? undefined : given(draft.volumeSolids),
    weightSolids: isVolatile(is) ? undefined : given(draft.weightSolids),
    pigmentOfSolids: isPigmented(is) ? given(draft.pigmentOfSolids) : undefined,
    criticalPigment: isPigmented(is) ? given(draft.criticalPigment) : undefined,
    solvents: is === 'let-down' ? undefined : solvents,
    strength: isColour(is) ? draft.strength : undefined,
    contains: draft.contains === 'none' ? undefined : [draft.contains],
    madeOf: is === 'let-down' ? madeOf(draft) : undefined,
    source: words(draft.source),
    lot: words(draft.lot),
    opened: words(draft.opened),
    useBy: words(draft.useBy),
    note: words(draft.note),
  };
  return Object.fromEntries(
    Object.entries(all).filter(([, value]) => value !== undefined),
  ) as unknown as IngredientSaid;
}

function madeOf({ letDownOf, letDownIn, letDownStrength }: IngredientDraft) {
  if (letDownOf === undefined || letDownIn === undefined) return undefined;
  const strength = Number(letDownStrength);
  return [
    { ingredient: letDownOf, massFraction: strength },
    { ingredient: letDownIn, massFraction: 1 - strength },
  ];
}

/** A kept ingredient as the form shows it. */
export function draftOf(one: ShopIngredient): IngredientDraft {
  const base = newIngredient(one.is, one.finish);
  const fact = <U extends 'g/mL' | 'lb/gal' | '%'>(
    kept:
      | { readonly value: { readonly typed: { text: string; unit: string } }; readonly from: Origin }
      | undefined,
    unit: U,
  ): FactDraft<U> =>
    kept
      ? { text: kept.value.typed.text, unit: kept.value.typed.unit as U, from: kept.from }
      : { text: '', unit, from: 'usual' };
  const [of, clear] = one.madeOf ?? [];
  return {
    ...base,
    name: one.name,
    density: fact<'g/mL' | 'lb/gal'>(one.density, 'g/mL'),
    volumeSolids: fact(one.volumeSolids, '%'),
    weightSolids: fact(one.weightSolids, '%'),
    pigmentOfSolids: fact(one.pigmentOfSolids, '%'),
    criticalPigment: fact(one.criticalPigment, '%'),
    strength: one.strength ?? 'medium',
    solventsFrom: one.solvents ? (one.solvents.from === 'usual' ? 'usual' : 'own') : 'unknown',
    blend: one.solvents
      ? one.solvents.value.map(({ solvent, share }) => ({
          solvent,
          share: String(Number((share * 100).toPrecision(4))),
        }))
      : base.blend,
    dropsG: one.dropMass ? String(Number((one.dropMass.value.si * 20_000).toPrecision(4))) : '',
    contains: one.contains?.[0] ?? 'none',
    letDownOf: of?.ingredient,
    letDownIn: clear?.ingredient,
    letDownStrength: of?.massFraction === 0.01 ? '0.01' : '0.1',
    source: one.source ?? '',
    lot: one.lot ?? '',
    opened: one.opened ?? '',
    useBy: one.useBy ?? '',
    note: one.note ?? '',
  };
}
