import { beforeEach, expect, test } from 'vitest';
import { goTo, here, openApp, page } from '../../app';
import { MOBILE } from '../../browser';
import { axeViolations, brokenWords, overTheSide } from '../../looked-at';
import { button, heading, link, said, title, unfold } from '../../on-screen';

beforeEach(async () => {
  await openApp({ ...MOBILE, viewport: { width: 360, height: 640 } });
  await button(/demo/i).first().tap();
  await page.locator('.piece-row a', { hasText: 'Folding music stand' }).tap();
  await heading('Folding music stand').first().waitFor();
});

test('the demo says nothing of a second copy, which is of one’s own logbook', async () => {
  await goTo('#/more', 'Settings and backup');
  await said(/No backup saved on this phone yet/).waitFor();
  expect(await page.getByText(/second copy/i).count()).toBe(0);
});

test('the demo shows a chip with its photos, its outline and its drops', async () => {
  const piece = here();
  await unfold('Places and photos');
  await link(/Lower front edge/).tap();
  await title('Lower front edge');
  await said(/^\d+–\d+ drops$/).waitFor();
  expect(await axeViolations()).toEqual([]);
  expect(await brokenWords()).toEqual([]);
  await goTo(`${piece}/photos`, 'Photos');
  await expect.poll(() => page.locator('.photo-list img').count()).toBe(3);
  const widths = await page
    .locator('.photo-list img')
    .evaluateAll((all) => all.map((image) => (image as HTMLImageElement).naturalWidth));
  expect(widths).toEqual([960, 960, 960]);
  await page.locator('.photo-list a').first().tap();
  await title('Photo 1: Before');
  expect(await page.locator('figure .zone-outline polygon').count()).toBe(1);
  const photo = here();
  for (const hash of [photo, `${piece}/photos`, `${piece}/words`, `${piece}/zone/new`])
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      await goTo(hash);
      expect([hash, ...(await axeViolations())]).toEqual([hash]);
      expect([hash, ...(await brokenWords())]).toEqual([hash]);
      expect(await overTheSide(), hash).toBe(0);
    }
  await goTo(`${piece}/record`, 'Treatment record');
  await said(/14 mm × 6 mm/).waitFor();
  await expect.poll(() => page.locator('.record-photos image[href]').count()).toBe(3);
  expect(await overTheSide()).toBe(0);
  expect(await axeViolations()).toEqual([]);
  expect(await brokenWords()).toEqual([]);
  await page.evaluate(() => {
    document.documentElement.style.fontSize = '200%';
  });
  expect(await overTheSide()).toBe(0);
});
