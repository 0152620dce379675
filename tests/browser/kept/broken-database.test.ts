import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { base, context, goTo, openApp, openPage, page, takePhone } from '../app';
import { bringCrashShop } from '../crash-shop';
import { startPiece } from './backup-steps';

// A database that the app cannot use as it is: refused, half upgraded, held up, or with rows that are none.

test('a database that cannot be used any more: the second copy keeps the work, over a restart, and that is said', async () => {
  await openApp();
  await startPiece('First box');
  await context.addInitScript(() => {
    IDBDatabase.prototype.transaction = () => {
      throw new DOMException('Internal error.', 'UnknownError');
    };
  });
  for (const name of ['Second box', 'Third box']) {
    await page.close();
    await openPage();
    await page.getByText('The browser’s database cannot be used').waitFor();
    await page.getByText('First box', { exact: true }).first().waitFor();
    await startPiece(name);
    expect(await page.getByText(/not saved on this device/).count()).toBe(0);
  }
  await goTo('#/bench');
  for (const name of ['First box', 'Second box', 'Third box'])
    await page.getByText(name, { exact: true }).first().waitFor();
});

/** A page of the same origin without the app, which leaves databases as an upgrade that was broken off does: without their table. */
async function leaveWithoutTable(names: readonly string[], isHeld: boolean): Promise<Page> {
  await takePhone();
  const before = await context.newPage();
  await before.goto(`${base}icons/icon-192.png`);
  await before.evaluate(
    async ([all, keepOpen]) => {
      for (const name of all)
        await new Promise<void>((resolve, reject) => {
          const opening = indexedDB.open(name);
          opening.onerror = () => reject(opening.error);
          opening.onsuccess = () => {
            if (!keepOpen) opening.result.close();
            resolve();
          };
        });
    },
    [names, isHeld] as const,
  );
  return before;
}

test('an upgrade that was broken off: the logbook opens, and keeps work and photos', async () => {
  await leaveWithoutTable(['coatwait', 'coatwait-photos', 'coatwait-first'], false);
  await openPage();
  const shop = await bringCrashShop(page);
  await goTo(`#/mix/recipe/${shop.recipe}`);
  const card = { name: 'card.png', mimeType: 'image/png', buffer: await page.screenshot() };
  await page.locator('main input[type="file"]').setInputFiles(card);
  await page.getByRole('img', { name: 'Photo 1 of the dried card' }).waitFor();
  await page.reload();
  await page.getByRole('img', { name: 'Photo 1 of the dried card' }).waitFor();
});

test('another tab that holds the logbook up: it is said, and work is kept once the tab is closed', async () => {
  const holding = await leaveWithoutTable(['coatwait'], true);
  await openPage();
  await page.getByText('The logbook could not be opened').waitFor();
  await page.getByText('Close other tabs of this app and try again').waitFor();
  await holding.close();
  await page.getByRole('button', { name: 'Try again' }).tap();
  await page.getByText('The logbook could not be opened').waitFor({ state: 'detached' });
  await startPiece('Late box');
  await page.reload();
  await page.getByText('Late box').first().waitFor();
});

test('rows that are no entries: they are named and kept, and the rest is open', async () => {
  await openApp();
  await startPiece('Walnut box');
  await page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        const opening = indexedDB.open('coatwait');
        opening.onsuccess = () => {
          const writing = opening.result.transaction('entries', 'readwrite');
          const rows = [null, 'torn', { kind: 'coat-laid' }, new Blob(['x']), new ArrayBuffer(9)];
          for (const [n, row] of rows.entries()) writing.objectStore('entries').put(row, `torn-${n}`);
          writing.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
  );
  await goTo('#/bench');
  await page.reload();
  await page.getByText('5 entries could not be read').waitFor();
  await page.getByText('Walnut box').first().waitFor();
  await startPiece('Second box');
  await goTo('#/more');
  for (const key of ['torn-0', 'torn-4']) await page.getByText(key).first().waitFor();
});
