import { type ActionNeeds, type Logged, log } from './log';

/** Takes a finished piece off the bench; its record stays. */
export const closePiece = (needs: ActionNeeds, piece: string, atMs?: number): Logged<'piece-closed'> =>
  log(needs, 'piece-closed', { piece }, atMs);
