import { expect, test } from 'vitest';
import { base, context, newPage, openPage, page, takePhone } from '../app';
import { button } from '../on-screen';
import { keepOnPhone, manyPieces, rowsInView } from './bench-shop';

// The bench at a glance: twelve pieces, and both a reminder and the end of the day are due.
/** Noon of tomorrow: before midnight a row that says "tomorrow 00:04" takes two lines. */
const NOON_MS = new Date().setUTCHours(36, 0, 0, 0);

async function takeSized(width: number, height: number): Promise<void> {
  const viewport = { width, height };
  await takePhone({
    viewport,
    deviceScaleFactor: 1,
    isMobile: width < 900,
    hasTouch: true,
    timezoneId: 'UTC',
  });
  await context.clock.install({ time: NOON_MS });
}

/** The bench as it is found again after a cold start, with what was worked out before. */
async function openTwice(width: number, height: number): Promise<void> {
  await takeSized(width, height);
  await keepOnPhone(manyPieces(12, NOON_MS));
  await openPage();
  await page.getByText('Working it out…').last().waitFor({ state: 'detached' });
  await page.locator('.due-card').waitFor();
  await page.waitForTimeout(1_000); // kept when all is worked out
  await page.close();
  await openPage();
  await page.locator('.due-card').waitFor();
}

test.each([
  { width: 390, height: 844, rows: 7 },
  { width: 360, height: 640, rows: 4 },
  { width: 1024, height: 768, rows: 9 },
  { width: 1440, height: 900, rows: 12 },
  { width: 834, height: 1112, rows: 10 },
])('at $width x $height at least $rows rows are seen whole', async ({ width, height, rows }) => {
  await openTwice(width, height);
  await page.locator('.notice-link[data-kind="fire"]').waitFor();
  expect(await rowsInView()).toBeGreaterThanOrEqual(rows);
});

test('from a cold start the bench is right in its first frame, and stays', async () => {
  await openTwice(390, 844);
  await page.close();
  await newPage();
  await page.addInitScript(() => {
    const seen = globalThis as unknown as { shift: number; first?: string[] };
    seen.shift = 0;
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) seen.shift += (entry as unknown as { value: number }).value;
    }).observe({ type: 'layout-shift', buffered: true });
    new MutationObserver(() => {
      const rows = [...document.querySelectorAll('.piece-row')];
      if (rows.length > 0) seen.first ??= rows.map(({ textContent }) => textContent ?? '');
    }).observe(document, { childList: true, subtree: true });
  });
  await page.goto(base);
  await page.locator('.due-card').waitFor();
  await page.waitForTimeout(4_500); // every piece is worked out again
  const { shift, first, last } = await page.evaluate(() => ({
    ...(globalThis as unknown as { shift: number; first: string[] }),
    last: [...document.querySelectorAll('.piece-row')].map(({ textContent }) => textContent ?? ''),
  }));
  expect(shift).toBeLessThan(0.02);
  const words = (rows: readonly string[]) => rows.map((row) => row.replace(/[\d:]+.*$/, ''));
  expect(words(first)).toEqual(words(last));
  expect(first.join()).not.toContain('Working');
});

test('what is due within the hour comes first, then what is ready, and last what has no coat', async () => {
  await openTwice(390, 844);
  const names = await page.locator('.piece-row-name').allTextContents();
  const at = (name: string) => names.indexOf(name);
  expect(at('Jewellery box, walnut')).toBeLessThan(at('Folding music stand')); // in minutes; ready for weeks
  expect(at('Folding music stand')).toBeLessThan(at('Mantel clock case')); // in days
  expect(names.at(-1)).toBe('Candle stand, cherry');
});

test('what comes due lies over the foot, 64 px high, and not on a form', async () => {
  await openTwice(390, 844);
  const card = await page.locator('.due-card').boundingBox();
  expect(card?.height).toBeCloseTo(68, -1);
  expect((await page.locator('main').boundingBox())?.y).toBe(0);
  await page.goto(`${page.url().split('#')[0]}#/piece/new`);
  await button('Start this piece').waitFor();
  expect(await page.locator('.due-card').isVisible()).toBe(false);
});

test('back from a piece the bench is where it was', async () => {
  await openTwice(360, 640);
  await page.evaluate(() => scrollTo(0, 300));
  await page.locator('.piece-row > a:first-child').nth(6).tap();
  await page.locator('.page-back').tap();
  await page.getByRole('heading', { level: 1, name: 'Bench' }).waitFor();
  await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThan(280);
});

test('from fifteen pieces on a name is typed rather than looked for', async () => {
  await takeSized(390, 844);
  await keepOnPhone(manyPieces(15, NOON_MS));
  await openPage();
  await page.getByRole('searchbox', { name: 'Find a piece' }).fill('banjo');
  expect(await page.locator('.piece-row-name').allTextContents()).toEqual(['Banjo rim, maple']);
});

test('the end of the day is one tap from the bench', async () => {
  await openTwice(390, 844);
  await page.locator('.notice-link[data-kind="fire"]').tap();
  await page.getByRole('heading', { level: 1 }).waitFor();
  expect(page.url()).toContain('#/air/day-end');
});
