import { describe, expect, test } from 'vitest';
import { goTo, killAndReopen, openApp, page } from '../app';
import { MOBILE } from '../browser';
import { axeViolations, overTheSide } from '../looked-at';
import { button, heading } from '../on-screen';

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
