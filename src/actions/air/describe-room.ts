import { type ActionNeeds, type Logged, log, type Said } from '../log';

/** Says what the room is and how it is aired. */
export const describeRoom = (
  needs: ActionNeeds,
  said: Said<'room-described'>,
  atMs?: number,
): Logged<'room-described'> => log(needs, 'room-described', said, atMs);
