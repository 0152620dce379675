import type { BrowserContextOptions } from 'playwright-core';
import { goTo, openApp, page } from '../app';
import { MOBILE } from '../browser';
import { button, unfoldAll } from '../on-screen';

// Every screen that can be reached in the demo shop, one of each kind.

/** How many kinds a walk finds at least. */
export const MANY_SCREENS = 80;

/** The kind of a screen: its address without ids, so that one of each is looked at. */
const kindOf = (hash: string): string =>
  hash.replace(/[0-9a-f]{8}-[0-9a-f-]{27}/g, '*').replace(/([?&][^=]+=)[^&]*/g, '$1*');

export async function openDemo(options: BrowserContextOptions = {}): Promise<void> {
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
export async function lookAtEach(look: (kind: string) => Promise<void>): Promise<readonly string[]> {
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
