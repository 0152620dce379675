import { type ActionNeeds, type Logged, log, type Said } from '../log';

/** Sets which reminders are off, and when none sounds. */
export const setReminders = (
  needs: ActionNeeds,
  said: Said<'reminders-set'>,
  atMs?: number,
): Logged<'reminders-set'> => log(needs, 'reminders-set', said, atMs);
