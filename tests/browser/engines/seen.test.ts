import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { serveInFolder } from '../frame/static-host';
import { byHand } from './by-hand';
import { type Engine, openFirefox, openWebKit } from './engine';

// What went wrong once in one engine alone, looked for in that engine.
let host: Awaited<ReturnType<typeof serveInFolder>>;
let engine: Engine;
beforeAll(async () => {
  host = await serveInFolder();
});
afterEach(() => engine?.close());
afterAll(() => host.close());

const keptFiles = () =>
  engine.run<number>(
    `const caching = await Promise.all((await caches.keys()).map((name) => caches.open(name)));
     return (await Promise.all(caching.map((cache) => cache.keys()))).flat().length;`,
  );
const dropHalf = () =>
  engine.run(
    `for (const name of await caches.keys()) {
       const cache = await caches.open(name);
       for (const [i, request] of (await cache.keys()).entries()) if (i % 2 === 0) await cache.delete(request);
     }`,
  );

test('Firefox: a reload during the first visit is no new version, and a half lost app is made whole', async () => {
  engine = await openFirefox();
  const { see, isKept } = byHand(engine);
  await engine.goTo(host.address);
  await engine.goTo(host.address);
  await see('Nothing on the bench yet');
  await isKept();
  await new Promise((resolve) => setTimeout(resolve, 1000));
  expect(await see('Nothing on the bench yet')).not.toContain('Reload now');

  const all = await keptFiles();
  await dropHalf();
  expect(await keptFiles()).toBeLessThan(all / 1.5);
  await engine.goTo(`${host.address}?again`);
  await see('Nothing on the bench yet');
  await expect.poll(keptFiles, { timeout: 20_000 }).toBe(all);
  host.pause();
  await engine.goTo(`${host.address}?offline`);
  await see('Nothing on the bench yet');
  host.goOn();
});

/** How far the page runs off the side of a phone of that width: its own page in a frame, since WebKit's window is never so narrow. */
const overTheSide = (hash: string, width: number) =>
  engine.run<number>(
    `const frame = document.createElement('iframe'); frame.width = args[1]; frame.height = 640; frame.style.border = 0; frame.src = './' + args[0];
     document.body.append(frame); await new Promise((resolve) => { frame.onload = resolve; });
     const { documentElement: page } = frame.contentDocument;
     const endMs = Date.now() + 20000;
     while (!page.querySelector('main form')) { if (Date.now() > endMs) throw new Error('no form'); await new Promise((resolve) => setTimeout(resolve, 50)); }
     await new Promise((resolve) => setTimeout(resolve, 500));
     const over = page.scrollWidth - page.clientWidth; const wide = page.clientWidth; frame.remove();
     if (wide > args[1]) throw new Error('the frame is ' + wide + ' wide');
     return over;`,
    hash,
    width,
  );

test('WebKit: a recipe fits the side, and the wake lock is told as it turns out', async () => {
  engine = await openWebKit();
  const { see, tap, to } = byHand(engine);
  await engine.goTo(`${host.address}#/more`);
  await tap('Demo shop');
  await tap('Open the demo shop');
  await see('All invented.');
  for (const width of [390, 360, 320]) expect(await overTheSide('#/mix/recipe/new', width)).toBe(0);
  await to('#/plan/reminders');
  await tap('What this phone can do');
  const told = await see('Screen that stays on');
  const isKeptOn = await engine.run<boolean>(
    `return navigator.wakeLock.request('screen').then((lock) => lock.release()).then(() => true, () => false);`,
  );
  expect(told.includes('No: set the phone not to sleep.')).toBe(!isKeptOn);
});
