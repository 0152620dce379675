import { type ActionNeeds, type Logged, log } from './log';

/** Undoes an entry by its id; undoing the entry that this gives brings it back. */
export const undo = (needs: ActionNeeds, entry: string): Logged<'struck'> => log(needs, 'struck', { entry });
