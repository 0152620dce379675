import { toInstantMs } from '../planner/local-day';
import { DAY_MS } from '../units';
import { groupTitle } from '../words/plan/reminders';
import { grouped, type ReminderGroup } from './group';
import type { Answer, Reminder } from './reminder';
import { reminderLine, reminderText } from './say';

/** A notification to be shown at an instant, as data that outlives the page. */
export interface Upcoming {
  /** Of the reminders in it; one notification takes the place of an earlier one with the same tag. */
  readonly ids: readonly string[];
  readonly tag: string;
  readonly atMs: number;
  /** After it the notification would come too late. */
  readonly untilMs: number;
  readonly title: string;
  readonly text: string;
  /** Where a tap leads, a hash. */
  readonly address: string;
  /** It stays on screen until it is answered. */
  readonly mustAcknowledge: boolean;
}

/** Answers that a notification offers. Several reminders at once are told apart in the app. */
export const answersOf = ({ ids }: Pick<Upcoming, 'ids'>): readonly Answer[] =>
  ids.length === 1 ? ['done', 'later'] : ['later'];

const A_DAY_MS = DAY_MS;

/** Reminders as notifications, those that fall together as one. */
export const toUpcoming = (
  reminders: readonly Reminder[],
  nameOf: (reminder: Reminder) => string | undefined,
): Upcoming[] => grouped(reminders).map((group) => oneOf(group, nameOf));

function oneOf(
  { at, reminders, mustAcknowledge }: ReminderGroup,
  nameOf: (reminder: Reminder) => string | undefined,
): Upcoming {
  const first = reminders[0];
  const only = first && reminders.length === 1 ? reminderText(first, nameOf(first)) : undefined;
  const lines = reminders.map((reminder) => reminderLine(reminder, nameOf(reminder)));
  const lastUse = Math.max(...reminders.map(({ until }) => until ?? Number.POSITIVE_INFINITY));
  return {
    ids: reminders.map(({ id }) => id),
    tag: reminders.map(({ id }) => id).join(' '),
    atMs: toInstantMs(at),
    untilMs: Math.min(toInstantMs(lastUse), toInstantMs(at) + A_DAY_MS),
    title: only?.title ?? groupTitle(lines.length),
    text: only?.text ?? lines.join('\n'),
    address: only ? addressFor(first) : '#/bench',
    mustAcknowledge,
  };
}

function addressFor({ kind, pieceId, thingId }: Partial<Reminder> = {}): string {
  if (kind === 'weigh-card' && thingId !== undefined) return `#/more/cards/${thingId}`;
  return pieceId === undefined ? '#/bench' : `#/piece/${pieceId}`;
}
