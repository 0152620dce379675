import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launch, MOBILE } from '../browser';
import { serveInFolder } from './static-host';

// A name that is not localhost, over plain http, as a phone reaches a computer on the local network.
const NAME = 'shop.test';
const LONGEST_MS = 20_000;
let browser: Browser;
let host: Awaited<ReturnType<typeof serveInFolder>>;
let address: string;
beforeAll(async () => {
  host = await serveInFolder();
  address = host.address.replace('127.0.0.1', NAME);
  browser = await launch(`--host-resolver-rules=MAP ${NAME} 127.0.0.1`);
});
afterAll(async () => {
  await browser?.close();
  host.close();
});

/** A phone of its own at that address; errors of the page are gathered. */
async function open(): Promise<{ page: Page; errors: string[] }> {
  const context = await browser.newContext(MOBILE);
  const page = await context.newPage();
  page.setDefaultTimeout(LONGEST_MS);
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  await page.goto(address);
  return { page, errors };
}

const notice = (page: Page) => page.getByText('This address is not https', { exact: true }).waitFor();
const tap = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).tap();

async function logCoat(page: Page): Promise<void> {
  await page.goto(`${address}#/piece/new`);
  await notice(page);
  await page.getByLabel('Name', { exact: true }).fill('Small box');
  await tap(page, 'Start this piece');
  await page.getByRole('heading', { level: 1, name: 'Small box' }).waitFor();
  await page.goto(`${address}#/mix/jar/new`);
  await page.getByLabel('Name of the jar', { exact: true }).fill('Clear gloss');
  await tap(page, 'Fill the jar');
  await page.getByText('Clear gloss is filled.').first().waitFor();
  await page.goto(`${address}#/lay`);
  const read = page.getByRole('button', { name: 'Read and done' });
  const lay = page.getByRole('button', { name: 'Log it' });
  await read.or(lay).first().waitFor();
  if (await read.isVisible()) await read.tap();
  await lay.tap();
  await page.getByText('Coat 1 logged on Small box.').first().waitFor();
}

test('over plain http the app says so on every page, logs a coat, and its backup restores on another phone', async () => {
  const { page, errors } = await open();
  await notice(page);
  await logCoat(page);
  await page.goto(`${address}#/more`);
  await notice(page);
  await page.getByText('Does not open without a network: this address is not https.').waitFor();
  const [download] = await Promise.all([page.waitForEvent('download'), tap(page, 'Save a backup')]);
  const file = await download.path();
  await page.reload();
  await page.goto(`${address}#/bench`);
  await page.getByText('Small box').first().waitFor();
  expect(errors).toEqual([]);

  const other = await open();
  await other.page.goto(`${address}#/more`);
  await other.page.locator('main input[type=file]').first().setInputFiles(file);
  await other.page
    .getByText(/restored/)
    .first()
    .waitFor();
  await other.page.goto(`${address}#/bench`);
  await other.page.getByText('Small box').first().waitFor();
  expect(other.errors).toEqual([]);
});
