import { quantity } from '../logbook/typed';
import { fail } from '../result';
import { leavesNoLacquer } from '../shop/jar/volumes-in-mix';
import { NO_ROOM_FOR_LACQUER } from '../words/frame/actions';
import { type ActionNeeds, type Logged, log, type Said } from './log';

type JarSaid = Omit<Said<'jar-filled'>, 'jar'>;

/** Says what is in a jar; the entry carries its new id. */
export async function fillJar(needs: ActionNeeds, said: JarSaid, atMs?: number): Logged<'jar-filled'> {
  const added = said.retarder ? [said.thinning, said.retarder] : [said.thinning];
  const inSi = added.map(({ of, percent }) => ({ of, percent: quantity(percent) }));
  if (leavesNoLacquer(inSi))
    return fail({ sentence: NO_ROOM_FOR_LACQUER, fields: { 'thinning.percent': NO_ROOM_FOR_LACQUER } });
  return log(needs, 'jar-filled', { ...said, jar: needs.newId() }, atMs);
}

/** Marks a jar as used up. */
export const emptyJar = (needs: ActionNeeds, jar: string, atMs?: number): Logged<'jar-emptied'> =>
  log(needs, 'jar-emptied', { jar }, atMs);
