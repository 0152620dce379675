import { type ActionNeeds, type Logged, log, type Said } from '../log';

/** Keeps a time when the shop is closed. */
export const setClosure = (
  needs: ActionNeeds,
  said: Said<'closure-set'>,
  atMs?: number,
): Logged<'closure-set'> => log(needs, 'closure-set', said, atMs);
