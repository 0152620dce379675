import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject } from 'vitest';
import { launch, MOBILE } from './browser';

// The app as a test has it: one Chromium a file, a phone of its own a test, and nothing that goes wrong unseen.
export const base = inject('baseUrl');
const LONGEST_MS = 20_000;
/** So many times slower than this machine is: `SLOW=8` shows what a test leaves to luck. */
const SLOW = Number(process.env['SLOW'] ?? 1);

let browser: Browser;
let problems: string[] = [];
/** The phone of this test: what it keeps goes with it. */
export let context: BrowserContext;
/** The page on screen. */
export let page: Page;

beforeAll(async () => {
  browser = await launch();
});
afterEach(async ({ task }) => {
  if (task.result?.state === 'fail') await sayWhatIsShown();
  await context?.close();
  const seen = problems;
  problems = [];
  expect(seen).toEqual([]); // no error, no breach of the content security policy, no other origin
});
afterAll(() => browser?.close());

/** A phone of its own, with nothing on it. */
export async function takePhone(options: BrowserContextOptions = MOBILE): Promise<void> {
  context = await browser.newContext(options);
}

/** The engine of the hub (2.9) answers the closing of a line with a status that Chromium calls broken. */
export const BROKEN_CLOSE = 'broken close frame';

/** An empty page on this phone, watched from now on. */
export async function newPage(origin: string = base): Promise<Page> {
  page = await context.newPage();
  page.setDefaultTimeout(LONGEST_MS * SLOW);
  if (SLOW > 1)
    await (await context.newCDPSession(page)).send('Emulation.setCPUThrottlingRate', { rate: SLOW });
  page.on('pageerror', (error) => problems.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error' && !message.text().includes(BROKEN_CLOSE)) problems.push(message.text());
  });
  page.on('request', (request) => {
    const isOwn = request.url().startsWith(origin) || request.url().startsWith('blob:');
    if (!isOwn) problems.push(`asked another origin: ${request.url()}`);
  });
  return page;
}

/** A cold start: a new page on this phone. */
export async function openPage(hash = ''): Promise<Page> {
  await newPage();
  await goTo(hash);
  return page;
}

/** The app on a phone of its own. */
export async function openApp(options: BrowserContextOptions = MOBILE, hash = ''): Promise<Page> {
  await takePhone(options);
  return openPage(hash);
}

/** The phone takes the page away without a word, and it is opened again. */
export async function killAndReopen(hash = ''): Promise<void> {
  await page.close({ runBeforeUnload: false });
  await openPage(hash);
}

/** Goes to an address of the app, and waits for its title: not for that of the page which is left. */
export async function goTo(hash: string, title?: string | RegExp): Promise<void> {
  if (page.url().startsWith(base)) await moveTo(hash);
  else await page.goto(`${base}${hash}`);
  await page.locator('main > p.heard').first().waitFor({ state: 'detached' }); // the screen is on its way
  await page.getByRole('heading', { level: 1, ...(title !== undefined && { name: title }) }).waitFor();
}

/** Moves as a link does; the app hears of it before this listener, and has left the old page when it is called. */
const moveTo = (hash: string): Promise<void> =>
  page.evaluate((to) => {
    const { promise, resolve } = Promise.withResolvers<void>();
    const isThere = location.hash === to;
    addEventListener('hashchange', () => resolve(), { once: true });
    location.hash = to;
    return isThere ? undefined : promise;
  }, hash);

/** Where the page is. */
export const here = (): string => new URL(page.url()).hash;

async function sayWhatIsShown(): Promise<void> {
  const shown = await page?.locator('body').ariaSnapshot({ timeout: 2_000 }).catch(String);
  console.log(`At ${page?.url()}, with ${JSON.stringify(problems)}, the page showed:\n${shown}`);
}
