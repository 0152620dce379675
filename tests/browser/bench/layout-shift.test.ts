import { beforeEach, expect, test } from 'vitest';
import { killAndReopen, openApp, page } from '../app';
import { button } from '../on-screen';

// What is loaded late must not push away what a thumb is about to hit.
const LESS_THAN_A_LINE = 16;
/** Long enough for the plan, the reminders and every piece's times. */
const WHOLE_MS = 4_500;

beforeEach(async () => {
  await openApp();
  await button('Look around the demo shop').tap();
  await page.locator('.piece-row .wait-bar').first().waitFor();
  await page.waitForTimeout(WHOLE_MS);
});

test('the time that is waited for comes into a place kept free for it, above the finish of a piece', async () => {
  const hash =
    (await page.locator('.piece-row a', { hasText: 'level-sand' }).first().getAttribute('href')) ?? '';
  // From the title down: a reminder that comes due above it is another thing.
  const finishBelowTitle = () =>
    page.evaluate(() => {
      const top = (heading: Element | null | undefined) => heading?.getBoundingClientRect().top ?? Number.NaN;
      return top(document.querySelector('main h2')) - top(document.querySelector('main h1'));
    });
  await killAndReopen(hash);
  await page.getByRole('heading', { name: 'Its finish' }).waitFor();
  const before = await finishBelowTitle();
  await page.getByRole('heading', { name: 'When it may be touched' }).waitFor();
  await page.waitForTimeout(WHOLE_MS);
  expect(Math.abs((await finishBelowTitle()) - before)).toBeLessThan(LESS_THAN_A_LINE);
});
