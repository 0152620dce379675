import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject, test } from 'vitest';
import { launch, MOBILE } from './browser';

const base = inject('baseUrl');
let browser: Browser;
let page: Page;
let problems: string[];

beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());
afterEach(async () => {
  expect(problems).toEqual([]);
  await page.context().close();
});

async function openDemo(): Promise<void> {
  const context = await browser.newContext(MOBILE);
  page = await context.newPage();
  page.setDefaultTimeout(15_000);
  problems = [];
  page.on('pageerror', (error) => problems.push(error.message));
  await page.goto(base);
  await page
    .getByRole('button', { name: /demo shop/i })
    .first()
    .tap();
  await page.getByRole('button', { name: 'Leave the demo' }).waitFor();
}

const link = (name: string | RegExp) => page.getByRole('main').getByRole('link', { name }).first();
const titled = (name: string) => page.getByRole('heading', { level: 1, name }).waitFor();

test('what exactly was in the jar is followed from a coat of the demo to its recipe, and back to the piece', async () => {
  await openDemo();
  await link(/Tea caddy, white/).tap();
  await titled('Tea caddy, white');
  await page.getByRole('button', { name: /^Coat 2/ }).tap();
  await page.getByText(/as its solvents left; dew point 8\.3\s°C/).waitFor(); // Magnus: 21 °C and 44 %
  await link('From White, spray').tap();
  await titled('White, spray');
  await page.getByText('1.61 g').waitFor();
  await link(/^The recipe: White for the tea caddy/).tap();
  await titled('White for the tea caddy');
  await page.getByRole('heading', { name: 'Pieces it was used on' }).waitFor();
  await link(/^Tea caddy, white/).tap();
  await titled('Tea caddy, white');
});

test('a jar that lost solvent by its weight says so, and a coat laid later shows the thicker mix', async () => {
  await openDemo();
  await page.goto(`${base}#/mix`);
  await link(/^White, spray/).tap();
  await titled('White, spray');
  await page.getByText('Weigh it again').tap();
  await page.getByRole('textbox', { name: 'It weighs, without the jar', exact: true }).fill('170');
  await page.getByRole('radio', { name: /^Evaporated/ }).tap();
  await page.getByRole('button', { name: 'Note it' }).first().tap();
  // By hand: 190.5 mL or 197.4 g hold 31.2 mL of solids; 27.4 g of solvent at 0.846 g/mL, or 32.4 mL, are gone: 31.2/158.1 = 19.7 %.
  await page.getByText('Volume solids are 19.7\u00a0% now.').waitFor();
  await layOn('Tea caddy, white');
  await page.goto(`${base}#/bench`);
  await link(/Tea caddy, white/).tap();
  await link('Why these times?').tap();
  await page.getByText(/16\.4\s%–19\.7\s% solids as it goes on/).waitFor();
});

async function layOn(piece: string): Promise<void> {
  await link('Lay a coat from it').tap();
  await page.getByRole('heading', { level: 1, name: 'Lay a coat' }).waitFor();
  await page.getByRole('button', { name: 'Read, and seen to' }).tap();
  await page.getByRole('radio', { name: new RegExp(`^${piece}`) }).tap();
  await page.getByRole('button', { name: 'Lay it' }).first().tap();
  await page.getByText(`laid on ${piece}.`).waitFor();
}

test('the pot life of the data sheet governs the clock of the jar, and the jar says so', async () => {
  await openDemo();
  await page.goto(`${base}#/mix/jar/new`);
  await titled('What is in the jar');
  await page.getByRole('textbox', { name: 'Name of the jar', exact: true }).fill('Varnish');
  await page.getByRole('radio', { name: /^Conversion/ }).tap();
  await page.getByRole('button', { name: 'Fill the jar' }).tap();
  await titled('Varnish');
  const jar = page.url();
  await page.goto(`${base}#/air/finishes`);
  await link(/^Varnish/).tap();
  await titled('Data sheet');
  await page.getByRole('textbox', { name: 'Pot life', exact: true }).fill('5');
  await page.getByRole('button', { name: 'Keep the sheet' }).tap();
  await titled('Finishes and data sheets');
  await page.goto(jar);
  await page.getByText('5 h at 21 °C, from the data sheet you entered.').waitFor();
});

test('the height of the shop is kept, shown back, and makes the room ask for more air', async () => {
  await openDemo();
  const flow = async (): Promise<number> => {
    await page.goto(`${base}#/air/room`);
    const text = await page.getByText(/would dilute the vapours/).textContent();
    return Number(/^[\d,]+/.exec(text ?? '')?.[0].replaceAll(',', ''));
  };
  const low = await flow();
  await page.goto(`${base}#/more`);
  const altitude = page.getByRole('textbox', { name: 'Altitude', exact: true });
  const height = page.locator('section', { has: page.getByRole('heading', { name: 'Height of the shop' }) });
  await altitude.fill('9000');
  await height.getByRole('button', { name: 'Keep it' }).tap();
  await height.locator('.problem', { hasText: '5000' }).waitFor();
  await altitude.fill('2500');
  await height.getByRole('button', { name: 'Keep it' }).tap();
  await page.getByText('Kept.').waitFor();
  expect((await flow()) / low).toBeCloseTo(1.36, 1); // 101325 / 74682 Pa
  await page.goto(`${base}#/more`);
  expect(await altitude.inputValue()).toBe('2500');
});
