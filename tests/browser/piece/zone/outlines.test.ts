import { beforeEach, expect, test } from 'vitest';
import { goTo, here, newPage, openApp, page, takePhone } from '../../app';
import { bringIn, entriesKept, photoSums } from '../../fake-dialogs';
import { axeViolations, overTheSide } from '../../looked-at';
import { button, choose, field, heading, link, said, title, unfold } from '../../on-screen';
import { photoWithPlace } from '../../photo/tagged-photo';

type Corner = readonly [x: number, y: number];
const ROUND: readonly Corner[] = [
  [0.3, 0.3],
  [0.7, 0.3],
  [0.7, 0.7],
  [0.3, 0.7],
];
const drawn = () => page.locator('figure .zone-outline polygon');
let piece = '';

beforeEach(async () => {
  await openApp();
  await goTo('#/piece/new', /./);
  await field('Name').fill('Old gloss top');
  await choose(/^Old finish that softens/);
  await button('Start this piece').tap();
  await heading('Old gloss top').first().waitFor();
  piece = here();
  await unfold('Places and photos');
  await link('Mark a place').tap();
  await field('Name').fill('Lower edge');
  await button('Save').tap();
  await title('Lower edge');
  await goTo(`${piece}/photos`, 'Photos');
  await page
    .locator('input[type=file]')
    .setInputFiles({ name: 'edge.jpg', mimeType: 'image/jpeg', buffer: await photoWithPlace(800, 600) });
  await page.getByText('Photo saved.').waitFor();
  await page.locator('.photo-list a').first().tap();
  await title(/^Photo 1/);
});

/** A finger that goes from corner to corner of the photo; beyond 1 it leaves the photo. */
async function draw(corners: readonly Corner[]): Promise<void> {
  await page.locator('.drawable').evaluate((photo) => photo.scrollIntoView({ block: 'center' }));
  const box = await page.locator('.drawable').boundingBox();
  if (!box) throw new Error('There is nothing to draw on.');
  for (const [i, [x, y]] of corners.entries()) {
    await page.mouse.move(box.x + x * box.width, box.y + y * box.height, { steps: 5 });
    if (i === 0) await page.mouse.down();
  }
  await page.mouse.up();
}

test('an outline that encloses nothing is refused with what to do, and drawn anew it is taken', {
  timeout: 120_000,
}, async () => {
  await draw([
    [0.3, 0.3],
    [0.7, 0.7],
  ]);
  await said('That was a dot. Draw a loop with at least three corners.').waitFor();
  expect(await button('Save the outline').isDisabled()).toBe(true);
  await draw([
    [0.3, 0.3],
    [0.7, 0.7],
    [0.7, 0.3],
    [0.3, 0.7],
  ]);
  await said('This outline crosses itself. Draw it again in one loop.').waitFor();
  expect(await button('Save the outline').isDisabled()).toBe(true);
  expect(await axeViolations()).toEqual([]);
  expect(await overTheSide()).toBe(0);
  await draw(ROUND);
  await expect.poll(() => button('Save the outline').isDisabled()).toBe(false);
  await button('Save the outline').tap();
  await page.getByText('Lower edge is drawn.').waitFor();
  expect(await drawn().count()).toBe(1);
});

test('an outline that runs off the photo is cut at its edge, says so, and is taken', {
  timeout: 120_000,
}, async () => {
  await draw([
    [0.6, 0.3],
    [1.02, 0.3],
    [1.02, 0.7],
    [0.6, 0.7],
  ]);
  await said('What ran off the photo was cut at its edge.').waitFor();
  await button('Save the outline').tap();
  await page.getByText('Lower edge is drawn.').waitFor();
  const kept = (await entriesKept()) as { kind: string; outline?: readonly Corner[] }[];
  const outline = kept.find(({ kind }) => kind === 'zone-drawn')?.outline ?? [];
  expect(outline.length).toBeGreaterThanOrEqual(3);
  expect(Math.max(...outline.flat())).toBe(1);
});

test('a backup brings photos, places and outlines back byte for byte on an empty phone', {
  timeout: 120_000,
}, async () => {
  await draw(ROUND);
  await button('Save the outline').tap();
  await page.getByText('Lower edge is drawn.').waitFor();
  const before = { entries: await entriesKept(), photos: await photoSums() };
  expect(before.photos).toHaveLength(1);
  await goTo('#/more', /./);
  const [file] = await Promise.all([page.waitForEvent('download'), button('Save a backup').tap()]);
  const chunks: Buffer[] = [];
  for await (const chunk of await file.createReadStream()) chunks.push(chunk as Buffer);
  await page.context().close();
  await takePhone();
  await newPage();
  await bringIn(Buffer.concat(chunks));
  expect({ entries: await entriesKept(), photos: await photoSums() }).toEqual(before);
  await goTo(`${piece}/photos`, 'Photos');
  await page.locator('.photo-list a').first().tap();
  await title(/^Photo 1/);
  await expect.poll(() => drawn().count()).toBe(1);
});
