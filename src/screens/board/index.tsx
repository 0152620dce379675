import { Button } from '../../parts/blocks/button';
import { EmptyState } from '../../parts/blocks/empty-state';
import { Page } from '../../parts/blocks/page';
import { linkTo } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import { showOnly } from '../../parts/kept/hub-here';
import { StaleLine } from '../../parts/kept/hub-line';
import { BOARD_WORDS } from '../../words/board';
import { HUB_HERE } from '../../words/frame/hub';
import { clockWords } from '../../words/times';
import { BoardLine } from './board-line';
import { boardStates } from './board-state';
import { useStayAwake } from './stay-awake';
import { useSecond } from './use-second';

/** Every piece in digits for the whole shop: when it may be touched, and how long that is; the screen stays on. */
export function Board() {
  const { shop, standings, needs } = useShop();
  const isAwake = useStayAwake();
  const nowMs = useSecond(needs.now);
  const lines = boardStates(shop.value, standings.value, nowMs);
  return (
    <Page
      title={BOARD_WORDS.title}
      backTo={showOnly.now.value === 'yes' ? undefined : linkTo('bench')}
      aside={<p class="board-clock digits">{clockWords(nowMs)}</p>}
    >
      {lines.length === 0 ? (
        <EmptyState title={BOARD_WORDS.empty} text={BOARD_WORDS.emptyText} />
      ) : (
        <ul class="board" style={{ '--columns': String(Math.ceil(Math.sqrt(lines.length))) }}>
          {lines.map((line) => (
            <BoardLine key={line.id} line={line} nowMs={nowMs} />
          ))}
        </ul>
      )}
      <StaleLine />
      <div class="acts">
        {document.fullscreenEnabled && (
          <Button icon="board" onClick={() => void fillScreen()}>
            {BOARD_WORDS.full}
          </Button>
        )}
      </div>
      <p class="quiet small">
        {BOARD_WORDS.outside} {isAwake ? BOARD_WORDS.awake : BOARD_WORDS.sleeps}
      </p>
      {showOnly.now.value === 'yes' && (
        <p class="quiet small">
          {HUB_HERE.showOnly} <a href={linkTo('more', 'hub')}>{HUB_HERE.change}</a>
        </p>
      )}
    </Page>
  );
}

/** Fills the screen, or gives it back. A browser that refuses leaves the board as large as it is. */
async function fillScreen(): Promise<void> {
  try {
    await (document.fullscreenElement
      ? document.exitFullscreen()
      : document.documentElement.requestFullscreen());
  } catch {
    // Refused: nothing is lost.
  }
}
