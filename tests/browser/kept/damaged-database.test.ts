import { rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, inject, test } from 'vitest';
import {
  browser,
  databaseFiles,
  expectAllThere,
  HARMS,
  idsIn,
  PLACES,
  profile,
  restartAfter,
  work,
  workOn,
} from './damage';

const base = inject('baseUrl');

describe('the database', () => {
  test.each(['MANIFEST', 'CURRENT', '.log', '.ldb'])(
    '%s harmed: everything is back, and it is said',
    async (name) => {
      let before = await work();
      for (const [how, harm] of Object.entries(HARMS))
        for (let place = 0; place < PLACES; place++) {
          const hit = (): string[] => databaseFiles().filter((path) => path.includes(name));
          const page = await restartAfter(() => hit().forEach(harm));
          await expectAllThere(page, before, `database, ${name} ${how}`);
          before = await workOn(page, before, `Later ${how} ${place}`);
        }
    },
    300_000,
  );

  test('its folder gone: everything is back, and it is said', async () => {
    const before = await work();
    const page = await restartAfter(() =>
      rmSync(join(profile.folder, 'Default', 'IndexedDB'), { recursive: true }),
    );
    await page.getByText(`The browser had lost ${before.ids.length} entries; they are back`).waitFor();
    await expectAllThere(page, before, 'database, folder gone');
  });

  test('deleted while the app is open: what was logged and what follows is there after a reload', async () => {
    const before = await work();
    const [page] = browser.context.pages().slice(-1) as [Page];
    await page.evaluate(
      () =>
        new Promise((resolve) => {
          indexedDB.deleteDatabase('coatwait').onsuccess = resolve;
        }),
    );
    await page.getByText(/The browser had lost \d+ entries; they are back/).waitFor();
    const all = await workOn(page, before, 'Later box');
    expect(all.ids.length).toBe(9);
    await page.reload();
    await page.goto(`${base}#/bench`);
    await expectAllThere(page, all, 'database, deleted while open');
  });

  test('and the journal deleted while the app is open: what is in memory is kept once more', async () => {
    const before = await work();
    const [page] = browser.context.pages().slice(-1) as [Page];
    await page.evaluate(async () => {
      const root = await navigator.storage.getDirectory();
      await root.removeEntry('coatwait-journal', { recursive: true }).catch(() => undefined); // it is in use
      await new Promise((resolve) => {
        indexedDB.deleteDatabase('coatwait').onsuccess = resolve;
      });
    });
    await expect.poll(() => idsIn(page), { timeout: 20_000 }).toEqual(before.ids);
  });
});
