import { type ActionNeeds, type Logged, log, type Said } from '../log';

/** Puts a new cartridge or filter into use; the entry carries its new id. */
export const openFilter = (
  needs: ActionNeeds,
  said: Omit<Said<'filter-opened'>, 'filter'>,
  atMs?: number,
): Logged<'filter-opened'> => log(needs, 'filter-opened', { ...said, filter: needs.newId() }, atMs);
