import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Browser, BrowserContext } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject, test } from 'vitest';
import { launch, MOBILE } from './browser';

const base = inject('baseUrl');
let browser: Browser;
let context: BrowserContext;
beforeAll(async () => {
  browser = await launch();
});
afterEach(() => context?.close());
afterAll(() => browser?.close());

/** The built app behind a server of our own, which can put out a newer version that lacks one of its files. */
async function serveWithBrokenUpdate() {
  let isBroken = false;
  const server = createServer(async ({ url = '/' }, response) => {
    if (url.includes('gone-')) return void response.writeHead(404).end();
    const upstream = await fetch(new URL(url, base));
    const body = Buffer.from(await upstream.arrayBuffer());
    response.setHeader('Content-Type', upstream.headers.get('Content-Type') ?? '');
    const isWorker = isBroken && url === '/service-worker.js';
    response.end(isWorker ? body.toString().replace('assets/', 'assets/gone-') : body);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    release: () => {
      isBroken = true;
    },
    close: () => server.close(),
  };
}

test('an update that lacks a file is dropped: the version that works goes on, offline too, and nothing is offered', async () => {
  const { address, release, close } = await serveWithBrokenUpdate();
  context = await browser.newContext(MOBILE);
  const page = await context.newPage();
  await page.goto(address);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  release();
  const states = await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    const found = new Promise<ServiceWorker | null>((resolve) => {
      registration.addEventListener('updatefound', () => resolve(registration.installing));
    });
    await registration.update().catch(() => undefined);
    const fresh = await found;
    await new Promise<void>((resolve) => {
      const look = () => fresh?.state === 'redundant' && resolve();
      fresh?.addEventListener('statechange', look);
      look();
    });
    return { waiting: registration.waiting !== null, active: registration.active?.state };
  });
  expect(states).toEqual({ waiting: false, active: 'activated' });
  expect(await page.getByRole('button', { name: 'Reload now' }).count()).toBe(0);
  await context.setOffline(true);
  await page.reload();
  await page.getByRole('heading', { level: 1, name: 'Bench' }).waitFor();
  close();
});
