import { type ActionNeeds, type Logged, log, type Said } from './log';

/** Notes the air in the shop. */
export const readAir = (needs: ActionNeeds, said: Said<'air-read'>, atMs?: number): Logged<'air-read'> =>
  log(needs, 'air-read', said, atMs);
