import type { CDPSession, Page } from 'playwright-core';
import { inject, test } from 'vitest';
import { say } from '../../bench/clock';
import { tenYears } from '../../bench/ten-years';
import { launch, MOBILE } from '../browser';
import { fillDatabases, watchBench } from '../ten-years-in';
import { tapToPaint, watchTap } from './tap-to-paint';

// Prints how the built app holds with ten years in it, in Chromium slowed down four times: 50,000 entries, 2,000 photos of 300 KB.
const base = inject('baseUrl');
const SLOW_DOWN = 4;
const ENTRIES = Number(process.env['ENTRIES'] ?? 50_000);
const PHOTOS = Number(process.env['PHOTOS'] ?? 2_000);
const COATS = 15;

/** Processor time of the page's main thread so far, ms. */
async function busyMs(devtools: CDPSession): Promise<number> {
  const { metrics } = await devtools.send('Performance.getMetrics');
  return (metrics.find(({ name }) => name === 'TaskDuration')?.value ?? 0) * 1000;
}

/** Lays a coat from its page: from the tap to the painted frame that says so, and the processor time of the main thread until then, ms. */
async function aCoat(page: Page, devtools: CDPSession): Promise<{ ms: number; busyMs: number }> {
  await page.goto(`${base}#/lay`);
  const ready = page.getByRole('button', { name: /^(Log it|Read and done)/ }).first();
  await ready.waitFor();
  const cautions = page.getByRole('button', { name: 'Read and done' });
  if ((await cautions.count()) > 0) await cautions.tap();
  await page.getByRole('button', { name: 'Log it' }).first().waitFor();
  const close = page.getByRole('button', { name: 'Close' });
  if ((await close.count()) > 0) await close.tap();
  await page.waitForTimeout(5_000); // until nothing is worked out any more
  const before = await busyMs(devtools);
  const ms = await tapToPaint(page);
  return { ms, busyMs: (await busyMs(devtools)) - before };
}

const said = (coat: { ms: number; busyMs: number } | undefined): string =>
  coat ? `${coat.ms.toFixed(0)} ms (${coat.busyMs.toFixed(0)} ms of processor time)` : 'not laid';

/** The frames while the page is scrolled from end to end, ms each. */
const scroll = (page: Page): Promise<number[]> =>
  page.evaluate(async () => {
    const frames: number[] = [];
    let last = performance.now();
    const end = document.documentElement.scrollHeight;
    for (let step = 0; step < 90; step++) {
      scrollTo(0, (end * step) / 90);
      await new Promise(requestAnimationFrame);
      frames.push(performance.now() - last);
      last = performance.now();
    }
    return frames.slice(1);
  });

test('ten years in it', async () => {
  const browser = await launch();
  const context = await browser.newContext(MOBILE);
  const first = await context.newPage();
  await first.goto(base);
  await first.getByRole('heading', { level: 1 }).waitFor();
  await first.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await fillDatabases(first, tenYears(ENTRIES, Date.now() - 3_600_000), PHOTOS);
  await first.close();

  for (const slowDown of [SLOW_DOWN, SLOW_DOWN, 1]) {
    const page = await context.newPage();
    const devtools = await context.newCDPSession(page);
    await devtools.send('Performance.enable', { timeDomain: 'threadTicks' });
    await devtools.send('Emulation.setCPUThrottlingRate', { rate: slowDown });
    await page.addInitScript(watchBench);
    await page.addInitScript(watchTap);
    await page.goto(base);
    await page.waitForFunction(() => 'usableMs' in globalThis, undefined, { timeout: 120_000 });
    const usableMs = await page.evaluate(() => (globalThis as unknown as { usableMs: number }).usableMs);
    await page.waitForTimeout(6_000); // until the times of the pieces are worked out
    const frames = (await scroll(page)).sort((a, b) => a - b);
    const coats: { ms: number; busyMs: number }[] = [];
    for (let coat = 0; coat < COATS; coat++) coats.push(await aCoat(page, devtools));
    const [first] = coats;
    const last = coats.at(-1);
    const byTime = coats.toSorted((one, other) => one.ms - other.ms);
    const [middle, worst] = [byTime[byTime.length >> 1], byTime.at(-1)];
    await devtools.send('HeapProfiler.collectGarbage');
    const { metrics } = await devtools.send('Performance.getMetrics');
    const heap = metrics.find(({ name }) => name === 'JSHeapUsedSize')?.value ?? 0;
    const late = frames.filter((ms) => ms > 20).length;
    say(
      `${ENTRIES} entries, ${PHOTOS} photos, ${slowDown} times slower: cold start ${usableMs.toFixed(0)} ms, the first coat ${said(first)}, the last ${said(last)}, of ${COATS} the middle ${said(middle)}, the worst ${said(worst)}, ` +
        `memory ${(heap / 1e6).toFixed(0)} MB, scrolling: middle frame ${(frames[frames.length >> 1] ?? 0).toFixed(1)} ms, ${late} of ${frames.length} late`,
    );
    await page.close();
  }
  await browser.close();
});
