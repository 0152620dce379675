import { beforeEach, describe, expect, test } from 'vitest';
import { base, context, goTo, page, takePhone } from '../app';
import { button, unfold } from '../on-screen';
import type { WorkerScope } from '../worker-scope';
import { layCoat, NINE, openAt, PHONE, planBox } from './plan-steps';

const MINUTE_MS = 60_000;

const alert = () => page.getByRole('complementary', { name: 'Reminders due' });

async function allow(): Promise<void> {
  const cdp = await context.newCDPSession(page);
  const { targetInfo } = await cdp.send('Target.getTargetInfo');
  await cdp.send('Browser.grantPermissions', {
    ...(targetInfo.browserContextId && { browserContextId: targetInfo.browserContextId }),
    origin: base.slice(0, -1),
    permissions: ['notifications', 'periodicBackgroundSync'],
  });
}

/** Lets the invented clock run, in steps that a page out of sight gets. */
async function passMinutes(minutes: number): Promise<void> {
  for (let step = 0; step < minutes; step += 10)
    await page.clock.runFor(Math.min(10, minutes - step) * MINUTE_MS);
}

const coats = () => page.locator('.history').getByText(/^Coat \d/);

async function hide(): Promise<void> {
  await page.evaluate(() => {
    Object.defineProperty(document, 'visibilityState', { get: () => 'hidden', configurable: true });
  });
}

const shownNotifications = () =>
  page.evaluate(async () => {
    const worker = await navigator.serviceWorker.ready;
    return (await worker.getNotifications()).map(({ title, tag, data }) => ({
      title,
      tag,
      ids: data?.ids as string[],
    }));
  });

/** What a tap on a notification's answer does: headless Chromium cannot tap one itself. */
async function tapAnswer(action: string): Promise<void> {
  const [worker] = context.serviceWorkers();
  if (!worker) throw new Error('There is no service worker.');
  await worker.evaluate(async (given) => {
    const scope = globalThis as unknown as WorkerScope;
    const [notification] = await scope.registration.getNotifications();
    if (!notification) throw new Error('No notification is shown.');
    const tap = new scope.NotificationEvent('notificationclick', { notification, action: given });
    // Only a real tap may prolong the event; the answer is kept all the same.
    Object.defineProperty(tap, 'waitUntil', { value: () => undefined });
    scope.dispatchEvent(tap);
  }, action);
}

beforeEach(async () => {
  await takePhone(PHONE);
  await openAt(NINE);
});

describe('a reminder', () => {
  test('comes due on the page, rings and flashes, and leads to the coat', async () => {
    const id = await planBox();
    await layCoat(id);
    await page.goto(`${base}#/bench`);
    await passMinutes(25);
    await alert().getByText('Next coat').waitFor();
    await alert().getByText('Walnut box').first().waitFor();
    await alert().getByRole('link', { name: 'Log it' }).tap();
    await page.getByRole('heading', { name: 'Log a coat' }).waitFor();
  });

  test('is a notification out of sight, and its answer lays the coat', async () => {
    await allow();
    const id = await planBox();
    await layCoat(id);
    expect(await coats().count()).toBe(1);
    await hide();
    await passMinutes(25);
    await expect
      .poll(async () => (await shownNotifications()).map(({ title }) => title))
      .toContain('Next coat: Walnut box');
    const others = (await shownNotifications()).filter(({ title }) => title !== 'Next coat: Walnut box');
    expect(others.every(({ ids }) => ids.length > 0)).toBe(true);
    await page.evaluate(async () => {
      const worker = await navigator.serviceWorker.ready;
      for (const one of await worker.getNotifications()) if (!one.title.startsWith('Next coat')) one.close();
    });
    await tapAnswer('done');
    await page.getByText('Coat logged on Walnut box, same as the one before.').waitFor();
    await expect.poll(() => coats().count()).toBe(2);
  });

  test('stands first among what was missed when the app was killed and is opened again', async () => {
    const id = await planBox();
    await layCoat(id);
    await page.close({ runBeforeUnload: false });
    await openAt(NINE + 5 * 60 * MINUTE_MS);
    await goTo('#/plan/reminders');
    await page.getByText('While you were away').waitFor({ timeout: 20_000 });
    await page.getByText('Next coat: Walnut box').first().waitFor({ timeout: 20_000 });
  });

  /** What the page has kept for the worker; undefined before it has. */
  const keptUpcoming = (): Promise<unknown> =>
    page.evaluate(async () => {
      const opened = indexedDB.open('coatwait-reminders');
      await new Promise((resolve) => {
        opened.onupgradeneeded = () => opened.result.createObjectStore('kept');
        opened.onsuccess = resolve;
      });
      const asked = opened.result.transaction('kept').objectStore('kept').get('upcoming');
      await new Promise((resolve) => {
        asked.onsuccess = resolve;
      });
      opened.result.close();
      return asked.result;
    });

  test('is shown by the worker while the app is closed, where the browser wakes it', async () => {
    await allow();
    // The page has kept its own, empty list by then, and looks again only after 20 s of its clock.
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await page.waitForLoadState('networkidle');
    await page.clock.runFor(3000);
    await page.clock.pauseAt(NINE + MINUTE_MS);
    await page.clock.runFor(3000);
    await expect.poll(keptUpcoming).toEqual([]);
    const nowMs = Date.now();
    await page.evaluate(async (atMs) => {
      const opened = indexedDB.open('coatwait-reminders');
      await new Promise((resolve) => {
        opened.onupgradeneeded = () => opened.result.createObjectStore('kept');
        opened.onsuccess = resolve;
      });
      const kept = opened.result.transaction('kept', 'readwrite').objectStore('kept');
      const one = {
        ids: ['scuff:x'],
        tag: 'scuff:x',
        atMs,
        untilMs: atMs + 3_600_000,
        title: 'Scuff: Box',
        text: 'Before the next coat.',
        address: '#/bench',
        mustAcknowledge: false,
      };
      kept.put([one], 'upcoming');
      await new Promise((resolve) => {
        kept.transaction.oncomplete = resolve;
      });
      opened.result.close();
    }, nowMs - MINUTE_MS);
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    const cdp = await context.newCDPSession(page);
    const registered = new Promise<string>((resolve) => {
      cdp.on('ServiceWorker.workerRegistrationUpdated', ({ registrations }) => {
        const [first] = registrations;
        if (first) resolve(first.registrationId);
      });
    });
    await cdp.send('ServiceWorker.enable');
    await cdp.send('ServiceWorker.dispatchPeriodicSyncEvent', {
      origin: base.slice(0, -1),
      registrationId: await registered,
      tag: 'coatwait-due',
    });
    await expect
      .poll(async () => (await shownNotifications()).map(({ title }) => title))
      .toEqual(['Scuff: Box']);
  });

  test('can be tested with a tap, and the page says what this phone can do', async () => {
    await allow();
    await page.goto(`${base}#/plan/reminders`);
    await unfold('What this phone can do');
    await page.getByText('While it is open, out of sight').waitFor();
    await button('Test it now').tap();
    await expect
      .poll(async () => (await shownNotifications()).map(({ title }) => title))
      .toEqual(['A test of the reminders']);
    expect(await page.evaluate(() => document.documentElement.dataset['flash'])).toBe('on');
  });
});
