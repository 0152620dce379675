import 'fake-indexeddb/auto';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { answerReminder } from '../../../src/actions/reminders/answer-reminder';
import { takeAnswers } from '../../../src/actions/reminders/take-answers';
import type { OpenShop } from '../../../src/actions/shop';
import { dropAnswer, type GivenAnswer, keepAnswer, keptAnswers } from '../../../src/reminders/phone/kept';
import type { Answer } from '../../../src/reminders/reminder';
import { aBoxAndAJar, done, NOW_MS } from '../a-shop';

const MINUTE_MS = 60_000;
let worker: EventTarget;

beforeEach(async () => {
  for (const given of await keptAnswers()) await dropAnswer(given);
  worker = new EventTarget();
  vi.stubGlobal('navigator', { serviceWorker: worker });
  vi.stubGlobal('location', { hash: '#/bench' });
});
afterEach(() => void vi.unstubAllGlobals());

/** A shop with a piece that got one coat, and the id of that coat. */
async function coated() {
  const { open, piece, jar } = await aBoxAndAJar();
  const film = { by: 'wet', wetFilm: { text: '85', unit: 'um' } } as const;
  const { id } = done(
    await open.actions.layCoat({ piece, jar, how: 'spray', film }, NOW_MS - 60 * MINUTE_MS),
  );
  return { open, piece, coat: id };
}
const given = (ids: readonly string[], answer: Answer = 'done', minutesAgo = 2): GivenAnswer => ({
  ids,
  answer,
  atMs: NOW_MS - minutesAgo * MINUTE_MS,
});
const coatsOn = (open: OpenShop, piece: string) => open.shop.value.pieces.get(piece)?.coats ?? [];
const isEmpty = () => vi.waitFor(async () => expect(await keptAnswers()).toEqual([]));
const say = (data: unknown) => worker.dispatchEvent(Object.assign(new Event('message'), { data }));

describe('an answer given on a notification', () => {
  test('before the app was open is logged at its time, told, and dropped', async () => {
    const { open, piece, coat } = await coated();
    await keepAnswer(given([`next-coat:${coat}`]));
    const told: [string, Answer, boolean][] = [];
    takeAnswers(open, (id, answer, { ok }) => void told.push([id, answer, ok]));
    await isEmpty();
    expect(coatsOn(open, piece).map(({ atMs }) => NOW_MS - atMs)).toEqual([60 * MINUTE_MS, 2 * MINUTE_MS]);
    expect(told).toEqual([[`next-coat:${coat}`, 'done', true]]);
  });

  test('while it is open is taken when the worker says so, and no more once it is stopped', async () => {
    const { open } = await coated();
    const stop = takeAnswers(open, () => undefined);
    await keepAnswer(given(['rags:20514', 'jar-end:x'], 'later'));
    say({ kind: 'something else' });
    say(undefined);
    expect(await keptAnswers()).toHaveLength(1);
    say({ kind: 'reminder-answered' });
    await isEmpty();
    expect(open.shop.value.reminderAnswers.map(({ reminder }) => reminder)).toEqual([
      'rags:20514',
      'jar-end:x',
    ]);
    stop();
    await keepAnswer(given(['rags:20515']));
    say({ kind: 'reminder-answered' });
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(await keptAnswers()).toHaveLength(1);
  });

  test('by a phone whose clock runs ahead counts as given now', async () => {
    const { open } = await coated();
    await keepAnswer(given(['rags:20514'], 'done', -30));
    takeAnswers(open, () => undefined);
    await isEmpty();
    expect(open.shop.value.reminderAnswers.map(({ atMs }) => atMs)).toEqual([NOW_MS]);
  });

  test('to what is no reminder of ours is dropped', async () => {
    const { open } = await coated();
    const before = open.shop.value.entries.size;
    await keepAnswer(given(['test']));
    takeAnswers(open, () => undefined);
    await isEmpty();
    expect(open.shop.value.entries.size).toBe(before);
  });

  test('that was logged before the phone died is logged once', async () => {
    const { open, piece, coat } = await coated();
    const { atMs } = given([]);
    const answers = [`next-coat:${coat}`, 'rags:20514'];
    done(
      await answerReminder(
        open.needs,
        { id: answers[0] ?? '', kind: 'next-coat', pieceId: piece },
        'done',
        atMs,
      ),
    );
    done(await answerReminder(open.needs, { id: answers[1] ?? '', kind: 'rags' }, 'done', atMs));
    await keepAnswer(given(answers));
    // The coat that was laid is the last now: the id that the notification knows leads to no piece any more.
    const { id } = coatsOn(open, piece).at(-1) ?? expect.unreachable();
    await keepAnswer(given([`next-coat:${id}`]));
    const before = open.shop.value.entries.size;
    takeAnswers(open, () => undefined);
    await isEmpty();
    expect(coatsOn(open, piece)).toHaveLength(2);
    expect(open.shop.value.entries.size).toBe(before + 1); // the answer about a coat that is covered settles that reminder
    await keepAnswer(given(['rags:20514'], 'done', 1)); // the same words another minute are another answer
    say({ kind: 'reminder-answered' });
    await isEmpty();
    expect(open.shop.value.entries.size).toBe(before + 2);
  });

  test('is not taken for logged because something else was, in the very same minute', async () => {
    const { open, piece, coat } = await coated();
    const { atMs } = given([]);
    done(await open.actions.logCheck({ piece, test: 'print', result: 'passes' }, atMs));
    done(await open.actions.changeSettings({ units: 'us' }));
    await keepAnswer(given([`next-coat:${coat}`, 'rags:20514']));
    takeAnswers(open, () => undefined);
    await isEmpty();
    expect(coatsOn(open, piece)).toHaveLength(2);
    expect(open.shop.value.reminderAnswers).toHaveLength(1);
  });

  test('is taken under a lock where the browser has one: two tabs lay no coat twice', async () => {
    const asked: string[] = [];
    const locks = {
      request: (name: string, work: () => Promise<void>) => {
        asked.push(name);
        return work();
      },
    };
    vi.stubGlobal('navigator', { serviceWorker: worker, locks });
    const { open } = await coated();
    await keepAnswer(given(['rags:20514']));
    takeAnswers(open, () => undefined);
    await isEmpty();
    expect(asked).toHaveLength(1);
  });
});

test('a tap on a notification leads to its page; anything else leads nowhere', async () => {
  const { open } = await coated();
  takeAnswers(open, () => undefined);
  say({ kind: 'reminder-tapped', address: 7 });
  say({ kind: 'other', address: '#/air' });
  expect(location.hash).toBe('#/bench');
  say({ kind: 'reminder-tapped', address: '#/piece/1' });
  expect(location.hash).toBe('#/piece/1');
});

test('a browser without a worker has no answers to hear of, and those that are kept are taken', async () => {
  vi.stubGlobal('navigator', {});
  const { open } = await coated();
  await keepAnswer(given(['rags:20514']));
  const stop = takeAnswers(open, () => undefined);
  await isEmpty();
  stop();
});
