import type { Said } from '../../../actions/log';
import { usualIngredient } from '../../../actions/mix/usual-ingredient';
import { parseNumber, plainText } from '../../../logbook/as-typed';
import type { ShopIngredient } from '../../../logbook/fold/mix/ingredients';
import type { Draft } from '../../../parts/fields/typed-field';
import { blendSum } from '../jar/jar-draft';
import { tracerNmOf } from '../tracer-field';
import {
  dropG,
  type FactDraft,
  type IngredientDraft,
  isColour,
  isPigmented,
  isVolatile,
  newIngredient,
  type Origin,
} from './ingredient-draft';

export type IngredientSaid = Omit<Said<'ingredient-described'>, 'ingredient'>;

const given = <U extends 'g/mL' | 'lb/gal' | '%'>({ text, unit, from }: FactDraft<U>) =>
  text.trim() === '' ? undefined : { value: { text: text.trim(), unit }, from };
/** One drop as it was said, where it was said in this unit. */
const knownDrop = <U extends 'g' | 'mL'>({ text, unit }: Draft<'g' | 'mL'>, asked: U) =>
  unit === asked && text.trim() !== ''
    ? { value: { text: text.trim(), unit: asked }, from: 'measured' as const }
    : undefined;
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
      draft.dropBy === 'known'
        ? knownDrop(draft.oneDrop, 'g')
        : one === undefined
          ? undefined
          : {
              value: { text: plainText(Number(one.toPrecision(4))), unit: 'g' as const },
              from: 'measured' as const,
            },
    dropVolume: draft.dropBy === 'known' ? knownDrop(draft.oneDrop, 'mL') : undefined,
    volumeSolids: isVolatile(is) ? undefined : given(draft.volumeSolids),
    weightSolids: isVolatile(is) ? undefined : given(draft.weightSolids),
    pigmentOfSolids: isPigmented(is) ? given(draft.pigmentOfSolids) : undefined,
    criticalPigment: isPigmented(is) ? given(draft.criticalPigment) : undefined,
    solvents: is === 'let-down' ? undefined : solvents,
    strength: isColour(is) ? draft.strength : undefined,
    contains: draft.contains === 'none' ? undefined : [draft.contains],
    tracerNm: tracerNmOf(draft.tracer),
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
    dropBy: one.dropVolume ? 'known' : 'weighed',
    oneDrop: { text: one.dropVolume?.value.typed.text ?? '', unit: one.dropVolume ? 'mL' : 'g' },
    dropsG: one.dropMass ? String(Number((one.dropMass.value.si * 20_000).toPrecision(4))) : '',
    contains: one.contains?.[0] ?? 'none',
    tracer: one.tracerNm === undefined ? '' : String(one.tracerNm),
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
