import { type ActionNeeds, type Logged, log, type Said } from './log';

/** Says what is in a jar; the entry carries its new id. */
export const fillJar = (
  needs: ActionNeeds,
  said: Omit<Said<'jar-filled'>, 'jar'>,
  atMs?: number,
): Logged<'jar-filled'> => log(needs, 'jar-filled', { ...said, jar: needs.newId() }, atMs);
