import { type ActionNeeds, type Logged, log, type Said } from './log';

/** Changes what is named and leaves the other settings as they are. */
export const changeSettings = (
  needs: ActionNeeds,
  patch: Said<'settings-changed'>['patch'],
): Logged<'settings-changed'> => log(needs, 'settings-changed', { patch });
