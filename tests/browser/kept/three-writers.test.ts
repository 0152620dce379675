import type { CDPSession, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { base, context, openApp, openPage, page } from '../app';
import { crashShop } from '../crash-shop';
import { bringIn } from '../fake-dialogs';
import { logging, marksIn, rows, type Said, startPiece, typedAs } from '../logging';
import type { WorkerScope } from '../worker-scope';

// Two windows log work while the service worker keeps answers given on notifications and is woken over and over: all three write at once.
// `WRITERS=200` for a long run.
const OF_A_WINDOW = Number(process.env['WRITERS'] ?? 24);
const ANSWERS = 2 * OF_A_WINDOW;
const WAKES = 20;

async function allow(devtools: CDPSession): Promise<void> {
  const { targetInfo } = await devtools.send('Target.getTargetInfo');
  await devtools.send('Browser.grantPermissions', {
    ...(targetInfo.browserContextId && { browserContextId: targetInfo.browserContextId }),
    origin: new URL(base).origin,
    permissions: ['notifications', 'periodicBackgroundSync'],
  });
}

async function logAll(
  window: Page,
  weighUp: string,
  what: readonly Said[],
  first: number,
): Promise<string[]> {
  const logged: string[] = [];
  for (let n = 0; n < OF_A_WINDOW; n++) {
    const kind = what[n % what.length] as Said;
    const mark = ((first + n) / 1000).toFixed(3);
    await logging(weighUp)[kind](window, mark);
    const typed = `${kind} ${typedAs(kind, mark)}`;
    // What the screen said may have given way to an answer of the worker by now.
    await expect.poll(async () => marksIn(await rows(window)), { timeout: 20_000 }).toContain(typed);
    logged.push(typed);
  }
  return logged;
}

/** Taps the answers of many notifications: headless Chromium cannot tap one itself. */
async function answerAll(): Promise<string[]> {
  const [worker] = context.serviceWorkers();
  if (!worker) throw new Error('There is no service worker.');
  return worker.evaluate(async (count) => {
    const scope = globalThis as unknown as WorkerScope;
    const given: string[] = [];
    for (let n = 0; n < count; n++) {
      const id = `scuff:writer-${n}`;
      await scope.registration.showNotification(id, { tag: id, data: { ids: [id] } });
      const [notification] = await scope.registration.getNotifications({ tag: id });
      if (!notification) throw new Error('The notification is not shown.');
      const tap = new scope.NotificationEvent('notificationclick', {
        notification,
        action: n % 2 ? 'done' : 'later',
      });
      // Only a real tap may prolong the event; the answer is kept all the same.
      Object.defineProperty(tap, 'waitUntil', { value: () => undefined });
      scope.dispatchEvent(tap);
      given.push(id);
      await new Promise((resolve) => setTimeout(resolve, n % 5 ? 5 : 150)); // in bursts
    }
    return given;
  }, ANSWERS);
}

async function wakeOften(devtools: CDPSession): Promise<void> {
  const registered = new Promise<string>((resolve) => {
    devtools.on('ServiceWorker.workerRegistrationUpdated', ({ registrations }) => {
      const [one] = registrations;
      if (one) resolve(one.registrationId);
    });
  });
  await devtools.send('ServiceWorker.enable');
  const wake = {
    origin: new URL(base).origin,
    registrationId: await registered,
    tag: 'coatwait-due',
  };
  for (let n = 0; n < WAKES; n++) {
    await devtools.send('ServiceWorker.dispatchPeriodicSyncEvent', wake);
    await new Promise((resolve) => setTimeout(resolve, 300));
  }
}

const answersIn = (kept: readonly unknown[]): string[] =>
  (kept as readonly { kind: string; reminder?: string }[]).flatMap(({ kind, reminder }) =>
    kind === 'reminder-answered' && reminder?.includes('writer') ? [reminder] : [],
  );

/** Puts logged answers back as if the phone had died before they were dropped. */
const putBack = (window: Page, kept: readonly unknown[]): Promise<void> =>
  window.evaluate(
    (answers) =>
      new Promise((resolve, reject) => {
        const opening = indexedDB.open('coatwait-reminders');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const writing = opening.result.transaction('kept', 'readwrite');
          writing.objectStore('kept').put(answers, 'answers');
          writing.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
    (kept as readonly { at: string; reminder?: string; answer?: string }[]).flatMap(
      ({ at, reminder, answer }) => (reminder ? [{ ids: [reminder], answer, atMs: Date.parse(at) }] : []),
    ),
  );

const answersLeft = (window: Page): Promise<number> =>
  window.evaluate(
    () =>
      new Promise<number>((resolve, reject) => {
        const opening = indexedDB.open('coatwait-reminders');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const asking = opening.result.transaction('kept').objectStore('kept').get('answers');
          asking.onsuccess = () => {
            opening.result.close();
            resolve((asking.result ?? []).length);
          };
        };
      }),
  );

test(
  'two windows and the service worker write at once: nothing is lost or doubled, and both windows show it all',
  async () => {
    const one = await openApp();
    const devtools = await context.newCDPSession(page);
    await allow(devtools);
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    const shop = await crashShop();
    await bringIn(Buffer.from(shop.backup), 'backup.json');
    await startPiece(one, 'Walnut box');
    const piece = new URL(one.url()).hash;
    const other = await openPage();

    const [ofOne, ofOther, answers] = await Promise.all([
      logAll(one, shop.weighUp, ['coat', 'pour', 'air'], 1),
      logAll(other, shop.weighUp, ['coat', 'air'], 500),
      answerAll(),
      wakeOften(devtools),
    ]);
    const logged = [...ofOne, ...ofOther];
    await expect.poll(async () => answersIn(await rows(one)).length, { timeout: 30_000 }).toBe(ANSWERS);
    const kept = await rows(one);
    expect(answersIn(kept).sort()).toEqual([...answers].sort());
    expect(marksIn(kept).sort()).toEqual([...logged].sort());

    const coats = logged.filter((mark) => mark.startsWith('coat')).length;
    for (const window of [one, other]) {
      await window.goto(`${base}${piece}`);
      await window
        .getByText(new RegExp(`^Coat ${coats}\\b`))
        .first()
        .waitFor();
      await window.goto(`${base}#/mix/weigh/${shop.weighUp}`);
      await window.getByText(/In the cup so far/).waitFor();
    }
    const cups = await Promise.all(
      [one, other].map((window) => window.getByText(/In the cup so far/).textContent()),
    );
    expect(cups[0]).toBe(cups[1]);
    await other.close();
    await putBack(one, kept);
    await one.reload();
    await expect.poll(() => answersLeft(one), { timeout: 30_000 }).toBe(0);
    expect(await rows(one)).toEqual(kept);
    console.log(
      `three writers: ${logged.length} entries of two windows, ${answers.length} answers, ${WAKES} wakes`,
    );
  },
  60_000 + OF_A_WINDOW * 5_000,
);
