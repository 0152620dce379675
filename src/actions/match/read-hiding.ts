import { hidingOf } from '../../shop/colour/hides';
import { HIDING_PROBLEMS } from '../../words/match/tools';
import { type ActionNeeds, type Logged, log, type Said } from '../log';
import { refuseWith } from '../mix/mix-refused';

/** Keeps a draw-down over a black and white card; one that fits no film is kept out, with what to do instead. */
export async function readHiding(needs: ActionNeeds, said: Said<'hiding-read'>): Logged<'hiding-read'> {
  return hidingOf(said) === undefined
    ? refuseWith(HIDING_PROBLEMS.noFilm, 'dryFilm')
    : log(needs, 'hiding-read', said);
}
