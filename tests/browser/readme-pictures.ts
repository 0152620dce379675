import { mkdirSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { context, openApp, page } from './app';
import { MOBILE } from './browser';

// The two pictures at the top of the README, from the built app and its demo shop.
const FOLDER = 'tests/pictures';
const MOST_BYTES = 60_000;

async function keep(name: string): Promise<void> {
  const devTools = await context.newCDPSession(page);
  const { data } = await devTools.send('Page.captureScreenshot', { format: 'webp', quality: 70 });
  const bytes = Buffer.from(data, 'base64');
  writeFileSync(`${FOLDER}/${name}.webp`, bytes);
  expect(bytes.length, `${name}.webp`).toBeLessThan(MOST_BYTES);
}

test('the pictures of the README', async () => {
  mkdirSync(FOLDER, { recursive: true });
  await openApp({ ...MOBILE, colorScheme: 'light', timezoneId: 'Europe/London', locale: 'en-GB' });
  await page
    .getByRole('button', { name: /demo shop/ })
    .first()
    .tap();
  await page.locator('.piece-row .wait-bar').first().waitFor();
  await page.waitForTimeout(5_000); // every piece is worked out
  await keep('bench');
  await page
    .getByRole('link', { name: /^Mantel clock case/ })
    .first()
    .tap();
  await page.getByRole('heading', { level: 1, name: 'Mantel clock case' }).waitFor();
  await page.waitForTimeout(2_000);
  await keep('piece');
});
