import type { Said } from '../../../actions/log';
import { parseNumber } from '../../../logbook/as-typed';
import type { Recipe } from '../../../logbook/fold/mix/recipes';
import { type TypedLine, typedLines } from '../../../shop/recipe/batch';
import { LOGBOOK_WORDS } from '../../../words/frame/logbook';
import { RECIPE_WORDS } from '../../../words/mix/recipe';
import { type MeasureKey, measureKey, measureParts } from './measures';

/** A line of a recipe as it is being typed. */
export interface LineDraft {
  readonly ingredient: string | undefined;
  readonly text: string;
  readonly measure: MeasureKey;
}

export type Use = 'clear' | 'opaque' | 'dye-toner' | 'shading';
export type Over = 'white' | 'old-colour' | 'bare-wood' | 'dark';

/** The recipe form as it stands. */
export interface RecipeDraft {
  readonly name: string;
  readonly use: Use;
  readonly over: Over;
  readonly coats: string;
  readonly where: string;
  readonly lines: readonly LineDraft[];
  readonly note: string;
}

type RecipeSaid = Omit<Said<'recipe-written'>, 'recipe'>;

const emptyLine = (measure: MeasureKey): LineDraft => ({ ingredient: undefined, text: '', measure });

export const newRecipe = (): RecipeDraft => ({
  name: '',
  use: 'opaque',
  over: 'white',
  coats: '',
  where: '',
  lines: [emptyLine('g')],
  note: '',
});

/** The draft with one more line, said as the last one is. */
export const withLine = (draft: RecipeDraft): RecipeDraft => ({
  ...draft,
  lines: [...draft.lines, emptyLine(draft.lines.at(-1)?.measure ?? 'g')],
});

/** A kept recipe as the form shows it. */
export function draftOf(recipe: Recipe): RecipeDraft {
  const { use } = recipe;
  const coats = use.as === 'opaque' ? use.coatsToHide : use.as === 'clear' ? undefined : use.passes;
  return {
    name: recipe.name,
    use: use.as,
    over: use.as === 'opaque' ? use.over : 'white',
    coats: coats === undefined ? '' : String(coats),
    where: use.as === 'shading' ? use.where : '',
    lines: typedLines(recipe).map((line) => ({
      ingredient: line.ingredient,
      text: line.amount.text,
      measure: measureKey(line),
    })),
    note: recipe.note ?? '',
  };
}

/** The lines that are filled in, as a recipe holds them. */
export const linesOf = (draft: RecipeDraft): readonly TypedLine[] =>
  draft.lines.flatMap(({ ingredient, text, measure }) => {
    if (ingredient === undefined) return [];
    const { unit, ...more } = measureParts(measure);
    return [{ ingredient, amount: { text: text.trim(), unit }, ...more }];
  });

export const lineProblem = ({ ingredient, text }: LineDraft): string | undefined => {
  if (ingredient === undefined) return RECIPE_WORDS.choose;
  const value = parseNumber(text);
  if (value === undefined) return LOGBOOK_WORDS.notANumber;
  return value > 0 && value <= 1_000_000 ? undefined : LOGBOOK_WORDS.notAnAmount;
};

export const coatsProblem = (text: string): string | undefined => {
  const count = parseNumber(text);
  const isCount = count !== undefined && Number.isInteger(count) && count >= 1 && count <= 100;
  return text.trim() === '' || isCount ? undefined : RECIPE_WORDS.coatsProblem;
};

/** Whether every field can be sent. */
export const isWhole = (draft: RecipeDraft): boolean =>
  draft.name.trim() !== '' &&
  coatsProblem(draft.coats) === undefined &&
  draft.lines.every((line) => lineProblem(line) === undefined);

/** What the form says, for the logbook. Only of a draft that is whole. */
export const recipeSaid = (draft: RecipeDraft, previous?: string): RecipeSaid => ({
  name: draft.name.trim(),
  use: useOf(draft),
  lines: linesOf(draft) as RecipeSaid['lines'],
  ...(previous === undefined ? {} : { previous }),
  ...(draft.note.trim() === '' ? {} : { note: draft.note.trim() }),
});

function useOf({ use, over, coats, where }: RecipeDraft): RecipeSaid['use'] {
  const count = parseNumber(coats);
  if (use === 'clear') return { as: 'clear' };
  if (use === 'opaque') return { as: use, over, ...(count === undefined ? {} : { coatsToHide: count }) };
  const passes = count === undefined ? {} : { passes: count };
  return use === 'shading' ? { as: use, where: where.trim(), ...passes } : { as: use, ...passes };
}
