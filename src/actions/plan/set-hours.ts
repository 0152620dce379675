import { type ActionNeeds, type Logged, log, type Said } from '../log';

/** Sets the working week. */
export const setHours = (needs: ActionNeeds, said: Said<'hours-set'>, atMs?: number): Logged<'hours-set'> =>
  log(needs, 'hours-set', said, atMs);
