import { type ActionNeeds, type Logged, log, type Said } from '../log';

/** Notes what an old finish looks like. */
export const seeOldFinish = (
  needs: ActionNeeds,
  said: Said<'old-finish-seen'>,
  atMs?: number,
): Logged<'old-finish-seen'> => log(needs, 'old-finish-seen', said, atMs);
