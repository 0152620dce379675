import { describe, expect, test } from 'vitest';
import { goTo, openApp, page } from '../app';
import { MOBILE } from '../browser';
import { axeViolations, overTheSide } from '../looked-at';
import { readAir } from './air-steps';

const PAGES = [
  'air',
  'air/read',
  'air/readings',
  'air/forecast',
  'air/room',
  'air/room-form',
  'air/ended',
  'air/filters',
  'air/filter-form',
  'air/cautions',
  'air/day-end',
  'air/old',
  'air/finishes',
  'air/finish/conversion',
  'air/finish/shellac',
] as const;

describe.each([
  { name: 'light', options: { ...MOBILE, colorScheme: 'light' } as const },
  { name: 'dark', options: { ...MOBILE, colorScheme: 'dark' } as const },
  { name: 'small', options: { ...MOBILE, viewport: { width: 360, height: 640 } } },
])('$name', ({ options }) => {
  test('no axe violation, nothing off the side, every target at least 44 px high', async () => {
    await openApp(options);
    await readAir('21', '47');
    for (const place of PAGES) {
      await goTo(`#/${place}`);
      expect(await axeViolations(), place).toEqual([]);
      expect(await overTheSide()).toBe(0);
      const low = await page.evaluate(() =>
        [...document.querySelectorAll('main :is(button, a.button, .row > a, summary, label.tile)')]
          .filter((one) => one.getBoundingClientRect().height > 0 && one.getBoundingClientRect().height < 44)
          .map((one) => one.textContent),
      );
      expect(low).toEqual([]);
    }
  });
});
