import type { Shop } from '../../logbook/fold/fold';
import { dropAnswer, type GivenAnswer, keptAnswers } from '../../reminders/phone/kept';
import type { Answer } from '../../reminders/reminder';
import type { OpenShop } from '../shop';
import { type Answered, answerReminder } from './answer-reminder';
import { reminderOfId } from './reminder-of-id';

type Answerable = NonNullable<ReturnType<typeof reminderOfId>>;

/** Hears what came of an answer given on a notification. */
export type OnAnswered = (id: string, answer: Answer, answered: Answered) => void;

/** Logs the answers that were given on notifications, now and whenever the worker says there is one; until the function it gives is called. */
export function takeAnswers(open: OpenShop, onAnswered: OnAnswered): () => void {
  const take = (): void => {
    // Where it cannot be read it stays where it is, and is taken the next time.
    oneTabAtATime(() => logAll(open, onAnswered)).catch(() => undefined);
  };
  const onMessage = ({ data }: MessageEvent): void => {
    if (data?.kind === 'reminder-answered') take();
    if (data?.kind === 'reminder-tapped' && typeof data.address === 'string') location.hash = data.address;
  };
  navigator.serviceWorker?.addEventListener('message', onMessage);
  take();
  return () => navigator.serviceWorker?.removeEventListener('message', onMessage);
}

/** Two tabs must not lay the same coat. */
const oneTabAtATime = (work: () => Promise<void>): Promise<void> =>
  'locks' in navigator ? navigator.locks.request('coatwait-answers', work) : work();

async function logAll(open: OpenShop, onAnswered: OnAnswered): Promise<void> {
  for (const given of await keptAnswers()) {
    for (const id of given.ids) await logOne(open, id, given, onAnswered);
    await dropAnswer(given);
  }
}

/** An answer that cannot be logged leaves its reminder where it is: among those missed. */
async function logOne(
  { needs, shop }: OpenShop,
  id: string,
  { answer, atMs }: GivenAnswer,
  onAnswered: OnAnswered,
): Promise<void> {
  const reminder = reminderOfId(id, shop.value);
  if (!reminder || isLogged(shop.value, reminder, atMs)) return;
  onAnswered(id, answer, await answerReminder(needs, reminder, answer, Math.min(atMs, needs.now())));
}

/** Whether the answer was logged before, and the phone died before it could be dropped: no coat is laid twice. */
function isLogged({ entries }: Shop, { id, pieceId, stepId }: Answerable, atMs: number): boolean {
  return [...entries.values()].some((entry) => {
    if (Date.parse(entry.at) !== atMs) return false;
    if (entry.kind === 'reminder-answered') return entry.reminder === id;
    if (entry.kind === 'step-marked') return entry.step === stepId;
    return entry.kind === 'coat-laid' && entry.piece === pieceId;
  });
}
