import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, inject, test } from 'vitest';
import { PHOTO_FAULTS } from '../../src/words/match/photo';
import { animated, jpeg, NO_PHOTOS, png, turned } from '../hostile/pictures';
import { launch, MOBILE } from './browser';
import { crashShop } from './crash-shop';
import { bringPictures, chooseEach, type Place, photoAs, type Trial } from './photo-trials';

// So many harmed files for each of the two places that take photos; `PHOTOS=5000` for a long run.
const TRIALS = Number(process.env['PHOTOS'] ?? 150);
const base = inject('baseUrl');
let browser: Browser;
let context: BrowserContext;
let page: Page;
let problems: string[];

beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser?.close());
beforeEach(async () => {
  context = await browser.newContext(MOBILE);
  page = await context.newPage();
  page.setDefaultTimeout(20_000);
  problems = [];
  page.on('pageerror', ({ message }) => problems.push(message));
  page.on('dialog', (dialog) => problems.push(`a dialog: ${dialog.message()}`));
  page.on('crash', () => problems.push('the page crashed'));
});
afterEach(async () => {
  expect(problems).toEqual([]);
  expect(await page.evaluate(() => 'hacked' in globalThis)).toBe(false);
  await context.close();
});

const button = (name: string | RegExp) => page.getByRole('button', { name });

/** To a recipe, where a photo of the dried card is saved. */
async function toCard(): Promise<Place> {
  await page.goto(`${base}#/more`);
  const shop = await crashShop();
  const buffer = Buffer.from(shop.backup);
  const backup = { name: 'backup.json', mimeType: 'application/json', buffer };
  await page.locator('input[type="file"]').setInputFiles(backup);
  await page.getByText('5 entries restored.').waitFor();
  await page.goto(`${base}#/mix/recipe/${shop.recipe}`);
  await page.getByText('The dried card', { exact: true }).tap();
  await page.getByText('Photograph the dried card').waitFor();
  return { picture: '.photos img', isAdded: true };
}

/** To the place where a colour is read from a photo. */
async function toMatch(): Promise<Place> {
  await page.goto(`${base}#/match/new`);
  await page.getByRole('textbox', { name: 'Name', exact: true }).fill('Radio cabinet');
  await page.getByRole('radio', { name: /^Edge/ }).tap();
  await page.getByRole('checkbox', { name: /^Ochre/ }).tap();
  await page.getByRole('radio', { name: '10 % and 1 %' }).tap();
  await button('Start the match').tap();
  await page.getByRole('heading', { level: 1, name: 'Radio cabinet' }).waitFor();
  await page.goto(`${base}${new URL(page.url()).hash}/photo/target`);
  await page.getByLabel('Take or choose a photo').waitFor();
  return {
    picture: '.photo img',
    isAdded: false,
    isMarked: true,
    press: 'main .button[data-kind="main"]',
    answer: '[data-took-ms], [aria-live] .notice',
    refusal: PHOTO_FAULTS['not-opened'],
  };
}

/** What is kept: photos, the entries that name them, and whether every one of them opens. */
const kept = () =>
  page.evaluate(async () => {
    const rows = (name: string, table: string): Promise<unknown[]> =>
      new Promise((resolve, reject) => {
        const opening = indexedDB.open(name);
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          if (!opening.result.objectStoreNames.contains(table)) return resolve([]);
          const asking = opening.result.transaction(table).objectStore(table).getAll();
          asking.onsuccess = () => {
            opening.result.close();
            resolve(asking.result);
          };
        };
      });
    const photos = (await rows('coatwait-photos', 'photos')) as { type: string; bytes: ArrayBuffer }[];
    const entries = (await rows('coatwait', 'entries')) as { kind: string }[];
    const opened = await Promise.all(
      photos.map(({ type, bytes }) => createImageBitmap(new Blob([bytes], { type })).then(() => true)),
    );
    return {
      photos: opened.length,
      entries: entries.filter(({ kind }) => kind === 'card-photographed').length,
    };
  });

const PLACES = [
  { place: 'a photo of the dried card', go: toCard },
  { place: 'a photo of a match', go: toMatch },
] as const;
const NAMES = [
  'card.jpg',
  '<img src=x onerror="globalThis.hacked=1">.png',
  '\u202egpj.drac\u202c',
  `${'x'.repeat(10_000)}.jpg`,
  '..\\../../card.png',
];
const TYPES = ['image/jpeg', 'image/png', 'image/svg+xml', 'text/html', ''];
const pick = <Value>(from: readonly Value[]): Value => from[Math.floor(Math.random() * from.length)] as Value;
const upTo = (most: number): number => Math.floor(Math.random() * most);

/** A photo cut short, or with bytes changed in it, or both. */
function harm(picture: number, bytes: number): Trial {
  const isCut = Math.random() < 0.5;
  const isChanged = !isCut || Math.random() < 0.3;
  const changes = Array.from({ length: 1 + upTo(6) }, () => ({ at: upTo(bytes), byte: upTo(256) }));
  return {
    picture,
    ...(isCut && { cut: upTo(bytes) }),
    ...(isChanged && { changes }),
    name: pick(NAMES),
    type: pick(TYPES),
  };
}

describe.each(PLACES)('$place', ({ place, go }) => {
  test('says what to do with every file that is no photo, and takes every odd one that is', async () => {
    const done = await go();
    const webp = await photoAs(page, 'image/webp');
    const huge = { width: 60_000, height: 60_000 };
    const cases: readonly (readonly [file: Uint8Array, said: string])[] = [
      ...Object.values(NO_PHOTOS).map((file) => [file, PHOTO_FAULTS['no-photo']] as const),
      [new Uint8Array(), PHOTO_FAULTS.empty],
      [png({ width: 1, height: 1, says: huge }), PHOTO_FAULTS['too-many-pixels']],
      [jpeg(3, huge), PHOTO_FAULTS['too-many-pixels']],
      [animated(webp, huge), PHOTO_FAULTS['too-many-pixels']],
      [webp.slice(0, -1), PHOTO_FAULTS['cut-short']],
      [png({ width: 9, height: 9, isTorn: true }), PHOTO_FAULTS['not-opened']],
      [png({ width: 1, height: 1, ballast: 3_000_000 }), 'taken'],
      [png({ width: 64, height: 48, depth: 16 }), 'taken'],
      [png({ width: 64, height: 48, frames: 3 }), 'taken'],
      [animated(webp, { width: 320, height: 240 }), 'taken'],
      [jpeg(1), 'taken'],
      [jpeg(4), 'taken'],
      [turned(jpeg(3), 6), 'taken'],
      [webp, 'taken'],
    ];
    await bringPictures(
      page,
      cases.map(([file]) => file),
    );
    const trials = cases.map((_, picture) => ({ picture, name: NAMES[picture % NAMES.length] as string }));
    expect(await chooseEach(page, trials, done)).toEqual(cases.map(([, said]) => said));
    if (done.isAdded) expect(await kept()).toEqual({ photos: 8, entries: 8 });
  });

  test(
    `${TRIALS} harmed photos: each is taken whole, or told why not`,
    async () => {
      const done = await go();
      const pictures = [
        ...(await Promise.all(['image/jpeg', 'image/png', 'image/webp'].map((type) => photoAs(page, type)))),
        jpeg(4),
        png({ width: 64, height: 48, frames: 3 }),
        turned(jpeg(3), 6),
      ];
      await bringPictures(page, pictures);
      const sentences: readonly string[] = Object.values(PHOTO_FAULTS);
      const counts = new Map<string, number>();
      for (let left = TRIALS; left > 0; left -= 50) {
        const trials = Array.from({ length: Math.min(50, left) }, () => {
          const picture = upTo(pictures.length);
          return harm(picture, pictures[picture]?.length ?? 0);
        });
        const said = await chooseEach(page, trials, done);
        for (const [i, one] of said.entries()) {
          expect([...sentences, 'taken'], JSON.stringify(trials[i])).toContain(one);
          counts.set(one, (counts.get(one) ?? 0) + 1);
        }
      }
      console.log(`${place}: ${TRIALS} harmed files`, Object.fromEntries(counts));
      expect(counts.size).toBeGreaterThan(1);
      const taken = counts.get('taken') ?? 0;
      if (done.isAdded) expect(await kept()).toEqual({ photos: taken, entries: taken });
      await page.goto(`${base}#/bench`);
      await page.getByRole('heading', { level: 1 }).waitFor();
    },
    60_000 + TRIALS * 6_000,
  );
});

test('a photo taken with the phone on its side is kept upright', async () => {
  const place = await toCard();
  await bringPictures(page, [turned(await photoAs(page, 'image/jpeg'), 6)]);
  expect(await chooseEach(page, [{ picture: 0 }], place)).toEqual(['taken']);
  const size = await page
    .locator(place.picture)
    .evaluate((image: HTMLImageElement) => [image.naturalWidth, image.naturalHeight]);
  expect(size).toEqual([240, 320]);
});

test('a photo of 48 megapixels is drawn smaller, and reads as what it shows', async () => {
  const place = await toMatch();
  await page.getByRole('radio', { name: /^Grey card/ }).tap();
  await bringPictures(page, [png({ width: 8_000, height: 6_000 })]);
  expect(await chooseEach(page, [{ picture: 0 }], place)).toEqual(['taken']);
  // Sample and card are one grey, and a card of 18 % has L* = 116 x 0.18^(1/3) - 16 = 49.5 (CIE 15:2018, 8.2.1.1).
  await page.getByText(/^The sample reads 49\.5 \/ [−-]?0\.0 \/ [−-]?0\.0$/).waitFor();
});
