import type { Coat } from '../../logbook/fold/pieces';
import type { Typed } from '../../logbook/typed';
import { unitWord } from '../../words/frame/logbook';
import { COAT_WORDS } from '../../words/piece/piece';

/** A quantity as the person typed it: "3,5 mil". */
export const typedWords = ({ text, unit }: Typed): string => `${text.trim()} ${unitWord(unit)}`.trim();

/** How much went on, as the person said it. */
export function filmAsTyped(film: Coat['film']): string {
  if (film.by === 'wet') return COAT_WORDS.wet(typedWords(film.wetFilm.typed));
  if (film.by === 'passes') return COAT_WORDS.passes(film.passes, typedWords(film.perPass.typed));
  return COAT_WORDS.usual(typedWords(film.dryFilm.typed));
}
