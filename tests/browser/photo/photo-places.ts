import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, inject } from 'vitest';
import { PHOTO_FAULTS } from '../../../src/words/match/photo';
import { launch, MOBILE } from '../browser';
import { bringCrashShop } from '../crash-shop';
import type { Place } from './photo-trials';

// The two places that take photos, each on a phone of its own; nothing that a file says runs, and nothing breaks.
export const base = inject('baseUrl');
let browser: Browser;
let context: BrowserContext;
export let page: Page;
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

/** To a recipe, where a photo of the dried card is saved. */
export async function toCard(): Promise<Place> {
  const shop = await bringCrashShop(page);
  await page.goto(`${base}#/mix/recipe/${shop.recipe}`);
  await page.getByText('The dried card', { exact: true }).tap();
  await page.getByText('Photograph the dried card').waitFor();
  return { picture: '.photos img', isAdded: true };
}

/** To the place where a colour is read from a photo. */
export async function toMatch(): Promise<Place> {
  await page.goto(`${base}#/match/new`);
  await page.getByRole('textbox', { name: 'Name', exact: true }).fill('Radio cabinet');
  await page.getByRole('radio', { name: /^Edge/ }).tap();
  await page.getByRole('checkbox', { name: /^Ochre/ }).tap();
  await page.getByRole('radio', { name: '10 % and 1 %' }).tap();
  await page.getByRole('button', { name: 'Start the match' }).tap();
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
export const kept = () =>
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

export const PLACES = [
  { place: 'a photo of the dried card', go: toCard },
  { place: 'a photo of a match', go: toMatch },
] as const;

/** What a file may call itself. */
export const NAMES = [
  'card.jpg',
  '<img src=x onerror="globalThis.hacked=1">.png',
  '\u202egpj.drac\u202c',
  `${'x'.repeat(10_000)}.jpg`,
  '..\\../../card.png',
];
