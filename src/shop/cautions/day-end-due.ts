import type { Shop } from '../../logbook/fold/fold';
import type { Coat } from '../../logbook/fold/piece/pieces';
import type { CautionsRead } from '../../logbook/fold/shop/cautions';
import { HOUR_MS } from '../../units';

/** Work of so long ago belongs to this day: a day in the shop may end after midnight (judgement, no source). */
const SHOP_DAY_MS = 16 * HOUR_MS;
/** Nothing laid for so long: the day may be over (judgement, no source). */
const QUIET_MS = 2 * HOUR_MS;

/** The coats laid in this day of the shop. */
export const coatsOfDay = ({ pieces }: Pick<Shop, 'pieces'>, nowMs: number): readonly Coat[] =>
  [...pieces.values()].flatMap(({ coats }) => coats.filter(({ atMs }) => nowMs - atMs < SHOP_DAY_MS));

/** When the end of this day was confirmed last. */
export const dayEndRead = ({ cautionsRead }: Shop, nowMs: number): CautionsRead | undefined =>
  cautionsRead.findLast(({ act, atMs }) => act === 'end-day' && nowMs - atMs < SHOP_DAY_MS);

const lastCoatMs = (shop: Shop, nowMs: number): number =>
  coatsOfDay(shop, nowMs).reduce((latest, { atMs }) => Math.max(latest, atMs), 0);

/** Whether something was laid today and the end of the day is not confirmed since. */
export function isDayEndDue(shop: Shop, nowMs: number): boolean {
  const last = lastCoatMs(shop, nowMs);
  return last > 0 && (dayEndRead(shop, nowMs)?.atMs ?? 0) < last;
}

/** Whether it is due and nothing was laid for two hours: the moment to ask of one's own accord. */
export const isDayEndPressing = (shop: Shop, nowMs: number): boolean =>
  isDayEndDue(shop, nowMs) && nowMs - lastCoatMs(shop, nowMs) >= QUIET_MS;
