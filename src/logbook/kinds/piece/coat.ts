import * as v from 'valibot';
import { COUNTS, LIMITS } from '../../limits';
import { typed } from '../../typed';
import { count, entryOf, halves, Id, Note } from '../envelope';

export const COAT_WAYS = ['spray', 'brush', 'pad', 'brush-fill', 'flash'] as const;
export const SANDING_STAGES = ['scuff', 'level', 'rub-out'] as const;

const Wet = v.object({ by: v.literal('wet'), wetFilm: typed(LIMITS.wetFilm) });
const Usual = v.object({ by: v.literal('usual'), dryFilm: typed(LIMITS.dryFilm) });
const passesOf = <Count extends v.GenericSchema<number>>(passes: Count) =>
  v.object({ by: v.literal('passes'), passes, perPass: typed(LIMITS.wetFilm) });

const Film = v.variant('by', [Wet, passesOf(count(COUNTS.passes)), Usual]);
/** Half a pass, as a toner is brought up to its depth. */
export const FilmByHalves = v.variant('by', [Wet, passesOf(halves(COUNTS.passes)), Usual]);

export const COAT_FIELDS = { how: v.picklist(COAT_WAYS), film: Film };

export const COAT_KINDS = {
  'coat-laid': entryOf(
    'coat-laid',
    {
      piece: Id,
      jar: Id,
      ...COAT_FIELDS,
      air: v.exactOptional(Id),
    },
    {
      film: FilmByHalves,
      zoneId: v.exactOptional(Id),
      /** Whether oil was on the pad: its rags heat themselves. */
      oil: v.exactOptional(v.boolean()),
    },
  ),
  /** A coat that another phone seemed to have logged too within a minute is one of its own. */
  'coat-apart': entryOf('coat-apart', { piece: Id, coat: Id }),
  sanded: entryOf(
    'sanded',
    {
      piece: Id,
      removed: typed(LIMITS.removed),
      grit: v.exactOptional(Note),
      stage: v.picklist(SANDING_STAGES),
    },
    {
      zoneId: v.exactOptional(Id),
      /** The amount is what is usual; nobody measured it. */
      isUsual: v.exactOptional(v.literal(true)),
    },
  ),
};
