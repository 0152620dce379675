import { afterAll, beforeAll, expect, test } from 'vitest';
import { context, newPage, page, takePhone } from '../app';
import { serveInFolder } from './static-host';

let host: Awaited<ReturnType<typeof serveInFolder>>;
beforeAll(async () => {
  host = await serveInFolder();
});
afterAll(() => host.close());

const isBench = () => page.getByRole('heading', { level: 1, name: 'Bench' }).waitFor();
const isKept = () => page.waitForFunction(() => navigator.serviceWorker.controller !== null);

async function open(): Promise<void> {
  await takePhone();
  await newPage(host.origin);
  await page.goto(host.address);
  await isBench();
  await isKept();
}

test('in a folder of a plain host the app opens, logs, and opens again without a network', async () => {
  await open();
  await page.goto(`${host.address}#/piece/new`);
  await page.getByLabel('Name', { exact: true }).fill('Small box');
  await page.getByRole('button', { name: 'Start this piece' }).tap();
  await page.getByRole('heading', { level: 1, name: 'Small box' }).waitFor();
  await context.setOffline(true);
  await page.reload();
  await page.getByRole('heading', { level: 1, name: 'Small box' }).waitFor();
  for (const place of ['mix', 'match', 'air', 'more', 'plan']) {
    await page.goto(`${host.address}#/${place}`);
    await page.getByRole('heading', { level: 1 }).waitFor();
    await page.locator('main > p.heard').first().waitFor({ state: 'detached' });
  }
});

test('its manifest, icons, scope and worker stay inside that folder', async () => {
  await open();
  const found = await page.evaluate(async () => {
    const link = document.querySelector<HTMLLinkElement>('link[rel=manifest]');
    const manifest = await (await fetch(link?.href ?? '')).json();
    const absolute = (path: string) => new URL(path, link?.href).href;
    const icons = manifest.icons.map(({ src }: { src: string }) => absolute(src));
    const fetched = await Promise.all(icons.map(async (src: string) => (await fetch(src)).ok));
    const { scope } = await navigator.serviceWorker.ready;
    return {
      start: absolute(manifest.start_url),
      scope: absolute(manifest.scope),
      id: manifest.id,
      fetched,
      worker: scope,
    };
  });
  const { address } = host;
  // No id of its own: it is then the start address (W3C Web Application Manifest), so two shops on one host are two apps.
  expect(found).toEqual({
    start: address,
    scope: address,
    id: undefined,
    fetched: [true, true, true],
    worker: address,
  });
});

const keptNow = () =>
  page.evaluate(async () => {
    const caching = await Promise.all((await caches.keys()).map((name) => caches.open(name)));
    return (await Promise.all(caching.map((cache) => cache.keys()))).flat().length;
  });

test('what the browser dropped of the kept app is fetched again while there is a network', async () => {
  await open();
  const all = await keptNow();
  await page.evaluate(async () => {
    for (const name of await caches.keys()) {
      const cache = await caches.open(name);
      for (const [index, request] of (await cache.keys()).entries())
        if (index % 2 === 0) await cache.delete(request);
    }
  });
  expect(await keptNow()).toBeLessThan(all / 1.5);
  await page.reload();
  await expect.poll(keptNow, { timeout: 20_000 }).toBe(all);
  await context.setOffline(true);
  await page.reload();
  await isBench();
});

test('a reload during the very first visit is no new version', async () => {
  await takePhone();
  await newPage(host.origin);
  await page.goto(host.address);
  await page.reload();
  await isBench();
  await isKept();
  await page.waitForTimeout(1000);
  expect(await page.getByRole('button', { name: 'Reload now' }).count()).toBe(0);
});

test('a newer version in that folder is offered, and takes over with everything logged', async () => {
  await open();
  await page.goto(`${host.address}#/piece/new`);
  await page.getByLabel('Name', { exact: true }).fill('Small box');
  await page.getByRole('button', { name: 'Start this piece' }).tap();
  await page.getByRole('heading', { level: 1, name: 'Small box' }).waitFor();
  const isNewer = () =>
    page.evaluate(async () => {
      const { active } = await navigator.serviceWorker.ready;
      const { port1, port2 } = new MessageChannel();
      const answered = new Promise((resolve) => {
        port1.onmessage = () => resolve(true);
        setTimeout(() => resolve(false), 1_000);
      });
      active?.postMessage('newer?', [port2]);
      return answered;
    });
  expect(await isNewer()).toBe(false);
  host.release(
    ";self.addEventListener('message', ({ data, ports }) => data === 'newer?' && ports[0].postMessage(0));",
  );
  try {
    await page.goto(`${host.address}?later`);
    await page.getByRole('button', { name: 'Reload now' }).tap();
    await expect.poll(isNewer, { timeout: 20_000 }).toBe(true); // one question takes a second where nobody answers
    await page.getByText('Small box').first().waitFor();
    expect(await page.getByRole('button', { name: 'Reload now' }).count()).toBe(0);
  } finally {
    host.release('');
  }
});
