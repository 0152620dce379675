import { beforeEach, expect, test } from 'vitest';
import { goTo, openApp, page } from '../../app';
import { axeViolations, overTheSide } from '../../looked-at';
import { field, inUsUnits, said } from '../../on-screen';

beforeEach(async () => {
  await openApp();
  await goTo('#/mix/fill', 'Drop fill of a chip');
});

test('a chip is said by length, width and depth, or by its area', async () => {
  await field('Length').fill('14');
  await field('Width').fill('6');
  await field('Depth').fill('0.18');
  await field('Volume solids of the fill').fill('25');
  await said('8 applications').waitFor();
  // By hand: 14 x 6 x 0.18 = 15.12 mm3, of which 95 % filled at 25 % solids is 57.5 mm3.
  await said(/^It takes 0\.057 mL in all/)
    .or(said(/^It takes 0\.058 mL in all/))
    .first()
    .waitFor();
  await field('Or its area').fill('840'); // outranks the sides: ten times as much
  await said(/^It takes 0\.5[78] mL in all/).waitFor();
  await field('Or its area').fill('0');
  await field('Or its area').press('Tab');
  await page.getByText(/0\.1 to 10[,.  ]?000[,.  ]?000 mm²/).waitFor(); // the range that it takes
  expect(await axeViolations()).toEqual([]);
  expect(await overTheSide()).toBe(0);
});

test('a chip is said in inches too', async () => {
  await inUsUnits();
  await goTo('#/mix/fill', 'Drop fill of a chip');
  const inch = page.getByRole('radiogroup', { name: 'Length' }).getByRole('radio', { checked: true });
  expect(await inch.getAttribute('aria-label')).toMatch(/in/);
  await field('Length').fill('9/16');
  await field('Width').fill('0.24');
  await field('Depth').fill('0.007');
  await field('Volume solids of the fill').fill('25');
  await said('8 applications').waitFor();
  // By hand: 0.5625 x 0.24 x 0.007 in3 is 15.49 mm3 (25.4 mm an inch), of which 95 % at 25 % solids is 58.8 mm3.
  await said(/^It takes 0\.002 fl oz \(0\.059 mL\) in all/).waitFor();
  await goTo('#/mix/cup', 'Flow cup');
  expect(await field('Amount of the second').inputValue()).toBe('4');
});
