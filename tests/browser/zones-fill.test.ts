import { beforeEach, expect, test } from 'vitest';
import { goTo, openApp, page } from './app';
import { axeViolations, overTheSide } from './looked-at';
import { field, said } from './on-screen';

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
  await said(/^It takes 0\.57\d? mL in all/).waitFor();
  await field('Or its area').fill('0');
  await page.getByText('Give an area above 0 and up to 10,000 mm².').waitFor();
  expect(await axeViolations()).toEqual([]);
  expect(await overTheSide()).toBe(0);
});
