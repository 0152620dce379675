import { describe, expect, test } from 'vitest';
import { context, goTo, killAndReopen, newPage, page, takePhone } from '../app';
import {
  browserAllows,
  fakeFolderDialog,
  filesIn,
  folderIsFull,
  takeFolderAway,
  willChoose,
} from '../fake-dialogs';
import { axeViolations } from '../looked-at';
import { button, said } from '../on-screen';
import { kept, restored, startPiece, workWithPhotos } from './backup-steps';

const A_DAY = '24:00:00';

/** The work rests after ten minutes. */
const A_REST = '10:30';

async function layCoat(): Promise<void> {
  await goTo('#/lay');
  const cautions = button('Read and done');
  await cautions.or(button('Log it').first()).first().waitFor();
  if ((await cautions.count()) > 0) await cautions.tap();
  await button('Log it').first().tap();
  await page.getByText(/^Coat \d+ logged on /).waitFor();
}

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
