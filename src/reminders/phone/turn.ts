import { MINUTE_MS } from '../../units';
import { LATER_MINUTES } from '../due';
import type { Upcoming } from '../upcoming';
import type { GivenAnswer } from './kept';

const LATER_MS = LATER_MINUTES * MINUTE_MS;

/** What the service worker knows when it is woken. */
export interface Woken {
  readonly upcoming: readonly Upcoming[];
  readonly shown: readonly string[];
  readonly answers: readonly GivenAnswer[];
  readonly nowMs: number;
}

/** The notifications to show now: due, of use still, not shown yet, and neither done nor put off. */
export function toShow({ upcoming, shown, answers, nowMs }: Woken): readonly Upcoming[] {
  return upcoming.flatMap((one) => {
    const answered = answers.filter(({ ids }) => ids.some((id) => one.ids.includes(id)));
    if (answered.some(({ answer }) => answer === 'done')) return [];
    const putOff = answered.length > 0;
    const atMs = Math.max(one.atMs, ...answered.map((answer) => answer.atMs + LATER_MS));
    // Put off, it is of use as long after its new time as after its first.
    const isDue = atMs <= nowMs && nowMs <= one.untilMs + atMs - one.atMs;
    // What was put off is shown a second time, under a tag of its own.
    const tag = putOff ? `${one.tag} ${atMs}` : one.tag;
    return isDue && !shown.includes(tag) ? [{ ...one, tag, atMs }] : [];
  });
}
