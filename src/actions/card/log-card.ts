import type { Coat } from '../../logbook/fold/pieces';
import { type ActionNeeds, type Logged, log, type Said } from '../log';

/** Makes a test card. */
export const makeCard = (needs: ActionNeeds, said: Omit<Said<'card-made'>, 'card'>): Logged<'card-made'> =>
  log(needs, 'card-made', { card: needs.newId(), ...said });

/** Says that a card got the same coat as a piece, at the same time. */
export const coatCardWith = (
  needs: ActionNeeds,
  card: string,
  {
    id: coat,
    jar,
    how,
    film,
    atMs,
  }: Pick<Coat, 'id' | 'jar' | 'how' | 'atMs'> & Pick<Said<'coat-laid'>, 'film'>,
): Logged<'card-coated'> => log(needs, 'card-coated', { card, coat, jar, how, film }, atMs);

/** Logs what a card weighs. */
export const weighCard = (
  needs: ActionNeeds,
  said: Said<'card-weighed'>,
  atMs?: number,
): Logged<'card-weighed'> => log(needs, 'card-weighed', said, atMs);

/** Ends a card: nothing more is to come of it. */
export const endCard = (needs: ActionNeeds, card: string): Logged<'card-ended'> =>
  log(needs, 'card-ended', { card });
