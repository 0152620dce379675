import { beforeEach, expect, test } from 'vitest';
import { killAndReopen, openApp, page } from './app';
import { button } from './on-screen';

// What is loaded late must not push away what a thumb is about to hit. Source of the bar: Core Web Vitals, cumulative layout shift, "good".
const MOST_SHIFT = 0.1;
/** Long enough for the plan, the reminders and every piece's times. */
const WHOLE_MS = 4_500;

beforeEach(async () => {
  await openApp();
  await button('Look around the demo shop').tap();
  await page.locator('.row .band-likely').first().waitFor();
  await page.waitForTimeout(WHOLE_MS);
});

const layoutShift = (): Promise<number> =>
  page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        let sum = 0;
        new PerformanceObserver((list) => {
          for (const entry of list.getEntries())
            sum += (entry as PerformanceEntry & { readonly value: number }).value;
        }).observe({ type: 'layout-shift', buffered: true });
        setTimeout(() => resolve(sum), 300);
      }),
  );

test('what was missed comes into a place kept free for it, above the pieces of the bench', async () => {
  const groupsTop = () => page.locator('.bench-groups').evaluate((box) => box.getBoundingClientRect().top);
  await killAndReopen();
  await page.locator('.row').first().waitFor();
  const before = await groupsTop();
  await page.getByText('While you were away').waitFor();
  await page.waitForTimeout(WHOLE_MS);
  expect(Math.abs((await groupsTop()) - before)).toBeLessThan(16); // a line less, where a name has come in
});

test('the page of a piece stands still while its times are worked out', async () => {
  const hash = (await page.locator('.row a').first().getAttribute('href')) ?? '';
  await killAndReopen(hash);
  await page.getByRole('heading', { name: 'When it may be touched' }).waitFor();
  await page.waitForTimeout(WHOLE_MS);
  expect(await layoutShift()).toBeLessThan(MOST_SHIFT);
});
