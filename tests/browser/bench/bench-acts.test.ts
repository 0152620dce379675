import { expect, test } from 'vitest';
import { goTo, openPage, page, takePhone } from '../app';
import { MOBILE } from '../browser';
import { button, heading } from '../on-screen';
import { keepOnPhone, manyPieces } from './bench-shop';

// The daily acts, from the bench.
async function openBench(count?: number): Promise<void> {
  await takePhone(MOBILE);
  await keepOnPhone(manyPieces(count));
  await openPage();
  await page.locator('.piece-row .wait-bar').nth(5).waitFor();
  await page.getByText('Working it out…').last().waitFor({ state: 'detached' });
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
  await page.locator('.line', { hasText: 'From' }).getByText('Gloss', { exact: true }).first().waitFor();
});
