import { expect, test } from 'vitest';
import { goTo, openPage, page, takePhone } from './app';
import { keepOnPhone, manyPieces } from './bench-shop';
import { MOBILE } from './browser';
import { button, heading } from './on-screen';

// How many taps the daily acts take, from the bench.
async function openBench(count?: number): Promise<void> {
  await takePhone(MOBILE);
  await keepOnPhone(manyPieces(count));
  await openPage();
  await page.locator('.piece-row .wait-bar').nth(5).waitFor();
  await page.getByText('Working it out…').last().waitFor({ state: 'detached' });
}

/** The cautions of this session are read, so that they do not count. */
async function readCautions(): Promise<void> {
  await goTo('#/lay');
  await button('Read and done').tap();
  await button(/^Log it/).waitFor();
  await goTo('#/bench');
}

test('the cautions before a coat are one card, with the confirm in view, and are asked once', async () => {
  await openBench();
  await goTo('#/lay');
  const confirm = await button('Read and done').boundingBox();
  expect(confirm && confirm.y + confirm.height).toBeLessThan(MOBILE.viewport.height - 70);
  await button('Read and done').tap();
  await button(/^Log it: coat \d+ on /).waitFor();
  await goTo('#/bench');
  await goTo('#/lay');
  await button(/^Log it: coat \d+ on /).waitFor();
});

test('a round on the same pieces as the last one is three taps', async () => {
  await openBench();
  await readCautions();
  // The last round: two pieces, one after the other.
  await goTo('#/lay');
  await page.getByText('On these too').first().tap();
  await page.getByRole('checkbox', { name: 'Banjo rim, maple' }).tap();
  await button('Log it: a coat on 2 pieces').tap();
  await page.getByText('A coat logged on 2 pieces.').waitFor();

  await page.getByRole('navigation').getByRole('link', { name: 'Log a coat' }).tap();
  await button(/^Same 2 pieces|^Same \d pieces/).tap();
  await button(/^Log it: a coat on \d pieces/).tap();
  await page.getByText(/^A coat logged on \d pieces\./).waitFor();
});

test('a rub-out of a piece that is ready is two taps on its page, with the usual amount', async () => {
  await openBench();
  await page.locator('.piece-row a', { hasText: 'Folding music stand' }).tap();
  await page.locator('.piece-acts').getByRole('link', { name: 'Rub out' }).tap();
  await button('Log it').or(button(/^Log/)).first().tap();
  await heading('Folding music stand').first().waitFor();
  await page
    .getByText(/^Rubbed out/)
    .first()
    .waitFor();
});

test('amber is the next act of the piece: nothing is, while it is wet', async () => {
  await openBench();
  const amber = () => page.locator('main .piece-acts [data-kind="main"]').allTextContents();
  await page.locator('.piece-row a', { hasText: 'Jewellery box' }).tap();
  await page.locator('.piece-acts').waitFor();
  expect(await amber()).toEqual([]);
  await goTo('#/bench');
  await page.locator('.piece-row a', { hasText: 'Violin scroll' }).tap();
  await page.locator('.piece-acts').waitFor();
  expect(await amber()).toEqual(['Log a coat']);
});

test('who fills a first jar from Log a coat comes back to the coat, with the jar filled in', async () => {
  await takePhone(MOBILE);
  await keepOnPhone(manyPieces(1).filter(({ kind }) => kind === 'piece-started'));
  await openPage('#/lay');
  await page.locator('main .acts a').first().tap();
  await page.getByRole('textbox', { name: 'Name of the jar' }).fill('Gloss');
  await button('Fill the jar').tap();
  await heading('Log a coat').waitFor();
  await button('Read and done').tap();
  await page.getByText('From Gloss').waitFor();
});
