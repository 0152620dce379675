import { expect, test } from 'vitest';
import { goTo, killAndReopen, openApp, page } from '../app';
import { button, openLine } from '../on-screen';

const HOURS = '#/plan/hours';
const time = (name: string) => page.getByLabel(name, { exact: true });

test('a day has a morning and an afternoon, which are shown again, changed and taken out', async () => {
  await openApp();
  await goTo(HOURS, 'Working hours');
  await openLine('Monday');
  await time('Monday, to').fill('12:00');
  await button(/^Add a stretch after a break ?, Monday$/).tap();
  await time('Monday (2), from').fill('11:00');
  await time('Monday (2), to').fill('18:00');
  await button('Save the week').tap();
  await page.getByText('It must begin when the stretch before it is over.').waitFor();
  await time('Monday (2), from').fill('14:00');
  await button('Save the week').tap();
  await page.getByText('Working hours saved.').waitFor();

  await killAndReopen(HOURS);
  expect(await time('Monday, to').inputValue()).toBe('12:00');
  expect(await time('Monday (2), from').inputValue()).toBe('14:00');
  await openLine('Monday');
  await button(/^Remove this stretch ?, Monday \(2\)$/).tap();
  await button('Save the week').tap();
  await page.getByText('Working hours saved.').waitFor();
  await killAndReopen(HOURS);
  expect(await time('Monday (2), from').count()).toBe(0);
});
