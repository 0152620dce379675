import { expect, test } from 'vitest';
import { goTo, here, newPage, page, takePhone } from '../app';
import { MOBILE } from '../browser';
import { button, choose, field, said, section, title, unfoldAll } from '../on-screen';

/** Monday 2 March 2026, nine o'clock in the shop. */
const NINE = new Date('2026-03-02T09:00:00+01:00').getTime();
const closeToast = () => button('Close this message').tap();

// Common practice, no source: a cut keeps six months; one session a day or two; no spray and no isocyanate at a pad.
test('an instrument top by pad, from an old jar of a 2 lb cut', async () => {
  await takePhone({ ...MOBILE, timezoneId: 'Europe/Berlin' });
  await newPage();
  await page.clock.install({ time: NINE });
  await goTo('#/mix/jar/new', 'What is in the jar');
  await choose(/^Shellac/);
  await field('Cut: flakes in the alcohol').fill('2 lb');
  await field('Cut: flakes in the alcohol').blur();
  await page.getByLabel('Mixed on').fill('2025-08-02');
  await button('Fill the jar').tap();
  await title('Shellac');
  const jar = here().split('/').at(-1) ?? '';
  await closeToast();
  await said('Glass-plate test').waitFor();
  await said(/dry and not sticky in 15 to 30 min/).waitFor();

  await goTo('#/piece/new', 'Start a piece');
  await field('Name').fill('Instrument top');
  await choose(/^Sealed wood/);
  await button('Start this piece').tap();
  await title('Instrument top');
  const piece = here().split('/')[2] ?? '';
  await closeToast();

  await goTo(`#/plan/${piece}`);
  await choose(/^Shellac by pad/);
  await button('Make the plan').tap();
  await page.getByRole('heading', { name: 'Steps' }).waitFor();
  await closeToast();
  const steps = section('Steps');
  expect(await steps.locator('.plan-step strong', { hasText: 'Pad session' }).count()).toBe(7); // six to eight
  await steps.locator('.plan-step strong', { hasText: 'Spirit off' }).waitFor({ state: 'attached' }); // folded after five
  await steps
    .getByText(/^2 weeks \(7 days–4 weeks\)|^14 days \(7 days–28 days\)|14 days/)
    .first()
    .waitFor({ state: 'attached' });

  await goTo(`#/lay?piece=${piece}&jar=${jar}`);
  const cautions = button('Read and done');
  const log = button('Log it').first();
  await cautions.or(log).first().waitFor();
  if ((await cautions.count()) > 0) await cautions.tap();
  const oil = page.getByRole('group', { name: 'Oil on the pad' });
  await oil.getByRole('radio', { name: /^Yes/ }).tap();
  await said(/^Spirit it off 1 to 2 days after the last session; then it rests 7 to 28 days/).waitFor();
  await said(/rags/i).waitFor();
  expect(await page.getByRole('main').textContent()).not.toMatch(/isocyan|overspray|the gun|respirator/i);
  await log.tap();
  await title('Instrument top');

  // Said once: with this jar it is known from then on.
  await goTo(`#/lay?piece=${piece}&jar=${jar}`);
  await button('Read and done').tap(); // the rags of an oiled pad
  await log.waitFor();
  expect(await oil.getByRole('radio', { name: /^Yes/ }).isChecked()).toBe(true);

  await goTo(`#/mix/amount?jar=${jar}`, 'How much to mix');
  await said('0 mL').or(field('Area')).first().waitFor();
  expect(await field('Stays in the gun at each filling').count()).toBe(0);
  await unfoldAll();
  expect(await page.getByRole('radio', { name: /^By brush or pad/ }).isChecked()).toBe(true);
});
