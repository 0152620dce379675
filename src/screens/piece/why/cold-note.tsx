import type { Piece } from '../../../logbook/fold/piece/pieces';
import { linkTo } from '../../../parts/frame/route';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { countedDays, TRADE_DAYS } from '../../../shop/stack/counted-days';
import { sandingRoom } from '../../../shop/stack/sanding-room';
import { COLD_WORDS } from '../../../words/piece/cold';
import { INPUT_WORDS } from '../../../words/piece/why';
import { numberWords, temperatureWords } from '../../../words/quantities';
import { dayWords } from '../../../words/times';

/** Days within this of one another are told as days at 21 °C. */
const SAME_DAYS = 0.25;

/** What hardness is held against, and how the trade would count the days of a cold shop. */
export function ColdNote({ piece }: { readonly piece: Piece }) {
  const { shop, nowMs } = useShop();
  const units = useUnits();
  const lastMs = piece.coats.at(-1)?.atMs;
  if (lastMs === undefined) return null;
  const room = sandingRoom(shop.value);
  const counted = countedDays(shop.value, lastMs, nowMs.value);
  const isCold = counted.days - counted.likely > SAME_DAYS;
  const days = (value: number): string => numberWords(value, 1);
  return (
    <>
      <p class="quiet small">
        {COLD_WORDS.room(temperatureWords(room.temperatureK, units), INPUT_WORDS.sandingFrom[room.from])}{' '}
        <a href={linkTo('more')}>{COLD_WORDS.change}</a>
      </p>
      {isCold && (
        <p class="small">
          {COLD_WORDS.counted(
            days(counted.days),
            days(counted.likely),
            days(counted.low),
            days(counted.high),
          )}{' '}
          {counted.overMs !== undefined && COLD_WORDS.over(TRADE_DAYS, dayWords(counted.overMs, nowMs.value))}
        </p>
      )}
    </>
  );
}
