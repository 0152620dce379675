import * as v from 'valibot';
import { COUNTS, LIMITS } from '../limits';
import { typed } from '../typed';
import { count, entryOf, Id, Note } from './envelope';

export const COAT_WAYS = ['spray', 'brush', 'pad', 'brush-fill', 'flash'] as const;
export const SANDING_STAGES = ['scuff', 'level', 'rub-out'] as const;

const Film = v.variant('by', [
  v.object({ by: v.literal('wet'), wetFilm: typed(LIMITS.wetFilm) }),
  v.object({ by: v.literal('passes'), passes: count(COUNTS.passes), perPass: typed(LIMITS.wetFilm) }),
  v.object({ by: v.literal('usual'), dryFilm: typed(LIMITS.dryFilm) }),
]);

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
    { zoneId: v.exactOptional(Id) },
  ),
  sanded: entryOf(
    'sanded',
    {
      piece: Id,
      removed: typed(LIMITS.removed),
      grit: v.exactOptional(Note),
      stage: v.picklist(SANDING_STAGES),
    },
    { zoneId: v.exactOptional(Id) },
  ),
};
