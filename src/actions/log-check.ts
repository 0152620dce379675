import { type ActionNeeds, type Logged, log, type Said } from './log';

/** Marks what the film did when it was tried. */
export const logCheck = (needs: ActionNeeds, said: Said<'checked'>, atMs?: number): Logged<'checked'> =>
  log(needs, 'checked', said, atMs);
