import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject, test } from 'vitest';
import { launch, MOBILE } from './browser';

const base = inject('baseUrl');
let browser: Browser;
let page: Page;
let problems: string[];

beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());
afterEach(async () => {
  expect(problems).toEqual([]);
  await page.context().close();
});

async function openDemo(): Promise<void> {
  const context = await browser.newContext(MOBILE);
  page = await context.newPage();
  page.setDefaultTimeout(15_000);
  problems = [];
  page.on('pageerror', (error) => problems.push(error.message));
  await page.goto(base);
  await page
    .getByRole('button', { name: /demo shop/i })
    .first()
    .tap();
  await page.getByRole('button', { name: 'Leave the demo' }).waitFor();
}

const link = (name: string | RegExp) => page.getByRole('main').getByRole('link', { name }).first();
const titled = (name: string) => page.getByRole('heading', { level: 1, name }).waitFor();

test('what exactly was in the jar is followed from a coat of the demo to its recipe, and back to the piece', async () => {
  await openDemo();
  await link(/Tea caddy, white/).tap();
  await titled('Tea caddy, white');
  await page.getByRole('button', { name: /^Coat 2/ }).tap();
  await link('From White, spray').tap();
  await titled('White, spray');
  await page.getByText('1.61 g').waitFor();
  await link(/^The recipe: White for the tea caddy/).tap();
  await titled('White for the tea caddy');
  await page.getByRole('heading', { name: 'Pieces it was used on' }).waitFor();
  await link(/^Tea caddy, white/).tap();
  await titled('Tea caddy, white');
});
