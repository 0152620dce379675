import * as v from 'valibot';
import { LIMITS } from '../../limits';
import { typed } from '../../typed';
import { entryOf, Id, Name, Note } from '../envelope';

export const FILTER_PARTS = ['cartridge', 'prefilter', 'booth-filter'] as const;

export const CARTRIDGE_KINDS = {
  'filter-opened': entryOf('filter-opened', {
    filter: Id,
    part: v.picklist(FILTER_PARTS),
    name: Name,
    /** The schedule that the person set, and what it rests on (29 CFR 1910.134(d)(3)(iii)). */
    wear: v.exactOptional(typed(LIMITS.wearTime)),
    open: v.exactOptional(typed(LIMITS.openTime)),
    basis: v.exactOptional(Note),
  }),
  'filter-thrown-out': entryOf('filter-thrown-out', { filter: Id }),
};
