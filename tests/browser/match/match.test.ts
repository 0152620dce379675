import { describe, expect, test } from 'vitest';
import { base, killAndReopen, openApp, page } from '../app';
import { MOBILE } from '../browser';
import { axeViolations } from '../looked-at';
import { button, choose, field, link, title, unfold } from '../on-screen';
import { logReadings, mix, says, startMatch, thrice, tick, typeReadings } from './match-steps';

test('the radio cabinet: from three readings of the target to the new aim under clear', async () => {
  // Every colour and figure: the worked scenario of the radio cabinet (aged white lacquer, edge chips).
  await openApp(MOBILE, '#/match');
  await link('Start a match').tap();
  const address = await startMatch({
    tinters: ['Ochre', 'Raw umber', 'Black', 'Red oxide'],
    isThroughClear: true,
  });

  await link('Read the target').tap();
  await typeReadings([
    ['86.4', '-0.6', '14.9'],
    ['86,6', '-0.5', '14.8'],
    ['86.5', '−0.7', '14.7'],
  ]);
  await says('Mean 86.5 / −0.6 / 14.8');
  await button('Log the reading').tap();
  await title('Radio cabinet');

  await link('Weigh in the base').tap();
  await mix({ 'White lacquer': '200' });
  await link('Read the base').tap();
  await logReadings(thrice(['95.5', '-0.8', '2.2']));
  await says(/ΔE00\s*10\.75/);
  await says('Add, and stir in');

  await link('I added something else').tap();
  await mix({ Ochre: '2.6', 'Raw umber': '0.5' });
  await link('Read the trial').tap();
  await logReadings(thrice(['88.9', '-1.1', '12.1']));
  await says(/ΔE00\s*2\.40/);
  await says('Clearly too blue, clearly too light.');

  await link('I added something else').tap();
  await mix({ Ochre: '1.1', 'Red oxide': '0.15', 'Raw umber': '0.2' });
  await link('Read the trial').tap();
  await logReadings(thrice(['86.1', '0.3', '15.9']));
  await says(/ΔE00\s*1\.32/);
  await says(/too red, .* too yellow/i);

  await link('I added something else').tap();
  await mix({ 'White lacquer': '12' });
  await link('Read the trial').tap();
  await logReadings(thrice(['86.7', '-0.5', '14.4']));
  await says(/ΔE00\s*0\.30/);
  await says('Within tolerance');
  await says(/read through clear and this trial bare/);
  await says(/^Bare it is within the tolerance: .* that decides\.$/);

  await link('Read trial 4 again').tap();
  await choose(/^Under clear/);
  await field('Coats of clear').fill('4');
  await logReadings(thrice(['86.1', '-0.6', '16.6']));
  await says(/ΔE00\s*1\.09/);
  await says('Not yet');

  await unfold('More tools');
  await link(/^Clear shift/).tap();
  await says('−0.6 / −0.1 / +2.2');
  await says('87.1 / −0.5 / 12.6');
  expect(await axeViolations()).toEqual([]);
  await page.goto(`${base}${address}`);
  await says('Add, and stir in');

  // Killed and reopened: the same.
  await killAndReopen(address);
  await says(/ΔE00\s*1\.09/);

  // Weighing on a scale of 0.01 g.
  await link('I added something else').tap();
  for (const [grams, said] of [
    ['0.135', /division of the scale is 3\.7 % of this/],
    ['0.105', /division of the scale is 4\.8 % of this/],
    ['0.03', /division of the scale is 17 % of this.*Surer: 0\.30 g of its 10 % let-down/],
    ['0.003', /Not weighable.*Surer: .* let-down/],
  ] as const) {
    await field('Ochre, g').fill(grams);
    await says(said);
  }

  // The third trial becomes a recipe with one tap.
  await page.goto(`${base}${address}`);
  await link(/^Trial 4/)
    .last()
    .tap();
  await button('Accept this trial').tap();
  await title('The jar of trial 4');
  await link('Weigh up more by the recipe').tap();
  await title('Radio cabinet');
  await says(/From the match/);
});

describe('bad input', () => {
  test('L* over 100 stays as typed, with the range beside it; a reading under another light is kept and not compared', async () => {
    await openApp(MOBILE, '#/match');
    const address = await startMatch({ tinters: ['Ochre'] });
    await page.goto(`${base}${address}/read/target`);
    await typeReadings([['104', '0', '2']]);
    await button('Log the reading').tap();
    await says('Enter a value from 0 to 100.');
    expect(await field('L*').inputValue()).toBe('104');
    await field('L*').fill('90');
    await page.getByRole('combobox', { name: /^Light and observer/ }).selectOption('D50/2');
    await button('Log the reading').tap();
    await title('Radio cabinet');
    await says('Read the target first.');
    await link(/^Target/).tap();
    await says(/1 under another light left out/);
  });

  test('a wet reading is kept and never passes', async () => {
    await openApp(MOBILE, '#/match');
    const address = await startMatch({ tinters: ['Ochre'] });
    await page.goto(`${base}${address}/read/target`);
    await logReadings(thrice(['90', '0', '5']));
    await link('Weigh in the base').tap();
    await mix({ 'White lacquer': '100' });
    await link('Read the base').tap();
    await choose(/^Wet/);
    await logReadings(thrice(['90', '0', '5']));
    await says('Wet: no verdict');
    await says('Draw down the untinted base, let it dry, and read it.');
  });

  test('a malformed file is named by its line; a good one gives its readings', async () => {
    await openApp(MOBILE, '#/match');
    const address = await startMatch({ tinters: ['Ochre'] });
    await page.goto(`${base}${address}/read/target`);
    await choose(/^A file/);
    const file = (text: string) => ({
      name: 'readings.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from(text),
    });
    const input = page.getByLabel('CSV or CGATS file from the instrument');
    await input.setInputFiles(file('name,L*,a*,b*\nlid,86.5,-0.6,14.8\nside,86.4,oops,14.7\n'));
    await says('Line 3: “oops” is no number.');
    await input.setInputFiles(file('name,L*,a*,b*\nlid,86.5,-0.6,14.8\nside,86.4,-0.6,14.7\n'));
    await tick(/^lid/);
    await tick(/^side/);
    await button('Log the reading').tap();
    await title('Radio cabinet');
    await link(/^Target/).tap();
    await says('Mean of 2 readings');
  });
});
