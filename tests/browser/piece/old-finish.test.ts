import { beforeEach, expect, test } from 'vitest';
import { goTo, here, openApp, page } from '../app';
import { axeViolations, overTheSide } from '../looked-at';
import { button, choose, field, link, said, section, title, unfold } from '../on-screen';

const closeToast = () => button('Close this message').tap();

async function startPiece(name: string, base: RegExp): Promise<string> {
  await goTo('#/piece/new', 'Start a piece');
  await field('Name').fill(name);
  await choose(base);
  await said('Not sure which? Start the piece, then try a drop').waitFor();
  await button('Start this piece').tap();
  await title(name);
  await closeToast();
  return here().split('/')[2] ?? '';
}

async function drop(solvent: string, reading: string, seconds?: string, isTopOnly = false): Promise<void> {
  await choose(solvent);
  if (seconds !== undefined) await field('Left for').fill(seconds);
  await choose(new RegExp(`^${reading}`));
  if (isTopOnly) await page.getByRole('checkbox', { name: /^Only the top layer/ }).tap();
  await button('Log the drop').tap();
  await closeToast();
}

beforeEach(() => openApp());

test('a clear chip in an old gloss: it re-dissolves, a nitrocellulose lacquer is likely, and no more than that', async () => {
  await startPiece('Mandolin', /^Old finish that stays hard/);
  await section('Old finish').getByText('Not tested yet').waitFor();
  await unfold('Old finish');
  await link('Test it').tap();
  await title('Old finish');
  await button('Log the drop').tap();
  await said('Choose what happened.').waitFor(); // nothing is logged by a stray tap
  await drop('Naphtha', 'Nothing');
  await drop('Alcohol', 'Dulls', '120');
  await drop('Lacquer thinner', 'Softens, then smooth', '20');
  await said('Very likely a nitrocellulose lacquer').waitFor();
  await said('Re-dissolves: a new coat melts into it.').waitFor();
  await said('Melt-in may be planned on it.').waitFor();
  expect(await page.getByText(/refinish|strip it|take it off|take the old finish off/i).count()).toBe(0);
  await said('Drops and looks never make it certain').waitFor();
  await choose('Clear');
  await choose(/^Greenish yellow/);
  await said('Not saved yet: it counts once it is saved.').waitFor();
  await button('Save').tap();
  await closeToast();
  expect(await page.getByText('Not saved yet').count()).toBe(0);
  expect(await axeViolations()).toEqual([]);
  expect(await overTheSide()).toBe(0);
  await button('Use this for the piece').tap();
  await closeToast();
  await goTo(here().replace('/old', ''), 'Mandolin');
  await section('Old finish').getByText('Very likely a nitrocellulose lacquer').waitFor();
  await unfold('What was done');
  const history = section('What was done');
  await history.getByText('Drop of lacquer thinner').waitFor();
  await history.getByText('20 s: softens, then smooth').waitFor();
  await history.getByText('Clear; under UV greenish yellow').waitFor();
});

test('any drop can be undone later, and the odds follow', async () => {
  await startPiece('Box', /^Old finish that softens/);
  await goTo(`${here()}/old`, 'Old finish');
  await drop('Naphtha', 'Nothing');
  await drop('Alcohol', 'Dissolves');
  await said('Likely shellac').waitFor();
  await button(/^Undo: Alcohol/).tap();
  await section('What it says').getByText('Not clear yet').waitFor();
});

test('the tests are one tap from Start and from Sand; a stray tap logs nothing, and every answer is undone later', async () => {
  await goTo('#/piece/new', 'Start a piece');
  await field('Name').fill('Hall clock');
  await choose(/^Old finish that softens/);
  await button('Start it, then test it').tap();
  await title('Old finish');
  await closeToast();
  const piece = here().split('/')[2] ?? '';
  await goTo(`#/piece/${piece}/sand`, /sand/i);
  await link('Say how it looks').tap();
  await title('Old finish');
  await unfold('How it looks');
  await unfold('Lead');
  for (const [act, asks] of [
    ['Log the drop', 'Choose what happened.'],
    ['Save', 'Choose clear or opaque.'],
    ['Log it', 'Choose what is known.'],
  ] as const) {
    await button(act).tap();
    await said(asks).waitFor();
  }
  const lines = () => section('What was done').locator('li').count();
  const toHistory = async (count: number): Promise<void> => {
    await goTo(`#/piece/${piece}`, 'Hall clock');
    await unfold('What was done');
    expect(await lines()).toBe(count);
  };
  await toHistory(1); // that it was started, and nothing else
  await goTo(`#/piece/${piece}/old`, 'Old finish');
  await drop('Alcohol', 'Dissolves');
  await unfold('How it looks');
  await choose('Clear');
  await button('Save').tap();
  await closeToast();
  await goTo(`#/piece/${piece}/sand`, /sand/i);
  await page.getByText('Say how it looks').waitFor({ state: 'detached' });
  await toHistory(3);
  for (const what of [/^Undo: Old finish looked at/, /^Undo: Drop of alcohol/]) {
    await button(what).tap();
    await closeToast();
  }
  expect(await lines()).toBe(1);
  await goTo(`#/piece/${piece}/sand`, /sand/i);
  await link('Say how it looks').waitFor();
});

test('an old white chair: oil paint in several layers; lead is found, and only corrected in writing', async () => {
  const piece = await startPiece('Nursery chair', /^Old finish that stays hard/);
  await goTo(`${here()}/old`, 'Old finish');
  await drop('Naphtha', 'Nothing');
  await drop('Alcohol', 'Nothing');
  await drop('Lacquer thinner', 'Wrinkles', '20', true);
  await choose('Opaque: white or a colour');
  await choose('Three or more');
  await field('Which, from the top down').fill('off-white over cream over brown');
  await field('Year the piece was made, about').fill('1935');
  await button('Save').tap();
  await closeToast();
  await said('Very likely oil paint or enamel').waitFor();
  await said('Several layers: drops only tell about the top one.').waitFor();
  await said('Melt-in is not offered on it.').waitFor();
  await choose('Tested: lead found');
  await button('Log it').tap();
  await said('Say how it was tested.').waitFor();
  await field('How it was tested').fill('Swab on each layer');
  await button('Log it').tap();
  await closeToast();
  await said('Treated as lead: wet methods only.').waitFor();
  await said(/no dry sanding; wet methods only, .* the waste collected/).waitFor();
  expect(await page.getByText('Test it, or treat it as lead').count()).toBe(0);
  await page.getByText('Correct the answer about lead').tap();
  await choose('Tested: none found');
  await field('How it was tested').fill('A second swab');
  await button('Log it').tap();
  await said('Write at least ten characters').waitFor();
  await goTo(`#/piece/${piece}/sand`, /sand/i);
  await said(/Lead in the old paint, or treated as lead: no dry sanding/).waitFor();
  await goTo(`#/piece/${piece}/record`, 'Treatment record');
  await said('Tested: lead found: Swab on each layer').waitFor();
  await said('Opaque: white or a colour; off-white over cream over brown; made about 1935').waitFor();
  await said('30 s: wrinkles, the top layer only').or(said('20 s: wrinkles, the top layer only')).waitFor();
  await goTo(`#/piece/${piece}`, 'Nursery chair');
  await unfold('Old finish');
  await section('Old finish').getByText('Lead was found.').waitFor();
  await page.getByText('Set it aside in writing').tap();
  await field('Your reason').fill('Wet only');
  await button('Log the reason').tap();
  await said(/at least 10 characters/).waitFor();
  await field('Your reason').fill('Stabilised by wet methods, the owner keeps the child away.');
  await button('Log the reason').tap();
  await goTo(`#/piece/${piece}/record`, 'Treatment record');
  const record = page.locator('article.record');
  await record.getByText('found, by Swab on each layer', { exact: true }).waitFor();
  await record
    .getByText(/: “Stabilised by wet methods, the owner keeps the child away.”$/)
    .first()
    .waitFor();
  await record
    .getByText(
      'Lead in the old finish: found, by Swab on each layer. Layers of it: off-white over cream over brown.',
    )
    .waitFor();
});
