import { readFileSync } from 'node:fs';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject, test } from 'vitest';
import { launch, MOBILE } from './browser';
import { crashShop } from './crash-shop';

const base = inject('baseUrl');
let browser: Browser;
let context: BrowserContext;
let page: Page;

beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser?.close());
afterEach(() => context?.close());

async function open(prepare?: (context: BrowserContext) => Promise<unknown>): Promise<void> {
  context = await browser.newContext(MOBILE);
  await prepare?.(context);
  page = await context.newPage();
  page.setDefaultTimeout(20_000);
  await page.goto(base);
  await page.getByRole('heading', { level: 1 }).waitFor();
}

async function startPiece(name: string): Promise<void> {
  await page.goto(`${base}#/piece/new`);
  await page.getByRole('textbox', { name: 'Name', exact: true }).fill(name);
  await page.getByRole('radio', { name: /^Sealed wood/ }).tap();
  await page.getByRole('button', { name: 'Start this piece' }).tap();
  await page.getByRole('heading', { name }).first().waitFor();
}

/** A browser without a place for a second copy, as some are. */
const withoutSecondCopy = (): void => {
  Object.defineProperty(StorageManager.prototype, 'getDirectory', { value: undefined });
};

const quota = async (bytes?: number): Promise<void> => {
  const devtools = await context.newCDPSession(page);
  const origin = new URL(base).origin;
  await devtools.send('Storage.overrideQuotaForOrigin', {
    origin,
    ...(bytes !== undefined && { quotaSize: bytes }),
  });
};

test('a full device: the work goes on in memory, is offered as a file, and is kept once there is room', async () => {
  context = await browser.newContext(MOBILE);
  page = await context.newPage();
  page.setDefaultTimeout(20_000);
  await quota(1); // before the first visit: Chromium asks for the room that is left only every half minute
  await page.goto(base);
  await page.getByRole('heading', { level: 1 }).waitFor();
  await startPiece('Held box');
  await page.getByText('1 entry is not saved on this device').waitFor();
  await page.getByText('This device is full.').waitFor();
  await startPiece('Second held box');
  await page.getByText('2 entries are not saved on this device').waitFor();

  const downloading = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save it as a file' }).tap();
  const saved = readFileSync(await (await downloading).path(), 'utf8');
  for (const name of ['Held box', 'Second held box']) expect(saved).toContain(name);

  await quota();
  await page.getByRole('button', { name: 'Try again' }).tap();
  await page.getByText('Everything is saved now.').waitFor();
  expect(await page.getByText(/not saved on this device/).count()).toBe(0);
  await page.close();
  page = await context.newPage();
  await page.goto(base);
  for (const name of ['Held box', 'Second held box'])
    await page.getByText(name, { exact: true }).first().waitFor();
});

test.each([
  {
    why: 'that refuses storage, as a private window may',
    refuse: () => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('The operation is insecure.', 'SecurityError');
      };
    },
    says: 'This browser keeps nothing here',
  },
  {
    why: 'whose files are damaged',
    refuse: () => {
      IDBDatabase.prototype.transaction = () => {
        throw new DOMException('Internal error.', 'UnknownError');
      };
    },
    says: 'The browser cannot use what it keeps',
  },
  {
    why: 'that never answers',
    refuse: () => {
      IDBFactory.prototype.open = () => ({}) as IDBOpenDBRequest;
    },
    says: 'This device did not answer in time',
  },
])(
  'a browser $why: it is said at once, the work goes on, and can be saved as a file',
  async ({ refuse, says }) => {
    await open(async (one) => {
      await one.addInitScript(withoutSecondCopy);
      await one.addInitScript(refuse);
    });
    await page.getByText('The logbook could not be opened').waitFor();
    await page.getByText(says).first().waitFor();
    await startPiece('Held box');
    await page.getByText('1 entry is not saved on this device').waitFor();
    const downloading = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save it as a file' }).tap();
    expect(readFileSync(await (await downloading).path(), 'utf8')).toContain('Held box');
  },
);

test('a database that cannot be used any more: the second copy keeps the work, over a restart, and that is said', async () => {
  await open();
  await startPiece('First box');
  await context.addInitScript(() => {
    IDBDatabase.prototype.transaction = () => {
      throw new DOMException('Internal error.', 'UnknownError');
    };
  });
  for (const name of ['Second box', 'Third box']) {
    await page.close();
    page = await context.newPage();
    page.setDefaultTimeout(20_000);
    await page.goto(base);
    await page.getByText('The browser’s database cannot be used').waitFor();
    await page.getByText('First box', { exact: true }).first().waitFor();
    await startPiece(name);
    expect(await page.getByText(/not saved on this device/).count()).toBe(0);
  }
  await page.goto(`${base}#/bench`);
  for (const name of ['First box', 'Second box', 'Third box'])
    await page.getByText(name, { exact: true }).first().waitFor();
});

test('a browser without a place for a second copy: that is said beside the backup, and work goes on', async () => {
  await open((one) => one.addInitScript(withoutSecondCopy));
  await startPiece('Only box');
  await page.goto(`${base}#/more`);
  await page.getByText('There is no second copy on this phone').waitFor();
  await page.reload();
  await page.goto(`${base}#/bench`);
  await page.getByText('Only box').first().waitFor();
});

/** A page of the same origin without the app, which leaves databases as an upgrade that was broken off does: without their table. */
async function leaveWithoutTable(names: readonly string[], isHeld: boolean): Promise<Page> {
  context = await browser.newContext(MOBILE);
  const before = await context.newPage();
  await before.goto(`${base}icons/icon-192.png`);
  await before.evaluate(
    async ([all, keepOpen]) => {
      for (const name of all)
        await new Promise<void>((resolve, reject) => {
          const opening = indexedDB.open(name);
          opening.onerror = () => reject(opening.error);
          opening.onsuccess = () => {
            if (!keepOpen) opening.result.close();
            resolve();
          };
        });
    },
    [names, isHeld] as const,
  );
  return before;
}

async function openHere(): Promise<void> {
  page = await context.newPage();
  page.setDefaultTimeout(20_000);
  await page.goto(base);
  await page.getByRole('heading', { level: 1 }).waitFor();
}

test('an upgrade that was broken off: the logbook opens, and keeps work and photos', async () => {
  await leaveWithoutTable(['coatwait', 'coatwait-photos', 'coatwait-first'], false);
  await openHere();
  const shop = await crashShop();
  await page.goto(`${base}#/more`);
  const buffer = Buffer.from(shop.backup);
  const backup = { name: 'backup.json', mimeType: 'application/json', buffer };
  await page.locator('main input[type="file"]').setInputFiles(backup);
  await page.getByText('5 entries restored.').waitFor();
  await page.goto(`${base}#/mix/recipe/${shop.recipe}`);
  const card = { name: 'card.png', mimeType: 'image/png', buffer: await page.screenshot() };
  await page.locator('main input[type="file"]').setInputFiles(card);
  await page.getByRole('img', { name: 'Photo 1 of the dried card' }).waitFor();
  await page.reload();
  await page.getByRole('img', { name: 'Photo 1 of the dried card' }).waitFor();
});

test('another tab that holds the logbook up: it is said, and work is kept once the tab is closed', async () => {
  const holding = await leaveWithoutTable(['coatwait'], true);
  await openHere();
  await page.getByText('The logbook could not be opened').waitFor();
  await page.getByText('Close other tabs of this app and try again').waitFor();
  await holding.close();
  await page.getByRole('button', { name: 'Try again' }).tap();
  await page.getByText('The logbook could not be opened').waitFor({ state: 'detached' });
  await startPiece('Late box');
  await page.reload();
  await page.getByText('Late box').first().waitFor();
});

test('rows that are no entries: they are named and kept, and the rest is open', async () => {
  await open();
  await startPiece('Walnut box');
  await page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        const opening = indexedDB.open('coatwait');
        opening.onsuccess = () => {
          const writing = opening.result.transaction('entries', 'readwrite');
          const rows = [null, 'torn', { kind: 'coat-laid' }, new Blob(['x']), new ArrayBuffer(9)];
          for (const [n, row] of rows.entries()) writing.objectStore('entries').put(row, `torn-${n}`);
          writing.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
  );
  await page.goto(`${base}#/bench`);
  await page.reload();
  await page.getByText('5 entries could not be read').waitFor();
  await page.getByText('Walnut box').first().waitFor();
  await startPiece('Second box');
  await page.goto(`${base}#/more`);
  for (const key of ['torn-0', 'torn-4']) await page.getByText(key).first().waitFor();
});

test('a photo on a full device: it is said, and nothing of it is left', async () => {
  await open();
  const shop = await crashShop();
  await page.goto(`${base}#/more`);
  const buffer = Buffer.from(shop.backup);
  await page
    .locator('main input[type="file"]')
    .setInputFiles({ name: 'backup.json', mimeType: 'application/json', buffer });
  await page.getByText('5 entries restored.').waitFor();
  await page.goto(`${base}#/mix/recipe/${shop.recipe}`);
  await page.getByText('The dried card', { exact: true }).tap();
  await page.evaluate(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('', 'QuotaExceededError');
    };
  });
  const card = { name: 'card.png', mimeType: 'image/png', buffer: await page.screenshot() };
  await page.locator('main input[type="file"]').setInputFiles(card);
  await page.locator('.problem', { hasText: /full/ }).waitFor();
  expect(await page.getByRole('img', { name: /of the dried card/ }).count()).toBe(0);
});
