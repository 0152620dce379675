import { type IngredientSort, usualIngredient } from '../../../actions/mix/usual-ingredient';
import { parseNumber, plainText } from '../../../logbook/as-typed';
import { LIMITS, type Limit } from '../../../logbook/limits';
import { type Draft, draftProblem } from '../../../parts/fields/typed-field';
import type { Finish } from '../../../shop/jar/own-solvents';
import { INGREDIENT_WORDS } from '../../../words/mix/ingredient';
import { type BlendRow, blendProblem } from '../jar/jar-draft';
import { tracerProblem } from '../tracer-field';

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
  /** One drop of this bottle, where it is known rather than weighed by twenty. */
  readonly dropBy: 'weighed' | 'known';
  readonly oneDrop: Draft<'g' | 'mL'>;
  readonly dropsCount: string;
  /** The light under which it fluoresces, nm; empty where it holds no tracer. */
  readonly tracer: string;
  readonly contains: 'none' | 'isocyanate' | 'acid' | 'oil' | 'aerosol';
  readonly letDownOf: string | undefined;
  readonly letDownIn: string | undefined;
  readonly letDownStrength: '0.1' | '0.01';
  readonly source: string;
  readonly lot: string;
  readonly opened: string;
  readonly useBy: string;
  readonly note: string;
}

const usualFact = <U extends 'g/mL' | '%'>(text: string | undefined, unit: U): FactDraft<U> => ({
  text: text ?? '',
  unit,
  from: 'usual',
});

/** The facts of a sort at common practice. */
function usualFacts(is: IngredientSort, finish: Finish) {
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
  dropBy: 'weighed',
  oneDrop: { text: '', unit: 'g' },
  dropsCount: '20',
  contains: 'none',
  tracer: '',
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

/** What one drop may be, by weight or by volume. */
const dropLimit = (unit: 'g' | 'mL') => (unit === 'g' ? LIMITS.dropMass : LIMITS.dropVolume);

/** The drops are counted only with their weight: both may be left empty. */
export const dropsCountProblem = ({ dropBy, dropsG, dropsCount }: IngredientDraft): string | undefined => {
  if (dropBy === 'known' || (dropsG.trim() === '' && dropsCount.trim() === '')) return undefined;
  return (parseNumber(dropsCount) ?? 0) > 0 ? undefined : INGREDIENT_WORDS.dropsCountProblem;
};

/** What is wrong with the weight, or with the one drop that is known. */
export const dropProblem = (draft: IngredientDraft): string | undefined => {
  if (draft.dropBy === 'known')
    return draftProblem(draft.oneDrop, dropLimit(draft.oneDrop.unit) as Limit, true);
  if (draft.dropsG.trim() === '' || dropsCountProblem(draft)) return undefined;
  const one = dropG(draft);
  if (one === undefined) return INGREDIENT_WORDS.dropsCountProblem;
  return draftProblem({ text: plainText(one), unit: 'g' }, LIMITS.dropMass);
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
    dropsCountProblem(draft),
    dropProblem(draft),
    tracerProblem(draft.tracer),
    dayProblem(draft.opened),
    dayProblem(draft.useBy),
  ];
  return problems.filter((problem) => problem !== undefined);
}

const letDownProblem = ({ letDownOf, letDownIn }: IngredientDraft): string | undefined => {
  if (letDownOf === undefined) return INGREDIENT_WORDS.chooseOf;
  return letDownIn === undefined ? INGREDIENT_WORDS.chooseIn : undefined;
};
