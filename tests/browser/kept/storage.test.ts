import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { base, context, goTo, newPage, openApp, openPage, page, takePhone } from '../app';
import { bringCrashShop } from '../crash-shop';
import { startPiece } from './backup-steps';

// A device that keeps nothing, or nothing more.

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
  await takePhone();
  await newPage();
  await quota(1); // before the first visit: Chromium asks for the room that is left only every half minute
  await goTo('');
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
  await openPage();
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
    await takePhone();
    await context.addInitScript(withoutSecondCopy);
    await context.addInitScript(refuse);
    await openPage();
    await page.getByText('The logbook could not be opened').waitFor();
    await page.getByText(says).first().waitFor();
    await startPiece('Held box');
    await page.getByText('1 entry is not saved on this device').waitFor();
    const downloading = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save it as a file' }).tap();
    expect(readFileSync(await (await downloading).path(), 'utf8')).toContain('Held box');
  },
);

test('a browser without a place for a second copy: that is said beside the backup, and work goes on', async () => {
  await takePhone();
  await context.addInitScript(withoutSecondCopy);
  await openPage();
  await startPiece('Only box');
  await goTo('#/more');
  await page.getByText('There is no second copy on this phone').waitFor();
  await page.reload();
  await goTo('#/bench');
  await page.getByText('Only box').first().waitFor();
});

test('a photo on a full device: it is said, and nothing of it is left', async () => {
  await openApp();
  const shop = await bringCrashShop(page);
  await goTo(`#/mix/recipe/${shop.recipe}`);
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
