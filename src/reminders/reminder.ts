import type { ReminderKind } from '../logbook/kinds/shop/reminder-kinds';

/** One thing to be reminded of; times in minutes since 1970 UTC. */
export interface Reminder {
  /** The same however often the plan is made again. */
  readonly id: string;
  readonly kind: ReminderKind;
  readonly at: number;
  /** Once it is past, the reminder comes too late to be of use. */
  readonly until?: number;
  /** An answer counts from here on, before the reminder sounds: rags that were seen to when the work was over. */
  readonly answeredFrom?: number;
  readonly pieceId?: string;
  readonly stepId?: string;
  /** A jar or a cartridge. */
  readonly thingId?: string;
  /** Of a closing window: minutes that are left. */
  readonly minutesLeft?: number;
  /** Of an act: what the judge says of it at that minute. */
  readonly word?: 'ready' | 'perhaps';
}

/** The reminder at another minute: it is of use as long after it. */
export const movedTo = (reminder: Reminder, at: number): Reminder => ({
  ...reminder,
  at,
  ...(reminder.until !== undefined && { until: reminder.until + at - reminder.at }),
});

export type Answer = 'done' | 'later';

/** What a person answered to a reminder. */
export interface Acknowledgement {
  readonly reminderId: string;
  readonly at: number;
  readonly answer: Answer;
}
