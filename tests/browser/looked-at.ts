import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults, RunOptions } from 'axe-core';
import type { Locator } from 'playwright-core';
import { page } from './app';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
type Axe = { readonly axe: { run(options: RunOptions): Promise<AxeResults> } };

/** What axe finds on the page, by all its rules. */
export async function axeViolations(): Promise<string[]> {
  const isThere = await page.evaluate(() => 'axe' in globalThis);
  if (!isThere) await page.evaluate(axeSource); // evaluate, not a script element: the policy forbids those
  const { violations } = await page.evaluate(() =>
    (globalThis as unknown as Axe).axe.run({ resultTypes: ['violations'] }),
  );
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
}

/** How far the page runs off its side, in pixels; 0 where it fits. */
export const overTheSide = (): Promise<number> =>
  page.evaluate(() =>
    Math.max(0, document.documentElement.scrollWidth - document.documentElement.clientWidth),
  );

/** Words of the page that a line ends in the midst of; what is hidden from the eye, and where a word may end, is not among them. */
export const brokenWords = (): Promise<string[]> =>
  page.evaluate(() => {
    const broken: string[] = [];
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = texts.nextNode(); node; node = texts.nextNode()) {
      if (node.parentElement?.closest('thead, .skip')) continue;
      for (const { 0: word, index } of (node.textContent ?? '').matchAll(/[\p{L}\p{N}]+/gu)) {
        const range = document.createRange();
        range.setStart(node, index);
        range.setEnd(node, index + word.length);
        const lines = new Set([...range.getClientRects()].map(({ top }) => Math.round(top)));
        if (lines.size > 1) broken.push(word);
      }
    }
    return broken;
  });

/** Whether a finger on the middle of it meets it, and not what lies over the foot of the screen. */
export const isFree = (one: Locator): Promise<boolean> =>
  one.evaluate((shown) => {
    const { left, top, width, height } = shown.getBoundingClientRect();
    return shown.contains(document.elementFromPoint(left + width / 2, top + height / 2));
  });
