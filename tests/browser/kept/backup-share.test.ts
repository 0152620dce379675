import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { context, goTo, killAndReopen, openPage, page, takePhone } from '../app';
import { bringIn, fakeShareSheet, sharedFile } from '../fake-dialogs';
import { axeViolations } from '../looked-at';
import { button, said } from '../on-screen';
import { oldPieces } from './backup-shop';
import { kept, restored, startPiece, workWithPhotos } from './backup-steps';

describe('the share sheet', () => {
  test('gets the backup as a file, and it brings everything back on an empty phone', async () => {
    await takePhone();
    await fakeShareSheet(context, 'takes-it');
    await openPage();
    await workWithPhotos();
    await goTo('#/more');
    await button('Save a backup').tap();
    await page.getByText(/^Saved: coatwait-.*\.zip\.$/).waitFor();
    const before = await kept();
    const { name, buffer } = await sharedFile();
    expect(name).toMatch(/^coatwait-\d{4}-\d\d-\d\d\.zip$/);
    expect(await restored(buffer)).toEqual(before);
  });

  test('that is closed again: it is said, no backup counts as written, and the file can be saved', async () => {
    await takePhone();
    await fakeShareSheet(context, 'AbortError');
    await openPage();
    await startPiece('Walnut box');
    await goTo('#/more');
    await button('Save a backup').tap();
    await said(/^Not shared, so no backup was saved/).waitFor();
    await said('No backup saved on this phone yet.').waitFor();
    expect(await axeViolations()).toEqual([]);
    const downloading = page.waitForEvent('download');
    await button('Save it on this phone').tap();
    expect(readFileSync(await (await downloading).path(), 'latin1')).toContain('Walnut box');
    await said(/^Last backup: /).waitFor();
    expect(await page.getByText(/^Not shared/).count()).toBe(0);
  });

  test('that the browser refuses: the file is saved at once', async () => {
    await takePhone();
    await fakeShareSheet(context, 'NotAllowedError');
    await openPage();
    await startPiece('Walnut box');
    await goTo('#/more');
    const downloading = page.waitForEvent('download');
    await button('Save a backup').tap();
    expect(readFileSync(await (await downloading).path(), 'latin1')).toContain('Walnut box');
    await page.getByText(/^Saved: coatwait-/).waitFor();
  });
});

test.each([
  { count: 20, daysAgo: 15, isDue: true },
  { count: 19, daysAgo: 15, isDue: false },
  { count: 20, daysAgo: 13, isDue: false },
])('$count entries of $daysAgo days ago and no backup: reminded is $isDue', async (given) => {
  const { count, daysAgo, isDue } = given;
  await takePhone();
  await openPage();
  await bringIn(Buffer.from(await oldPieces(count, daysAgo)), 'backup.json');
  await goTo('#/bench', 'Bench');
  await page.getByText('Box 1', { exact: true }).first().waitFor();
  const reminder = () => page.getByText('Time for a backup');
  if (!isDue) return expect(await reminder().count()).toBe(0);
  await reminder().waitFor();
  await page.getByRole('link', { name: 'Save a backup' }).tap();
  const downloading = page.waitForEvent('download');
  await button('Save a backup').tap();
  await (await downloading).path();
  await said(/^Last backup: /).waitFor();
  await goTo('#/bench', 'Bench');
  expect(await reminder().count()).toBe(0);
  await killAndReopen('#/bench');
  await page.getByText('Box 1', { exact: true }).first().waitFor();
  expect(await reminder().count()).toBe(0);
});

test.each([
  { answer: true, says: 'The browser has promised to keep the logbook' },
  { answer: false, says: 'The browser has not promised to keep the logbook' },
])(
  'storage is asked for once work is logged, not before, and the answer is shown: $answer',
  async (given) => {
    await takePhone();
    await context.addInitScript((isPromised) => {
      Object.assign(globalThis, { asked: 0 });
      StorageManager.prototype.persisted = async () => false;
      StorageManager.prototype.persist = async () => {
        (globalThis as unknown as { asked: number }).asked++;
        return isPromised;
      };
    }, given.answer);
    const asked = () => page.evaluate(() => (globalThis as unknown as { asked: number }).asked);
    await openPage();
    await startPiece('First box');
    await startPiece('Second box');
    expect(await asked()).toBe(0);
    await startPiece('Third box');
    await startPiece('Fourth box');
    await goTo('#/more');
    await said(given.says).waitFor();
    expect(await asked()).toBe(1);
  },
);
