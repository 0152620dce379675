import { expect, test } from 'vitest';
import { page } from '../app';
import { axeViolations, brokenWords, overTheSide } from '../looked-at';
import { lookAtEach, MANY_SCREENS, openDemo } from './each-screen';

// Every screen that can be reached in the demo shop, held to what every screen must be.

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

async function turnTo({ colorScheme, width, textPercent }: Look): Promise<void> {
  await page.setViewportSize({ width, height: width < 390 ? 640 : 844 });
  await page.emulateMedia({ colorScheme });
  await page.evaluate((percent) => {
    document.documentElement.style.fontSize = percent === 100 ? '' : `${percent}%`;
  }, textPercent);
}

test('no screen, however it is seen, has an axe violation, runs off the side or breaks a word', async () => {
  await openDemo();
  const found: string[] = [];
  const kinds = await lookAtEach(async (kind) => {
    for (const look of [...LOOKS, ZOOMED]) {
      await turnTo(look);
      const over = await overTheSide();
      if (over > 0) found.push(`${kind} (${look.name}) runs ${over} px off the side`);
      if (look.textPercent === 100 && look !== ZOOMED)
        for (const word of await brokenWords()) found.push(`${kind} (${look.name}) breaks “${word}”`);
      if (look === ZOOMED) continue;
      for (const violation of await axeViolations()) found.push(`${kind} (${look.name}) ${violation}`);
    }
  });
  console.log(`${kinds.length} kinds of screens`);
  expect(kinds.length).toBeGreaterThan(MANY_SCREENS);
  expect(kinds).toContain('#/plan/*/owner'); // only behind a piece that has a plan
  expect(found).toEqual([]);
}, 300_000);
