import type { Piece } from '../../logbook/fold/piece/pieces';
import { Fold } from '../../parts/blocks/fold';
import { Icon } from '../../parts/blocks/icons';
import { linkTo } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import { undoWithToast } from '../../parts/frame/undo';
import { byWhom } from '../../shop/record/by-whom';
import { HISTORY_FOLD } from '../../words/piece/acts';
import { CORRECT_WORDS } from '../../words/piece/coat/correct';
import { OLD_WORDS } from '../../words/piece/old-finish';
import { EVENT_WORDS, PIECE_WORDS } from '../../words/piece/piece';
import { whenWords } from '../../words/times';
import { eventsOf, type PieceEvent } from './events';

/** The newest lines stand open; the others are folded. */
const OPEN_LINES = 5;

/** What was done to a piece, newest first, each with its undo. */
export function History({ piece }: { readonly piece: Piece }) {
  const { shop, nowMs } = useShop();
  const events = eventsOf(piece, shop.value).filter(({ isUndone }) => !isUndone);
  const newest = events.toReversed();
  const lines = (some: readonly PieceEvent[]) => (
    <ol class="history">
      {some.map((event) => (
        <HistoryLine key={event.id} event={event} piece={piece} />
      ))}
    </ol>
  );
  const [last] = newest;
  return (
    <Fold
      title={PIECE_WORDS.history}
      brief={last && HISTORY_FOLD.last(last.what, whenWords(last.atMs, nowMs.value))}
    >
      {lines(newest.slice(0, OPEN_LINES))}
      {newest.length > OPEN_LINES && (
        <details class="folded">
          <summary>{HISTORY_FOLD.more(newest.length - OPEN_LINES)}</summary>
          {lines(newest.slice(OPEN_LINES))}
        </details>
      )}
    </Fold>
  );
}

interface HistoryLineProps {
  readonly event: PieceEvent;
  readonly piece: Piece;
}

function HistoryLine({ event, piece }: HistoryLineProps) {
  const { id, what, how, atMs, isCorrected, isCorrectedInWriting, opens } = event;
  const { shop, actions, nowMs } = useShop();
  const by = byWhom(id, shop.value);
  const when = whenWords(atMs, nowMs.value);
  return (
    <li>
      <div class="history-text">
        <p>
          <strong>{what}</strong> <span class="quiet digits">{when}</span>
        </p>
        {by && <p class="small quiet">{EVENT_WORDS.by(by)}</p>}
        {how && <p class="small quiet">{how}</p>}
        {opens.length > 0 && (
          <p class="small history-links">
            {opens.map(({ href, name }) => (
              <a key={name} href={href}>
                {name}
              </a>
            ))}
          </p>
        )}
        {isCorrected && <p class="small quiet">{CORRECT_WORDS.mark}</p>}
      </div>
      {!isCorrectedInWriting && (
        <a
          class="undo"
          aria-label={CORRECT_WORDS.lead(what, when)}
          href={linkTo('piece', piece.id, 'correct', id)}
        >
          <Icon name="edit" />
        </a>
      )}
      {isCorrectedInWriting ? (
        <a class="undo" aria-label={OLD_WORDS.correctLead} href={linkTo('piece', piece.id, 'old')}>
          <Icon name="edit" />
        </a>
      ) : (
        <button
          type="button"
          class="undo"
          aria-label={EVENT_WORDS.undoOf(what, when)}
          onClick={() => void undoWithToast(actions, id, what)}
        >
          <Icon name="undo" />
        </button>
      )}
    </li>
  );
}
