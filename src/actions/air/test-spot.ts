import { type ActionNeeds, type Logged, log, type Said } from '../log';

/** Notes what a drop of solvent did to an old finish. */
export const testSpot = (
  needs: ActionNeeds,
  said: Said<'spot-tested'>,
  atMs?: number,
): Logged<'spot-tested'> => log(needs, 'spot-tested', said, atMs);
