import { effect } from '@preact/signals';
import { isOwnId } from '../../logbook/ids/new-id';
import type { RemindersNow } from '../../reminders/due';
import { keepUpcoming } from '../../reminders/phone/kept';
import { notify, permissionNow, registration, withdraw } from '../../reminders/phone/notify';
import { askForPeriodicSync } from '../../reminders/phone/periodic';
import { armSound, ring } from '../../reminders/phone/ring';
import type { Reminder } from '../../reminders/reminder';
import { toUpcoming } from '../../reminders/upcoming';
import { MINUTE_MS } from '../../units';
import type { OpenShop } from '../shop';
import { followReminders } from './follow-reminders';
import { reminderName } from './reminder-name';
import { type OnAnswered, takeAnswers } from './take-answers';

/** Who has just written something down is looking at the screen: nothing needs to ring. */
const JUST_LOGGED_MS = MINUTE_MS;
const KEEP_AFTER_MS = 1000;
/** So many are kept for the worker; by then the page has been open again. */
const MOST_KEPT = 60;

/** Rings and notifies when a reminder comes due, and keeps what is to come for the service worker; until the function it gives is called. */
export function deliverReminders(open: OpenShop, onAnswered: OnAnswered): () => void {
  const standing = followReminders(open);
  const isOwn = open.which === 'own';
  const nameOf = (reminder: Reminder) => reminderName(reminder, open.shop.peek());
  let rung = new Set<string>();
  let loggedMs = open.nowMs.peek();
  let { newest } = open.shop.peek();
  let keeping: ReturnType<typeof setTimeout> | undefined;

  armSound();
  if (isOwn && permissionNow() === 'granted')
    void registration().then((worker) => worker && askForPeriodicSync(worker));
  const stopWatching = effect(() => {
    if (open.shop.value.newest !== newest) {
      newest = open.shop.value.newest;
      if (isOwnId(newest)) loggedMs = open.needs.now(); // who logs on another phone is not looking at this one
    }
    const { due, missed } = standing.value;
    const fresh = due.filter((one) => !rung.has(mark(one)));
    // What was missed stays on the screen of the phone; what was answered, or has moved, is taken back.
    const standingStill = new Set([...due, ...missed].map(mark));
    const gone = [...rung].filter((one) => !standingStill.has(one));
    rung = new Set([...due.map(mark), ...[...rung].filter((one) => standingStill.has(one))]);
    if (isOwn && gone.length > 0) void withdraw(gone.map((one) => one.slice(one.indexOf(' ') + 1)));
    if (fresh.length > 0 && open.needs.now() - loggedMs > JUST_LOGGED_MS) tell(fresh);
    clearTimeout(keeping);
    if (isOwn) keeping = setTimeout(() => keep(standing.peek()), KEEP_AFTER_MS);
  });

  function tell(fresh: readonly Reminder[]): void {
    ring();
    if (isOwn && document.visibilityState === 'hidden')
      for (const one of toUpcoming(fresh, nameOf)) void notify(one);
  }
  function keep({ due, upcoming }: RemindersNow): void {
    const all = [...due, ...upcoming].slice(0, MOST_KEPT);
    // Where nothing can be kept, nothing rings while the app is closed; it says so on the page of reminders.
    keepUpcoming(toUpcoming(all, nameOf)).catch(() => undefined);
  }
  const stopTaking = isOwn ? takeAnswers(open, onAnswered) : () => undefined;
  return () => {
    stopWatching();
    stopTaking();
    clearTimeout(keeping);
  };
}

const mark = ({ id, at }: Reminder): string => `${at} ${id}`;
