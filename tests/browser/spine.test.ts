import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, test } from 'vitest';
import { base, context, goTo, here, killAndReopen, openApp, page } from './app';
import { MOBILE } from './browser';
import { axeViolations, overTheSide } from './looked-at';
import { button, choose, field, heading, inUsUnits, openLine, section, unfold } from './on-screen';

const HOUR_MS = 3_600_000;

/** Local time as a clock field writes it. */
function clock(atMs: number): string {
  const local = new Date(atMs - new Date(atMs).getTimezoneOffset() * 60_000);
  return local.toISOString().slice(0, 16);
}

async function sayWhen(atMs: number | undefined): Promise<void> {
  if (atMs === undefined) return;
  await choose('By the clock');
  await page.getByLabel('Day and time').fill(clock(atMs));
}

async function startPiece(name: string, atMs?: number): Promise<string> {
  await page.goto(`${base}#/piece/new`);
  await field('Name').fill(name);
  await choose(/^Sealed wood/);
  await sayWhen(atMs);
  await button('Start this piece').tap();
  await heading(name).first().waitFor();
  return here();
}

async function fillJar(name: string): Promise<void> {
  await page.goto(`${base}#/mix/jar/new`);
  await field('Name of the jar').fill(name);
  await button('Fill the jar').tap();
  await heading(name).first().waitFor();
}

/** Opens the coat that a tap would lay; confirms the cautions where a session begins. */
async function openLay(): Promise<void> {
  await page.getByRole('navigation').getByRole('link', { name: 'Log a coat' }).tap();
  await button(/^(Log it|Read and done)/)
    .first()
    .waitFor();
  const cautions = button('Read and done');
  if ((await cautions.count()) > 0) await cautions.tap();
  await button('Log it').first().waitFor();
}

async function layCoat(number: number, atMs?: number): Promise<void> {
  await openLay();
  if (atMs !== undefined) await openLine('When');
  await sayWhen(atMs);
  await button('Log it').first().tap();
  await page.getByText(new RegExp(`^Coat ${number} logged on `)).waitFor();
}

async function timesWorkedOut(): Promise<void> {
  await section('When it may be touched').locator('.band-time').first().waitFor({ timeout: 20_000 });
  await page.waitForFunction(() => !document.body.textContent?.includes('Working out the times'));
}

/** What the piece's page says of its times and of what was done, as a reader would hear it. */
const told = async () => ({
  times: await section('When it may be touched').locator('.band-time').allInnerTexts(),
  done: await section('What was done').locator('li').allTextContents(),
});

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
    await page.getByText('Coat 2 logged on Small box.').waitFor();
    expect(here()).toBe(piece);
    expect((await told()).done[0]).toMatch(/^Coat 2/);

    await page.getByRole('status').getByRole('button', { name: 'Undo' }).tap();
    await page.getByText('Undone: Coat 2.').waitFor();
    expect((await told()).done[0]).toMatch(/^Coat 1/);
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
    expect((await told()).done.map((line) => line.split(' ')[0])).toEqual([
      'Scuffed',
      'Leaves',
      'Coat',
      'Started',
    ]);
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
    expect((await told()).done.map((line) => line.split(' ')[0])).toEqual(['Leaves', 'Coat', 'Started']);
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

test('the demo shop comes with one tap, stays apart, and goes with one tap', async () => {
  await openApp();
  await button('Look around the demo shop').tap();
  await page.locator('.piece-row').first().waitFor();
  expect(await page.locator('.piece-row').count()).toBeGreaterThanOrEqual(4);
  await killAndReopen();
  await page.getByRole('complementary', { name: 'Demo shop' }).waitFor(); // still there, and still marked
  await page.locator('.piece-row').first().waitFor();
  await button('Leave the demo').tap();
  await heading('Nothing on the bench yet').waitFor();
  expect(await page.getByRole('complementary', { name: 'Demo shop' }).count()).toBe(0);
});

describe.each([
  { name: 'light', options: { ...MOBILE, colorScheme: 'light' } as const },
  {
    name: 'dark, small',
    options: { ...MOBILE, viewport: { width: 360, height: 640 }, colorScheme: 'dark' } as const,
  },
  { name: 'wide', options: { viewport: { width: 1100, height: 800 } } },
])('$name', ({ options }) => {
  test('no screen of the spine has an axe violation, and nothing runs off the side', async () => {
    await openApp(options);
    await button('Look around the demo shop').click();
    await page.locator('.piece-row .wait-bar').first().waitFor({ timeout: 20_000 });
    const pieces = await page
      .locator('.piece-row > a:first-child')
      .evaluateAll((links) => links.map((link) => link.getAttribute('href') ?? ''));
    const [first = ''] = pieces;
    const behind = ['why', 'check', 'sand', 'change', 'record'].map((name) => `${first}/${name}`);
    for (const hash of ['#/bench', '#/board', '#/lay', '#/more', '#/piece/new', ...pieces, ...behind]) {
      await goTo(hash);
      await page.locator('main h1').first().waitFor({ state: 'attached' });
      expect(await axeViolations(), `${hash}`).toEqual([]);
      expect(await overTheSide(), `${hash}`).toBe(0);
    }
  });
});
