import * as v from 'valibot';
import { SPOT_READINGS, SPOT_SOLVENTS } from '../../science/old-finish/spot-tests';
import { LIMITS } from '../limits';
import { typed } from '../typed';
import { entryOf, Id } from './envelope';

export const OLD_FINISH_SIGNS = ['polish', 'crazed', 'drying-agents', 'oily-smell'] as const;
export const LEAD_FINDINGS = ['none-found', 'found', 'treat-as-lead'] as const;

export const SPOT_TEST_KINDS = {
  'spot-tested': entryOf('spot-tested', {
    piece: Id,
    solvent: v.picklist(SPOT_SOLVENTS),
    dwell: typed(LIMITS.dwell),
    reading: v.picklist(SPOT_READINGS),
  }),
  'old-finish-seen': entryOf('old-finish-seen', {
    piece: Id,
    opaque: v.boolean(),
    signs: v.array(v.picklist(OLD_FINISH_SIGNS)),
  }),
  'lead-tested': entryOf('lead-tested', { piece: Id, finding: v.picklist(LEAD_FINDINGS) }),
};
