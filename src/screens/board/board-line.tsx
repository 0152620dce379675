import { Icon } from '../../parts/blocks/icons';
import { MomentTime } from '../../parts/time/moment-time';
import { BOARD_WORDS } from '../../words/board';
import { countDownWords } from '../../words/times';
import type { BoardState } from './board-state';

/** One piece: its state by a word and a pattern, its time in large digits, and what is left until then. */
export function BoardLine({ line, nowMs }: { readonly line: BoardState; readonly nowMs: number }) {
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
