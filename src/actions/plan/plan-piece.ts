import { type ActionNeeds, type Logged, log, type Said } from '../log';

/** Sets the plan of a piece, in place of the one before. */
export const planPiece = (
  needs: ActionNeeds,
  said: Said<'piece-planned'>,
  atMs?: number,
): Logged<'piece-planned'> => log(needs, 'piece-planned', said, atMs);
