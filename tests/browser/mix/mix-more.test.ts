import { expect, test } from 'vitest';
import { goTo, here, openApp, page } from '../app';
import {
  button,
  choose,
  coatLogged,
  field,
  link,
  openLine,
  said,
  section,
  title,
  unfold,
} from '../on-screen';

async function openDemo(): Promise<void> {
  await openApp();
  await button(/demo shop/i)
    .first()
    .tap();
  await button('Leave the demo').waitFor();
}

test('what exactly was in the jar is followed from a coat of the demo to its recipe, and back to the piece', async () => {
  await openDemo();
  await link(/Tea caddy, white/)
    .first()
    .tap();
  await title('Tea caddy, white');
  await button(/^Coat 2/).tap();
  await said(/as its solvents left; dew point 8\.3\s°C/).waitFor(); // Magnus: 21 °C and 44 %
  await link('From White, spray').tap();
  await title('White, spray');
  await unfold('Its exact recipe');
  await said('1.61 g').waitFor();
  await link(/^The recipe: White for the tea caddy/).tap();
  await title('White for the tea caddy');
  await unfold('Pieces it was used on');
  await section('Pieces it was used on')
    .getByRole('link', { name: /^Tea caddy, white/ })
    .tap();
  await title('Tea caddy, white');
});

test('a jar that lost solvent by its weight says so, and a coat laid later shows the thicker mix', async () => {
  await openDemo();
  await goTo('#/mix');
  await link(/^White, spray/).tap();
  await title('White, spray');
  await said('Weigh it').tap();
  await field('It weighs, without the jar').fill('170');
  await choose(/^Evaporated/);
  await button('Log it').first().tap();
  // By hand: 190.5 mL or 197.4 g hold 31.2 mL of solids; 27.4 g of solvent at 0.846 g/mL, or 32.4 mL, are gone: 31.2/158.1 = 19.7 %.
  await said('Volume solids are 19.7\u00a0% now.').waitFor();
  await layOn('Tea caddy, white');
  await goTo('#/bench');
  await page.locator('.piece-row a', { hasText: 'Tea caddy, white' }).tap();
  await link('Why these times?').tap();
  await unfold('What it is based on');
  await said(/16\.4\s%–19\.7\s% solids as it goes on/).waitFor();
});

async function layOn(piece: string): Promise<void> {
  await link('Log a coat from it').tap();
  await title('Log a coat');
  await button('Read and done').tap();
  await openLine('Piece');
  await choose(new RegExp(`^${piece}`));
  await button('Log it').first().tap();
  await coatLogged(`logged on ${piece}.`);
}

test('the pot life of the data sheet governs the clock of the jar, and the jar says so', async () => {
  await openDemo();
  await goTo('#/mix/jar/new', 'What is in the jar');
  await field('Name of the jar').fill('Varnish');
  await choose(/^Conversion/);
  await button('Fill the jar').tap();
  await title('Varnish');
  const jar = here();
  await goTo('#/air/finishes', 'Finishes and data sheets');
  await link(/^Varnish/).tap();
  await title('Data sheet');
  await field('Pot life').fill('5');
  await button('Save the sheet').tap();
  await title('Finishes and data sheets');
  await goTo(jar, 'Varnish');
  await said('5 h at 21 °C, from the data sheet you entered.').waitFor();
});

test('the height of the shop is kept, shown back, and makes the room ask for more air', async () => {
  await openDemo();
  const flow = async (): Promise<number> => {
    await goTo('#/air/room', 'Solvent in the room');
    const text = (await said(/would dilute the vapours/).textContent()) ?? '';
    return Number(/^[\d,]+/.exec(text)?.[0].replaceAll(',', ''));
  };
  const low = await flow();
  await goTo('#/more', 'Settings and backup');
  const height = section('Altitude');
  await unfold('Altitude');
  await field('Altitude').fill('9000');
  await height.getByRole('button', { name: 'Save' }).tap();
  await height.locator('.problem', { hasText: '5000' }).waitFor();
  await field('Altitude').fill('2500');
  await height.getByRole('button', { name: 'Save' }).tap();
  await page.getByText('Saved.').waitFor();
  expect((await flow()) / low).toBeCloseTo(1.36, 1); // 101325 / 74682 Pa
  await goTo('#/more', 'Settings and backup');
  await unfold('Altitude');
  expect(await field('Altitude').inputValue()).toBe('2500');
});
