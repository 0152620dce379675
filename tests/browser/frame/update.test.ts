import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { launch, MOBILE } from '../browser';
import { newProfile, startKillable } from '../killable';
import { rows, startPiece } from '../logging';
import { type Releases, serveReleases } from './releases';

let browser: Browser;
let context: BrowserContext;
let server: Releases;
beforeAll(async () => {
  browser = await launch();
});
beforeEach(async () => {
  server = await serveReleases();
});
afterEach(async () => {
  await context?.close().catch(() => undefined); // killed already
  server.close();
});
afterAll(() => browser?.close());

async function openIn(phone: BrowserContext): Promise<Page> {
  const page = await phone.newPage();
  page.setDefaultTimeout(20_000);
  await page.goto(server.address);
  await page.getByRole('heading', { level: 1 }).waitFor();
  return page;
}
const isKept = (page: Page) => page.waitForFunction(() => navigator.serviceWorker.controller !== null);
const lookForNewer = (page: Page): Promise<void> =>
  page.evaluate(() => {
    void navigator.serviceWorker.ready.then((one) => one.update()).catch(() => undefined);
  });
/** Whose files the page is made of. */
const folder = (page: Page): Promise<string> =>
  page.evaluate(() => document.scripts[0]?.src.split('/').at(-2) ?? '');
const go = (page: Page, hash: string): Promise<void> =>
  page.evaluate((to) => {
    location.hash = to;
  }, hash);
const reloadNow = (page: Page) => page.getByRole('button', { name: 'Reload now' });

test('an update that lacks a file is dropped: the version that works goes on, offline too, and nothing is offered', async () => {
  context = await browser.newContext(MOBILE);
  const page = await openIn(context);
  await isKept(page);
  server.release({ files: 0, others: 'missing' });
  const states = await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    const found = new Promise<ServiceWorker | null>((resolve) => {
      registration.addEventListener('updatefound', () => resolve(registration.installing));
    });
    await registration.update().catch(() => undefined);
    const fresh = await found;
    await new Promise<void>((resolve) => {
      const look = () => fresh?.state === 'redundant' && resolve();
      fresh?.addEventListener('statechange', look);
      look();
    });
    return { waiting: registration.waiting !== null, active: registration.active?.state };
  });
  expect(states).toEqual({ waiting: false, active: 'activated' });
  expect(await reloadNow(page).count()).toBe(0);
  await context.setOffline(true);
  await page.reload();
  await page.getByRole('heading', { level: 1, name: 'Bench' }).waitFor();
});

/** What only a newer version can read, logged there and told to the other tabs. */
const logAsNewer = (page: Page): Promise<void> =>
  page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        const opening = indexedDB.open('coatwait');
        opening.onsuccess = () => {
          const writing = opening.result.transaction('entries', 'readwrite');
          const id = '01aaaaaa-0000-7000-8000-000000000000';
          const row = { id, v: 99, kind: 'air-read', at: new Date().toISOString(), zone: 'UTC' };
          writing.objectStore('entries').put(row, id);
          writing.oncomplete = () => {
            new BroadcastChannel('coatwait').postMessage([id]);
            opening.result.close();
            resolve();
          };
        };
      }),
  );

test('two versions in two tabs: each keeps what it logs and shows what the other logged, and the old one is told', async () => {
  context = await browser.newContext(MOBILE);
  const old = await openIn(context);
  await isKept(old);
  await startPiece(old, 'Old box', server.address);
  await go(old, '#/air/read');
  await old.getByRole('textbox', { name: 'Air temperature', exact: true }).fill('21');

  server.release();
  const fresh = await openIn(context);
  await lookForNewer(fresh);
  await reloadNow(fresh).tap();
  await expect.poll(() => folder(fresh).catch(() => '')).toBe('next');
  await startPiece(fresh, 'New box', server.address);
  await logAsNewer(fresh);

  expect(await folder(old)).toBe('assets');
  await reloadNow(old).waitFor(); // it is told, and its form is as it was
  await old.getByRole('textbox', { name: 'Humidity', exact: true }).fill('50');
  await old.getByRole('button', { name: 'Log the reading' }).tap();
  await old.locator('.toast').getByText('Reading logged.').waitFor();
  await go(old, '#/bench');
  await old.getByText('A newer version of this app logged 1 entry').waitFor();
  for (const name of ['Old box', 'New box']) await old.getByText(name, { exact: true }).first().waitFor();
  await go(old, '#/match'); // a part that this tab has not fetched, and that is gone
  await old.getByText('Nothing you logged is lost.').waitFor();

  await reloadNow(old).first().tap(); // the notice offers it, and so does the page that is gone
  await expect.poll(() => folder(old).catch(() => '')).toBe('next');
  for (const page of [old, fresh]) {
    await go(page, '#/bench');
    for (const name of ['Old box', 'New box']) await page.getByText(name, { exact: true }).first().waitFor();
    expect(await rows(page)).toHaveLength(4);
  }
});

test('the browser dies while it fetches an update: the old version opens with everything in it, and is updated later', async () => {
  const profile = newProfile();
  let phone = await startKillable(profile.folder);
  let page = await openIn(phone.context);
  await isKept(page);
  const names: string[] = [];
  for (const files of [0, 7]) {
    server.release({ files, others: 'silence' });
    await lookForNewer(page);
    await expect.poll(() => server.asked(), { timeout: 20_000 }).toBeGreaterThan(files);
    names.push(`Box ${files}`);
    await startPiece(page, `Box ${files}`, server.address);
    await phone.kill();
    phone = await startKillable(profile.folder);
    page = await openIn(phone.context);
    expect(await folder(page)).toBe('assets');
    for (const name of names) await page.getByText(name, { exact: true }).first().waitFor();
    await go(page, '#/match');
    await page.getByRole('heading', { level: 1, name: 'Match' }).waitFor(); // from what is kept: the server has it no more
    await go(page, '#/bench');
  }
  await phone.kill(); // the update that hangs goes with it
  server.release();
  phone = await startKillable(profile.folder);
  page = await openIn(phone.context);
  await lookForNewer(page);
  await reloadNow(page).click();
  await expect.poll(() => folder(page).catch(() => ''), { timeout: 20_000 }).toBe('next');
  for (const name of names) await page.getByText(name, { exact: true }).first().waitFor();
  expect(await rows(page)).toHaveLength(names.length);
  await phone.kill();
  profile.remove();
});
