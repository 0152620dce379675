import { type ActionNeeds, type Logged, log, type Said } from '../log';

/** Notes the times of the product’s own data sheet. */
export const enterSheet = (
  needs: ActionNeeds,
  said: Said<'sheet-entered'>,
  atMs?: number,
): Logged<'sheet-entered'> => log(needs, 'sheet-entered', said, atMs);
