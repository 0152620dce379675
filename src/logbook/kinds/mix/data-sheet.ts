import * as v from 'valibot';
import { LOGBOOK_WORDS } from '../../../words/frame/logbook';
import { LIMITS } from '../../limits';
import { quantity, type Typed, typed } from '../../typed';
import { entryOf, Id } from '../envelope';

const Time = v.exactOptional(typed(LIMITS.sheetTime));

// Faults of the fields are told first: a text that is no number is compared with nothing.
const isOrdered = (from: Typed | undefined, until: Typed | undefined): boolean =>
  from === undefined || until === undefined || !(quantity(until).si <= quantity(from).si);

const Times = v.pipe(
  v.object({ touch: Time, recoatFrom: Time, recoatUntil: Time, sand: Time, cured: Time }),
  v.forward(
    v.check(
      ({ recoatFrom, recoatUntil }) => isOrdered(recoatFrom, recoatUntil),
      LOGBOOK_WORDS.windowEndsFirst,
    ),
    ['recoatUntil'],
  ),
);

export const DATA_SHEET_KINDS = {
  /** The times that the product's own sheet gives, at the conditions that it gives them for. */
  'sheet-entered': entryOf(
    'sheet-entered',
    {
      jar: Id,
      temperature: typed(LIMITS.temperature),
      humidity: typed(LIMITS.humidity),
      times: Times,
      potLife: Time,
      totalFilm: v.exactOptional(typed(LIMITS.totalFilm)),
    },
    {
      /** The wet film for which the times hold. */
      wetFilm: v.exactOptional(typed(LIMITS.wetFilm)),
    },
  ),
};
