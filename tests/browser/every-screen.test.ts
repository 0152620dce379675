import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, inject, test } from 'vitest';
import { launch, MOBILE } from './browser';

// Every screen that can be reached in the demo shop, one of each kind, held to what every screen must be.
const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const base = inject('baseUrl');
const MANY_SCREENS = 30;
let browser: Browser;
let context: BrowserContext;
let page: Page;
let problems: string[];

/** The kind of a screen: its address without ids, so that one of each is looked at. */
const kindOf = (hash: string): string =>
  hash.replace(/[0-9a-f]{8}-[0-9a-f-]{27}/g, '*').replace(/([?&][^=]+=)[^&]*/g, '$1*');

async function open(options: Parameters<Browser['newContext']>[0] = MOBILE): Promise<void> {
  context = await browser.newContext({ ...MOBILE, ...options });
  page = await context.newPage();
  page.setDefaultTimeout(20_000);
  problems = [];
  page.on('pageerror', (error) => problems.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') problems.push(message.text());
  });
  page.on('request', (request) => {
    const isOwn = request.url().startsWith(base) || request.url().startsWith('blob:');
    if (!isOwn) problems.push(`asked another origin: ${request.url()}`);
  });
  await page.goto(base);
  await page
    .getByRole('button', { name: /demo shop/ })
    .first()
    .tap();
  await page.locator('.row .band-likely').first().waitFor();
}

async function show(hash: string): Promise<void> {
  await page.goto(`${base}${hash}`);
  await page.locator('main h1').first().waitFor({ state: 'attached' });
  await page.waitForFunction(() => !document.querySelector('main > p.heard'));
}

/** Follows every link from the bench and looks at one of each kind of screen; gives the kinds. */
async function lookAtEach(look: (kind: string) => Promise<void>): Promise<readonly string[]> {
  const found = new Map<string, string>([['#/bench', '#/bench']]);
  for (const [kind, hash] of found) {
    await show(hash);
    await look(kind);
    const links = await page
      .locator('a[href^="#/"]')
      .evaluateAll((all) => all.map((link) => link.getAttribute('href') ?? ''));
    for (const link of links) if (!found.has(kindOf(link))) found.set(kindOf(link), link);
  }
  return [...found.keys()];
}

async function axeViolations(): Promise<string[]> {
  await page.evaluate(axeSource); // evaluate, not a script element: the policy forbids those
  const { violations } = await page.evaluate(() =>
    (globalThis as unknown as { axe: { run(): Promise<AxeResults> } }).axe.run(),
  );
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
}

const overTheSide = (): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
const enlargeText = (): Promise<void> =>
  page.evaluate(() => {
    document.documentElement.style.fontSize = '150%';
  });

beforeAll(async () => {
  browser = await launch();
});
afterEach(() => context?.close());
afterAll(() => browser?.close());

describe.each([
  { name: 'light, 390 wide', options: { colorScheme: 'light' }, isLarge: false },
  {
    name: 'dark, 360 wide',
    options: { colorScheme: 'dark', viewport: { width: 360, height: 640 } },
    isLarge: false,
  },
  {
    name: 'light, large text, 360 wide',
    options: { colorScheme: 'light', viewport: { width: 360, height: 640 } },
    isLarge: true,
  },
  { name: 'dark, large text, 390 wide', options: { colorScheme: 'dark' }, isLarge: true },
] as const)('$name', ({ options, isLarge }) => {
  test('no screen has an axe violation, runs off the side, asks another origin or breaks the policy', async () => {
    await open(options);
    const found: string[] = [];
    const kinds = await lookAtEach(async (kind) => {
      if (isLarge) await enlargeText();
      for (const violation of await axeViolations()) found.push(`${kind} ${violation}`);
      const over = await overTheSide();
      if (over > 0) found.push(`${kind} runs ${over} px off the side`);
    });
    console.log(`${kinds.length} kinds of screens`);
    expect(kinds.length).toBeGreaterThan(MANY_SCREENS);
    expect(found).toEqual([]);
    expect(problems).toEqual([]);
  }, 300_000);
});

test('at 320 px, which is 200 % zoom of a small window, nothing needs scrolling sideways', async () => {
  await open({ viewport: { width: 320, height: 640 } });
  const found: string[] = [];
  await lookAtEach(async (kind) => {
    const over = await overTheSide();
    if (over > 0) found.push(`${kind}: ${over} px`);
  });
  expect(found).toEqual([]);
}, 300_000);

test('with reduced motion nothing moves by itself', async () => {
  await open({ reducedMotion: 'reduce' });
  for (const hash of ['#/bench', '#/board', '#/lay', '#/mix', '#/match', '#/air', '#/more']) {
    await show(hash);
    const moving = await page.evaluate(() =>
      document
        .getAnimations()
        .filter(({ effect }) => Number(effect?.getComputedTiming().duration) > 1)
        .map(({ effect }) => (effect as KeyframeEffect).target?.outerHTML.slice(0, 100)),
    );
    expect(moving, hash).toEqual([]);
  }
});
