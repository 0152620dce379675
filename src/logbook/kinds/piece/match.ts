import * as v from 'valibot';
import { WHITE_POINTS, type White } from '../../../science/colour/white-points';
import { LOGBOOK_WORDS } from '../../../words/frame/logbook';
import { COUNTS, LIMITS } from '../../limits';
import { typed } from '../../typed';
import { entryOf, Id, Name, Note } from '../envelope';

/** Where the repair lies; the more the eye rests there, the stricter. */
const MATCH_PLACES = ['open-panel', 'edge', 'hidden'] as const;
/** How the target was read, and so how the finished repair will be seen. */
const SEEN_THROUGH = ['bare', 'clear'] as const;
const TINTER_FORMS = ['neat', 'let-down-10', 'let-down-1'] as const;
/** Tinters by the names the trade gives them; what is known of their strength stands in science/pigment. */
export const USUAL_NAMES = [
  'ochre',
  'raw sienna',
  'raw umber',
  'burnt umber',
  'black',
  'red oxide',
  'green oxide',
] as const;
const WHITES = Object.keys(WHITE_POINTS) as [White, ...White[]];

/** The light and observer of a reading. */
export const WhiteName = v.picklist(WHITES);

const Tinter = v.object({ ingredient: Id, like: v.exactOptional(v.picklist(USUAL_NAMES)) });
const differ = (tinters: readonly { readonly ingredient: string }[]): boolean =>
  new Set(tinters.map(({ ingredient }) => ingredient)).size === tinters.length;

const Added = v.object({ ingredient: Id, form: v.picklist(TINTER_FORMS), mass: typed(LIMITS.mass) });

/**
 * A match: a target and the jar that is led to it, trial by trial. A description replaces the one before it, whole. A trial is the
 * jar as it was after what was added; the first holds the white base alone.
 */
export const MATCH_KINDS = {
  'match-described': entryOf(
    'match-described',
    {
      match: Id,
      name: Name,
      piece: v.exactOptional(Id),
      place: v.picklist(MATCH_PLACES),
      /** In deltaE00; that of the place when left out. */
      tolerance: v.exactOptional(typed(LIMITS.tolerance)),
      through: v.picklist(SEEN_THROUGH),
      white: WhiteName,
      base: Id,
      tinters: v.pipe(
        v.array(Tinter),
        v.maxLength(COUNTS.tinters.highest, LOGBOOK_WORDS.longTinters(COUNTS.tinters.highest)),
        v.check((tinters) => differ(tinters), LOGBOOK_WORDS.tinterTwice),
      ),
      division: typed(LIMITS.division),
      /** The let-downs that are made up. */
      letDowns: v.array(v.picklist(['let-down-10', 'let-down-1'])),
      /** What the let-downs are made in. */
      clear: v.exactOptional(Id),
      /** The most that the jar takes. */
      jarHolds: v.exactOptional(typed(LIMITS.mass)),
      /** How far b* may still drift up, so that the aim lies that much below the target. */
      yellowing: v.exactOptional(typed(LIMITS.yellowing)),
      note: v.exactOptional(Note),
    },
    { zoneId: v.exactOptional(Id) },
  ),
  'match-put-away': entryOf('match-put-away', { match: Id }),
  'trial-mixed': entryOf('trial-mixed', {
    match: Id,
    trial: Id,
    added: v.pipe(
      v.array(Added),
      v.maxLength(COUNTS.recipeLines.highest, LOGBOOK_WORDS.longRecipe(COUNTS.recipeLines.highest)),
    ),
    note: v.exactOptional(Note),
  }),
  /** The trial became a version of a recipe. */
  'trial-accepted': entryOf('trial-accepted', { match: Id, trial: Id, recipe: Id }),
};
