import { beforeEach, describe, expect, test } from 'vitest';
import { base, context, here, killAndReopen, openApp, page } from '../app';
import { button, coatLogged, field, heading, openLine, timesWorkedOut } from '../on-screen';
import { clock, fillJar, HOUR_MS, layCoat, openLay, sayWhen, startPiece, told } from './spine-steps';

/** The first line of what was done. */
const lastDone = async (): Promise<string> => (await told()).done[0] ?? '';

describe('in the own shop', () => {
  beforeEach(() => openApp());

  test('a first coat by touch, then the next in two taps from a cold start, and its undo', async () => {
    const piece = await startPiece('Small box');
    await fillJar('Clear gloss');
    await layCoat(1);
    await timesWorkedOut();
    expect((await told()).done).toHaveLength(2);

    await killAndReopen();
    await page.getByRole('navigation').getByRole('link', { name: 'Log a coat' }).tap();
    await button('Log it').first().tap();
    await coatLogged('Coat 2 logged on Small box.');
    expect(here()).toBe(piece);
    await expect.poll(lastDone).toMatch(/^Coat 2/);

    await page.getByRole('status').getByRole('button', { name: 'Undo' }).tap();
    await page.getByText('Undone: Coat 2.').waitFor();
    await expect.poll(lastDone).toMatch(/^Coat 1/);
  });

  test('twelve coats over four days: dates in order, and the same after the page is killed, offline', async () => {
    const noon = new Date();
    const daysAgo = (days: number, hour: number): number =>
      new Date(noon.getFullYear(), noon.getMonth(), noon.getDate() - days, hour).getTime();
    const piece = await startPiece('Mandolin, full clear', daysAgo(9, 8));
    await fillJar('Clear gloss');
    await page.goto(`${base}#/air/forecast`);
    await field('By day').fill('21');
    await field('By night').fill('16');
    await button('Set the forecast').tap();
    for (let coat = 0; coat < 12; coat++) {
      const day = 8 - Math.floor(coat / 3);
      await layCoat(coat + 1, daysAgo(day, 9 + (coat % 3) * 2.5));
    }
    await timesWorkedOut();
    // The last coat went on at 14:00: its own times, not those of the coat before.
    await expect.poll(async () => (await told()).times[0], { timeout: 20_000 }).toMatch(/14:\d\d/);
    const before = await told();
    expect(before.done).toHaveLength(13);
    expect(before.times.map((line) => line.split('\n')[0])).toEqual([
      expect.stringMatching(/^Dry to touch from/),
      expect.stringMatching(/^Recoat from/),
      expect.stringMatching(/^Level-sand from/),
      expect.stringMatching(/^Rub out from/),
      expect.stringMatching(/^Hard by/),
    ]);

    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await context.setOffline(true);
    await killAndReopen(piece);
    await timesWorkedOut();
    expect(await told()).toEqual(before);

    await page.getByRole('link', { name: 'Why these times?' }).tap();
    await heading('What this doesn’t know').waitFor();
    expect(await page.getByRole('img', { name: /Solvent held by Mandolin/ }).count()).toBe(1);
  });

  test('what cannot be is caught at its field with the range that would be accepted, and stays', async () => {
    await page.goto(`${base}#/piece/new`);
    await button('Start this piece').tap();
    await page.getByText('Give it a name.').waitFor();
    expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-invalid'))).toBe('true');

    await startPiece('Small box');
    await fillJar('Clear gloss');
    await openLay();
    await openLine('How');
    await field('Wet film').fill('5000');
    await button('Log it').first().tap();
    await page.getByText('Enter a value from 1 to 1000 µm.').waitFor();
    expect(await field('Wet film').inputValue()).toBe('5000');
    await field('Wet film').fill('85');

    await openLine('When');
    await sayWhen(Date.UTC(1970, 0, 1, 12));
    await button('Log it').first().tap();
    await page.getByText('Enter a time from the year 2000 on.').first().waitFor();
    await page.getByLabel('Day and time').fill(clock(Date.now() - 30 * 24 * HOUR_MS));
    await button('Log it').first().tap();
    await page
      .getByText(/when this was started/)
      .first()
      .waitFor();
    await page.goto(`${base}#/bench`);
    await page
      .getByText(/Ready for (a|its first) coat/)
      .first()
      .waitFor(); // nothing was logged
  });

  test('an entry that cannot be read is set aside and named, and the rest opens', async () => {
    await startPiece('Small box');
    await page.evaluate(async () => {
      const database = await new Promise<IDBDatabase>((resolve, reject) => {
        const asked = indexedDB.open('coatwait');
        asked.onsuccess = () => resolve(asked.result);
        asked.onerror = () => reject(asked.error);
      });
      const table = database.transaction('entries', 'readwrite').objectStore('entries');
      table.put({ kind: 'coat-laid', film: 'torn' }, 'a-broken-row');
      await new Promise((resolve) => {
        table.transaction.oncomplete = resolve;
      });
      database.close();
    });
    await killAndReopen();
    await page.getByText('Small box').waitFor();
    await page.getByText('One entry could not be read').waitFor();
    await page.getByRole('link', { name: 'Show it' }).tap();
    await page.getByText('a-broken-row').waitFor();
  });
});
