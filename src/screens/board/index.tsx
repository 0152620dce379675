import { EmptyState } from '../../parts/empty-state';
import { MomentTime } from '../../parts/moment-time';
import { Page } from '../../parts/page';
import { linkTo } from '../../parts/route';
import { useShop } from '../../parts/shop-context';
import { byWhatComesFirst, type Standing, standingOf } from '../../parts/standing';
import { BENCH_WORDS, BOARD_WORDS } from '../../words/bench';
import { clockWords } from '../../words/times';
import { useStayAwake } from './stay-awake';

/** What dries, in digits for the whole shop; the screen stays on. */
export function Board() {
  const { shop, outlooks, nowMs } = useShop();
  const isAwake = useStayAwake();
  const standings = byWhatComesFirst(
    [...shop.value.pieces.values()].map((piece) =>
      standingOf(piece, outlooks.value.get(piece.id), nowMs.value),
    ),
  ).filter(({ group, moment }) => group !== 'closed' && moment !== undefined);
  return (
    <Page
      title={BOARD_WORDS.title}
      backTo={linkTo('bench')}
      aside={<p class="board-clock digits">{clockWords(nowMs.value)}</p>}
    >
      {standings.length === 0 ? (
        <EmptyState title={BOARD_WORDS.empty} text={BOARD_WORDS.emptyText} />
      ) : (
        <ul class="board">
          {standings.map((standing) => (
            <BoardLine key={standing.piece.id} standing={standing} nowMs={nowMs.value} />
          ))}
        </ul>
      )}
      <p class="quiet small">{isAwake ? BOARD_WORDS.awake : BOARD_WORDS.sleeps}</p>
    </Page>
  );
}

function BoardLine({
  standing: { piece, may, moment },
  nowMs,
}: {
  readonly standing: Standing;
  readonly nowMs: number;
}) {
  return (
    <li>
      <h2>{piece.name}</h2>
      {may && may !== 'first-coat' ? (
        <p class="board-now" data-kind="ready">
          <span class="band-label">{BENCH_WORDS.may[may]}</span>
          <span class="board-word">{BOARD_WORDS.now}</span>
        </p>
      ) : (
        moment && <MomentTime moment={moment} nowMs={nowMs} size="board" />
      )}
    </li>
  );
}
