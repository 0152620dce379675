import { type ActionNeeds, type Logged, log } from './log';

/** Marks a jar as used up. */
export const emptyJar = (needs: ActionNeeds, jar: string, atMs?: number): Logged<'jar-emptied'> =>
  log(needs, 'jar-emptied', { jar }, atMs);
