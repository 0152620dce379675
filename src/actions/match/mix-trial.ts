import { type ActionNeeds, type Logged, log, type Said } from '../log';

/** Notes what was stirred into the jar: the next trial, still to be drawn down and read. */
export const mixTrial = (
  needs: ActionNeeds,
  said: Omit<Said<'trial-mixed'>, 'trial'>,
  atMs?: number,
): Logged<'trial-mixed'> => log(needs, 'trial-mixed', { ...said, trial: needs.newId() }, atMs);
