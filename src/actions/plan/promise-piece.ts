import { type ActionNeeds, type Logged, log, type Said } from '../log';

/** Keeps what the owner was promised, or takes it back. */
export const promisePiece = (
  needs: ActionNeeds,
  said: Said<'piece-promised'>,
  atMs?: number,
): Logged<'piece-promised'> => log(needs, 'piece-promised', said, atMs);
