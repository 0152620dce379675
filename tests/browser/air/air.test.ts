import { beforeEach, describe, expect, test } from 'vitest';
import { openApp, page } from '../app';
import { button, choose, field, unfold } from '../on-screen';
import { closeToast, go, main, readAir } from './air-steps';

async function startPiece(name: string): Promise<void> {
  await go('piece/new', 'Start a piece');
  await field('Name').fill(name);
  await choose(/^Sealed wood/);
  await button('Start this piece').tap();
  await page.getByRole('heading', { name }).first().waitFor();
}

async function fillJar(name: string, finish: RegExp): Promise<void> {
  await go('mix/jar/new', 'What is in the jar');
  await choose(finish);
  // The name that goes with the finish is drawn before another is typed over it.
  await expect.poll(() => field('Name of the jar').inputValue()).toMatch(finish);
  await field('Name of the jar').fill(name);
  await button('Fill the jar').tap();
  await page.getByRole('heading', { name }).first().waitFor();
}

describe('the air', () => {
  beforeEach(() => openApp());

  test('a humid afternoon: margin 1.2 °C, do not spray, and what would help', async () => {
    await readAir('27', '78', '24');
    expect(await page.locator('.margin-value').textContent()).toBe('1.2 °C');
    await page.getByText('Do not coat').waitFor();
    await page
      .getByText('Let the piece warm to the room: 4.2 °C above the dew point. Still: blush likely.')
      .waitFor();
    await page.reload();
    await page.getByText('Do not coat').waitFor();
  });

  test('a forecast adds its drier day', async () => {
    await readAir('27', '78', '24');
    await go('air/forecast', 'Forecast');
    await field('By day').fill('27');
    await field('By night').fill('16');
    await field('Humidity by day').fill('60');
    await button('Set the forecast').tap();
    await page.getByText('By day, from 07:00, the forecast gives 8.4 °C above the dew point.').waitFor();
  });

  test('Fahrenheit is kept as typed, and undo takes the reading back', async () => {
    await go('air/read', 'Take a reading');
    await page.getByRole('radiogroup', { name: 'Air temperature' }).getByRole('radio', { name: '°F' }).tap();
    await field('Air temperature').fill('70');
    await field('Humidity').fill('50');
    await button('Log the reading').tap();
    await page.getByText('21.1 °C').first().waitFor();
    await button('Undo').tap();
    await page.getByText('No reading yet').waitFor();
  });

  test.each([
    { why: 'humidity of 140 %', by: '% RH', label: 'Humidity', value: '140', says: '1 to 100 %' },
    {
      why: 'a dew point above the air',
      by: 'Dew point',
      label: 'Dew point',
      value: '25',
      says: 'can’t be above',
    },
    {
      why: 'a wet bulb above the dry one',
      by: 'Wet bulb',
      label: 'Wet bulb',
      value: '25',
      says: 'can’t read above',
    },
  ])('$why is caught at the field, and what was typed stays', async ({ by, label, value, says }) => {
    await go('air/read', 'Take a reading');
    await field('Air temperature').fill('20');
    await choose(by);
    await field(label).fill(value);
    await button('Log the reading').tap();
    await page.locator('.field .problem', { hasText: says }).waitFor();
    expect(await field(label).inputValue()).toBe(value);
  });
});

describe('before a coat', () => {
  beforeEach(() => openApp());

  test('cautions stand, are confirmed once, and are in the log; fire ones offer no silence', async () => {
    await startPiece('Small box');
    await fillJar('Gloss', /^Nitrocellulose/);
    await go('lay', 'Log a coat');
    for (const title of ['Sources of ignition out', 'This phone stays outside', 'Mask checked'])
      await main().getByText(title).waitFor();
    await button('Read and done').tap();
    await button('Log it').first().waitFor();
    await page.reload();
    await button('Log it').first().waitFor();
    await go('air/cautions', 'Cautions');
    await unfold('Confirmed');
    await page.getByText(/^.*Spraying: \d+ confirmed$/).waitFor();
    for (const title of ['Sanding dust', 'Hands and eyes']) await main().getByText(title).tap();
    expect(await button('Do not show this one again').count()).toBe(2); // dust and skin
  });

  test('isocyanate answers first with putting it away', async () => {
    await startPiece('Small box');
    await fillJar('Two-pack', /^Two-pack urethane/);
    await go('lay', 'Log a coat');
    const first = main().locator('.caution-rows > li').first();
    expect(await first.textContent()).toContain('the answer here is not to spray');
    expect(await page.getByRole('link', { name: 'Don’t spray it' }).getAttribute('data-kind')).toBe('main');
  });

  test('the end of the day asks for the rags and is kept', async () => {
    await go('air/day-end', 'End of the day');
    await main().getByText('Oily rags under water').waitFor();
    await button('Read and done').tap();
    await main()
      .getByText(/^Confirmed today/)
      .waitFor();
  });
});

test('the room: figures beside the own extraction, clearance counted down, a limit of 0 caught', async () => {
  await openApp();
  await fillJar('Gloss', /^Nitrocellulose/);
  await go('air/room-form', 'Describe the room');
  await field('Volume').fill('50');
  await field('Extraction').fill('400');
  await field('Lower explosive limit of the product').fill('0');
  await button('Save the room').tap();
  await page.locator('.field .problem', { hasText: '0.1 to 30 %' }).waitFor();
  await field('Lower explosive limit of the product').fill('');
  await button('Save the room').tap();
  await main()
    .getByText(/keeps the average under 25 % of the lower explosive limit/)
    .waitFor();
  await main().getByText('Below the guide figure').first().waitFor();
  await closeToast();
  await go('air/filter-form', 'Open a filter');
  await field('Name').fill('A2, half mask');
  await field('Change after wear of').fill('0.5');
  await button('Put it in use').tap();
  await page.getByText('Within its schedule').waitFor();
  await closeToast();
  await go('air/ended', 'Spraying ended');
  await field('It lasted').fill('30');
  await button('Log it').tap();
  await main()
    .getByText(/to go$/)
    .waitFor();
  await go('air/filters', 'Filters and cartridges');
  await page.getByText('Change it now').waitFor();
});

test('a conversion varnish is worked out by its law, moved to its sheet; a window that ends first is caught', async () => {
  await openApp();
  await startPiece('Small table');
  await fillJar('Varnish', /^Conversion/);
  await go('air/finishes', 'Finishes and data sheets');
  await page.getByRole('link', { name: /^Varnish/ }).tap();
  await page.getByRole('heading', { level: 1, name: 'Data sheet' }).waitFor();
  await field('Recoat from').fill('90');
  await field('Recoat until').fill('1');
  await button('Save the sheet').tap();
  await page.locator('.field .problem', { hasText: 'must end after it begins' }).waitFor();
  await field('Recoat until').fill('6');
  await button('Save the sheet').tap();
  await page.getByText('Data sheet at').waitFor();
  await go('lay', 'Log a coat');
  await button('Read and done').tap();
  expect(await page.getByRole('radio', { name: /^Flash/ }).count()).toBe(0);
  await button('Log it').first().tap();
  await main().getByText('Recoat window closes').waitFor();
  await main().getByText('Scaled to your data sheet.').waitFor();
});
