import { Row } from '../../parts/blocks/row';
import { linkTo } from '../../parts/frame/route';
import { useUnits } from '../../parts/frame/shop-context';
import { shiftOf } from '../../shop/colour/aim';
import { hidingFilmUm } from '../../shop/colour/hides';
import { knownTinters } from '../../shop/colour/model';
import { umToMetres } from '../../units';
import { MATCH_WORDS as WORDS } from '../../words/match/match';
import { HIDING_WORDS, SHIFT_WORDS, TINTER_WORDS, TONER_WORDS } from '../../words/match/tools';
import { filmWords } from '../../words/quantities';
import { signedText } from './colour-text';
import { type OfMatch, useMatches } from './use-match';

/** The cards of a match, each with what it says so far. */
export function FurtherRows({ match }: OfMatch) {
  const units = useUnits();
  const shift = shiftOf(match)?.shift;
  const hiding = hidingFilmUm(match);
  const drawn = knownTinters(match, useMatches()).reduce((sum, { tints }) => sum + tints.length, 0);
  const rows = [
    {
      page: 'tinters',
      title: TINTER_WORDS.title,
      says: drawn > 0 ? TINTER_WORDS.drawn(drawn) : TINTER_WORDS.hint,
    },
    {
      page: 'shift',
      title: SHIFT_WORDS.title,
      says: shift ? SHIFT_WORDS.row(signedText(shift.dL, 1), signedText(shift.db, 1)) : SHIFT_WORDS.none,
    },
    {
      page: 'hiding',
      title: HIDING_WORDS.title,
      says: hiding
        ? `${HIDING_WORDS.hides} ${filmWords(umToMetres(hiding.filmUm), units)}`
        : HIDING_WORDS.none,
    },
    { page: 'toner', title: TONER_WORDS.title, says: TONER_WORDS.hint },
    { page: 'change', title: WORDS.change, says: WORDS.changeHint },
  ].filter(({ page }) => page !== 'shift' || match.through === 'clear');
  return (
    <ul class="rows">
      {rows.map(({ page, title, says }) => (
        <Row key={page} href={linkTo('match', match.id, page)} title={title}>
          <p class="quiet small">{says}</p>
        </Row>
      ))}
    </ul>
  );
}
