import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import lighthouse from 'lighthouse';
import { type BrowserContext, chromium } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { CHROMIUM } from '../browser';

// An outside judge of a page on a middling phone. It runs here, asks no other machine and reports to none.
const base = inject('baseUrl');
const FAST_ENOUGH = 90;
const MOST_VISITS = 8;
let profile: string;
let context: BrowserContext;
let port: number;

beforeAll(async () => {
  profile = mkdtempSync(join(tmpdir(), 'judged-'));
  const args = [...CHROMIUM.args, '--remote-debugging-port=0'];
  context = await chromium.launchPersistentContext(profile, { ...CHROMIUM, args, viewport: null });
  port = Number(readFileSync(join(profile, 'DevToolsActivePort'), 'utf8').split('\n')[0]);
});
afterAll(async () => {
  await context?.close();
  rmSync(profile, { recursive: true, force: true });
});

interface Judged {
  /** Out of 100, by category. */
  readonly scores: Readonly<Record<string, number>>;
  readonly faults: readonly string[];
}

async function judge(hash: string, categories: string[], isFirstVisit = false): Promise<Judged> {
  const result = await lighthouse(`${base}${hash}`, {
    port,
    logLevel: 'error',
    onlyCategories: categories,
    disableFullPageScreenshot: true,
    disableStorageReset: !isFirstVisit,
  });
  if (!result || result.lhr.runtimeError) throw new Error(result?.lhr.runtimeError?.message ?? 'not judged');
  const { audits, categories: judged } = result.lhr;
  const scores = Object.values(judged).map(({ id, score }) => [id, Math.round((score ?? 0) * 100)] as const);
  const faults = Object.values(judged)
    .filter(({ id }) => id !== 'performance')
    .flatMap(({ auditRefs }) => auditRefs.filter(({ weight }) => weight > 0))
    .map(({ id }) => audits[id])
    .flatMap((audit) => (audit && audit.score !== null && audit.score < 1 ? [audit.title] : []));
  return { scores: Object.fromEntries(scores), faults };
}

async function enterDemo(): Promise<string> {
  const page = await context.newPage();
  await page.goto(base);
  await page
    .getByRole('button', { name: /demo shop/ })
    .first()
    .click();
  await page.locator('.piece-row .wait-bar').first().waitFor();
  const piece = await page.locator('a[href^="#/piece/"]').first().getAttribute('href');
  await page.close();
  return piece ?? '';
}

test('a first visit is fast', async () => {
  const scores: number[] = [];
  // Other work on the machine can only slow a visit: one that was fast is enough, and where none was it is looked at again.
  while (!scores.some((score) => score >= FAST_ENOUGH) && scores.length < MOST_VISITS)
    scores.push((await judge('', ['performance'], true)).scores['performance'] ?? 0);
  console.log(`speed of a first visit, out of 100: ${scores.join(', ')}`);
  expect(Math.max(...scores)).toBeGreaterThanOrEqual(FAST_ENOUGH);
}, 240_000);

test('the bench, a piece and Mix have no fault in access or good practice', async () => {
  for (const hash of ['#/bench', await enterDemo(), '#/mix']) {
    const { scores, faults } = await judge(hash, ['accessibility', 'best-practices']);
    expect(faults, hash).toEqual([]);
    expect(scores, hash).toEqual({ accessibility: 100, 'best-practices': 100 });
  }
}, 240_000);
