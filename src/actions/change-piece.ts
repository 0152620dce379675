import { type ActionNeeds, type Logged, log, type Said } from './log';

/** Says something new of a piece: its name, its base, its area. */
export const changePiece = (
  needs: ActionNeeds,
  said: Said<'piece-changed'>,
  atMs?: number,
): Logged<'piece-changed'> => log(needs, 'piece-changed', said, atMs);
