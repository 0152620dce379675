import { cautionsFor, HAZARDS } from '../reminders/cautions';
import { HOUR_S } from '../units';
import type { Caution } from '../words/cautions';
import type { CautionsRead } from './fold/cautions';
import type { Shop } from './fold/fold';
import { jarHazards } from './jar-hazards';

/** Work of so long ago belongs to this day: a day in the shop may end after midnight. */
const DAY_MS = 16 * HOUR_S * 1000;

/** The cautions for the end of the day, by every jar that was used in it. Rags are always among them. */
export function dayEndCautions(shop: Shop, nowMs: number): readonly Caution[] {
  const used = new Set(coatsSince(shop, nowMs - DAY_MS).map(({ jar }) => jar));
  const found = new Set([...used].flatMap((id) => hazardsOf(id, shop)));
  return cautionsFor(
    'end-day',
    HAZARDS.filter((hazard) => found.has(hazard)),
  );
}

/** Whether something was laid today and the end of the day is not confirmed since. */
export function isDayEndDue(shop: Shop, nowMs: number): boolean {
  const last = coatsSince(shop, nowMs - DAY_MS).reduce((latest, { atMs }) => Math.max(latest, atMs), 0);
  return last > 0 && (dayEndRead(shop, nowMs)?.atMs ?? 0) < last;
}

/** When the end of this day was confirmed last. */
export const dayEndRead = ({ cautionsRead }: Shop, nowMs: number): CautionsRead | undefined =>
  cautionsRead.findLast(({ act, atMs }) => act === 'end-day' && nowMs - atMs < DAY_MS);

const coatsSince = ({ pieces }: Shop, sinceMs: number) =>
  [...pieces.values()].flatMap(({ coats }) => coats.filter(({ atMs }) => atMs >= sinceMs));

function hazardsOf(id: string, shop: Shop) {
  const jar = shop.jars.get(id);
  return jar ? jarHazards(jar, shop) : [];
}
