import { describe, expect, test } from 'vitest';
import { goTo, here, killAndReopen, openApp, page } from '../app';
import { MOBILE } from '../browser';
import { axeViolations, overTheSide } from '../looked-at';
import { button, heading, link, said } from '../on-screen';
import { addIngredient, agedWhite, writeRecipe } from './mix-steps';

describe('a dried card', () => {
  test('is photographed, kept small on this device, and still there after the app was killed', async () => {
    await openApp();
    await addIngredient(/^White base/, 'White');
    await writeRecipe('Plain white', [['White', '10', 'g']]);
    const png = await page.screenshot();
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'card.png', mimeType: 'image/png', buffer: png });
    await page.getByRole('img', { name: 'Photo 1 of the dried card' }).waitFor();
    await killAndReopen(here());
    const photo = page.getByRole('img', { name: 'Photo 1 of the dried card' });
    await photo.waitFor();
    expect(await photo.evaluate((image) => (image as HTMLImageElement).naturalWidth)).toBeGreaterThan(100);
    await page.locator('input[type=file]').setInputFiles({
      name: 'not.png',
      mimeType: 'image/png',
      buffer: Buffer.from('no picture'),
    });
    await said('This file is no photo. Choose a JPEG, PNG, WebP, HEIC or AVIF.').waitFor();
  });
});

describe.each([
  { name: 'light', options: { ...MOBILE, colorScheme: 'light' } as const },
  { name: 'dark', options: { ...MOBILE, colorScheme: 'dark' } as const },
  { name: 'small', options: { ...MOBILE, viewport: { width: 360, height: 640 } } },
])('$name', ({ options }) => {
  test('no page of the place has an axe violation, and nothing runs off its side', async () => {
    await openApp(options);
    await agedWhite();
    const recipe = here();
    await link('Weigh it up').tap();
    await button('Begin to pour').tap();
    await heading('Pour White').waitFor();
    const weighUp = here();
    await goTo('#/mix/jar/new', 'What is in the jar');
    await button('Fill the jar').tap();
    await link('Log a coat from it').waitFor();
    const jar = here();
    const pages = [
      '#/mix',
      '#/mix/jar/new',
      jar,
      `${jar}/label`,
      recipe,
      `${recipe}/change`,
      '#/mix/recipe/new',
    ];
    pages.push(
      '#/mix/ingredient',
      '#/mix/ingredient/new',
      weighUp,
      `#/mix/weigh/new?recipe=${recipe.split('/').at(-1)}`,
    );
    pages.push('#/mix/amount', '#/mix/cup', '#/mix/fill', '#/mix/find');
    for (const hash of pages) {
      await goTo(hash);
      expect([hash, await axeViolations()]).toEqual([hash, []]);
      expect([hash, await overTheSide()]).toEqual([hash, 0]);
    }
  });
});
