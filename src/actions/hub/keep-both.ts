import { type ActionNeeds, type Logged, log } from '../log';

/** Says that a coat is another than the one that a second phone logged within the same minute. */
export const keepBoth = (needs: ActionNeeds, piece: string, coat: string): Logged<'coat-apart'> =>
  log(needs, 'coat-apart', { piece, coat });
