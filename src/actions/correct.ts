import type { EntryOf } from '../logbook/entry';
import { type ActionNeeds, type Logged, log } from './log';

/** Says what an entry should have said; undoing the entry that this gives takes the correction back. */
export const correct = (
  needs: ActionNeeds,
  entry: string,
  to: EntryOf<'corrected'>['to'],
): Logged<'corrected'> => log(needs, 'corrected', { entry, to });
