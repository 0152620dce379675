import { expect, test } from 'vitest';
import { writeBackup } from '../../../src/logbook/backup/backup';
import type { Entry, EntryBody } from '../../../src/logbook/entry';
import { newId } from '../../../src/logbook/ids/new-id';
import { goTo, openApp, page } from '../app';
import { MOBILE } from '../browser';
import { button, openLine, said, title, unfold } from '../on-screen';

// A coat on the smallest phone, in a shop with more jars than fit on its screen.
const SMALL = { ...MOBILE, viewport: { width: 360, height: 640 } } as const;
const JARS = 14;
const percent = (text: string) => ({ text, unit: '%' }) as const;

function bodies(): EntryBody[] {
  const jars = Array.from({ length: JARS }, (_, n): EntryBody => {
    const thinner = { name: 'Thinner', blend: [{ solvent: 'toluene', share: 1 }] };
    const product = { finish: 'nitrocellulose', volumeSolids: percent('22') } as const;
    const thinning = { of: 'lacquer', percent: percent('50') } as const;
    return { kind: 'jar-filled', jar: newId(), name: `Gloss ${n + 1}`, product, thinner, thinning };
  });
  return [
    { kind: 'piece-started', piece: newId(), name: 'Parlour guitar headstock', base: 'sealed' },
    ...jars,
  ];
}

async function openFullShop(): Promise<void> {
  const atMs = Date.now() - 3_600_000;
  const entries = bodies().map((body, n) => {
    const at = new Date(atMs + n * 1000).toISOString();
    return { id: newId(), v: 1, at, zone: 'Europe/Berlin', ...body } as Entry;
  });
  const backup = await writeBackup({ entries, setAside: [] }, Date.now());
  await openApp(SMALL, '#/more');
  const file = { name: 'shop.json', mimeType: 'application/json', buffer: Buffer.from(backup) };
  await page.locator('input[type="file"]').setInputFiles(file);
  await page.getByText(`${JARS + 1} entries restored.`).waitFor();
}

async function confirmCautions(): Promise<void> {
  await goTo('#/lay');
  await button('Read and done').tap();
  await button('Log it').first().waitFor();
}
const toast = () => page.getByRole('status').locator('.toast');
const scrolledPx = () => page.evaluate(() => scrollY);

test('the form is read from the top once the cautions are confirmed, its button in sight', async () => {
  await openFullShop();
  await confirmCautions();
  await expect.poll(scrolledPx).toBe(0);
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Log a coat');
  const box = await button('Log it').first().boundingBox();
  expect((box?.y ?? 640) + (box?.height ?? 0)).toBeLessThan(640);
});

test('six jars are offered, the one filled last first, and all of them on asking', async () => {
  await openFullShop();
  await confirmCautions();
  await openLine('From');
  const jars = page.getByRole('group', { name: 'Jar', exact: true }).getByRole('radio');
  expect(await jars.count()).toBe(6);
  await page.getByRole('radio', { name: 'Gloss 14', exact: true, checked: true }).waitFor();
  await button(`All ${JARS} jars`).tap();
  await expect.poll(() => jars.count()).toBe(JARS);
});

test('what was done is said below the time that was waited for, and is left behind with the page', async () => {
  await openFullShop();
  await confirmCautions();
  await button('Log it').first().tap();
  await title('Parlour guitar headstock');
  const time = page.locator('.headline .digits, .headline time').first();
  await said('Recoat from').waitFor();
  await toast().waitFor();
  const [over, under] = [await time.boundingBox(), await toast().boundingBox()];
  expect((over?.y ?? 999) + (over?.height ?? 0)).toBeLessThanOrEqual(under?.y ?? 0);
  await page.getByRole('navigation').getByRole('link', { name: 'Bench' }).tap();
  await title('Bench');
  await expect.poll(() => toast().count()).toBe(0);
  await page.locator('.piece-row a', { hasText: 'Parlour guitar headstock' }).tap();
  await unfold('What was done');
  await button(/^Undo: Coat 1/).waitFor(); // it can still be undone, from what was done
});
