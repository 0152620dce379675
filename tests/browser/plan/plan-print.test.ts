import { expect, test } from 'vitest';
import { goTo, page } from '../app';
import { openDemo } from '../every-page/each-screen';
import { firstLink } from '../on-screen';
import { isInside, overEachOther, read } from '../printed';

// What is printed beside the record: the plan, a piece and a recipe as they stand, and the label of a jar.

async function printed(format: 'A4' | 'Letter') {
  const { pages, words } = read(await page.pdf({ format }));
  expect(overEachOther(words), format).toEqual([]);
  for (const word of words) expect(isInside(word, pages), `${word.text} at ${word.box}`).toBe(true);
  return words.map(({ text }) => text).join(' ');
}

test('plan, piece, recipe and label are whole on paper, with nothing that only a screen can do', async () => {
  await openDemo();
  await goTo('#/plan');
  await page.locator('.timeline').waitFor();
  for (const format of ['A4', 'Letter'] as const) {
    const text = await printed(format);
    for (const head of ['Likely', 'Promise from', 'Promised', 'Next']) expect(text).toContain(head);
    expect(text).not.toMatch(/calendar|more steps|plan has moved|Plan it/);
  }
  await page.emulateMedia({ media: 'print' });
  for (const only of ['.row-next', '.button', '.bar', '.fold > details > summary'])
    for (const one of await page.locator(`main ${only}, ${only}.bar`).all())
      expect(await one.evaluate((node) => getComputedStyle(node, '::after').display)).not.toBe('block');
  const dates = await page.locator('.timeline svg').first().boundingBox();
  for (const date of await page.locator('.timeline-day text').all()) {
    const box = await date.boundingBox();
    expect((box?.x ?? 0) + (box?.width ?? 0)).toBeLessThanOrEqual((dates?.x ?? 0) + (dates?.width ?? 0));
  }
  await page.emulateMedia({ media: null });
  for (const [from, to] of [
    ['#/bench', /^#\/piece\/[0-9a-f-]{36}$/],
    ['#/mix', /^#\/mix\/recipe\/[0-9a-f-]{36}$/],
  ] as const) {
    await goTo(from);
    await goTo(await firstLink(to));
    await page.waitForTimeout(1_000);
    await printed('A4');
  }
  await goTo('#/mix');
  await goTo(`${await firstLink(/^#\/mix\/jar\/[0-9a-f-]{36}$/)}/label`);
  const [frame, code] = [
    await page.locator('.label').boundingBox(),
    await page.locator('.label-code').boundingBox(),
  ];
  expect((code?.x ?? 0) + (code?.width ?? 0)).toBeLessThan((frame?.x ?? 0) + (frame?.width ?? 0) - 4);
});
