import { mkdtempSync, readFileSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import ExifReader from 'exifreader';
import { beforeEach, expect, test } from 'vitest';
import { base, context, goTo, here, openApp, page } from './app';
import { axeViolations, overTheSide } from './looked-at';
import { button, choose, field, heading, link, said, title, unfold } from './on-screen';
import { photoWithPlace } from './tagged-photo';

let piece = '';

beforeEach(async () => {
  await openApp();
  await page.goto(`${base}#/piece/new`);
  await field('Name').fill('Old gloss top');
  await choose(/^Old finish that softens/);
  await button('Start this piece').tap();
  await heading('Old gloss top').first().waitFor();
  piece = here().replace(/.*#/, '#');
  await page.goto(`${base}#/mix/jar/new`);
  await field('Name of the jar').fill('Brush lacquer');
  await field('Volume solids as sold').fill('25');
  await field('How much thinner').fill('0');
  await button('Fill the jar').tap();
  await heading('Brush lacquer').first().waitFor();
  await goTo(piece, 'Old gloss top');
});

async function markChip(): Promise<void> {
  await unfold('Places and photos');
  await link('Mark a place').tap();
  await field('Name').fill('Lower edge');
  await field('Length').fill('14');
  await field('Width').fill('6');
  await field('Depth').fill('0.18');
  await button('Save').tap();
  await title('Lower edge');
}

async function firstDrop(): Promise<void> {
  await link(/^Log drop 1 of 7–11$/).tap();
  const cautions = button('Read and done');
  await button(/^(Log it|Read and done)$/)
    .first()
    .waitFor();
  if ((await cautions.count()) > 0) await cautions.tap();
  await button('Log it').first().tap();
  await title('Lower edge');
}

test('a photo is kept without a tag, its place is drawn by finger, and a second one lies over it', {
  timeout: 180_000, // several large photos on a busy machine
}, async () => {
  await markChip();
  await goTo(`${piece}/photos`, 'Photos');
  await choose(/^Raking/);
  const original = await photoWithPlace();
  const take = (buffer: Buffer, name: string) =>
    page.locator('input[type=file]').setInputFiles({ name, mimeType: 'image/jpeg', buffer });
  await take(original, 'edge.jpg');
  await page.getByText('Photo saved.').waitFor();
  await choose('After');
  await take(original, 'edge-after.jpg');
  await page.locator('.photo-list li').nth(1).locator('img').waitFor();
  const kept = await storedPhoto();
  expect(Object.keys(ExifReader.load(original, { expanded: true }))).toContain('gps');
  const tags = ExifReader.load(kept, { expanded: true });
  expect(tags.exif ?? tags.gps ?? tags.xmp ?? tags.iptc).toBeUndefined();
  await page.locator('.photo-list a').first().tap();
  await title(/^Photo 1/);
  await page.locator('.drawable').scrollIntoViewIfNeeded();
  await draw([
    [0.3, 0.3],
    [0.7, 0.3],
    [0.7, 0.7],
    [0.3, 0.7],
  ]);
  await button('Save the outline').tap();
  await page.getByText('Lower edge is drawn.').waitFor();
  expect(await page.locator('figure .zone-outline polygon').count()).toBe(1);
  await button('Undo').first().tap();
  await expect.poll(() => page.locator('figure .zone-outline polygon').count()).toBe(0);
  await goTo(`${piece}/photos/compare`, 'Compare two photos');
  await page.getByRole('slider').press('ArrowRight');
  expect(await page.getByRole('slider').inputValue()).toBe('51');
  expect(await axeViolations()).toEqual([]);
});

test('a file that is no photo is refused with what to do', async () => {
  await goTo(`${piece}/photos`, 'Photos');
  const whole = await photoWithPlace();
  const cut = whole.subarray(0, whole.length / 2);
  await page
    .locator('input[type=file]')
    .setInputFiles({ name: 'cut.jpg', mimeType: 'image/jpeg', buffer: cut });
  await said(/cut short/).waitFor();
  expect(await page.locator('.photo-list li').count()).toBe(0);
});

test('the record goes out as one file that says what the page says, without what is private', async () => {
  await markChip();
  await firstDrop();
  await goTo(`${piece}/photos`, 'Photos');
  await page
    .locator('input[type=file]')
    .setInputFiles({ name: 'edge.jpg', mimeType: 'image/jpeg', buffer: await photoWithPlace() });
  await page.getByText('Photo saved.').waitFor();
  await goTo(`${piece}/words`, 'Write the record');
  await field('Note').fill('The owner haggles.');
  await page.getByRole('checkbox', { name: /^Private/ }).tap();
  await button('Save the note').tap();
  await page.getByText('Note saved.').waitFor();
  await goTo(`${piece}/record`, 'Treatment record');
  await said('1 private note stays out.').waitFor();
  await page.locator('.record-photos image[href]').waitFor();
  expect(await axeViolations()).toEqual([]);
  expect(await overTheSide()).toBe(0);
  const shown = await textOf(page.locator('article.record'));
  expect(shown).toContain('Lower edge');
  expect(shown).toContain('Clear only; colour untouched.');
  expect(shown).not.toContain('haggles');
  const [file] = await Promise.all([page.waitForEvent('download'), button('Save as a file').tap()]);
  const path = join(mkdtempSync(join(tmpdir(), 'record-')), file.suggestedFilename());
  await file.saveAs(path);
  expect(statSync(path).size).toBeLessThan(10_000_000);
  const html = readFileSync(path, 'utf8');
  expect(html).not.toMatch(/<script|blob:|haggles/);
  const other = await context.newPage();
  await other.goto(pathToFileURL(path).href);
  expect(await textOf(other.locator('article.record'))).toBe(shown);
  expect(await other.locator('image').evaluateAll((all) => all.length)).toBe(1);
  await other.close();
});

const textOf = (of: ReturnType<typeof page.locator>): Promise<string> =>
  of.evaluate((element) => (element.textContent ?? '').replace(/\s+/g, ' ').trim());

async function draw(corners: readonly (readonly [number, number])[]): Promise<void> {
  const box = await page.locator('.drawable').boundingBox();
  if (!box) throw new Error('There is nothing to draw on.');
  const at = (i: number) => {
    const [x, y] = corners[i] ?? [0, 0];
    return [box.x + x * box.width, box.y + y * box.height] as const;
  };
  await page.mouse.move(...at(0));
  await page.mouse.down();
  for (let i = 1; i < corners.length; i++) await page.mouse.move(...at(i), { steps: 5 });
  await page.mouse.up();
}

/** The bytes of a kept photo, with nothing of the app between. */
async function storedPhoto(): Promise<Buffer> {
  const address = await page.evaluate(
    () =>
      new Promise<string>((resolve, reject) => {
        const opening = indexedDB.open('coatwait-photos');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const asking = opening.result.transaction('photos').objectStore('photos').getAll();
          asking.onsuccess = () => {
            const reader = new FileReader();
            reader.onload = () => resolve(String(reader.result));
            reader.readAsDataURL(new Blob([asking.result[0].bytes]));
          };
        };
      }),
  );
  return Buffer.from(address.replace(/.*,/, ''), 'base64');
}
