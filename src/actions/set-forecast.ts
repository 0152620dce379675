import { type ActionNeeds, type Logged, log, type Said } from './log';

/** Says what the shop is like by day and by night when nobody reads the air. */
export const setForecast = (
  needs: ActionNeeds,
  said: Said<'forecast-set'>,
  atMs?: number,
): Logged<'forecast-set'> => log(needs, 'forecast-set', said, atMs);
