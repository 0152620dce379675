import * as v from 'valibot';
import { LIMITS } from '../../limits';
import { typed } from '../../typed';
import { entryOf, Id } from '../envelope';
import { WhiteName } from './match';

export const TONER_KINDS = {
  /** A toner that is laid pass by pass on a piece. Its readings name it as their match. A description replaces the one before it. */
  'toner-described': entryOf('toner-described', {
    piece: Id,
    zoneId: v.exactOptional(Id),
    toner: Id,
    jar: Id,
    white: WhiteName,
    tolerance: v.exactOptional(typed(LIMITS.tolerance)),
  }),
};
