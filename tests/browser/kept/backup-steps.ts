import { goTo, newPage, page, takePhone } from '../app';
import { crashShop } from '../crash-shop';
import { bringIn, entriesKept, photoSums } from '../fake-dialogs';
import { button, field } from '../on-screen';

export async function startPiece(name: string): Promise<void> {
  await goTo('#/piece/new');
  await field('Name').fill(name);
  await page.getByRole('radio', { name: /^Sealed wood/ }).tap();
  await button('Start this piece').tap();
  await page.getByRole('heading', { name }).first().waitFor();
}

/** A shop with a jar, a recipe and two photos of its dried card. */
export async function workWithPhotos(): Promise<void> {
  const shop = await crashShop();
  await bringIn(Buffer.from(shop.backup), 'backup.json');
  await goTo(`#/mix/recipe/${shop.recipe}`);
  for (const n of [1, 2]) {
    const card = { name: 'card.png', mimeType: 'image/png', buffer: await page.screenshot() };
    await page.locator('main input[type="file"]').setInputFiles(card);
    await page.getByRole('img', { name: `Photo ${n} of the dried card` }).waitFor();
  }
}

/** What the backup brings to another, empty phone. */
export async function restored(buffer: Buffer) {
  await takePhone();
  await newPage();
  await page.clock.install({ time: Date.now() + 3 * 86_400_000 }); // a phone does not take what happens later than its clock
  await bringIn(buffer);
  return { entries: await entriesKept(), photos: await photoSums() };
}

export const kept = async () => ({ entries: await entriesKept(), photos: await photoSums() });
