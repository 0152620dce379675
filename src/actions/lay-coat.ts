import { type ActionNeeds, type Logged, log, type Said } from './log';

/** Marks a coat, now or at the instant given. */
export const layCoat = (needs: ActionNeeds, said: Said<'coat-laid'>, atMs?: number): Logged<'coat-laid'> =>
  log(needs, 'coat-laid', said, atMs);
