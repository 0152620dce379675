import { ANSWER_WORDS } from '../../words/plan/reminders';
import { answersOf, type Upcoming } from '../upcoming';

// Pauses and pulses, ms: long enough to be felt in a pocket.
export const VIBRATION_MS = [400, 150, 400, 150, 400];

/** The options of a notification; what a browser does not know of them it leaves aside. */
export function notificationOptions(one: Upcoming): NotificationOptions {
  const more = {
    actions: answersOf(one).map((answer) => ({ action: answer, title: ANSWER_WORDS[answer] })),
    renotify: true,
    timestamp: one.atMs,
    vibrate: VIBRATION_MS,
  };
  return {
    body: one.text,
    tag: one.tag,
    icon: '/icons/icon-192.png',
    badge: '/icons/icon-192.png',
    requireInteraction: one.mustAcknowledge,
    data: { ids: one.ids, address: one.address },
    ...more,
  };
}
