import type { CDPSession, Page } from 'playwright-core';
import { v7 as uuid } from 'uuid';
import { inject, test } from 'vitest';
import { launch, MOBILE } from '../browser/browser';
import { clearJar } from './clear-jar';
import { say } from './clock';

const base = inject('baseUrl');
const SLOW_DOWN = 4;
const HOUR_MS = 3_600_000;
const DAY_MS = 24 * HOUR_MS;

/** A shop of so many entries: thirty pieces that stand finished, two that dry, and readings of the air. */
function shopOf(count: number, nowMs: number): Record<string, unknown>[] {
  const rows: Record<string, unknown>[] = [];
  const jar = uuid();
  const add = (atMs: number, body: Record<string, unknown>) =>
    rows.push({ id: uuid({ msecs: atMs }), v: 1, at: new Date(atMs).toISOString(), zone: 'UTC', ...body });
  const firstMs = nowMs - 300 * DAY_MS;
  add(firstMs, clearJar(jar));
  for (let k = 0; rows.length < count - 40; k++) {
    const piece = uuid();
    const startMs = firstMs + k * 9 * DAY_MS;
    if (startMs > nowMs - 20 * DAY_MS) {
      add(nowMs - (count - rows.length) * 60_000, {
        kind: 'air-read',
        temperature: { text: '21', unit: 'C' },
        humidity: { text: '50', unit: '%' },
        movement: 'gentle',
      });
      continue;
    }
    add(startMs, { kind: 'piece-started', piece, name: `Piece ${k}`, base: 'sealed' });
    for (let coat = 0; coat < 12; coat++) {
      add(startMs + coat * 3 * HOUR_MS, {
        kind: 'coat-laid',
        piece,
        jar,
        how: 'spray',
        film: { by: 'wet', wetFilm: { text: '85', unit: 'um' } },
      });
    }
    add(startMs + 60 * HOUR_MS, { kind: 'piece-closed', piece });
  }
  for (const name of ['Drying one', 'Drying two']) {
    const piece = uuid();
    add(nowMs - 3 * DAY_MS, { kind: 'piece-started', piece, name, base: 'sealed' });
    for (let coat = 0; coat < 12; coat++) {
      add(nowMs - 2.9 * DAY_MS + coat * 4 * HOUR_MS, {
        kind: 'coat-laid',
        piece,
        jar,
        how: 'spray',
        film: { by: 'wet', wetFilm: { text: '85', unit: 'um' } },
      });
    }
  }
  return rows;
}

async function keep(page: Page, rows: readonly Record<string, unknown>[]): Promise<void> {
  await page.evaluate(
    (all) =>
      new Promise<void>((resolve, reject) => {
        const asked = indexedDB.open('coatwait');
        asked.onsuccess = () => {
          const change = asked.result.transaction('entries', 'readwrite');
          for (const row of all) change.objectStore('entries').put(row, row['id'] as string);
          change.oncomplete = () => resolve();
          change.onabort = () => reject(change.error);
        };
        asked.onerror = () => reject(asked.error);
      }),
    rows,
  );
}

/** Milliseconds from the start of the page to its bench, and the longest that the main thread was held meanwhile. */
async function coldStart(
  page: Page,
  cdp: CDPSession,
  piece: string,
): Promise<{ usableMs: number; longestMs: number }> {
  await cdp.send('Emulation.setCPUThrottlingRate', { rate: SLOW_DOWN });
  await page.reload();
  await page
    .getByRole('link', { name: new RegExp(piece) })
    .first()
    .waitFor();
  const usableMs = await page.evaluate(() => performance.now());
  await page.waitForTimeout(12_000);
  const longestMs = await page.evaluate(() =>
    Math.max(0, ...(globalThis as unknown as { longTasks: number[] }).longTasks),
  );
  await cdp.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  return { usableMs, longestMs };
}

test('the app at a quarter of the speed, with a thousand entries', async () => {
  const browser = await launch();
  const context = await browser.newContext(MOBILE);
  await context.addInitScript(() => {
    const longTasks: number[] = [];
    (globalThis as unknown as { longTasks: number[] }).longTasks = longTasks;
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) longTasks.push(entry.duration);
    }).observe({ type: 'longtask', buffered: true });
  });
  const page = await context.newPage();
  await page.goto(base);
  await page.getByRole('heading', { level: 1 }).waitFor();
  const rows = shopOf(1000, Date.now());
  await keep(page, rows);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  const cdp = await context.newCDPSession(page);
  const runs = [];
  for (let k = 0; k < 3; k++) runs.push(await coldStart(page, cdp, 'Drying one'));
  say(
    `  ${rows.length} entries, ${SLOW_DOWN}x slow-down: usable after ${runs.map((run) => run.usableMs.toFixed(0)).join(', ')} ms`,
  );
  say(
    `  longest task while starting and working two pieces out: ${runs.map((run) => run.longestMs.toFixed(0)).join(', ')} ms`,
  );
  await browser.close();
});
