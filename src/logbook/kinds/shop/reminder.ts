import * as v from 'valibot';
import { entryOf, Name } from '../envelope';
import { ClockSpan } from './plan';
import { isFireKind, REMINDER_KINDS, type SwitchableKind } from './reminder-kinds';

const SWITCHABLE = REMINDER_KINDS.filter((kind) => !isFireKind(kind)) as readonly SwitchableKind[];
const FIRST = SWITCHABLE.filter((kind) => kind !== 'weigh-card' && kind !== 'next-step');
export const ANSWERS = ['done', 'later'] as const;

export const REMINDER_ENTRY_KINDS = {
  'reminder-answered': entryOf('reminder-answered', { reminder: Name, answer: v.picklist(ANSWERS) }),
  /** Which kinds are off (never those about fire), and when none sounds. */
  'reminders-set': entryOf(
    'reminders-set',
    { off: v.array(v.picklist(FIRST)), quiet: v.exactOptional(ClockSpan) },
    { off: v.array(v.picklist(SWITCHABLE)) },
  ),
};
