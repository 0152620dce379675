import { isFireKind, isOn, type Switches } from '../logbook/kinds/shop/reminder-kinds';
import type { ZoneOffset } from '../planner/local-day';
import type { Hours } from '../planner/windows/working-times';
import { DAY_MINUTES } from '../units';
import { soundsAt } from './quiet';
import { type Acknowledgement, movedTo, type Reminder } from './reminder';

/** Put off once, a reminder comes again after so long: a coffee, or a coat (common practice, no source). */
export const LATER_MINUTES = 20;
/** A reminder that nobody answered for so many minutes was missed (judgement, no source). */
const MISSED_AFTER = 15;
/** What has come too late for longer than this is not shown any more (judgement, no source). */
const FORGOTTEN_AFTER = DAY_MINUTES;

/** What decides which reminders stand at a moment. */
export interface Circumstances {
  readonly now: number;
  readonly acknowledgements: readonly Acknowledgement[];
  readonly switches: Switches;
  readonly quiet?: Hours;
  readonly zone: ZoneOffset;
}

/** Reminders at a moment, each with the minute at which it sounds, soonest first. */
export interface RemindersNow {
  /** To be answered now. */
  readonly due: readonly Reminder[];
  /** Nobody answered; they stand first when the app is opened. */
  readonly missed: readonly Reminder[];
  readonly upcoming: readonly Reminder[];
}

/** Which reminders are due, were missed, and are still to come. */
export function remindersNow(reminders: readonly Reminder[], circumstances: Circumstances): RemindersNow {
  const { now } = circumstances;
  const open = reminders
    .filter(({ kind }) => isOn(kind, circumstances.switches))
    .flatMap((reminder) => answered(reminder, circumstances))
    .filter((reminder) => isOfUse(reminder, now))
    .sort((a, b) => a.at - b.at);
  return {
    due: open.filter(({ at }) => at <= now && now - at <= MISSED_AFTER),
    missed: open.filter(({ at }) => now - at > MISSED_AFTER),
    upcoming: open.filter(({ at }) => at > now),
  };
}

/** The reminder at the time at which it sounds after what was answered; none if it is settled. */
function answered(reminder: Reminder, { acknowledgements, quiet, zone }: Circumstances): Reminder[] {
  const answers = acknowledgements.filter(
    (answer) => isAbout(answer, reminder) && answer.at >= earliestAnswer(reminder, quiet, zone),
  );
  if (answers.some(({ answer }) => answer === 'done')) return [];
  const at = Math.max(reminder.at, ...answers.map((answer) => answer.at + LATER_MINUTES));
  const later = movedTo(reminder, at);
  return [{ ...later, at: soundsAt(later, quiet, zone) }];
}

/** An answer from before the reminder's time was to an earlier plan. */
const earliestAnswer = (reminder: Reminder, quiet: Hours | undefined, zone: ZoneOffset): number =>
  Math.min(reminder.at, soundsAt(reminder, quiet, zone), reminder.answeredFrom ?? Number.POSITIVE_INFINITY);

/** Rags that are out are out for all days before. */
function isAbout({ reminderId }: Acknowledgement, { id, kind }: Reminder): boolean {
  return reminderId === id || (isFireKind(kind) && reminderId.startsWith(`${kind}:`));
}

const isOfUse = ({ kind, until }: Reminder, now: number): boolean =>
  isFireKind(kind) || until === undefined || now <= until + FORGOTTEN_AFTER;
