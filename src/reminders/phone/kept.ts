import { createStore, get, type UseStore, update } from 'idb-keyval';
import type { CalendarEvent } from '../calendar/calendar';
import type { Answer } from '../reminder';
import type { Upcoming } from '../upcoming';

// What the page and the service worker must both know; no part of the logbook, and gone with this phone. Every function is async:
// a browser that refuses storage throws where others give a promise that fails.

/** An answer given on a notification, to be logged when the app is next open. */
export interface GivenAnswer {
  readonly ids: readonly string[];
  readonly answer: Answer;
  readonly atMs: number;
}

let store: UseStore | undefined;
// Opened when first asked for: the worker is started for many things that need none of this.
const use = (): UseStore => {
  store ??= createStore('coatwait-reminders', 'kept');
  return store;
};

/** Keeps what is to come, in place of what was kept before. */
export const keepUpcoming = async (upcoming: readonly Upcoming[]): Promise<void> =>
  update<readonly Upcoming[]>('upcoming', () => upcoming, use());

/** What is to come, as the page last knew it. */
export const keptUpcoming = async (): Promise<readonly Upcoming[]> => (await get('upcoming', use())) ?? [];

const MOST_SHOWN = 200;

/** Tags of the notifications that were shown. */
export const keptShown = async (): Promise<readonly string[]> => (await get('shown', use())) ?? [];

/** Notes that a notification was shown, so that it is not shown again. */
export const keepShown = async (tag: string): Promise<void> =>
  update<readonly string[]>(
    'shown',
    (shown = []) => [...shown.filter((one) => one !== tag), tag].slice(-MOST_SHOWN),
    use(),
  );

/** Keeps an answer until the page takes it. */
export const keepAnswer = async (given: GivenAnswer): Promise<void> =>
  update<readonly GivenAnswer[]>('answers', (answers = []) => [...answers, given], use());

/** The answers given meanwhile. */
export const keptAnswers = async (): Promise<readonly GivenAnswer[]> => (await get('answers', use())) ?? [];

/** Drops an answer that was logged. */
export const dropAnswer = async ({ atMs, ids }: GivenAnswer): Promise<void> =>
  update<readonly GivenAnswer[]>(
    'answers',
    (answers = []) => answers.filter((one) => one.atMs !== atMs || one.ids.join() !== ids.join()),
    use(),
  );

/** The calendar events given out by this phone. */
export const keptEvents = async (): Promise<readonly CalendarEvent[]> => (await get('events', use())) ?? [];

/** Keeps the events given out, so that the next file revises them. */
export const keepEvents = async (events: readonly CalendarEvent[]): Promise<void> =>
  update<readonly CalendarEvent[]>('events', () => events, use());
