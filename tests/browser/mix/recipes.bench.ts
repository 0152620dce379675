import type { CDPSession, Page } from 'playwright-core';
import { inject, test } from 'vitest';
import { say } from '../../bench/clock';
import { manyRecipes } from '../../bench/many-recipes';
import { inTurn } from '../../logbook/entries';
import { launch, MOBILE } from '../browser';

// Prints how the search answers among 10,000 recipes in the built app, in Chromium slowed down four times (the bar: 50 ms).
const base = inject('baseUrl');
const RECIPES = 10_000;
const SLOW_DOWN = 4;
const TYPED = ['aged', 'cream 77', 'ivory burst', 'turquoise'];

/** Puts the entries where the app keeps them. */
async function fill(page: Page, entries: readonly unknown[]): Promise<void> {
  await page.evaluate(async (rows) => {
    const opening = indexedDB.open('coatwait');
    await new Promise((resolve, reject) => {
      opening.onsuccess = resolve;
      opening.onerror = () => reject(opening.error);
    });
    const transaction = opening.result.transaction('entries', 'readwrite');
    const all = JSON.parse(rows) as { id: string }[];
    for (const one of all) transaction.objectStore('entries').put(one, one.id);
    await new Promise((resolve, reject) => {
      transaction.oncomplete = resolve;
      transaction.onabort = () => reject(transaction.error);
    });
    opening.result.close();
  }, JSON.stringify(entries));
}

/** From the key to the frame that shows the answer, ms. */
const type = (page: Page, text: string): Promise<number> =>
  page.evaluate(async (typed) => {
    const input = document.querySelector('main [role=status]')?.parentElement?.querySelector('input');
    if (!input) throw new Error('no search');
    const from = performance.now();
    input.value = typed;
    input.dispatchEvent(new Event('input', { bubbles: true }));
    await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
    return performance.now() - from;
  }, text);

/** Processor time of the page's main thread so far, ms. */
async function busyMs(devtools: CDPSession): Promise<number> {
  const { metrics } = await devtools.send('Performance.getMetrics');
  return (metrics.find(({ name }) => name === 'TaskDuration')?.value ?? 0) * 1000;
}

test('a search among many recipes', async () => {
  const browser = await launch();
  const context = await browser.newContext(MOBILE);
  const first = await context.newPage();
  await first.goto(base);
  await first.getByRole('heading', { level: 1 }).waitFor();
  await fill(first, manyRecipes(RECIPES).map(inTurn));
  await first.close();

  for (const slowDown of [SLOW_DOWN, SLOW_DOWN, SLOW_DOWN, 1]) {
    const page = await context.newPage();
    const devtools = await context.newCDPSession(page);
    await devtools.send('Performance.enable', { timeDomain: 'threadTicks' });
    await devtools.send('Emulation.setCPUThrottlingRate', { rate: slowDown });
    await page.goto(`${base}#/mix`);
    await page.getByText(`${RECIPES} recipes`).waitFor({ timeout: 120_000 });
    const before = await busyMs(devtools);
    const shown: number[] = [];
    for (const text of TYPED) {
      for (let end = 1; end <= text.length; end++) shown.push(await type(page, text.slice(0, end)));
      shown.push(await type(page, ''));
    }
    const busy = ((await busyMs(devtools)) - before) / shown.length;
    const sorted = shown.sort((a, b) => a - b);
    say(
      `${RECIPES} recipes, ${slowDown} times slower, ${sorted.length} keys: shown after ${(sorted[sorted.length >> 1] ?? 0).toFixed(1)} ms in the middle, ` +
        `${(sorted.at(-1) ?? 0).toFixed(1)} ms at worst; ${busy.toFixed(1)} ms of processor time a key`,
    );
    await page.close();
  }
  await browser.close();
});
