import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { base, context, goTo, here, killAndReopen, newPage, openPage, page, takePhone } from '../app';
import { rows, startPiece } from '../logging';
import { button, said } from '../on-screen';

// What a browser denies the app: room for a photo, the small storage, a database that a later app has changed.

/** A photo that cannot be made small: noise. */
const noise = async (): Promise<Buffer> =>
  Buffer.from(
    await page.evaluate(async () => {
      const canvas = new OffscreenCanvas(1600, 1200);
      const paint = canvas.getContext('2d');
      const picture = new ImageData(1600, 1200);
      for (let at = 0; at < picture.data.length; at += 65_536)
        crypto.getRandomValues(picture.data.subarray(at, at + 65_536));
      paint?.putImageData(picture, 0, 0);
      const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.9 });
      return btoa(
        Array.from(new Uint8Array(await blob.arrayBuffer()), (byte) => String.fromCharCode(byte)).join(''),
      );
    }),
    'base64',
  );

test('a photo that the device has no room for: it is said, what was logged is there, and work goes on', async () => {
  await takePhone();
  await newPage();
  const devtools = await context.newCDPSession(page);
  const room = (bytes?: number) =>
    devtools.send('Storage.overrideQuotaForOrigin', {
      origin: new URL(base).origin,
      ...(bytes !== undefined && { quotaSize: bytes }),
    });
  await room(4_000_000); // before the first visit: Chromium asks for the room that is left only every half minute
  await goTo('');
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await startPiece(page, 'Photo box');
  const photos = `${here()}/photos`;
  await goTo(photos, 'Photos');
  const file = { name: 'a.jpg', mimeType: 'image/jpeg', buffer: await noise() };
  const kept = () => page.locator('.photo-list img');
  const full = page.getByText(/^This device is full/);
  let taken = 0;
  for (; taken < 9; taken++) {
    await page.locator('main input[type="file"]').first().setInputFiles(file);
    await full.or(kept().nth(taken)).first().waitFor();
    if ((await full.count()) > 0) break;
  }
  expect(taken).toBeGreaterThan(0);
  expect(await full.count()).toBe(1);
  await room();
  await startPiece(page, 'Later box');
  expect(await page.getByText(/not saved on this device/).count()).toBe(0);
  await killAndReopen(photos);
  await kept()
    .nth(taken - 1)
    .waitFor();
  expect(await page.locator('.photo-list li').count()).toBe(taken); // nothing is left of the one that was refused
  expect(await rows(page)).toHaveLength(2 + taken);
  await goTo('#/bench');
  for (const name of ['Photo box', 'Later box']) await said(name).waitFor();
});

test('a browser that forbids the small storage: every place opens, and what is logged stays', async () => {
  await takePhone();
  await context.addInitScript(() => {
    Object.defineProperty(globalThis, 'localStorage', {
      get: () => {
        throw new DOMException('The operation is insecure.', 'SecurityError');
      },
    });
  });
  await openPage();
  await startPiece(page, 'Only box');
  for (const place of ['lay', 'mix', 'match', 'air', 'plan', 'more', 'board', 'bench'])
    await goTo(`#/${place}`);
  await killAndReopen();
  await said('Only box').waitFor();
});

/** A page of the same origin that changes the database as a later app might: a higher version, a table more, and a row that only it can read. */
async function laterApp(): Promise<Page> {
  const later = await context.newPage();
  await later.goto(`${base}icons/icon-192.png`);
  await later.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('coatwait', 9);
        opening.onerror = () => reject(opening.error);
        opening.onupgradeneeded = () => {
          opening.result.createObjectStore('more');
          const id = '01aaaaaa-0000-7000-8000-000000000000';
          const row = { id, v: 99, kind: 'coat-laid', at: new Date().toISOString(), zone: 'UTC' };
          opening.transaction?.objectStore('entries').put(row, id);
        };
        opening.onsuccess = () => resolve(); // and it stays open
      }),
  );
  return later;
}

test('a database that a later app has changed: all is read and logged on, and what only that app can read is named and kept', async () => {
  await takePhone();
  await openPage();
  await startPiece(page, 'First box');
  const own = page;
  const later = await laterApp();
  await startPiece(own, 'Second box'); // the tab that was open gave way, and has opened it again
  await later.close();
  await killAndReopen();
  await page.getByText('A newer version of this app logged 1 entry').waitFor();
  await button('Reload now').waitFor();
  await startPiece(page, 'Third box');
  // And the second copy has been written all along: it alone brings everything back.
  await goTo('#/more');
  await page.getByText(/A second copy/).waitFor();
  expect(await rows(page)).toHaveLength(4);
  await page.evaluate(
    () =>
      new Promise((resolve) => {
        indexedDB.deleteDatabase('coatwait').onsuccess = resolve;
      }),
  );
  await page.getByText('The browser had lost 4 entries; they are back').waitFor();
  expect(await rows(page)).toHaveLength(4);
  await goTo('#/bench');
  for (const name of ['First box', 'Second box', 'Third box']) await said(name).waitFor();
});
