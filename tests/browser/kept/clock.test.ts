import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { context, goTo, newPage, openApp, openPage, page, takePhone } from '../app';
import { MOBILE } from '../browser';
import { bringIn } from '../fake-dialogs';
import { startPiece } from '../logging';
import { button, choose, field, title, unfold } from '../on-screen';

const DAY_MS = 86_400_000;
const asked = 'Is this phone’s clock right?';
/** As a clock field takes it. */
const local = (atMs: number): string => {
  const at = new Date(atMs - new Date(atMs).getTimezoneOffset() * 60_000);
  return at.toISOString().slice(0, 16);
};

async function backup(): Promise<Buffer> {
  await goTo('#/more');
  const downloading = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save a backup', exact: true }).tap();
  return readFileSync(await (await downloading).path());
}

test('a clock that was a day ahead: it is asked, the entry is corrected, and the backup comes back whole', async () => {
  const nowMs = Date.now();
  await openApp();
  await page.clock.setSystemTime(nowMs + DAY_MS);
  await startPiece(page, 'Ahead box');
  const piece = new URL(page.url()).hash;
  expect(await page.getByText(asked).count()).toBe(0);

  await page.clock.setSystemTime(nowMs);
  await page.reload();
  await page.getByText(asked).waitFor();
  await goTo(piece);
  await unfold('What was done');
  await page.getByRole('link', { name: /^Correct: Started/ }).tap();
  await page.getByLabel('Day and time').fill(local(nowMs - 3_600_000));
  await page.getByRole('button', { name: 'Save the correction' }).tap();
  await page.getByText('Started corrected.').waitFor();
  await page.getByText('Corrected', { exact: true }).waitFor();
  await page.getByRole('button', { name: 'It is right now' }).tap();
  await page.getByText(asked).waitFor({ state: 'detached' });

  const file = await backup();
  await takePhone();
  await openPage();
  await bringIn(file);
  await page.getByText('2 entries restored.').waitFor();
  await goTo('#/bench');
  await page.getByText('Ahead box').first().waitFor();
});

// New York, 1 November 2026: at two o'clock it is one again (IANA time zone database).
test('an hour that came twice is asked about before anything is logged', async () => {
  await takePhone({ ...MOBILE, timezoneId: 'America/New_York' });
  await newPage();
  await page.clock.install({ time: new Date('2026-11-01T03:10:00-05:00') });
  await goTo('#/piece/new', 'Start a piece');
  await field('Name').fill('Night box');
  await choose('By the clock');
  await page.getByLabel('Day and time').fill('2026-11-01T01:30');
  await button('Start this piece').tap();
  expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe('Start a piece');
  await page.getByRole('radio', { name: /^The first/ }).tap();
  await button('Start this piece').tap();
  await title('Night box');
  const file = await backup();
  expect(file.toString()).toContain('2026-11-01T05:30:00.000Z'); // summer time, four hours behind
});

test('a clock set back gives no range that ends before it begins, and says what to do', async () => {
  const nowMs = Date.now();
  await openApp();
  await startPiece(page, 'Earlier box');
  const piece = new URL(page.url()).hash;
  await page.clock.setSystemTime(nowMs - 2 * DAY_MS);
  await page.reload();
  await page.getByText(asked).waitFor();
  await goTo(`${piece}/check`);
  for (const group of await page.locator('main fieldset').all())
    await group.getByRole('radio').first().check({ force: true });
  await page.getByRole('button', { name: 'Log it' }).tap();
  await page
    .getByText(/If the clock is wrong, set it/)
    .first()
    .waitFor();
  expect(await page.getByText(/Enter a time from/).count()).toBe(0);
});

test('a clock that has jumped a month forward is asked about before anything is logged by it, and once', async () => {
  const nowMs = Date.now();
  await openApp();
  await startPiece(page, 'Resting box');
  const comesBackAfter = async (days: number): Promise<void> => {
    await page.clock.setSystemTime(nowMs + days * DAY_MS);
    await page.reload();
    await page.getByText(/A second copy/).waitFor(); // only then the clock is looked at
  };
  await goTo('#/more');
  await comesBackAfter(13);
  expect(await page.getByText(asked).count()).toBe(0); // a holiday is no fault
  await comesBackAfter(31);
  await page.getByText(/the last entry is from/).waitFor();
  await page.getByRole('button', { name: 'It is right now' }).tap();
  await page.getByText(asked).waitFor({ state: 'detached' });
  await comesBackAfter(32);
  expect(await page.getByText(asked).count()).toBe(0);
});

test('a phone that travels across time zones is asked nothing', async () => {
  await openApp();
  await startPiece(page, 'Travelling box');
  const devtools = await context.newCDPSession(page);
  for (const timezoneId of ['Pacific/Auckland', 'Pacific/Honolulu', 'Europe/Berlin']) {
    await devtools.send('Emulation.setTimezoneOverride', { timezoneId });
    await page.reload();
    await goTo('#/air/read');
    await page.getByRole('textbox', { name: 'Air temperature', exact: true }).fill('21');
    await page.getByRole('textbox', { name: 'Humidity', exact: true }).fill('50');
    await page.getByRole('button', { name: 'Log the reading' }).tap();
    await page.locator('.toast').getByText('Reading logged.').waitFor();
    await goTo('#/more');
    await page.getByText(/A second copy/).waitFor();
    expect(await page.getByText(asked).count()).toBe(0);
  }
});
