import * as v from 'valibot';
import { LOGBOOK_WORDS } from '../../../words/frame/logbook';
import { COUNTS } from '../../limits';
import { plainNumber } from '../../typed';
import { count, entryOf, Id, Name, Note } from '../envelope';

/** In what a recipe's line may be said; `%` and `parts` also say of what, and whether by mass or volume. */
const RECIPE_UNITS = ['g', 'mL', 'drops', 'parts', '%', 'fl-oz-us', 'fl-oz-imperial'] as const;
/** What the colour lies over. */
const UNDERS = ['white', 'old-colour', 'bare-wood', 'dark'] as const;

const MOST = 1_000_000;
const isAmount = (text: string): boolean => {
  const value = plainNumber(text);
  return value !== undefined && value > 0 && value <= MOST;
};

const Amount = v.object({
  text: v.pipe(v.string(), v.check(isAmount, LOGBOOK_WORDS.notAnAmount)),
  unit: v.picklist(RECIPE_UNITS),
});

/** One line of a recipe, kept as typed. */
const RecipeLine = v.pipe(
  v.object({
    ingredient: Id,
    amount: Amount,
    by: v.exactOptional(v.picklist(['mass', 'volume'])),
    of: v.exactOptional(v.picklist(['lacquer', 'mix'])),
  }),
  v.check(({ amount, of }) => amount.unit !== '%' || of !== undefined, LOGBOOK_WORDS.percentOfWhat),
  v.check(
    ({ amount, by }) => (amount.unit !== '%' && amount.unit !== 'parts') || by !== undefined,
    LOGBOOK_WORDS.byMassOrVolume,
  ),
);

const Coats = v.exactOptional(count(COUNTS.coats));

/** What the mix is for; a clear, an opaque colour, a dye toner and a shading lacquer are asked different things. */
const Use = v.variant('as', [
  v.object({ as: v.literal('clear') }),
  v.object({ as: v.literal('opaque'), over: v.picklist(UNDERS), coatsToHide: Coats }),
  v.object({ as: v.literal('dye-toner'), passes: Coats }),
  v.object({ as: v.literal('shading'), where: Note, passes: Coats }),
]);

/** Each version is a recipe of its own, which names the one it was made from. */
export const RECIPE_KINDS = {
  'recipe-written': entryOf('recipe-written', {
    recipe: Id,
    name: Name,
    use: Use,
    lines: v.pipe(
      v.array(RecipeLine),
      v.minLength(COUNTS.recipeLines.lowest, LOGBOOK_WORDS.emptyRecipe),
      v.maxLength(COUNTS.recipeLines.highest, LOGBOOK_WORDS.longRecipe(COUNTS.recipeLines.highest)),
    ),
    previous: v.exactOptional(Id),
    note: v.exactOptional(Note),
  }),
  'recipe-put-away': entryOf('recipe-put-away', { recipe: Id }),
  /** A photo of the dried card; the picture itself is kept beside the logbook, on this device only. */
  'card-photographed': entryOf('card-photographed', { recipe: Id, photo: Id }),
};
