import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { beforeEach, describe, expect, test } from 'vitest';
import { base, context, goTo, newPage, openApp, page, takePhone } from '../app';
import { MOBILE } from '../browser';
import { axeViolations, overTheSide } from '../looked-at';

const PLACES = ['bench', 'mix', 'lay', 'match', 'air'] as const;

describe('on a phone', () => {
  beforeEach(() => openApp());

  test('shows the bench, and by touch each place, with the reader at its title', async () => {
    for (const [link, title] of [
      ['Mix', 'Mix'],
      ['Match', 'Match'],
      ['Air', 'Air'],
      ['Log a coat', 'Log a coat'],
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
    await openApp(options);
    for (const place of PLACES) {
      await goTo(`#/${place}`);
      await page.locator('main h2').first().waitFor();
      expect(await axeViolations()).toEqual([]);
      expect(await overTheSide()).toBe(0);
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
  await takePhone(MOBILE);
  await newPage(address);
  await page.goto(address);
  await page.getByRole('heading', { level: 1, name: 'Bench' }).waitFor();
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
