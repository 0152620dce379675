import { type ActionNeeds, type Logged, log, type Said } from '../log';

/** Says which jar a place on a piece is toned from. */
export const describeToner = (
  needs: ActionNeeds,
  said: Omit<Said<'toner-described'>, 'toner'>,
): Logged<'toner-described'> => log(needs, 'toner-described', { ...said, toner: needs.newId() });
