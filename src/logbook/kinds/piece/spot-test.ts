import * as v from 'valibot';
import { OLD_FINISH_SIGNS, UV_LOOKS } from '../../../science/old-finish/signs';
import { SPOT_READINGS, SPOT_SOLVENTS } from '../../../science/old-finish/spot-tests';
import { COUNTS, LIMITS } from '../../limits';
import { typed } from '../../typed';
import { count, entryOf, Id, Name } from '../envelope';
import { WrittenReason } from './override';

const FIRST_READINGS = ['nothing', 'dulls', 'softens', 'dissolves', 'wrinkles'] as const;
const FIRST_FINDINGS = ['none-found', 'found', 'treat-as-lead'] as const;
/** What is known of lead; untested takes back an answer that was given in error. */
export const LEAD_FINDINGS = [...FIRST_FINDINGS, 'untested'] as const;

export const SPOT_TEST_KINDS = {
  'spot-tested': entryOf(
    'spot-tested',
    {
      piece: Id,
      solvent: v.picklist(SPOT_SOLVENTS),
      dwell: typed(LIMITS.dwell),
      reading: v.picklist(FIRST_READINGS),
    },
    {
      reading: v.picklist(SPOT_READINGS),
      /** What lay below did not answer. */
      isTopOnly: v.exactOptional(v.literal(true)),
      zoneId: v.exactOptional(Id),
    },
  ),
  'old-finish-seen': entryOf(
    'old-finish-seen',
    { piece: Id, opaque: v.boolean(), signs: v.array(v.picklist(OLD_FINISH_SIGNS)) },
    {
      uv: v.exactOptional(v.picklist(UV_LOOKS)),
      layers: v.exactOptional(count(COUNTS.layers)),
      madeAbout: v.exactOptional(count(COUNTS.year)),
      /** In the person's own words: off-white over cream over brown. */
      layersSeen: v.exactOptional(Name),
    },
  ),
  /** An answer stands until a later one; lead that was found, until it is corrected in writing. */
  'lead-tested': entryOf(
    'lead-tested',
    { piece: Id, finding: v.picklist(FIRST_FINDINGS) },
    {
      finding: v.picklist(LEAD_FINDINGS),
      /** How it was tested, and where. */
      method: v.exactOptional(Name),
      /** Why the answer before it was wrong. */
      correction: v.exactOptional(WrittenReason),
    },
  ),
};
