import { Icon, type IconName } from '../../parts/frame/icons';
import { MomentTime } from '../../parts/time/moment-time';
import { BOARD_WORDS } from '../../words/bench';
import { countDownWords } from '../../words/times';
import type { BoardState } from './board-state';

const SIGNS: Record<BoardState['kind'], IconName> = {
  now: 'ready',
  waiting: 'stop',
  bare: 'note',
  unknown: 'waiting',
  failed: 'caution',
};

/** One piece: its state by a word and a pattern, its time in large digits, and what is left until then. */
export function BoardLine({ line, nowMs }: { readonly line: BoardState; readonly nowMs: number }) {
  const { name, kind, touch, after } = line;
  const shown = kind === 'waiting' ? touch : after;
  return (
    <li data-kind={kind}>
      <h2>{name}</h2>
      <p class="board-state">
        <Icon name={SIGNS[kind]} />
        {BOARD_WORDS.states[kind]}
      </p>
      {shown && (
        <>
          <MomentTime
            moment={shown}
            nowMs={nowMs}
            size="board"
            label={kind === 'waiting' ? BOARD_WORDS.touchFrom : undefined}
          />
          <p class="board-left digits">{BOARD_WORDS.left(countDownWords(shown.likelyMs - nowMs))}</p>
        </>
      )}
    </li>
  );
}
