import { type ActionNeeds, type Logged, log, type Said } from '../log';

/** Notes the air in the shop. */
export const readAir = (needs: ActionNeeds, said: Said<'air-read'>, atMs?: number): Logged<'air-read'> =>
  log(needs, 'air-read', said, atMs);

/** Says what the shop is like by day and by night when nobody reads the air. */
export const setForecast = (
  needs: ActionNeeds,
  said: Said<'forecast-set'>,
  atMs?: number,
): Logged<'forecast-set'> => log(needs, 'forecast-set', said, atMs);
