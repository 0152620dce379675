import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, test } from 'vitest';
import { base, context, goTo, killAndReopen, openApp, page } from '../app';
import { button, choose, field, heading, inUsUnits, unfold } from '../on-screen';
import { fillJar, HOUR_MS, layCoat, startPiece, told } from './spine-steps';

/** The first word of each thing that was done. */
const done = async () => (await told()).done.map((line) => line.split(' ')[0]);

describe('in the own shop, looked back at', () => {
  beforeEach(() => openApp());

  test('a check, a sanding and a closing are logged, and each can be undone from the list', async () => {
    const piece = await startPiece('Small box', Date.now() - 2 * HOUR_MS);
    await fillJar('Clear gloss');
    await layCoat(1);
    await page.getByRole('link', { name: 'Log a check' }).tap();
    await button('Log it').tap();
    await page.getByText('Choose what you found.').waitFor();
    await choose('Leaves a print');
    await button('Log it').tap();
    await page.getByText('Logged: Leaves a print.').waitFor();
    await page.getByRole('link', { name: 'Sand' }).tap();
    await field('Taken off').fill('3');
    await button('Log it').tap();
    await page.getByText('Scuffed, 3 µm off.').waitFor();
    await expect.poll(done).toEqual(['Scuffed', 'Leaves', 'Coat', 'Started']);
    await unfold('What was done');
    await button(/^Undo: Scuffed/).tap();
    await page.getByText('Undone: Scuffed.').waitFor();
    await heading('This piece').tap();
    await page.getByRole('link', { name: 'Change the details' }).tap();
    await button('Finish this piece').tap();
    await page.getByText('Small box is finished.').waitFor();
    await page.goto(`${base}${piece}`);
    await button(/^Undo: Finished/).tap();
    await page.getByText('Undone: Finished.').waitFor();
    await expect.poll(done).toEqual(['Leaves', 'Coat', 'Started']);
  });

  test('units and theme are chosen once and hold', async () => {
    await inUsUnits();
    await goTo('#/more');
    await unfold('Appearance');
    await choose('Dark');
    await killAndReopen('#/piece/new');
    expect(await page.evaluate(() => document.documentElement.dataset['theme'])).toBe('dark');
    await page.getByRole('radio', { name: 'in²', checked: true }).waitFor();
  });

  test('a backup written here is taken in by another phone', async () => {
    await startPiece('Small box');
    await page.goto(`${base}#/more`);
    const downloading = page.waitForEvent('download');
    await button('Save a backup').tap();
    const backup = readFileSync(await (await downloading).path());
    await context.close();
    await openApp();
    await page.goto(`${base}#/more`);
    const input = page.locator('input[type="file"]');
    await input.setInputFiles({ name: 'x.json', mimeType: 'application/json', buffer: Buffer.from('{') });
    await page.getByText('Nothing was restored', { exact: true }).waitFor();
    await input.setInputFiles({ name: 'backup.zip', mimeType: 'application/zip', buffer: backup });
    await page.getByText('1 entry restored.').waitFor();
    await page.goto(`${base}#/bench`);
    await page.getByText('Small box').waitFor();
  });
});
