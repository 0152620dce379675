import { expect, test } from 'vitest';
import { context, goTo, here, openApp, page } from '../app';
import { MOBILE } from '../browser';
import { rows } from '../logging';
import { button } from '../on-screen';
import { openDemo } from './each-screen';

// A gloved thumb falls twice: 0.1 s lies between, and the second finds what the first has brought there.
const BETWEEN_MS = 100;

/** By the glass itself: the second comes whether the page has answered the first or not. */
async function tapTwice(words: string | RegExp): Promise<void> {
  const one = button(words).last();
  await one.scrollIntoViewIfNeeded();
  await page.evaluate(() => Object.assign(globalThis, { isTappedByHand: true }));
  await page.waitForTimeout(350); // who came here tapped before
  const { x, y, width, height } = (await one.boundingBox()) ?? { x: 0, y: 0, width: 0, height: 0 };
  const glass = await context.newCDPSession(page);
  const finger = (type: 'touchStart' | 'touchEnd', ...touchPoints: { x: number; y: number }[]) =>
    glass.send('Input.dispatchTouchEvent', { type, touchPoints });
  const told: Promise<unknown>[] = [];
  for (const waitMs of [BETWEEN_MS, 0]) {
    told.push(finger('touchStart', { x: x + width / 2, y: y + height / 2 }), finger('touchEnd'));
    await new Promise((done) => setTimeout(done, waitMs));
  }
  await Promise.all(told);
  await page.waitForTimeout(400); // what a second one would have done is done
}

const toast = (words: string | RegExp) => page.locator('.toast').getByText(words);

test('a coat that is logged by two taps leads to its piece, with its undo, and is undone by two taps', async () => {
  await openDemo();
  await goTo('#/lay');
  if (await button('Read and done').isVisible()) await tapTwice('Read and done');
  await tapTwice(/^Log it/);
  await toast(/^Coat \d+ logged/).waitFor();
  expect(here()).toMatch(/^#\/piece\/[^/]+$/);
  await tapTwice('Undo');
  await toast(/^Undone: Coat/).waitFor();
});

test('what is saved by two taps is logged once', async () => {
  await openApp(MOBILE, '#/plan/hours');
  await tapTwice('Save the week');
  await toast('Working hours saved.').waitFor();
  const kept = (await rows(page)) as { kind: string }[];
  expect(kept.map(({ kind }) => kind)).toEqual(['hours-set']);
});
