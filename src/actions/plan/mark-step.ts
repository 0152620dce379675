import { type ActionNeeds, type Logged, log, type Said } from '../log';

/** Marks a step as done, or a check as not passed, now or at the instant given. */
export const markStep = (
  needs: ActionNeeds,
  said: Said<'step-marked'>,
  atMs?: number,
): Logged<'step-marked'> => log(needs, 'step-marked', said, atMs);
