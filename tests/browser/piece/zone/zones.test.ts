import { readFileSync } from 'node:fs';
import ExifReader from 'exifreader';
import { beforeEach, expect, test } from 'vitest';
import { PHOTO_FAULTS } from '../../../../src/words/match/photo';
import { jpeg } from '../../../hostile/pictures';
import { base, context, goTo, here, newPage, openApp, page, takePhone } from '../../app';
import { entriesKept, photoSums } from '../../fake-dialogs';
import { axeViolations } from '../../looked-at';
import { button, choose, field, heading, link, said, saveChip, title, unfold } from '../../on-screen';
import { photoWithPlace } from '../../photo/tagged-photo';

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
  await saveChip();
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
  await field('A line about it').fill('As found');
  await take(original, 'edge.jpg');
  await page.getByText('Photo saved.').waitFor();
  await choose('After');
  await take(original, 'edge-after.jpg');
  await page.locator('.photo-list li').nth(1).locator('img').waitFor();
  expect(await page.getByText('As found').count()).toBe(1); // the line was about the first
  const kept = await storedPhoto();
  expect(Object.keys(ExifReader.load(original, { expanded: true }))).toContain('gps');
  const tags = ExifReader.load(kept, { expanded: true });
  expect(tags.exif ?? tags.gps ?? tags.xmp ?? tags.iptc).toBeUndefined();
  await page.locator('.photo-list a').first().tap();
  await title(/^Photo 1/);
  await page.locator('.drawable').scrollIntoViewIfNeeded();
  await draw([[0.5, 0.5]]);
  await page.getByText('That was a dot.').waitFor();
  await draw([
    [0.3, 0.3],
    [0.7, 0.7],
    [0.7, 0.3],
    [0.3, 0.7],
  ]);
  await page.getByText('This outline crosses itself.').waitFor();
  await draw([
    [0.5, 0.3],
    [1.02, 0.3],
    [1.02, 0.6],
    [0.5, 0.6],
  ]);
  await page.getByText('What ran off the photo was cut at its edge.').waitFor();
  await draw([
    [0.3, 0.3],
    [0.7, 0.3],
    [0.7, 0.7],
    [0.3, 0.7],
  ]);
  await page.getByText('What ran off the photo').waitFor({ state: 'detached' }); // what stood below it has moved up
  await button('Save the outline').tap();
  await page.getByText('Lower edge is drawn.').waitFor();
  expect(await page.locator('figure .zone-outline polygon').count()).toBe(1);
  await button('Undo').first().tap();
  await expect.poll(() => page.locator('figure .zone-outline polygon').count()).toBe(0);
  await goTo(`${piece}/photos/compare`, 'Compare two photos');
  const slider = page.getByRole('slider');
  await slider.press('ArrowRight');
  expect(await slider.inputValue()).toBe('51');
  const { x, y, width, height } = (await slider.boundingBox()) ?? expect.unreachable();
  await page.touchscreen.tap(x + width * 0.8, y + height / 2);
  expect(Number(await slider.inputValue())).toBeGreaterThan(70);
  await page
    .locator('.markable')
    .last()
    .tap({ position: { x: 40, y: 30 } });
  await button('Save the points').tap();
  await page.getByText('Points saved.').waitFor();
  expect(await page.locator('svg.outlined-photo g image').first().getAttribute('transform')).not.toMatch(
    /^matrix\(1 0 0 1 /,
  );
  expect(await axeViolations()).toEqual([]);

  await goTo('#/more');
  const [backup] = await Promise.all([page.waitForEvent('download'), button('Save a backup').first().tap()]);
  const before = { entries: await entriesKept(), photos: await photoSums() };
  expect(before.photos).toHaveLength(2);
  const buffer = readFileSync(await backup.path());
  await takePhone();
  await newPage();
  await goTo('#/more');
  await page
    .locator('main input[type="file"]')
    .setInputFiles({ name: 'coatwait.zip', mimeType: 'application/zip', buffer });
  await page.getByText(/2 photos restored/).waitFor();
  expect({ entries: await entriesKept(), photos: await photoSums() }).toEqual(before);
  await goTo(`${piece}/photos`, 'Photos');
  await expect.poll(() => page.locator('.photo-list img').count()).toBe(2);
});

test('a file that is no photo is refused with what to do', async () => {
  await goTo(`${piece}/photos`, 'Photos');
  const whole = await photoWithPlace(400, 300);
  const refused = [
    { file: whole.subarray(0, whole.length / 2), says: PHOTO_FAULTS['cut-short'] },
    { file: Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>'), says: PHOTO_FAULTS['no-photo'] },
    { file: Buffer.alloc(0), says: PHOTO_FAULTS.empty },
    { file: Buffer.from(jpeg(3, { width: 60_000, height: 60_000 })), says: PHOTO_FAULTS['too-many-pixels'] },
  ];
  for (const { file, says } of refused) {
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'top.jpg', mimeType: 'image/jpeg', buffer: file });
    await said(says).waitFor();
  }
  expect(await page.locator('.photo-list li').count()).toBe(0);
});

/** Draws with a finger on the photo, from corner to corner, in shares of its sides. */
async function draw(corners: readonly (readonly [number, number])[]): Promise<void> {
  const box = (await page.locator('.drawable').boundingBox()) ?? expect.unreachable();
  const finger = await context.newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', at?: readonly [number, number]) => {
    const touchPoints = at ? [{ x: box.x + at[0] * box.width, y: box.y + at[1] * box.height }] : [];
    return finger.send('Input.dispatchTouchEvent', { type, touchPoints });
  };
  const [first = [0, 0], ...others] = corners;
  await touch('touchStart', first);
  let from = first;
  for (const to of others) {
    for (let step = 1; step <= 4; step++)
      await touch('touchMove', [
        from[0] + ((to[0] - from[0]) * step) / 4,
        from[1] + ((to[1] - from[1]) * step) / 4,
      ]);
    from = to;
  }
  await touch('touchEnd');
  await finger.detach();
  await page.touchscreen.tap(4, 4); // Chromium tells the first tap of another session as no click
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
