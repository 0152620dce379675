import { readFileSync } from 'node:fs';
import ICAL from 'ical.js';
import { beforeEach, describe, expect, test } from 'vitest';
import { base, context, goTo, here, newPage, page, takePhone } from './app';
import { MOBILE } from './browser';
import { axeViolations, overTheSide } from './looked-at';
import { button, openLine, unfold } from './on-screen';
import type { WorkerScope } from './worker-scope';

/** A Wednesday, nine o'clock in the shop. Long past, so that the worker's own clock is later than any tap. */
const NINE = new Date('2025-03-05T09:00:00+01:00').getTime();
const MINUTE_MS = 60_000;
const PHONE = { ...MOBILE, timezoneId: 'Europe/Berlin' };

/** A cold start in the same browser profile, at an instant of the invented clock. */
async function openAt(atMs: number, hash = ''): Promise<void> {
  await newPage();
  await page.clock.install({ time: atMs });
  await goTo(hash);
}
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

/** A piece, a jar and a plan; the scuff and the cleaning are passed over by the first coat. */
async function planBox(): Promise<string> {
  await page.goto(`${base}#/piece/new`);
  await page.getByRole('textbox', { name: 'Name' }).fill('Walnut box');
  await page.getByRole('radio', { name: 'Sealed wood' }).check();
  await button('Start this piece').tap();
  await page.getByRole('heading', { name: 'Walnut box' }).first().waitFor();
  const id = here().split('/')[2] ?? '';
  await page.goto(`${base}#/mix/jar/new`);
  await page.getByRole('textbox', { name: 'Name of the jar' }).fill('Gloss');
  await button('Fill the jar').tap();
  await page.getByRole('heading', { name: 'Gloss' }).first().waitFor();
  await page.goto(`${base}#/plan/${id}`);
  await page.getByRole('radio', { name: 'Full clear' }).check();
  await button('Make the plan').tap();
  await page.getByRole('heading', { name: 'Steps' }).waitFor();
  return id;
}

async function layCoat(id: string): Promise<void> {
  await page.goto(`${base}#/lay?piece=${id}`);
  const cautions = button('Read and done');
  await cautions.or(button('Log it').first()).first().waitFor();
  if ((await cautions.count()) > 0) await cautions.tap();
  await button('Log it').first().tap();
  await page.getByText(/^Coat \d+ logged on /).waitFor();
  // The drying model answers from its worker, on the real clock.
  await page.getByRole('heading', { name: 'When it may be touched' }).waitFor({ timeout: 20_000 });
  await page.locator('.times-to-come').waitFor({ state: 'detached', timeout: 20_000 });
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

  test('is shown by the worker while the app is closed, where the browser wakes it', async () => {
    await allow();
    // The page has kept its own, empty list by then, and looks again only after 20 s of its clock.
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await page.waitForLoadState('networkidle');
    await page.clock.runFor(3000);
    await page.clock.pauseAt(NINE + MINUTE_MS);
    await page.clock.runFor(3000);
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

describe('the plan', () => {
  test('marks its step when a coat is laid, and says what moved', async () => {
    const id = await planBox();
    await layCoat(id);
    await page.goto(`${base}#/plan/${id}`);
    await page.getByText('1 step done, 2 skipped').waitFor();
    await page.getByText('The plan has moved').waitFor();
  });

  test('gives a calendar that a second one corrects', async () => {
    const id = await planBox();
    await page.goto(`${base}#/plan`);
    const first = await calendar();
    expect(first.length).toBeGreaterThan(10);
    await layCoat(id);
    await page.goto(`${base}#/plan`);
    const second = await calendar();
    const again = new Map(second.map((event) => [event.uid, event]));
    const coatsLeft = first.filter(({ uid }) => again.get(uid)?.status === 'CONFIRMED');
    expect(coatsLeft.length).toBeGreaterThan(10);
    for (const { uid, sequence } of first) expect(again.get(uid)?.sequence).toBeGreaterThanOrEqual(sequence);
    expect(second.some(({ sequence }) => sequence > 0)).toBe(true);
  });

  test('explains a week without hours, and a day promised that is past', async () => {
    const id = await planBox();
    await unfold('Promise to the owner');
    await page.getByLabel('Promised date').fill('2025-03-01');
    await button('Promise this date').tap();
    await page.getByText('That date is already past. Choose a later one and tell the owner.').waitFor();
    await page.goto(`${base}#/plan/hours`);
    for (const day of ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday']) await takeOut(day);
    await button('Save the week').tap();
    await page.goto(`${base}#/plan`);
    await page.getByText('The working week has no hours. Set at least one day when you work.').waitFor();
    await page.goto(`${base}#/plan/${id}`);
    await page.getByText('No plan is possible yet').waitFor();
  });

  async function takeOut(day: string): Promise<void> {
    await openLine(day);
    await page.getByRole('checkbox', { name: day, exact: true }).uncheck();
  }

  async function calendar(): Promise<{ uid: string; sequence: number; status: string }[]> {
    const coming = page.waitForEvent('download');
    await button('Add to the calendar').tap();
    const text = readFileSync(await (await coming).path(), 'utf8');
    const events = new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent');
    return events.map((event) => ({
      uid: String(event.getFirstPropertyValue('uid')),
      sequence: Number(event.getFirstPropertyValue('sequence')),
      status: String(event.getFirstPropertyValue('status')),
    }));
  }
});

describe('every page of the plan', () => {
  test.each([
    { width: 390, height: 844, colorScheme: 'light' },
    { width: 390, height: 844, colorScheme: 'dark' },
    { width: 360, height: 640, colorScheme: 'light' },
    { width: 1024, height: 768, colorScheme: 'dark' },
  ] as const)(
    'is without fault for a screen reader at $width, $colorScheme',
    async ({ width, height, colorScheme }) => {
      await page.setViewportSize({ width, height });
      await page.emulateMedia({ colorScheme });
      const id = await planBox();
      for (const hash of [
        'plan',
        `plan/${id}`,
        `plan/${id}/owner`,
        `plan/${id}/start`,
        'plan/hours',
        'plan/reminders',
        'board',
        'bench',
      ]) {
        await goTo(`#/${hash}`);
        for (const summary of await page.locator('main summary').all()) await summary.click();
        expect(await axeViolations(), hash).toEqual([]);
        expect(await overTheSide(), hash).toBe(0);
      }
    },
  );
});
