import { type ActionNeeds, type Logged, log, type Said } from '../log';

/** Takes a closure back. */
export const liftClosure = (
  needs: ActionNeeds,
  said: Said<'closure-lifted'>,
  atMs?: number,
): Logged<'closure-lifted'> => log(needs, 'closure-lifted', said, atMs);
