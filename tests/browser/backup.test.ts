import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { context, goTo, killAndReopen, newPage, openPage, page, takePhone } from './app';
import { oldPieces } from './backup-shop';
import { crashShop } from './crash-shop';
import {
  bringIn,
  browserAllows,
  entriesKept,
  fakeFolderDialog,
  fakeShareSheet,
  filesIn,
  folderIsFull,
  photoSums,
  sharedFile,
  takeFolderAway,
  willChoose,
} from './fake-dialogs';
import { axeViolations } from './looked-at';
import { button, field, said } from './on-screen';

const A_DAY = '24:00:00';
/** The work rests after ten minutes. */
const A_REST = '10:30';

async function startPiece(name: string): Promise<void> {
  await goTo('#/piece/new');
  await field('Name').fill(name);
  await page.getByRole('radio', { name: /^Sealed wood/ }).tap();
  await button('Start this piece').tap();
  await page.getByRole('heading', { name }).first().waitFor();
}

async function layCoat(): Promise<void> {
  await goTo('#/lay');
  const cautions = button('Read and done');
  await cautions.or(button('Log it').first()).first().waitFor();
  if ((await cautions.count()) > 0) await cautions.tap();
  await button('Log it').first().tap();
  await page.getByText(/^Coat \d+ logged on /).waitFor();
}

/** A shop with a jar, a recipe and two photos of its dried card. */
async function workWithPhotos(): Promise<void> {
  const shop = await crashShop();
  await bringIn(Buffer.from(shop.backup), 'backup.json');
  await goTo(`#/mix/recipe/${shop.recipe}`);
  for (const n of [1, 2]) {
    const card = { name: 'card.png', mimeType: 'image/png', buffer: await page.screenshot() };
    await page.locator('main input[type="file"]').setInputFiles(card);
    await page.getByRole('img', { name: `Photo ${n} of the dried card` }).waitFor();
  }
}

/** What the backup brings to another, empty phone. */
async function restored(buffer: Buffer) {
  await takePhone();
  await newPage();
  await page.clock.install({ time: Date.now() + 3 * 86_400_000 }); // a phone does not take what happens later than its clock
  await bringIn(buffer);
  return { entries: await entriesKept(), photos: await photoSums() };
}
const kept = async () => ({ entries: await entriesKept(), photos: await photoSums() });
const newest = async (folder: string): Promise<Buffer> => {
  const files = Object.entries(await filesIn(folder)).sort(([a], [b]) => a.localeCompare(b));
  return Buffer.from(files.at(-1)?.[1] ?? '', 'base64');
};
const howMany = async (folder: string): Promise<number> => Object.keys(await filesIn(folder)).length;

describe('a folder', () => {
  async function openWithDialog(): Promise<void> {
    await takePhone();
    await fakeFolderDialog(context);
    await newPage();
    await page.clock.install();
    await goTo('#/more');
  }
  const putAway = () =>
    page.evaluate(() => {
      Object.defineProperty(document, 'visibilityState', { value: 'hidden', configurable: true });
      document.dispatchEvent(new Event('visibilitychange'));
    });
  async function chooseFolder(name: string): Promise<void> {
    await goTo('#/more');
    await willChoose(name);
    await button(/^Choose (a|another) folder$/).tap();
    await said('A folder is chosen; backups go there automatically.').waitFor();
  }

  test('gets a backup by itself when the work rests, and it brings everything back on an empty phone', async () => {
    await openWithDialog();
    await button('Choose a folder').tap();
    await page.getByText('No folder to save to.').first().waitFor();
    await workWithPhotos();
    await chooseFolder('backups');
    await expect.poll(() => howMany('backups')).toBe(1);
    await page.clock.fastForward(A_DAY);
    await startPiece('Walnut box');
    await layCoat();
    expect(await howMany('backups')).toBe(1);
    await page.clock.fastForward(A_REST);
    await expect.poll(() => howMany('backups')).toBe(2);
    await goTo('#/more');
    expect(await axeViolations()).toEqual([]);
    const before = await kept();
    expect(before.photos.length).toBe(2);
    expect(await restored(await newest('backups'))).toEqual(before);
  });

  test('gets the last coat when the phone is put away right after it', async () => {
    await openWithDialog();
    await workWithPhotos();
    await chooseFolder('backups');
    await expect.poll(() => howMany('backups')).toBe(1);
    await startPiece('Walnut box');
    await layCoat();
    await putAway();
    const coats = async () => (await newest('backups')).toString('latin1').split('"coat-laid"').length - 1;
    await expect.poll(coats).toBe(1);
  });

  test('is found again after a restart, and asked for where the browser forgot', async () => {
    await openWithDialog();
    await chooseFolder('backups');
    await killAndReopen('#/more');
    await said('A folder is chosen; backups go there automatically.').waitFor();
    await browserAllows('prompt');
    await killAndReopen('#/more');
    await said('The browser asks for your permission again before it saves there.').waitFor();
    await startPiece('Walnut box');
    await goTo('#/bench');
    await said('The backup folder needs you').waitFor();
    expect(await axeViolations()).toEqual([]);
    expect(await howMany('backups')).toBe(0);
    await page.getByRole('link', { name: 'Save a backup' }).tap();
    expect(await axeViolations()).toEqual([]);
    await button('Allow the folder again').tap();
    await expect.poll(() => howMany('backups')).toBe(1);
    await goTo('#/bench');
    expect(await page.getByText('The backup folder needs you').count()).toBe(0);
  });

  test('whose permission is taken back while the app is open, or for good, is told of', async () => {
    await openWithDialog();
    await chooseFolder('backups');
    await browserAllows('denied');
    await startPiece('Walnut box');
    await putAway();
    await goTo('#/more');
    await said('The browser asks for your permission again before it saves there.').waitFor();
    await button('Allow the folder again').tap();
    await page.getByText('No folder to save to.').first().waitFor();
    expect(await howMany('backups')).toBe(0);
  });

  test('that is gone is told of, and another takes its place', async () => {
    await openWithDialog();
    await chooseFolder('backups');
    await takeFolderAway('backups');
    await startPiece('Walnut box');
    await putAway();
    await goTo('#/more');
    await said(/The last backup could not be saved there/).waitFor();
    expect(await axeViolations()).toEqual([]);
    await chooseFolder('elsewhere');
    await expect.poll(() => howMany('elsewhere')).toBe(1);
    await said(/^Last backup: /).waitFor();
  });

  test('that is full is told of, is left without a torn file, and is written to again once there is room', async () => {
    await openWithDialog();
    await chooseFolder('backups');
    await folderIsFull(true);
    await startPiece('Walnut box');
    await putAway();
    await goTo('#/more');
    await said(/The last backup could not be saved there/).waitFor();
    expect(await filesIn('backups')).toEqual({});
    await folderIsFull(false);
    await chooseFolder('backups');
    await expect.poll(() => howMany('backups')).toBe(1);
  });
});

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
