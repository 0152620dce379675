import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, expect, test } from 'vitest';
import { goTo, here, openApp, page } from '../app';
import { button, heading, said } from '../on-screen';
import { type Engine, openChromium, openFirefox } from './engine';

// The record as it goes out: one file, opened from the disk of whoever was given it.
const folder = mkdtempSync(join(tmpdir(), 'coatwait-record-'));
const file = join(folder, 'record.html');
/** Pictures that come with nothing but the file, by their width. */
const PICTURES = `return Promise.all([...document.querySelectorAll('image')].map(async (image) => {
  const picture = new Image(); picture.src = image.getAttribute('href'); await picture.decode();
  return picture.naturalWidth; }));`;
/** What a person reads, wherever the lines break. */
const READ = `document.querySelector('article.record').innerText.replace(/\\s+/g, ' ').trim()`;
const ASKED_FOR = `return performance.getEntriesByType('resource').map(({ name }) => name).filter((name) => !name.startsWith('data:'));`;

let engine: Engine | undefined;
afterAll(async () => {
  await engine?.close();
  rmSync(folder, { recursive: true, force: true });
});

test('the record, opened from the disk in Chromium and Firefox, reads as it stood on the page', {
  timeout: 180_000,
}, async () => {
  await openApp();
  await button(/demo/i).first().tap();
  await page.locator('.piece-row a', { hasText: 'Folding music stand' }).tap();
  await heading('Folding music stand').first().waitFor();
  await goTo(`${here()}/record`, 'Treatment record');
  await expect.poll(() => page.locator('.record-photos image[href]').count()).toBe(3);
  await said(/14 mm × 6 mm/).waitFor();
  const [saved] = await Promise.all([page.waitForEvent('download'), button('Save as a file').tap()]);
  await saved.saveAs(file);
  const shown = await page.evaluate<string>(READ);
  expect(shown.length).toBeGreaterThan(1_000);
  expect(readFileSync(file, 'utf8')).not.toMatch(/<script|<link|@import|blob:/);

  for (const open of [openChromium, openFirefox]) {
    engine = await open();
    await engine.goTo(pathToFileURL(file).href);
    expect(await engine.run(`return ${READ};`)).toBe(shown);
    expect(await engine.run(PICTURES)).toEqual([960, 960, 960]);
    expect(await engine.run(ASKED_FOR)).toEqual([]);
    expect(await engine.run('return document.documentElement.scrollWidth <= innerWidth;')).toBe(true);
    await engine.close();
    engine = undefined;
  }
});
