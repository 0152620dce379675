import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { Button } from '../../parts/blocks/button';
import { EmptyState } from '../../parts/blocks/empty-state';
import { Icon } from '../../parts/blocks/icons';
import { Page } from '../../parts/blocks/page';
import { linkTo } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import { showOnly } from '../../parts/kept/hub-here';
import { StaleLine } from '../../parts/kept/hub-line';
import { MomentTime } from '../../parts/time/moment-time';
import { BOARD_WORDS } from '../../words/board';
import { HUB_HERE } from '../../words/frame/hub';
import { clockWords, countDownWords } from '../../words/times';
import { type BoardState, boardStates } from './board-state';
import { useStayAwake } from './stay-awake';

const SECOND_MS = 1000;

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

/** The clock, moved on every second, for a count-down. */
function useSecond(now: () => number): number {
  const nowMs = useSignal(now());
  useEffect(() => {
    const timer = setInterval(() => {
      nowMs.value = now();
    }, SECOND_MS);
    return () => clearInterval(timer);
  }, [nowMs, now]);
  return nowMs.value;
}

/** One piece: its state by a word and a pattern, its time in large digits, and what is left until then. */
function BoardLine({ line, nowMs }: { readonly line: BoardState; readonly nowMs: number }) {
  const { name, sign, isWet, awaited } = line;
  return (
    <li data-kind={isWet ? 'wet' : sign.kind}>
      <h2>{name}</h2>
      <p class="board-state">
        <Icon name={isWet ? 'stop' : sign.icon} />
        {sign.word}
      </p>
      {awaited && (
        <>
          <MomentTime moment={awaited} nowMs={nowMs} size="board" />
          <p class="board-left digits">{BOARD_WORDS.left(countDownWords(awaited.likelyMs - nowMs))}</p>
        </>
      )}
    </li>
  );
}
