import * as v from 'valibot';
import { LIMITS } from '../../limits';
import { typed } from '../../typed';
import { entryOf, Id, Name } from '../envelope';

/** What stands beside the finish and waits by itself: in the pores, in a gap, on the bare wood, or between two parts. */
export const GROUNDS = ['pore-filler', 'filler-paste', 'grain-sealer', 'glue'] as const;

export const GROUND_KINDS = {
  /** One application of it. */
  'ground-laid': entryOf('ground-laid', {
    piece: Id,
    zoneId: v.exactOptional(Id),
    ground: v.picklist(GROUNDS),
    product: v.exactOptional(Name),
    isTinted: v.exactOptional(v.literal(true)),
    /** How long it waits by its own sheet; what is usual where that was not said. */
    waits: v.exactOptional(typed(LIMITS.sheetTime)),
  }),
};
