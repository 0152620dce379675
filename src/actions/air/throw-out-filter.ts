import { type ActionNeeds, type Logged, log } from '../log';

/** Takes a filter out of use. */
export const throwOutFilter = (needs: ActionNeeds, filter: string): Logged<'filter-thrown-out'> =>
  log(needs, 'filter-thrown-out', { filter });
