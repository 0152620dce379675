import { describe, expect, test } from 'vitest';
import { base, goTo, here, openApp, page } from '../app';
import { MOBILE } from '../browser';
import { axeViolations, overTheSide } from '../looked-at';
import { button, choose, field, link, title } from '../on-screen';
import { mix, says, startMatch, thrice, typeReadings } from './match-steps';

test('the cards: draw-down, hiding, toner, and spectra under other lights', async () => {
  await openApp(MOBILE, '#/match');
  const address = await startMatch({ tinters: ['Ochre'] });
  const nm = Array.from({ length: 31 }, (_, i) => 400 + 10 * i);
  const spectrum = (reflectance: string) => ({
    name: 'card.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(`name,${nm.join(',')}\ncard,${nm.map(() => reflectance).join(',')}\n`),
  });
  const readFile = async (reflectance: string): Promise<void> => {
    await choose(/^A file/);
    await page.getByLabel('CSV or CGATS file from the instrument').setInputFiles(spectrum(reflectance));
    await says('One reading found. Tick what was read here.');
    await button('Log the reading').tap();
    await title('Radio cabinet');
  };
  await page.goto(`${base}${address}/read/target`);
  await readFile('0.70');
  await link('Weigh in the base').tap();
  await mix({ 'White lacquer': '100' });
  await link('Read the base').tap();
  await readFile('0.80');
  await link('Trial 1, the base').first().tap();
  await says('White LED (B3)');
  await says('From the spectra. The verdict goes by the worst.');

  await page.goto(`${base}${address}/tinters`);
  await link('Log a draw-down').tap();
  await page.getByRole('textbox', { name: 'Tinter in the mix with the base' }).fill('5');
  await typeReadings(thrice(['85', '2', '24']));
  await button('Log the reading').tap();
  await title('Tinters');
  await says('5 %: 85.0 / 2.0 / 24.0');

  await page.goto(`${base}${address}/hiding`);
  await field('Dry film of the draw-down').fill('25');
  const over = (ground: string, name: string) =>
    page.getByRole('group', { name: ground }).getByRole('textbox', { name });
  await over('Over black', 'Card, bare').fill('0');
  await over('Over black', 'Coated').fill('60');
  await over('Over white', 'Card, bare').fill('80');
  await over('Over white', 'Coated').fill('72');
  await button('Log the draw-down').tap();
  await says('0.833 at 25 µm'); // 60 / 72
  await says(/^\d+ at 25 µm dry each/);

  await page.goto(`${base}${address}/read/ground`);
  await typeReadings(thrice(['96', '0', '2']));
  await button('Log the reading').tap();
  await title('Dye toner');
  await link('Read the toned card').tap();
  await field('Passes of toner on it').fill('2');
  await typeReadings(thrice(['92', '0', '2']));
  await button('Log the reading').tap();
  await title('Dye toner');
  await says(/passes/);
  expect(await axeViolations()).toEqual([]);
});

describe.each([
  { name: 'light', options: { ...MOBILE, colorScheme: 'light' } as const },
  {
    name: 'dark, small',
    options: { ...MOBILE, viewport: { width: 360, height: 640 }, colorScheme: 'dark' } as const,
  },
])('$name', ({ options }) => {
  test('no page of a match in the demo has an axe violation or runs off the side', async () => {
    await openApp(options);
    await button(/demo/i).first().tap();
    await says('Tea caddy, white');
    await page.goto(`${base}#/match`);
    await link(/^Tea caddy, old white/).tap();
    await says('Add, and stir in');
    const address = here();
    const trial = await link(/^Trial 3/)
      .first()
      .getAttribute('href');
    const pages = [
      '',
      '/change',
      '/target',
      '/read/target',
      '/mix',
      '/tinters',
      '/shift',
      '/hiding',
      '/toner',
      '/photo/target',
    ];
    for (const hash of ['#/match', '#/match/new', trial ?? '', ...pages.map((more) => `${address}${more}`)]) {
      await goTo(hash);
      expect(await axeViolations()).toEqual([]);
      expect(await overTheSide()).toBe(0);
    }
  });
});
