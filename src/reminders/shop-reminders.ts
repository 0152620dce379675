import { localDay } from '../planner/local-day';
import type { Plan } from '../planner/plan';
import { closingAfter } from '../planner/windows/opening-times';
import type { WorkingTimes } from '../planner/windows/working-times';
import { DAY_MINUTES, HOUR_MINUTES } from '../units';
import type { Reminder } from './reminder';

/** A jar from its filling to the end of its life. */
export interface JarDates {
  readonly id: string;
  readonly madeAt: number;
  readonly endsAt: number;
}

/** Things in the shop that come to an end, and owners who wait for word; minutes since 1970 UTC. */
export interface Surroundings {
  readonly jars: readonly JarDates[];
  readonly cartridges: readonly { readonly id: string; readonly changeAt: number }[];
  /** Test cards, how often each was weighed, and when the next weighing tells most. */
  readonly cards: readonly { readonly id: string; readonly weighed: number; readonly at: number }[];
  readonly updates: readonly { readonly pieceId: string; readonly at: number }[];
}

// When each is told: common practice, no source.
const HALF_HOUR = 30;
const FORTNIGHT = 14 * DAY_MINUTES;
/** An owner hears of a promise that will not be kept two days before its day, or at once if that is past. */
const WARN_OWNER_AHEAD = 2 * DAY_MINUTES;
/** Rags of days further ahead are not reminded of: the plan will have changed by then. */
const RAGS_AHEAD_DAYS = 7;

/** What the shop itself reminds of, whatever is on the bench. */
export function shopReminders({ jars, cartridges, cards, updates }: Surroundings): Reminder[] {
  return [
    ...jars.map(
      (jar): Reminder => ({ id: `jar-end:${jar.id}`, kind: 'jar-end', at: jarWarning(jar), thingId: jar.id }),
    ),
    ...cartridges.map(
      ({ id, changeAt }): Reminder => ({
        id: `cartridge:${id}`,
        kind: 'cartridge',
        at: changeAt,
        thingId: id,
      }),
    ),
    ...cards.map(
      ({ id, weighed, at }): Reminder => ({
        id: `weigh-card:${id}:${weighed}`,
        kind: 'weigh-card',
        at,
        thingId: id,
      }),
    ),
    ...updates.map(
      ({ pieceId, at }): Reminder => ({
        id: `customer-update:${pieceId}:${at}`,
        kind: 'customer-update',
        at,
        pieceId,
      }),
    ),
  ];
}

/** An eighth of its life before the end, at least half an hour, at most a fortnight: an hour for a pot life of eight. */
function jarWarning({ madeAt, endsAt }: JarDates): number {
  return Math.round(endsAt - Math.min(FORTNIGHT, Math.max(HALF_HOUR, (endsAt - madeAt) / 8)));
}

/** Owners to be told that a promise will not be kept. */
export function promiseReminders(plan: Plan, promises: ReadonlyMap<string, number | undefined>): Reminder[] {
  return plan.pieces.flatMap(({ pieceId, promiseState }): Reminder[] => {
    const promised = promises.get(pieceId);
    if (promised === undefined || (promiseState !== 'missed' && promiseState !== 'past')) return [];
    const id = `customer-update:${pieceId}:promise:${promised}`;
    return [{ id, kind: 'customer-update', at: promised - WARN_OWNER_AHEAD, pieceId }];
  });
}

/** On every day with work, done or to come, after the last of it: rags and filters out. Of days that are over only the last: it stands for all. Work late at night is over after midnight. */
export function ragReminders({ steps, now }: Plan, working: WorkingTimes): Reminder[] {
  const lastEnds = new Map<number, number>();
  for (const { kind, end } of steps) {
    if (kind !== 'work') continue;
    const day = localDay(end, working.zone);
    lastEnds.set(day, Math.max(end, lastEnds.get(day) ?? end));
  }
  const today = localDay(now, working.zone);
  const days = [...lastEnds.keys()].sort((a, b) => a - b);
  const endOf = (day: number): number => lastEnds.get(day) as number;
  const lastOver = days.findLast((day) => day < today && dayEnds(endOf(day), working) <= now) ?? 0;
  return days
    .filter((day) => day >= lastOver && day <= today + RAGS_AHEAD_DAYS)
    .map((day) => ({
      id: `rags:${day}`,
      kind: 'rags',
      at: dayEnds(endOf(day), working),
      answeredFrom: endOf(day),
    }));
}

/** When the day is taken to be over: an hour after the last work, for more may come that nobody planned; but not after closing time. */
const dayEnds = (workEnds: number, working: WorkingTimes): number =>
  Math.min(workEnds + HOUR_MINUTES, closingAfter(working, workEnds) ?? Number.POSITIVE_INFINITY);
