import { type ActionNeeds, type Logged, log, type Said } from '../log';

/** Marks a place on a piece, or says anew what it is. */
export const describeZone = (
  needs: ActionNeeds,
  { zoneId = needs.newId(), ...said }: Omit<Said<'zone-described'>, 'zoneId'> & { readonly zoneId?: string },
): Logged<'zone-described'> => log(needs, 'zone-described', { ...said, zoneId });
