import { expect, test } from 'vitest';
import { goTo, here, openApp, page } from '../app';
import { MOBILE } from '../browser';
import { countTaps } from '../jobs/taps';
import { axeViolations, isFree, overTheSide } from '../looked-at';
import { button, field, link, said, section, title, unfold } from '../on-screen';

// Every colour: the worked scenario of the radio cabinet (aged white lacquer, edge chips).
type Lab = readonly [L: string, a: string, b: string];

/** A field is touched before it is typed in. */
async function type(name: string, text: string): Promise<void> {
  await field(name).tap();
  await field(name).fill(text);
}
const pick = (name: RegExp): Promise<void> => page.getByRole('radio', { name }).tap();
const tick = (name: RegExp): Promise<void> => page.getByRole('checkbox', { name }).tap();
const says = (text: string | RegExp): Promise<void> => said(text).waitFor();

async function readThrice(lab: Lab): Promise<void> {
  for (const number of [1, 2, 3]) {
    if (number > 1) await button('Another reading').tap();
    const row = page.getByRole('group', { name: `Reading ${number}`, exact: true });
    for (const [k, part] of ['L*', 'a*', 'b*'].entries()) {
      const box = row.getByRole('textbox', { name: part, exact: true });
      await box.tap();
      await box.fill(lab[k] ?? '');
    }
  }
  await button('Log the reading').tap();
  await title('Radio cabinet');
}

async function mix(amounts: Readonly<Record<string, string>>): Promise<void> {
  for (const [name, grams] of Object.entries(amounts)) await type(`${name}, g`, grams);
  await button('Log this trial').tap();
}

/** From an empty shop to an accepted trial: the third one of the scenario, bare. */
async function acceptThirdTrial(): Promise<void> {
  await link('Start a match').tap();
  await type('Name', 'Radio cabinet');
  await pick(/^Edge/);
  for (const name of [/^Ochre/, /^Raw umber/, /^Red oxide/]) await tick(name);
  await button('Start the match').tap();
  await link('Read the target').tap();
  await readThrice(['86.5', '-0.6', '14.8']);
  await link('Weigh in the base').tap();
  await mix({ 'White lacquer': '200' });
  await link('Read the base').tap();
  await readThrice(['95.5', '-0.8', '2.2']);
  await link('I added something else').tap();
  await mix({ Ochre: '2.6', 'Raw umber': '0.5' });
  await link('Read the trial').tap();
  await readThrice(['88.9', '-1.1', '12.1']);
  await link('I added something else').tap();
  await mix({ Ochre: '1.1', 'Raw umber': '0.2' });
  await link('Read the trial').tap();
  await readThrice(['86.7', '-0.5', '14.4']);
  await says('Within tolerance');
}

test('from an empty shop to the first coat of the accepted trial, by touch', async () => {
  await openApp(MOBILE, '#/match');
  const taps = await countTaps();
  await acceptThirdTrial();
  const before = await taps();

  await button('Accept this trial').tap();
  await title('The jar of trial 3');
  await page.locator('.toast').waitFor();
  expect(await isFree(button('Save the jar'))).toBe(true);
  expect(await axeViolations()).toEqual([]);
  expect(await overTheSide()).toBe(0);
  await button('Save the jar').tap();
  await title('Radio cabinet');
  await says(/177 mL/); // 200 g of white at 1.15 g/mL and 4.4 g of tinter at 1.5
  const jar = here();
  await link('Log a coat').tap();
  await button('Read and done').tap();
  await button('Log it').first().tap();
  await title('Radio cabinet');
  await says(/Coat 1/);
  const toCoat = (await taps()) - before;
  console.log(`taps: ${before} to the accepted trial, ${toCoat} from there to the first coat`);
  expect(before).toBeLessThanOrEqual(70);
  expect(toCoat).toBeLessThanOrEqual(5);

  const piece = here();
  await fromCoat(jar, piece);
  await fromMatch();
  await inItsColour(piece);
});

/** What a match read of a jar is the colour of its coat: on the bench's face, and beside its name in the record. */
async function inItsColour(piece: string): Promise<void> {
  await goTo('#/bench');
  const tint = () =>
    page
      .locator('.film-face .film-coat')
      .last() // over the old finish
      .evaluate((coat) => getComputedStyle(coat).getPropertyValue('--tint').trim());
  await expect.poll(tint).toMatch(/^#[0-9a-f]{6}$/);
  const onBench = await tint();
  await goTo(`${piece}/record`, 'Treatment record');
  expect(await page.locator('.record-tint rect').first().getAttribute('fill')).toBe(onBench);
}

/** The row of the coat opens its jar, its recipe and its match. */
async function fromCoat(jar: string, piece: string): Promise<void> {
  const row = page.locator('.history li', { hasText: 'Coat 1' });
  await unfold('What was done');
  expect(await row.locator('.history-links').ariaSnapshot()).toContain('/url: "#/mix/jar/');
  await row.getByRole('link', { name: /^Jar: / }).tap();
  await title('Radio cabinet');
  expect(here()).toBe(jar);
  await unfold('Its exact recipe');
  await says(/^Usual values \(common practice\) are assumed for White lacquer, /);
  await unfold('Coats from it');
  await section('Coats from it').getByRole('link').first().tap(); // the jar opens the piece again
  await expect.poll(here).toBe(piece);
  await unfold('What was done');
  await row.getByRole('link', { name: /^Recipe: / }).tap();
  await unfold('Pieces it was used on');
  await section('Pieces it was used on')
    .getByRole('link', { name: /^Radio cabinet/ })
    .tap();
  await expect.poll(here).toBe(piece);
  await unfold('What was done');
  await row.getByRole('link', { name: /^Match: / }).tap();
  await said('What came of it').waitFor();
}

/** The match opens its recipe, its jar, its piece, and its trials with their readings; and each of them opens the match. */
async function fromMatch(): Promise<void> {
  const match = here();
  for (const [way, back] of [
    [/^Recipe: Radio cabinet/, 'The match it came from'],
    [/^Jar: Radio cabinet/, 'Its exact recipe'],
    [/^1 coat on Radio cabinet/, 'Its colour matches'],
  ] as const) {
    await link(way).tap();
    await unfold(back);
    await section(back)
      .getByRole('link', { name: /Radio cabinet/ })
      .last()
      .tap();
    await expect.poll(here).toBe(match);
  }
  await link(/^Trial 3/)
    .first()
    .tap();
  await title('Trial 3');
  await said('L*a*b* 86.7 / -0.5 / 14.4').waitFor();
  await page.getByRole('link', { name: 'Radio cabinet' }).first().tap();
  await expect.poll(here).toBe(match);
}
