import { typedWords } from '../../../parts/fields/typed-words';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { findingOf, oldFinishOf } from '../../../shop/stack/old-finish';
import { OLD_WORDS } from '../../../words/piece/old-finish';
import { PIECE_FORM } from '../../../words/piece/piece';
import { RECORD as WORDS } from '../../../words/piece/record';
import { dropWords } from '../old-finish/drop-words';
import { findingWords } from '../old-finish/finding-words';
import { usePiece } from '../use-piece';
import { leadWords } from './from-facts';

/** How the piece was found: what lies below, what the drops said, and what is known of lead. */
export function Condition() {
  const { shop } = useShop();
  const units = useUnits();
  const { piece } = usePiece();
  const record = oldFinishOf(piece.id, shop.value);
  const { tests, seen, lead } = record;
  const facts: readonly (readonly [string, string | undefined])[] = [
    [WORDS.base, PIECE_FORM.bases[piece.base].label],
    [WORDS.area, piece.area && typedWords(piece.area.typed, units)],
    [
      WORDS.oldFinish,
      tests.length > 0 || seen ? findingWords(findingOf(record), seen?.opaque ?? false) : undefined,
    ],
    [WORDS.layers, seen?.layersSeen],
    [WORDS.lead, leadWords(lead)],
  ];
  return (
    <section>
      <h3>{WORDS.condition}</h3>
      <dl class="fact-list">
        {facts.map(
          ([term, text]) =>
            text && (
              <div key={term}>
                <dt>{term}</dt>
                <dd>{text}</dd>
              </div>
            ),
        )}
      </dl>
      {piece.note && <p class="as-written">{piece.note}</p>}
      {tests.length > 0 && (
        <>
          <p>{WORDS.tests}:</p>
          <ul>
            {tests.map(({ id, solvent, dwell, reading, isTopOnly }) => (
              <li key={id}>
                {OLD_WORDS.solvents[solvent]}:{' '}
                {dropWords({ dwell: dwell.typed, reading, ...(isTopOnly && { isTopOnly }) })}
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}
