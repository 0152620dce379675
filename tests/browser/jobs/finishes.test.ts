import { describe, expect, test } from 'vitest';
import { goTo, openApp, page } from '../app';
import { brokenWords } from '../looked-at';
import { button, choose, field, inUsUnits, link, list, said, section, title, unfold } from '../on-screen';
import { countTaps } from './taps';

async function fillWaterborne(): Promise<void> {
  await openApp();
  await inUsUnits();
  await goTo('#/mix/jar/new', 'What is in the jar');
  await choose(/^Waterborne/);
  await button('Fill the jar').tap();
  await title('Waterborne');
}

describe('a small side table, waterborne, in US units', () => {
  test('takes 3.7 fl oz a coat, 18.3 for five, 28 to 37 with its slim legs: two quarts', async () => {
    await fillWaterborne();
    await link('How much is needed').tap();
    await title('How much to mix');
    await said('30 % solids by volume, thinned by 5 % of its volume.').waitFor();
    await field('Area').fill('8.6 sq ft');
    await field('Area').blur();
    expect(await field('Area').inputValue()).toBe('8.6');
    await choose(/^Slim legs or rails/);
    await unfold('Coats');
    await field('Coats').fill('5');
    await choose(/^Spreading rate/);
    await field('It covers, in one coat').fill('300');
    await said(/^3\.7 fl oz \(109 mL\) a coat, 18\.3 fl oz \(543 mL\) in all/).waitFor();
    await said('With slim legs or rails 28 to 37 fl oz (814 to 1,085 mL).').waitFor();
    await section('Buy').getByText('2 quarts').waitFor();
    await said(/^40 fl oz \(1,180 mL\) finish and 2 fl oz \(59 mL\) water\.$/).waitFor();
    expect(await section('Buy').getByText('thinner').count()).toBe(0);
  });

  test('is told that the night is too cold for it, and never of blush', async () => {
    await fillWaterborne();
    await goTo('#/air/read', /./);
    await field('Air temperature').fill('63');
    await field('Humidity').fill('58');
    await button('Log the reading').tap();
    await said('Too cold').waitFor();
    await said('It needs 65 °F or more and at most 70 % humidity, at the coat and overnight.').waitFor();
    expect(
      await page
        .getByRole('main')
        .getByText(/blush|turns white/i)
        .count(),
    ).toBe(0);
  });
});

test('a finish that minds no humidity is told of warmth alone, beside a dew point that is too near', async () => {
  await openApp();
  for (const finish of ['Nitrocellulose', 'Waterborne', 'Conversion']) {
    await goTo('#/mix/jar/new', 'What is in the jar');
    await choose(new RegExp(`^${finish}`));
    await button('Fill the jar').tap();
    await title(finish);
  }
  await goTo('#/air/read', /./);
  await field('Air temperature').fill('27');
  await field('Humidity').fill('78');
  await field('Piece temperature').fill('24');
  await button('Log the reading').tap();
  await said('Do not coat').waitFor();
  await said(/^Warm enough$/).waitFor();
  await unfold('With your jar'); // its tiles are the jars’ names
  expect(await brokenWords()).toEqual([]);
});

describe('an old jar of shellac', () => {
  test('is a 2 lb cut of 17.2 % and, mixed seven months ago, is tried on glass first', async () => {
    await openApp();
    await goTo('#/mix/jar/new', 'What is in the jar');
    await choose(/^Shellac/);
    await field('Cut: flakes in the alcohol').fill('2 lb');
    await field('Cut: flakes in the alcohol').blur();
    await said('17.2 % volume solids in the mix').waitFor();
    const sevenMonthsAgo = new Date(Date.now() - 213 * 86_400_000).toISOString().slice(0, 10);
    await page.getByLabel('Mixed on').fill(sevenMonthsAgo);
    await button('Fill the jar').tap();
    await title('Shellac');
    await said('Glass-plate test').waitFor();
    await said(/dry and not sticky in 15 to 30 min/).waitFor();
    await button('Dry, not sticky').tap();
    await said(/^On glass it dried hard/).waitFor();
    const taps = await countTaps();
    await link('Fill another').tap();
    await title('What is in the jar');
    expect(await field('Cut: flakes in the alcohol').inputValue()).toBe('2');
    await button('Fill the jar').tap();
    await title('Shellac');
    expect(await taps()).toBe(2);
  });
});

describe('what may be two numbers', () => {
  test('is asked, and one tap answers', async () => {
    await openApp();
    await goTo('#/mix/amount', 'How much to mix');
    await unfold('Coats');
    await field('Wet film of a coat').fill('1,000');
    await field('Wet film of a coat').blur();
    await said('Is that 1000 or 1.000? Choose one.').waitFor();
    await button('1.000').tap();
    await expect.poll(() => field('Wet film of a coat').inputValue()).toBe('1.000');
    await expect.poll(() => button('1000').count()).toBe(0);
  });

  test('and a spray can is bought as cans, with nothing to thin', async () => {
    await openApp();
    await goTo('#/mix/jar/new', 'What is in the jar');
    await choose(/^Spray can/);
    await expect.poll(() => field('How much thinner').count()).toBe(0);
    await title('What is in the can');
    await said('then add the can.').waitFor();
    await said('12 % volume solids at the nozzle').waitFor();
    expect(await page.getByRole('main').textContent()).not.toMatch(
      /\bjar is\b|fill the jar|in the mix|retarder/i,
    );
    await button('Add the can').tap();
    await title('Nitrocellulose spray can');
    await link('Another can like it').waitFor();
    await link('How much is needed').tap();
    await title('How much to mix');
    expect(await list('Jar or recipe').locator('option:checked').textContent()).toBe(
      'Nitrocellulose spray can',
    );
    await field('Area').fill('0.5');
    await section('Buy')
      .getByText(/^\d+ spray cans? of 400 mL \(13.5 fl oz\)$/)
      .waitFor();
  });
});

test('another piece like one is two taps', async () => {
  await openApp();
  await goTo('#/piece/new');
  await field('Name').fill('Chair');
  await choose(/^Sealed wood/);
  await button('Start this piece').tap();
  await title('Chair');
  const taps = await countTaps();
  await link('Another like it').tap();
  await button('Start this piece').tap();
  await title('Chair 2');
  expect(await taps()).toBe(2);
});
