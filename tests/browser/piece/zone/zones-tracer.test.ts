import { expect, test } from 'vitest';
import { base, goTo, here, openApp, page } from '../../app';
import { axeViolations } from '../../looked-at';
import { button, choose, field, heading, said, unfold } from '../../on-screen';

test('a tracer in a jar is marked in the section and told in the record', async () => {
  await openApp();
  await page.goto(`${base}#/piece/new`);
  await field('Name').fill('Small case');
  await choose(/^Sealed wood/);
  await button('Start this piece').tap();
  await heading('Small case').first().waitFor();
  const piece = here();
  await goTo('#/mix/jar/new');
  await field('Name of the jar').fill('Seal coat');
  await page.getByText('How much, how long it keeps, tracer').tap();
  await field('Tracer, fluoresces under').fill('36.5');
  await button('Fill the jar').tap();
  await page.getByText('Enter a whole number of nanometres from 200 to 420, or leave it empty.').waitFor();
  await field('Tracer, fluoresces under').fill('365');
  await button('Fill the jar').tap();
  await unfold('What is in it');
  await said('seen at 365 nm').waitFor();
  await goTo('#/lay');
  await button(/^(Log it|Read and done)/)
    .first()
    .waitFor();
  const cautions = button('Read and done');
  if ((await cautions.count()) > 0) await cautions.first().tap();
  await button(/^Log it/)
    .first()
    .tap();
  await goTo(piece, 'Small case');
  await said('◆ Tracer in coat 1, seen at 365 nm.').waitFor();
  expect(await axeViolations()).toEqual([]);
  await goTo(`${piece}/record`, 'Treatment record');
  await said('Tracer in coat 1, seen at 365 nm.').waitFor();
});
