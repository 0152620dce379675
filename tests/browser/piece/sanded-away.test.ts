import { expect, test } from 'vitest';
import { goTo, page } from '../app';
import { closeToast, DAY_MS, fillJar, logCoat, openAt, plan, startPiece } from '../jobs/judged-shop';
import { button, choose, field, heading, said, section } from '../on-screen';

test('a film sanded off again is gone from picture, times, message and record; the next coat begins anew', async () => {
  await openAt('2026-03-02T09:00:00+01:00');
  await fillJar(/^Nitrocellulose/, 'Gloss');
  const piece = await startPiece('Small box', /^Sealed wood/);
  await plan(piece, /^Full clear/);
  await logCoat(piece);
  await closeToast();
  await page.clock.fastForward(2 * DAY_MS);
  await goTo(`#/piece/${piece}/sand`, /sand/i);
  await choose(/^Level/);
  await field('Taken off').fill('90');
  await said('it may cut through').waitFor();
  await button('Log it').tap();
  await closeToast();
  await goTo(`#/piece/${piece}`, 'Small box');
  await page.getByRole('img', { name: /no coat yet/ }).waitFor();
  await said('Ready for a coat').waitFor();
  expect(await heading('When it may be touched').count()).toBe(0);
  await goTo(`#/piece/${piece}/record`, 'Treatment record');
  await said('1 coat was sanded off again.').waitFor();
  await said('No new material is recorded.').waitFor();
  expect(await page.getByText('Layers added').count()).toBe(0);
  await goTo(`#/plan/${piece}/owner`, 'Write to the owner');
  await choose('Progress');
  expect(await field('Message').inputValue()).toContain('0 of ');
  await logCoat(piece);
  await closeToast();
  await page.getByRole('group', { name: /1 coat,/ }).waitFor();
  await section('Finish')
    .getByRole('button', { name: /^Coat 2/ })
    .waitFor();
  expect(
    await section('Finish')
      .getByRole('button', { name: /^Coat 1/ })
      .count(),
  ).toBe(0);
});
