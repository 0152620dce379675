import { LinkButton } from '../../../parts/blocks/button';
import { linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { clearedMs } from '../../../shop/air/session-solvent';
import { ROOM_WORDS as WORDS } from '../../../words/air/room';
import { spanWords, whenWords } from '../../../words/times';

/** How long the vapour of the last spraying takes to leave, counted down. */
export function Clearance() {
  const { shop, nowMs } = useShop();
  const { room, sprayings } = shop.value;
  const last = sprayings.at(-1);
  const now = nowMs.value;
  const endMs = room && last ? clearedMs(room, last.atMs) : undefined;
  return (
    <>
      {endMs === undefined && <p>{WORDS.noSpraying}</p>}
      {endMs !== undefined && endMs > now && (
        <div class="margin-card" data-kind="wait">
          <p class="margin-label">{WORDS.clearing(whenWords(endMs, now))}</p>
          <p class="margin-value digits">{WORDS.left1(spanWords(endMs - now))}</p>
          <p>{WORDS.clearingNote}</p>
        </div>
      )}
      {endMs !== undefined && endMs <= now && (
        <p>
          {WORDS.cleared(whenWords(endMs, now))} {WORDS.clearingNote}
        </p>
      )}
      <div class="acts">
        <LinkButton href={linkTo('air', 'ended')}>{WORDS.endSpraying}</LinkButton>
      </div>
    </>
  );
}
