import * as v from 'valibot';
import { LOGBOOK_WORDS } from '../../words/frame/logbook';
import { LIMITS } from '../limits';
import { typed } from '../typed';
import { entryOf, Id, Instant } from './envelope';
import { COAT_FIELDS, FilmByHalves } from './piece/coat';

/** What a person may have got wrong of an entry. Each kind takes those that it has itself (`fold/corrections.ts`). */
const TO = {
  at: v.exactOptional(Instant),
  piece: v.exactOptional(Id),
  jar: v.exactOptional(Id),
  zoneId: v.exactOptional(Id),
  how: v.exactOptional(COAT_FIELDS.how),
  film: v.exactOptional(COAT_FIELDS.film),
  removed: v.exactOptional(typed(LIMITS.removed)),
  amount: v.exactOptional(typed(LIMITS.volume)),
  volume: v.exactOptional(typed(LIMITS.volume)),
  mass: v.exactOptional(typed(LIMITS.mass)),
  scale: v.exactOptional(typed(LIMITS.mass)),
  temperature: v.exactOptional(typed(LIMITS.temperature)),
  humidity: v.exactOptional(typed(LIMITS.humidity)),
};

const toOf = <const Fields extends v.ObjectEntries>(fields: Fields) =>
  v.pipe(
    v.object(fields),
    v.check((to) => Object.keys(to).length > 0, LOGBOOK_WORDS.nothingCorrected),
  );

/** A later line that says what an earlier one should have said. It is undone like any other. */
export const CORRECTION_KINDS = {
  corrected: entryOf(
    'corrected',
    { entry: Id, to: toOf(TO) },
    { to: toOf({ ...TO, film: v.exactOptional(FilmByHalves) }) },
  ),
};
