import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults, RunOptions } from 'axe-core';
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
