import type { Piece } from '../../logbook/fold/piece/pieces';
import { Fold } from '../../parts/blocks/fold';
import { Row } from '../../parts/blocks/row';
import { linkTo } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import { PIECE_WORDS as WORDS } from '../../words/piece/piece';
import { whenWords } from '../../words/times';

/** The colours matched for a piece, the newest first, and the way to another. */
export function Matches({ piece }: { readonly piece: Piece }) {
  const { shop, nowMs } = useShop();
  const own = [...shop.value.matches.values()].filter((match) => match.piece === piece.id).toReversed();
  if (own.length === 0) return null; // another one is begun from the acts of the piece
  return (
    <Fold title={WORDS.matches} brief={String(own.length)}>
      <ul class="rows">
        {own.map(({ id, name, trials, begunMs, putAwayMs }) => (
          <Row key={id} href={linkTo('match', id)} title={name}>
            <p class="quiet small">
              {WORDS.matchLine(trials.length, whenWords(begunMs, nowMs.value), putAwayMs !== undefined)}
            </p>
          </Row>
        ))}
      </ul>
    </Fold>
  );
}
