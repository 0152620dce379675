import { describe, expect, test } from 'vitest';
import { PHOTO_FAULTS } from '../../../src/words/match/photo';
import { animated, jpeg, NO_PHOTOS, png, turned } from '../../hostile/pictures';
import { kept, NAMES, PLACES, page, toCard, toMatch } from './photo-places';
import { bringPictures, chooseEach, photoAs } from './photo-trials';

describe.each(PLACES)('$place', ({ go }) => {
  test('says what to do with every file that is no photo, and takes every odd one that is', async () => {
    const done = await go();
    const webp = await photoAs(page, 'image/webp');
    const huge = { width: 60_000, height: 60_000 };
    const cases: readonly (readonly [file: Uint8Array, said: string])[] = [
      ...Object.values(NO_PHOTOS).map((file) => [file, PHOTO_FAULTS['no-photo']] as const),
      [new Uint8Array(), PHOTO_FAULTS.empty],
      [png({ width: 1, height: 1, says: huge }), PHOTO_FAULTS['too-many-pixels']],
      [jpeg(3, huge), PHOTO_FAULTS['too-many-pixels']],
      [animated(webp, huge), PHOTO_FAULTS['too-many-pixels']],
      [webp.slice(0, -1), PHOTO_FAULTS['cut-short']],
      [png({ width: 9, height: 9, isTorn: true }), PHOTO_FAULTS['not-opened']],
      [png({ width: 1, height: 1, ballast: 3_000_000 }), 'taken'],
      [png({ width: 64, height: 48, depth: 16 }), 'taken'],
      [png({ width: 64, height: 48, frames: 3 }), 'taken'],
      [animated(webp, { width: 320, height: 240 }), 'taken'],
      [jpeg(1), 'taken'],
      [jpeg(4), 'taken'],
      [turned(jpeg(3), 6), 'taken'],
      [webp, 'taken'],
    ];
    await bringPictures(
      page,
      cases.map(([file]) => file),
    );
    const trials = cases.map((_, picture) => ({ picture, name: NAMES[picture % NAMES.length] as string }));
    expect(await chooseEach(page, trials, done)).toEqual(cases.map(([, said]) => said));
    if (done.isAdded) expect(await kept()).toEqual({ photos: 8, entries: 8 });
  });
});

test('a photo taken with the phone on its side is kept upright', async () => {
  const place = await toCard();
  await bringPictures(page, [turned(await photoAs(page, 'image/jpeg'), 6)]);
  expect(await chooseEach(page, [{ picture: 0 }], place)).toEqual(['taken']);
  const size = await page
    .locator(place.picture)
    .evaluate((image: HTMLImageElement) => [image.naturalWidth, image.naturalHeight]);
  expect(size).toEqual([240, 320]);
});

test('a photo of 48 megapixels is drawn smaller, and reads as what it shows', async () => {
  const place = await toMatch();
  await page.getByRole('radio', { name: /^Grey card/ }).tap();
  await bringPictures(page, [png({ width: 8_000, height: 6_000 })]);
  expect(await chooseEach(page, [{ picture: 0 }], place)).toEqual(['taken']);
  // Sample and card are one grey, and a card of 18 % has L* = 116 x 0.18^(1/3) - 16 = 49.5 (CIE 15:2018, 8.2.1.1).
  await page.getByText(/^The sample reads 49\.5 \/ [−-]?0\.0 \/ [−-]?0\.0$/).waitFor();
});
