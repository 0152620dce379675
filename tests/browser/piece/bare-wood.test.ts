import { test } from 'vitest';
import { goTo, here, openApp, page } from '../app';
import { button, choose, field, title } from '../on-screen';

test('bare wood with open pores starts with filler and its days', async () => {
  await openApp();
  await goTo('#/piece/new');
  await field('Name').fill('Oak tray');
  await choose(/^Bare wood/);
  await button('Start this piece').tap();
  await title('Oak tray');
  await goTo(`#/plan/${here().split('/')[2]}`);
  await choose(/^Open/);
  await choose(/^Thin clear|^Full clear/);
  await button('Make the plan').tap();
  await page.getByText('Plan made.').waitFor();
  const dries = page.getByRole('listitem').filter({ hasText: 'Pore filler dries' });
  await dries.getByText('2 days (24 h–3 days), usual; the sheet governs').waitFor();
  await page.getByText('Grain sealer').first().waitFor();
});
