import { type ActionNeeds, type Logged, log, type Said } from './log';

/** Puts a piece on the bench; the entry carries its new id. */
export const startPiece = (
  needs: ActionNeeds,
  said: Omit<Said<'piece-started'>, 'piece'>,
  atMs?: number,
): Logged<'piece-started'> => log(needs, 'piece-started', { ...said, piece: needs.newId() }, atMs);

/** Says something new of a piece: its name, its base, its area. */
export const changePiece = (
  needs: ActionNeeds,
  said: Said<'piece-changed'>,
  atMs?: number,
): Logged<'piece-changed'> => log(needs, 'piece-changed', said, atMs);

/** Takes a finished piece off the bench; its record stays. */
export const closePiece = (needs: ActionNeeds, piece: string, atMs?: number): Logged<'piece-closed'> =>
  log(needs, 'piece-closed', { piece }, atMs);
