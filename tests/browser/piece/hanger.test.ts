import { generate } from 'lean-qr';
import { expect, test } from 'vitest';
import { base, goTo, here, openApp, openPage, page } from '../app';
import { countTaps } from '../jobs/taps';
import { axeViolations } from '../looked-at';
import { button, coatLogged, field, link, title } from '../on-screen';

/** The squares of a code as the page draws them, four squares of quiet round them (ISO/IEC 18004). */
function squaresOf(text: string): string {
  const code = generate(text);
  const squares: string[] = [];
  for (let y = 0; y < code.size; y++)
    for (let x = 0; x < code.size; x++) if (code.get(x, y)) squares.push(`M${x + 4} ${y + 4}h1v1h-1z`);
  return squares.join('');
}

test('the label on a hanger leads to its piece, and a coat from there is two taps', async () => {
  await openApp();
  for (const name of ['Another box', 'Small box']) {
    await goTo('#/piece/new');
    await field('Name').fill(name);
    await button('Start this piece').tap();
    await title(name);
  }
  const piece = here();
  await goTo('#/mix/jar/new');
  await button('Fill the jar').tap();
  await link('Log a coat from it').waitFor();
  await goTo(piece, 'Small box');
  await link('Log a coat').tap();
  await button('Read and done').tap(); // once in so many days, as the cautions say
  await button('Log it').first().tap();
  await coatLogged('Coat 1 logged on Small box.');

  await goTo(`${piece}/label`, 'Hanger label');
  const code = page.getByRole('img', { name: /Small box/ });
  expect(await code.locator('path').getAttribute('d')).toBe(squaresOf(`${base}${piece}`));
  expect(await axeViolations()).toEqual([]);

  await page.close();
  await openPage(piece); // what a phone's camera opens
  await title('Small box');
  const taps = await countTaps();
  await link('Log a coat').tap();
  await button('Log it').first().tap();
  await page.getByText('Coat 2 logged on Small box.').waitFor();
  expect(await taps()).toBe(2);
  await title('Small box'); // and back at the piece
});
