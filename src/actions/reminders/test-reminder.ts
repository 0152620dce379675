import { notify } from '../../reminders/phone/notify';
import { ring } from '../../reminders/phone/ring';
import { ABILITY_WORDS } from '../../words/plan/reminders';

/** Rings and notifies once, so that a person knows what to expect; gives whether a notification was shown. */
export function testReminder(nowMs: number): Promise<boolean> {
  ring();
  return notify({
    ids: ['test'],
    tag: `test ${nowMs}`,
    atMs: nowMs,
    untilMs: nowMs,
    title: ABILITY_WORDS.testTitle,
    text: ABILITY_WORDS.testText,
    address: '#/plan/reminders',
    mustAcknowledge: false,
  });
}
