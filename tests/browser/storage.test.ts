import { readFileSync } from 'node:fs';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject, test } from 'vitest';
import { launch, MOBILE } from './browser';

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
  await page.getByText('1 entry is not kept on this device').waitFor();
  await page.getByText('This device is full.').waitFor();
  await startPiece('Second held box');
  await page.getByText('2 entries are not kept on this device').waitFor();

  const downloading = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save it as a file' }).tap();
  const saved = readFileSync(await (await downloading).path(), 'utf8');
  for (const name of ['Held box', 'Second held box']) expect(saved).toContain(name);

  await quota();
  await page.getByRole('button', { name: 'Try again' }).tap();
  await page.getByText('Everything is kept now.').waitFor();
  expect(await page.getByText(/not kept on this device/).count()).toBe(0);
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
])(
  'a browser $why: it is said at once, the work goes on, and can be saved as a file',
  async ({ refuse, says }) => {
    await open((one) => one.addInitScript(refuse));
    await page.getByText('The logbook could not be opened').waitFor();
    await page.getByText(says).first().waitFor();
    await startPiece('Held box');
    await page.getByText('1 entry is not kept on this device').waitFor();
    const downloading = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save it as a file' }).tap();
    expect(readFileSync(await (await downloading).path(), 'utf8')).toContain('Held box');
  },
);
