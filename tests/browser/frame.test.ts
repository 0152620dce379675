import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { createRequire } from 'node:module';
import type { AddressInfo } from 'node:net';
import type { AxeResults } from 'axe-core';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, inject, test } from 'vitest';
import { launch, MOBILE } from './browser';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const base = inject('baseUrl');
const PLACES = ['bench', 'mix', 'lay', 'match', 'air'] as const;

let browser: Browser;
let context: BrowserContext;
let page: Page;
let problems: string[];

async function open(
  options: Parameters<Browser['newContext']>[0] = MOBILE,
  address: string = base,
): Promise<void> {
  context = await browser.newContext(options);
  page = await context.newPage();
  problems = [];
  page.on('pageerror', (error) => problems.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') problems.push(message.text());
  });
  page.on('request', (request) => {
    if (!request.url().startsWith(address)) problems.push(`asked another origin: ${request.url()}`);
  });
  await page.goto(address);
  await page.getByRole('heading', { level: 1, name: 'Bench' }).waitFor();
}

async function axeViolations(): Promise<string[]> {
  await page.evaluate(axeSource); // evaluate, not a script element: the policy forbids those
  const { violations } = await page.evaluate(() =>
    (globalThis as unknown as { axe: { run(): Promise<AxeResults> } }).axe.run(),
  );
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
}

beforeAll(async () => {
  browser = await launch();
});
afterAll(async () => {
  await browser?.close();
});
afterEach(async () => {
  await context?.close();
});

describe('on a phone', () => {
  beforeEach(() => open());
  afterEach(() => {
    expect(problems).toEqual([]); // no error, no breach of the content security policy, no other origin
  });

  test('shows the bench, and by touch each place, with the reader at its title', async () => {
    for (const [link, title] of [
      ['Mix', 'Mix'],
      ['Match', 'Match'],
      ['Air', 'Air'],
      ['Lay a coat', 'Lay a coat'],
      ['Bench', 'Bench'],
    ] as const) {
      await page.getByRole('navigation').getByRole('link', { name: link }).tap();
      const heading = page.getByRole('heading', { level: 1, name: title });
      await heading.waitFor();
      await page.waitForFunction((text) => document.activeElement?.textContent === text, title);
      expect(await page.locator('nav [aria-current="page"]').textContent()).toBe(link);
    }
  });

  test('every touch target of the bar is at least 56 px high and wide', async () => {
    for (const link of await page.getByRole('navigation').getByRole('link').all()) {
      const box = await link.boundingBox();
      expect(box?.height).toBeGreaterThanOrEqual(56);
      expect(box?.width).toBeGreaterThanOrEqual(56);
    }
  });

  test('works without a network after the first visit', async () => {
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await context.setOffline(true);
    const response = await page.reload();
    expect(response?.fromServiceWorker()).toBe(true);
    await page.getByRole('heading', { level: 1, name: 'Bench' }).waitFor();
    await page.getByRole('navigation').getByRole('link', { name: 'Air' }).tap();
    await page.getByRole('heading', { level: 1, name: 'Air' }).waitFor();
  });

  test('its manifest is whole, and its icons are there in the size they claim', async () => {
    const devtools = await context.newCDPSession(page);
    const { data = '', errors } = await devtools.send('Page.getAppManifest');
    expect(errors).toEqual([]);
    const { icons } = JSON.parse(data) as { icons: { src: string; sizes: string }[] };
    expect(icons).toHaveLength(3);
    for (const { src, sizes } of icons) {
      const png = await (await page.request.get(new URL(src, base).href)).body();
      expect(`${png.readUInt32BE(16)}x${png.readUInt32BE(20)}`).toBe(sizes); // the PNG's own header
    }
    const { installabilityErrors } = await devtools.send('Page.getInstallabilityErrors');
    // A test's window counts as a private one, which is the one thing that may stand in the way.
    expect(installabilityErrors.map(({ errorId }) => errorId).filter((id) => id !== 'in-incognito')).toEqual(
      [],
    );
  });
});

describe.each([
  { name: 'light', options: { ...MOBILE, colorScheme: 'light' } as const },
  { name: 'dark', options: { ...MOBILE, colorScheme: 'dark' } as const },
  { name: 'small', options: { ...MOBILE, viewport: { width: 360, height: 640 } } },
  { name: 'wide', options: { viewport: { width: 1100, height: 800 } } },
])('$name', ({ options }) => {
  test('has no axe violation and nothing runs off the side', async () => {
    await open(options);
    for (const place of PLACES) {
      await page.goto(`${base}#/${place}`);
      await page.locator(`main h2`).first().waitFor();
      expect(await axeViolations()).toEqual([]);
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
      ).toBeLessThanOrEqual(0);
    }
  });
});

/** The built app behind a server of our own, so that a newer service worker can be put there. */
async function serveWithNewerVersions(): Promise<{ address: string; release(): void; close(): void }> {
  let version = 1;
  const server = createServer(async ({ url = '/' }, response) => {
    const upstream = await fetch(new URL(url, base));
    const body = Buffer.from(await upstream.arrayBuffer());
    response.setHeader('Content-Type', upstream.headers.get('Content-Type') ?? '');
    response.end(url === '/service-worker.js' ? `${body}\n// version ${version}` : body);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    release: () => version++,
    close: () => server.close(),
  };
}

test('a new version waits for a tap; a page with a form in progress stays as it is until then', async () => {
  const { address, release, close } = await serveWithNewerVersions();
  await open(MOBILE, address);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await page.evaluate(() => Object.assign(globalThis, { formInProgress: true }));
  release();
  await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
  const reload = page.getByRole('button', { name: 'Reload now' });
  await reload.waitFor();
  expect(await page.evaluate(() => 'formInProgress' in globalThis)).toBe(true);
  await reload.tap();
  await page.waitForFunction(() => !('formInProgress' in globalThis));
  await page.getByRole('heading', { level: 1, name: 'Bench' }).waitFor();
  expect(await reload.count()).toBe(0);
  close();
});
