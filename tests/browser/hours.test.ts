import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { launch, MOBILE } from './browser';

const base = inject('baseUrl');
let browser: Browser;
let page: Page;

beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

const time = (name: string) => page.getByLabel(name, { exact: true });
const button = (name: string | RegExp) => page.getByRole('button', { name });

async function openHours(): Promise<void> {
  await page.goto(`${base}#/plan/hours`);
  await page.reload();
  await time('Monday, from').waitFor();
}

test('a day has a morning and an afternoon, which are shown again, changed and taken out', async () => {
  const context = await browser.newContext(MOBILE);
  page = await context.newPage();
  page.setDefaultTimeout(15_000);
  await page.goto(base);
  await openHours();
  await time('Monday, to').fill('12:00');
  await button(/^Another stretch, after a break ?, Monday$/).tap();
  await time('Monday (2), from').fill('11:00');
  await time('Monday (2), to').fill('18:00');
  await button('Keep the week').tap();
  await page.getByText('It must begin when the stretch before it is over.').waitFor();
  await time('Monday (2), from').fill('14:00');
  await button('Keep the week').tap();
  await page.getByText('Working hours kept.').waitFor();

  await openHours();
  expect(await time('Monday, to').inputValue()).toBe('12:00');
  expect(await time('Monday (2), from').inputValue()).toBe('14:00');
  await button(/^Take this stretch out ?, Monday \(2\)$/).tap();
  await button('Keep the week').tap();
  await page.getByText('Working hours kept.').waitFor();
  await openHours();
  expect(await time('Monday (2), from').count()).toBe(0);
  await context.close();
});
