import type { BrowserContext, Page } from 'playwright-core';
import { inject, test } from 'vitest';
import type { EntryBody } from '../../../src/logbook/entry';
import { say } from '../../bench/clock';
import { tenYears } from '../../bench/ten-years';
import { DAY_1_MS, entry, fillJar, id, layCoat, PIECE, startPiece } from '../../logbook/entries';
import { launch, MOBILE } from '../browser';
import { fillDatabases, watchBench } from '../ten-years-in';

// Prints how fast a record of twelve photos is made, in Chromium slowed down four times (the bar: 2 s, 10 MB), and what 2,000
// photos in the logbook cost the start, beside a logbook of the same length without one.
const base = inject('baseUrl');
const SLOW_DOWN = 4;
const IN_RECORD = 12;
const PHOTOS = 2_000;
const ENTRIES = 20_000; // long enough, either way, to open with its first page
const STARTS = 9;
/** The quickest, which whatever else the machine does moves least, and the middle. */
const said = (some: readonly number[]): string =>
  `${Math.min(...some).toFixed(0)} ms at best, ${[...some].sort((one, other) => one - other)[some.length >> 1]?.toFixed(0)} in the middle`;

const photographed = (photo: string): EntryBody => ({
  kind: 'photographed',
  piece: PIECE,
  photo,
  stage: 'before',
  light: 'plain',
  width: 2560,
  height: 1920,
  original: '0'.repeat(64),
});

/** A photo as a phone takes it, 12 megapixels, with a grain that leaves it as large as the app lets a photo be. */
const grainyPhoto = (page: Page): Promise<string> =>
  page.evaluate(async () => {
    const canvas = new OffscreenCanvas(4000, 3000);
    const pen = canvas.getContext('2d');
    if (!pen) throw new Error('no canvas');
    const tile = new ImageData(500, 500);
    for (let i = 0; i < tile.data.length; i++) tile.data[i] = i % 4 === 3 ? 255 : 120 + Math.random() * 40;
    for (let x = 0; x < 4000; x += 500) for (let y = 0; y < 3000; y += 500) pen.putImageData(tile, x, y);
    const bytes = new Uint8Array(
      await (await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.9 })).arrayBuffer(),
    );
    let text = '';
    for (let at = 0; at < bytes.length; at += 32_768)
      text += String.fromCharCode(...bytes.subarray(at, at + 32_768));
    return btoa(text);
  });

async function slowed(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  page.setDefaultTimeout(120_000);
  const devtools = await context.newCDPSession(page);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: SLOW_DOWN });
  return page;
}

test('a record of twelve photos', async () => {
  const browser = await launch();
  const context = await browser.newContext(MOBILE);
  const page = await context.newPage();
  await page.goto(base);
  await page.getByRole('heading', { level: 1 }).waitFor();
  const bodies = [startPiece(), fillJar(), ...Array.from({ length: 6 }, () => layCoat())];
  await fillDatabases(
    page,
    bodies.map((body, n) => entry(n + 1, body, DAY_1_MS + n * 86_400_000)),
    0,
  );
  const buffer = Buffer.from(await grainyPhoto(page), 'base64');
  await page.reload();
  await page.goto(`${base}#/piece/${PIECE}/photos`);
  for (let taken = 1; taken <= IN_RECORD; taken++) {
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'edge.jpg', mimeType: 'image/jpeg', buffer });
    await page
      .locator('.photo-list li')
      .nth(taken - 1)
      .locator('img')
      .waitFor({ timeout: 60_000 });
  }
  await page.close();
  const built: number[] = [];
  let size = 0;
  for (let run = 0; run < 5; run++) {
    const slow = await slowed(context);
    await slow.goto(`${base}#/piece/${PIECE}/record`);
    await slow.waitForFunction(
      (count) => document.querySelectorAll('.record-photos image[href]').length === count,
      IN_RECORD,
    );
    const save = slow.getByRole('button', { name: 'Save as a file' });
    await slow.waitForFunction(() =>
      [...document.querySelectorAll('button')].some(
        (one) => one.textContent === 'Save as a file' && !one.disabled,
      ),
    );
    const given = await save.evaluate(
      (button) =>
        new Promise<{ ms: number; size: number }>((resolve) => {
          const make = URL.createObjectURL.bind(URL);
          const from = performance.now();
          URL.createObjectURL = (file: Blob) => {
            resolve({ ms: performance.now() - from, size: file.size });
            return make(file);
          };
          (button as HTMLButtonElement).click();
        }),
    );
    built.push(given.ms);
    size = given.size;
    await slow.close();
  }
  say(
    `${IN_RECORD} photos, ${SLOW_DOWN} times slower: the record is one file after ${built.map((ms) => ms.toFixed(0)).join(', ')} ms, of ${(size / 1e6).toFixed(2)} MB`,
  );
  await browser.close();
});

test(`the start with ${PHOTOS} photos`, async () => {
  const browser = await launch();
  const plain = tenYears(ENTRIES + PHOTOS, Date.now() - 3_600_000);
  // The same logbook but for its oldest lines, which are photos of one piece.
  const photos = plain.slice(0, PHOTOS).map(({ id: line, at, zone }, n) => ({
    id: line,
    v: 1,
    at,
    zone,
    ...(n === 0 ? startPiece() : photographed(id(0x10000 + n))),
  }));
  const logbooks = [
    { name: 'without', entries: plain.slice(PHOTOS), photos: 0, starts: [] as number[] },
    { name: 'with', entries: [...photos, ...plain.slice(PHOTOS)], photos: PHOTOS, starts: [] as number[] },
  ];
  const phones = await Promise.all(
    logbooks.map(async (logbook) => {
      const context = await browser.newContext(MOBILE);
      const page = await context.newPage();
      await page.goto(base);
      await page.getByRole('heading', { level: 1 }).waitFor();
      await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
      await fillDatabases(page, logbook.entries, logbook.photos);
      await page.close();
      return { context, ...logbook };
    }),
  );
  // By turns, so that whatever else the machine does meets both; the first start of each makes its first page.
  for (let start = -1; start < STARTS; start++)
    for (const { context, starts } of phones) {
      const page = await slowed(context);
      await page.addInitScript(watchBench);
      await page.goto(base);
      await page.waitForFunction(() => 'usableMs' in globalThis);
      if (start >= 0)
        starts.push(await page.evaluate(() => (globalThis as unknown as { usableMs: number }).usableMs));
      else await page.waitForTimeout(8_000);
      await page.close();
    }
  const [none = [], all = []] = phones.map(({ starts }) => starts);
  say(
    `${ENTRIES} entries, ${SLOW_DOWN} times slower, ${STARTS} starts each by turns: without a photo ${said(none)}; with ${PHOTOS} photos and their lines ${said(all)}; ratio of the best ${(Math.min(...all) / Math.min(...none)).toFixed(2)}`,
  );
  await browser.close();
});
