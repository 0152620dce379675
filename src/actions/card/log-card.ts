import type { Coat } from '../../logbook/fold/piece/pieces';
import { filmSaidBy } from '../film-said';
import { type ActionNeeds, type Logged, log, type Said } from '../log';

/** Makes a test card. */
export const makeCard = (
  needs: ActionNeeds,
  said: Omit<Said<'card-made'>, 'card'>,
  atMs?: number,
): Logged<'card-made'> => log(needs, 'card-made', { card: needs.newId(), ...said }, atMs);

/** Says that a card got a coat on its own, beside no piece. */
export const coatCard = (
  needs: ActionNeeds,
  said: Said<'card-coated'>,
  atMs?: number,
): Logged<'card-coated'> => log(needs, 'card-coated', said, atMs);

/** Says that a card got the same coat as a piece, at the same time. */
export const coatCardWith = (needs: ActionNeeds, card: string, coat: Coat): Logged<'card-coated'> => {
  const { id, jar, how, atMs } = coat;
  return log(needs, 'card-coated', { card, coat: id, jar, how, film: filmSaidBy(coat) }, atMs);
};

/** Logs what a card weighs. */
export const weighCard = (
  needs: ActionNeeds,
  said: Said<'card-weighed'>,
  atMs?: number,
): Logged<'card-weighed'> => log(needs, 'card-weighed', said, atMs);

/** Ends a card: nothing more is to come of it. */
export const endCard = (needs: ActionNeeds, card: string): Logged<'card-ended'> =>
  log(needs, 'card-ended', { card });
