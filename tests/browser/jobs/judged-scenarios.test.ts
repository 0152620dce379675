import { expect, test } from 'vitest';
import { goTo } from '../app';
import { overTheSide } from '../looked-at';
import { button, choose, field, inUsUnits, openLine, said, section } from '../on-screen';
import {
  closeToast,
  DAY_MS,
  fillJar,
  leadFound,
  logCoat,
  logIt,
  openAt,
  pass,
  plan,
  readAir,
  startPiece,
  tellsNoneOf,
  toCoat,
} from './judged-shop';

test('an old nursery chair with lead: nothing is sanded dry, promised or sprayed straight on', async () => {
  await openAt('2026-03-02T09:00:00+01:00');
  const piece = await startPiece('Nursery chair', /^Old finish that stays hard/);
  await goTo(`#/piece/${piece}/old`, 'Old finish');
  for (const [solvent, reading] of [
    ['Naphtha', 'Nothing'],
    ['Alcohol', 'Nothing'],
    ['Lacquer thinner', 'Wrinkles'],
  ] as const) {
    await choose(solvent);
    await choose(new RegExp(`^${reading}`));
    await button('Log the drop').tap();
    await closeToast();
  }
  await choose('Opaque: white or a colour');
  await choose('Three or more');
  await field('Which, from the top down').fill('off-white over cream over brown');
  await button('Save').tap();
  await closeToast();
  await leadFound();
  await fillJar(/^Nitrocellulose/, 'White');
  await toCoat(piece);
  await said('Held: coat').waitFor();
  await said('Lacquer lifts this old finish. First a barrier coat of dewaxed shellac').waitFor();
  await openLine('How');
  await choose(/^Flash/);
  await said('Held: flash coat').waitFor();
  await said('Melt-in is held').waitFor();
  await plan(piece, /^Full clear/);
  await said('No date to promise while something is held').waitFor();
  await section('Steps')
    .getByText(/^Held: /)
    .first()
    .waitFor();
  await goTo(`#/piece/${piece}/sand`, /sand/i);
  await said('Held: scuffing').waitFor();
  await said(
    'no dry sanding; wet methods only, children and pregnant women kept out, the waste collected.',
  ).waitFor();
  await said(
    'Stabilise it and tell the owner in writing, or decline and refer: removal is work for licensed people.',
  ).waitFor();
  await field('Why all the same?').fill('No.');
  await button('Log it').tap();
  await said('Write at least 10 characters, or nothing.').waitFor();
  await field('Why all the same?').fill('Wet scuff only; stabilised, and the owner told in writing.');
  await button('Log it').tap();
  await closeToast();
  await goTo(`#/piece/${piece}/record`, 'Treatment record');
  await said('found: Swab on each layer').or(said('found, by Swab on each layer')).first().waitFor();
  await said('off-white over cream over brown').waitFor();
  await section('Holds set aside, with the reason').getByText('the owner told in writing').waitFor();
  expect(await overTheSide()).toBe(0);
});

test('a waterborne table in US units: a cold, damp night, a scuff between days, and no word of lacquer', async () => {
  await openAt('2026-03-02T09:00:00+01:00');
  await inUsUnits();
  await fillJar(/^Waterborne/, 'Satin');
  await goTo('#/air/forecast');
  await field('By day').fill('66');
  await field('By night').fill('59');
  await button('Set the forecast').tap();
  await closeToast();
  await readAir('66', '58');
  const piece = await startPiece('Side table', /^Sealed wood/);
  await plan(piece, /^Waterborne/);
  const names = (await section('Steps').locator('.plan-step-name').allTextContents()).map((name) =>
    name.replace(/^.*: /, ''),
  );
  expect(names.filter((name) => name === 'Coat')).toHaveLength(5);
  const scuff = names.indexOf('Scuff');
  expect(names.slice(0, scuff).filter((name) => name === 'Coat')).toHaveLength(3);
  expect(names.join()).not.toMatch(/flash|blush|melt/i);
  await toCoat(piece);
  await said('The night gets down to 59 °F; this finish needs 64 °F')
    .or(said('this finish needs 65 °F'))
    .first()
    .waitFor();
  await said(/^.*overnight this air comes to 74 %; this finish needs 70 %/).waitFor();
  await tellsNoneOf(/blush|turns? white|retarder|melts? in|slower thinner/i);
  await logCoat(piece);
  await closeToast();
  await pass(1);
  await readAir('66', '58');
  await toCoat(piece);
  await said('scuff the coat of an earlier day before the next one').waitFor();
  await logCoat(piece);
  await closeToast();
  await tellsNoneOf(/blush|turns? white|retarder|melts? in|slower thinner/i);
  await goTo(`#/piece/${piece}/sand`, /sand/i);
  await choose(/^Level/);
  await said('cut through the top one and a witness line shows. Put two more on in one day').waitFor();
});

test('a clear chip, its last drop on a Thursday: levelling waits, the sink check comes a week after it', async () => {
  await openAt('2026-03-02T09:00:00+01:00');
  await readAir('21', '48');
  await fillJar(/^Nitrocellulose/, 'Gloss');
  const piece = await startPiece('Mandolin', /^Old finish that softens/);
  await plan(piece, /^Clear drop fill/);
  const drops = section('Steps').locator('.plan-step', { hasText: 'Drop fill' });
  expect(await drops.count()).toBe(8);
  expect(await drops.nth(0).textContent()).toContain('today');
  expect(await drops.nth(7).textContent()).toContain('Thu 5 Mar'); // two a day, four hours apart, in a nine-to-five
  await pass(3);
  await toCoat(piece);
  await openLine('How');
  await choose(/^Brush fill/);
  await logIt();
  await closeToast();
  await said('Level-sand from').waitFor({ timeout: 30_000 });
  // No earlier than the 12th, usually the 19th to 26th, a deep one in April.
  await said(/^Level-sand from (19|2[0-6]) Mar \(1[2-9] Mar–\d+ Apr\)/).waitFor();
  await pass(1);
  await goTo(`#/piece/${piece}/sand`, /sand/i);
  await choose(/^Level/);
  await said(/^Wait about/).waitFor();
  await said('The film is still soft for it').waitFor();
  await goTo(`#/plan/${piece}`);
  const steps = await section('Steps').locator('.plan-step').allTextContents();
  const at = (what: string): number => steps.findIndex((text) => text.includes(what));
  const between = steps.slice(at('Level-sand') + 1, at('no more sinking')).join(' ');
  const [, from = '', to = ''] = /Rest(\d+ [A-Z][a-z]+) – (\d+ [A-Z][a-z]+)/.exec(between) ?? [];
  expect((Date.parse(`${to} 2026`) - Date.parse(`${from} 2026`)) / DAY_MS).toBe(7);
  await goTo(`#/piece/${piece}/record`, 'Treatment record');
  await said(/^The finish (is hard by|is most likely hard by|may stay soft)/).waitFor();
  await tellsNoneOf(/fully hardened/i); // it goes on sinking
});
