import * as v from 'valibot';
import { LOGBOOK_WORDS } from '../../../words/frame/logbook';
import { COUNTS, LIMITS } from '../../limits';
import { typed } from '../../typed';
import { CalendarDay, count, entryOf, Fraction, Id, Name, Note } from '../envelope';
import { Blend, CONTENTS, FINISHES, PIGMENT_SHAPES } from './jar';

export const INGREDIENT_KINDS_OF = [
  'clear',
  'white-base',
  'tinter',
  'dye',
  'flatting',
  'let-down',
  'thinner',
  'retarder',
] as const;
const STRENGTHS = ['weak', 'medium', 'strong'] as const;
/** Where a fact is from; whoever reads it may judge it. */
const FACT_ORIGINS = ['data-sheet', 'measured', 'usual'] as const;

const Origin = v.picklist(FACT_ORIGINS);
const fact = <Schema extends v.GenericSchema>(value: Schema) =>
  v.exactOptional(v.object({ value, from: Origin }));

const MadeOf = v.pipe(
  v.array(v.object({ ingredient: Id, massFraction: Fraction })),
  v.minLength(1, LOGBOOK_WORDS.empty),
  v.maxLength(COUNTS.recipeLines.highest, LOGBOOK_WORDS.longRecipe(COUNTS.recipeLines.highest)),
);

/** A description replaces the one before it, whole; the first of an id brings the ingredient into the shop. */
export const INGREDIENT_KINDS = {
  'ingredient-described': entryOf(
    'ingredient-described',
    {
      ingredient: Id,
      name: Name,
      is: v.picklist(INGREDIENT_KINDS_OF),
      finish: v.exactOptional(v.picklist(FINISHES)),
      density: fact(typed(LIMITS.density)),
      dropMass: fact(typed(LIMITS.dropMass)),
      volumeSolids: fact(typed(LIMITS.solids)),
      weightSolids: fact(typed(LIMITS.solids)),
      pigmentOfSolids: fact(typed(LIMITS.pigment)),
      criticalPigment: fact(typed(LIMITS.critical)),
      pigmentShape: v.exactOptional(v.picklist(PIGMENT_SHAPES)),
      solvents: fact(Blend),
      strength: v.exactOptional(v.picklist(STRENGTHS)),
      contains: v.exactOptional(v.array(v.picklist(CONTENTS))),
      madeOf: v.exactOptional(MadeOf),
      source: v.exactOptional(Note),
      lot: v.exactOptional(Note),
      opened: v.exactOptional(CalendarDay),
      useBy: v.exactOptional(CalendarDay),
      note: v.exactOptional(Note),
    },
    {
      /** It fluoresces under light of this wavelength, nm. */
      tracerNm: v.exactOptional(count(COUNTS.tracerNm)),
      /** A drop of its bottle, where its volume is known rather than its weight. */
      dropVolume: fact(typed(LIMITS.dropVolume)),
    },
  ),
  'ingredient-put-away': entryOf('ingredient-put-away', { ingredient: Id }),
};
