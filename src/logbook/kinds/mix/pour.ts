import * as v from 'valibot';
import { LOGBOOK_WORDS } from '../../../words/frame/logbook';
import { COUNTS, LIMITS } from '../../limits';
import { typed } from '../../typed';
import { count, entryOf, Id } from '../envelope';

const Mass = v.pipe(
  v.number(),
  v.check((kg) => kg > 0 && kg <= 200, LOGBOOK_WORDS.notAMass),
);

/** A weigh-up: its plan in the order of pouring, then every pour as the scale showed it. */
export const POUR_KINDS = {
  'weigh-up-begun': entryOf('weigh-up-begun', {
    weighUp: Id,
    recipe: Id,
    plan: v.pipe(
      v.array(v.object({ ingredient: Id, massKg: Mass })),
      v.minLength(COUNTS.recipeLines.lowest, LOGBOOK_WORDS.emptyRecipe),
      v.maxLength(COUNTS.recipeLines.highest, LOGBOOK_WORDS.longRecipe(COUNTS.recipeLines.highest)),
    ),
    division: typed(LIMITS.division),
    /** Whether the scale is set to nought before each ingredient. */
    isTared: v.boolean(),
  }),
  poured: entryOf('poured', {
    weighUp: Id,
    /** Which line of the plan, from 0. */
    line: count({ lowest: 0, highest: COUNTS.recipeLines.highest - 1 }),
    /** What the scale shows: this pour alone where it is tared, everything in the vessel where it is not. */
    scale: typed(LIMITS.mass),
  }),
  'weigh-up-dropped': entryOf('weigh-up-dropped', { weighUp: Id }),
};
