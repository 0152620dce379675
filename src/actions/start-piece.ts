import { type ActionNeeds, type Logged, log, type Said } from './log';

/** Puts a piece on the bench; the entry carries its new id. */
export const startPiece = (
  needs: ActionNeeds,
  said: Omit<Said<'piece-started'>, 'piece'>,
  atMs?: number,
): Logged<'piece-started'> => log(needs, 'piece-started', { ...said, piece: needs.newId() }, atMs);
