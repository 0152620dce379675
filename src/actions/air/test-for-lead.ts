import { type ActionNeeds, type Logged, log, type Said } from '../log';

/** Notes what a test for lead found, or that it is treated as lead untested. */
export const testForLead = (
  needs: ActionNeeds,
  said: Said<'lead-tested'>,
  atMs?: number,
): Logged<'lead-tested'> => log(needs, 'lead-tested', said, atMs);
