import type { BrowserContextOptions } from 'playwright-core';
import { expect, test } from 'vitest';
import { goTo, openApp, page } from './app';
import { MOBILE } from './browser';
import { axeViolations, overTheSide } from './looked-at';
import { button, unfoldAll } from './on-screen';

// Every screen that can be reached in the demo shop, one of each kind, held to what every screen must be.
const MANY_SCREENS = 80;

/** A way in which the same screen is seen; the walk goes once, and each screen is turned about on the spot. */
interface Look {
  readonly name: string;
  readonly colorScheme: 'light' | 'dark';
  readonly width: number;
  readonly textPercent: number;
}
const LOOKS: readonly Look[] = [
  { name: 'light, 390 wide', colorScheme: 'light', width: 390, textPercent: 100 },
  { name: 'dark, large text, 390 wide', colorScheme: 'dark', width: 390, textPercent: 150 },
  { name: 'light, large text, 360 wide', colorScheme: 'light', width: 360, textPercent: 150 },
  { name: 'dark, 360 wide', colorScheme: 'dark', width: 360, textPercent: 100 },
];
// 200 % zoom of a small window.
const ZOOMED: Look = { name: '320 wide', colorScheme: 'light', width: 320, textPercent: 100 };

/** The kind of a screen: its address without ids, so that one of each is looked at. */
const kindOf = (hash: string): string =>
  hash.replace(/[0-9a-f]{8}-[0-9a-f-]{27}/g, '*').replace(/([?&][^=]+=)[^&]*/g, '$1*');

async function openDemo(options: BrowserContextOptions = {}): Promise<void> {
  await openApp({ ...MOBILE, deviceScaleFactor: 1, ...options }); // fewer pixels to paint, the same page
  await button(/demo shop/)
    .first()
    .tap();
  await page.locator('.piece-row .wait-bar').first().waitFor();
}

/**
 * Follows every link and looks at one of each kind of screen; gives the kinds. It sets out from the plan, where a link leads to a
 * piece that has one: the page of another piece looks the same by its address, and leads nowhere further.
 */
async function lookAtEach(look: (kind: string) => Promise<void>): Promise<readonly string[]> {
  const found = new Map<string, string>([['#/plan', '#/plan']]);
  for (const [kind, hash] of found) {
    await goTo(hash);
    await unfoldAll();
    await look(kind);
    const links = await page
      .locator('a[href^="#/"]')
      .evaluateAll((all) => all.map((link) => link.getAttribute('href') ?? ''));
    for (const link of links) if (!found.has(kindOf(link))) found.set(kindOf(link), link);
  }
  return [...found.keys()];
}

async function turnTo({ colorScheme, width, textPercent }: Look): Promise<void> {
  await page.setViewportSize({ width, height: width < 390 ? 640 : 844 });
  await page.emulateMedia({ colorScheme });
  await page.evaluate((percent) => {
    document.documentElement.style.fontSize = percent === 100 ? '' : `${percent}%`;
  }, textPercent);
}

test('no screen, however it is seen, has an axe violation or runs off the side', async () => {
  await openDemo();
  const found: string[] = [];
  const kinds = await lookAtEach(async (kind) => {
    for (const look of [...LOOKS, ZOOMED]) {
      await turnTo(look);
      const over = await overTheSide();
      if (over > 0) found.push(`${kind} (${look.name}) runs ${over} px off the side`);
      if (look === ZOOMED) continue;
      for (const violation of await axeViolations()) found.push(`${kind} (${look.name}) ${violation}`);
    }
  });
  console.log(`${kinds.length} kinds of screens`);
  expect(kinds.length).toBeGreaterThan(MANY_SCREENS);
  expect(kinds).toContain('#/plan/*/owner'); // only behind a piece that has a plan
  expect(found).toEqual([]);
}, 300_000);

test('with reduced motion nothing moves by itself', async () => {
  await openDemo({ reducedMotion: 'reduce' });
  for (const hash of ['#/bench', '#/board', '#/lay', '#/mix', '#/match', '#/air', '#/more']) {
    await goTo(hash);
    const moving = await page.evaluate(() =>
      document
        .getAnimations()
        .filter(({ effect }) => Number(effect?.getComputedTiming().duration) > 1)
        .map(({ effect }) => (effect as KeyframeEffect).target?.outerHTML.slice(0, 100)),
    );
    expect(moving, hash).toEqual([]);
  }
});
