import { type ActionNeeds, type Logged, log, type Said } from '../log';

/** Notes that the gun was put down: the wear of the filters, and the zero of the clearance clock. */
export const endSpraying = (
  needs: ActionNeeds,
  said: Said<'spraying-ended'>,
  atMs?: number,
): Logged<'spraying-ended'> => log(needs, 'spraying-ended', said, atMs);
