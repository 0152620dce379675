import { type ActionNeeds, type Logged, log, type Said } from './log';

/** Writes a note about a piece; a private one stays out of whatever is shared. */
export const notePiece = (needs: ActionNeeds, said: Said<'piece-noted'>): Logged<'piece-noted'> =>
  log(needs, 'piece-noted', said);

/** Keeps what a person wrote into the record, in place of what was written before. */
export const wordRecord = (needs: ActionNeeds, said: Said<'record-worded'>): Logged<'record-worded'> =>
  log(needs, 'record-worded', said);
