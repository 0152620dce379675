import type { Coat } from '../../../logbook/fold/piece/pieces';
import { typedWords } from '../../../parts/fields/typed-words';
import { COAT_WORDS } from '../../../words/piece/piece';
import type { UnitSystem } from '../../../words/quantities';

/** How much went on, as the person said it. */
export function filmAsTyped(film: Coat['film'], units: UnitSystem): string {
  if (film.by === 'wet') return COAT_WORDS.wet(typedWords(film.wetFilm.typed, units));
  if (film.by === 'passes') return COAT_WORDS.passes(film.passes, typedWords(film.perPass.typed, units));
  return COAT_WORDS.usual(typedWords(film.dryFilm.typed, units));
}
