import { expect, test } from 'vitest';
import { goTo, here, openApp, page } from '../app';
import { axeViolations, overTheSide } from '../looked-at';
import { button, choose, coatLogged, field, heading, openLine, timesWorkedOut, unfold } from '../on-screen';

const HOUR_MS = 3_600_000;
const DAY_MS = 24 * HOUR_MS;

/** Local time as a clock field writes it. */
function clock(atMs: number): string {
  const local = new Date(atMs - new Date(atMs).getTimezoneOffset() * 60_000);
  return local.toISOString().slice(0, 16);
}

async function sayWhen(atMs: number): Promise<void> {
  await choose('By the clock');
  await page.getByLabel('Day and time').fill(clock(atMs));
}

async function weigh(grams: string, atMs: number, isWarm = false): Promise<void> {
  await field('Weight').fill(grams);
  if (isWarm) await page.getByRole('checkbox', { name: /^Dried warm first/ }).tap();
  await sayWhen(atMs);
  await button('Log the weight').tap();
  await page.getByText(`${grams} g logged.`).waitFor();
}

/** Days from the earliest to the latest rubbing out, as the page of the piece says them: "(22 Nov–11 Dec)". */
async function rubOutBand(): Promise<number> {
  await timesWorkedOut();
  const text = await page.locator('.band-time[data-size="row"]', { hasText: 'Rub out from' }).textContent();
  const [, from = '', to = ''] = /\((.+)–(.+)\)/.exec(text ?? '') ?? [];
  const days = (Date.parse(`${to} 2026`) - Date.parse(`${from} 2026`)) / DAY_MS;
  return days < 0 ? days + 365 : days;
}

test('a card is made, coated in the same act as the piece, weighed, and narrows the band of the piece', async () => {
  await openApp();
  const now = Date.now();
  await goTo('#/piece/new');
  await field('Name').fill('Small box');
  await choose(/^Sealed wood/);
  await sayWhen(now - 9 * DAY_MS);
  await button('Start this piece').tap();
  await heading('Small box').first().waitFor();
  const piece = here();
  await goTo('#/mix/jar/new');
  await field('Name of the jar').fill('Clear gloss');
  await button('Fill the jar').tap();
  await heading('Clear gloss').first().waitFor();

  await goTo(piece);
  await unfold('This piece');
  await page.getByRole('link', { name: 'Make a test card' }).tap();
  await page.getByText(/Weighed for two days and dried warm/).waitFor();
  await choose(/^0\.01 g/);
  await page.getByText(/^A scale that goes by 0\.001 g: 1\.\d/).waitFor();
  await choose(/^0\.001 g/);
  await field('Bare weight').fill('1.000');
  expect(await axeViolations()).toEqual([]);
  expect(await overTheSide()).toBe(0);
  await button('Make the card').tap();
  await page.getByRole('heading', { level: 1, name: 'Test card', exact: true }).waitFor();
  const card = here();

  for (const [n, hours] of [4, 2, 0].entries()) {
    await goTo(`${piece.replace('piece/', 'lay?piece=')}`);
    const cautions = button('Read and done');
    await button(/^(Log |Read and done)/)
      .first()
      .waitFor();
    if ((await cautions.count()) > 0) await cautions.tap();
    const tick = page.getByRole('checkbox', { name: 'The test card gets it too' });
    await tick.waitFor();
    expect(await tick.isChecked()).toBe(true);
    await openLine('When');
    await sayWhen(now - 8 * DAY_MS - hours * HOUR_MS);
    await page.locator('.form-foot button').first().tap();
    await coatLogged(new RegExp(`^Coat ${n + 1} logged on `));
  }
  const before = await rubOutBand();

  await goTo(card);
  const lastMs = now - 8 * DAY_MS;
  await weigh('1.952', lastMs + 6 * HOUR_MS);
  await weigh('1.941', lastMs + DAY_MS);
  await field('Weight').fill('1935');
  await button('Log the weight').tap();
  await button('It is 1.935 g').waitFor();
  await button('Change it').tap();
  await weigh('1.935', lastMs + 2 * DAY_MS);
  await weigh('1.876', lastMs + 6 * DAY_MS, true);
  await page
    .getByText(/give or take a factor/)
    .first()
    .waitFor();
  expect(await axeViolations()).toEqual([]);
  expect(await overTheSide()).toBe(0);

  await goTo(piece);
  await expect.poll(rubOutBand, { timeout: 20_000 }).toBeLessThan(before * 0.75);
  expect(await page.getByRole('link', { name: 'Test card', exact: true }).getAttribute('href')).toBe(card);
});

test('a card beside no piece is coated on its own and weighed from its reminder in one tap; odd weights are asked about', async () => {
  await openApp();
  const now = Date.now();
  await goTo('#/mix/jar/new');
  await field('Name of the jar').fill('Clear gloss');
  await button('Fill the jar').tap();
  await heading('Clear gloss').first().waitFor();
  await goTo('#/more/cards/new');
  await field('Bare weight').fill('1.000');
  await sayWhen(now - 9 * DAY_MS);
  await button('Make the card').tap();
  await page.getByRole('heading', { level: 1, name: 'Test card', exact: true }).waitFor();
  expect(await axeViolations()).toEqual([]);
  expect(await overTheSide()).toBe(0);
  await sayWhen(now - 2 * DAY_MS);
  await button('Log the coat').tap();
  await page.getByText('Coat logged on the card.').waitFor();

  await goTo('#/plan/reminders');
  await page.getByRole('link', { name: 'Weigh it' }).first().tap();
  await field('Weight').fill('1285');
  await button('Log the weight').tap();
  await button('It is 1.285 g').tap();
  await page.getByText('1.285 g logged.').waitFor();
  await field('Weight').fill('0.950');
  await button('Log the weight').tap();
  await page.getByText(/less than the bare foil/).waitFor();
  await button('Leave it out: torn').tap();
  await page.getByText('left out: torn').first().waitFor();
  await field('Weight').fill('1.28');
  await button('Log the weight').tap();
  await page.getByText(/goes by 0.01 g/).waitFor();
  await button('Another scale').tap();
  await page.getByText('another scale').first().waitFor();
});
