import { useShop } from '../../../parts/frame/shop-context';
import { USUAL_WEEK } from '../../../shop/plan/clock-hours';
import { DROPS_A_DAY, type DropFill, dropsOf, lastDropDay, REST_DAYS } from '../../../shop/zone/drop-fill';
import type { Stand } from '../../../shop/zone/stands';
import { DROP_WORDS as WORDS } from '../../../words/piece/zone';
import { dayWords } from '../../../words/times';

interface DropDatesProps {
  readonly stand: Stand;
  readonly fill: DropFill | undefined;
}

/** The day so many days after the day of an instant, at noon. */
function dayAfter(atMs: number, days: number): number {
  const day = new Date(atMs);
  return new Date(day.getFullYear(), day.getMonth(), day.getDate() + days, 12).getTime();
}

/** When the last drop goes in; when, from that one, it may be levelled by the rule of the trade, and when to look for sink. */
export function DropDates({ stand, fill }: DropDatesProps) {
  const { shop, nowMs } = useShop();
  const now = nowMs.value;
  const drops = dropsOf(stand);
  const week = shop.value.hours?.week ?? USUAL_WEEK;
  const isWorkday = (day: number): boolean =>
    (week[(new Date(dayAfter(now, day)).getDay() + 6) % 7]?.work.length ?? 0) > 0;
  const inToday = drops.filter(({ atMs }) => dayAfter(atMs, 0) === dayAfter(now, 0)).length;
  const day = (atMs: number, days = 0): string => dayWords(dayAfter(atMs, days), now);
  const last = (count: number, aDay: number): number =>
    dayAfter(now, lastDropDay(count, aDay, 0, inToday, isWorkday));
  const left = fill && { few: fill.drops.few - fill.done, many: fill.drops.many - fill.done };
  const toCome = left &&
    left.few > 0 && {
      soonestMs: last(left.few, DROPS_A_DAY.many),
      latestMs: last(left.many, DROPS_A_DAY.few),
    };
  const lastMs = drops.at(-1)?.atMs;
  const from = lastMs === undefined ? undefined : toCome || { soonestMs: lastMs, latestMs: lastMs };
  return (
    <>
      {toCome && <p class="digits">{WORDS.last(day(toCome.soonestMs), day(toCome.latestMs))}</p>}
      {from && (
        <p class="digits">
          {WORDS.level(
            day(from.soonestMs, REST_DAYS.earliest),
            day(from.soonestMs, REST_DAYS.usualFrom),
            day(from.latestMs, REST_DAYS.usualTo),
            day(from.latestMs, REST_DAYS.deep),
          )}
        </p>
      )}
      <Sink stand={stand} />
    </>
  );
}

/** A week after levelling it is looked at for sink. */
function Sink({ stand: { piece, zone } }: Pick<DropDatesProps, 'stand'>) {
  const now = useShop().nowMs.value;
  const levelled = piece.sandings.findLast(
    ({ stage, zoneId }) => stage === 'level' && zoneId === zone?.zoneId,
  );
  const text = levelled
    ? WORDS.sink(dayWords(dayAfter(levelled.atMs, REST_DAYS.sinkCheck), now))
    : WORDS.sinkFromLevel;
  return <p class="quiet">{text}</p>;
}
