import { expect, test } from 'vitest';
import { goTo, here, newPage, page, takePhone } from '../app';
import { MOBILE } from '../browser';
import { axeViolations, overTheSide } from '../looked-at';
import { button, choose, field, heading, link, said, section, title } from '../on-screen';

/** Monday 2 March 2026, nine o'clock in the shop. */
const NINE = new Date('2026-03-02T09:00:00+01:00').getTime();

// Common practice, no source: pore filler waits 24 to 72 h by its sheet; binding scraps an hour or so, several applications, then level.
test('pore filler and filler paste wait by themselves: on the piece, the bench, the plan, in the section and the record', async () => {
  await takePhone({ ...MOBILE, timezoneId: 'Europe/Berlin' });
  await newPage();
  await page.clock.install({ time: NINE });
  await goTo('#/mix/jar/new', 'What is in the jar');
  await choose(/^Nitrocellulose/);
  await button('Fill the jar').tap();
  await link('Log a coat from it').waitFor();
  await goTo('#/piece/new', 'Start a piece');
  await field('Name').fill('Ash box');
  await choose(/^Bare wood/);
  await button('Start this piece').tap();
  await title('Ash box');
  const piece = here();
  const id = piece.split('/')[2] ?? '';

  await goTo(`#/plan/${id}`);
  await choose(/^Full clear/);
  await choose(/^Open/);
  await button('Make the plan').tap();
  await heading('Steps').waitFor();

  await goTo(piece, 'Ash box');
  await link('Filler, sealer or glue').tap();
  await title('Filler, sealer or glue');
  await choose(/^Pore filler/);
  await said(/^Rags with oil filler heat up by themselves/).waitFor();
  await page.getByRole('checkbox', { name: /^Tinted/ }).tap();
  await field('Product').fill('Walnut');
  await field('Waits, by its sheet').fill('72 h');
  expect(await axeViolations()).toEqual([]);
  expect(await overTheSide()).toBe(0);
  await button('Log it').tap();
  await title('Ash box');
  await page.getByText('Pore filler, tinted: Walnut logged. It waits until about Thu 5 Mar 09:00.').waitFor();
  await button('Close this message').tap();
  await said('Wait about 3 days').waitFor();
  await said(/^Caution\. The pore filler is drying.*From the data sheet\.$/).waitFor();
  await said('In and on the wood: Pore filler, tinted: Walnut.').waitFor();
  expect(await page.locator('.film-grounds [data-ground="pore-filler"][data-tinted]').count()).toBe(1);

  await goTo('#/bench');
  await page.getByText(/^Wait: coat 1 Thu 5 Mar/).waitFor();
  await goTo(`#/lay?piece=${id}`);
  await button('Read and done').tap();
  await said(/^Caution\. The pore filler is drying/).waitFor();
  await goTo(`${piece}/sand`);
  await said(/^Caution\. The pore filler is drying/).waitFor();
  await goTo(`#/plan/${id}`);
  await section('Steps').getByText('Pore filler dries').first().waitFor();
  await section('Steps')
    .getByText(/Thu 5 Mar/)
    .first()
    .waitFor();

  await goTo(`${piece}/ground`, 'Filler, sealer or glue');
  await choose(/^Filler paste/);
  await said(/^Acetone catches fire from a spark/).waitFor();
  await field('Waits, by its sheet').fill('');
  await button('Log it').tap();
  await title('Ash box');
  await goTo(`${piece}/record`);
  await said(/Pore filler, tinted: Walnut, waits 72 h by its sheet\./).waitFor();
  await said(/Filler paste, tinted: Walnut, the usual wait\./).waitFor();
});
