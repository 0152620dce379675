import type { Page } from 'playwright-core';
import { inject } from 'vitest';
import { writeBackup } from '../../src/logbook/backup/backup';
import type { Entry, EntryBody } from '../../src/logbook/entry';
import { newId } from '../../src/logbook/ids/new-id';

type Shop = Readonly<Record<'backup' | 'recipe' | 'weighUp', string>>;

/** The logbook that the killed browser begins with: a jar, a recipe, and a weigh-up with room for many pours. */
export async function crashShop(): Promise<Shop> {
  const [jar, clear, tint, recipe, weighUp] = Array.from({ length: 5 }, newId) as [
    string,
    string,
    string,
    string,
    string,
  ];
  const percent = (text: string) => ({ text, unit: '%' }) as const;
  const lines = [clear, tint].map((ingredient) => ({
    ingredient,
    amount: { text: '1000', unit: 'g' } as const,
  }));
  const bodies: EntryBody[] = [
    {
      kind: 'jar-filled',
      jar,
      name: 'Gloss',
      product: { finish: 'nitrocellulose', volumeSolids: percent('22') },
      thinner: { name: 'Thinner', blend: [{ solvent: 'toluene', share: 1 }] },
      thinning: { of: 'lacquer', percent: percent('50') },
    },
    { kind: 'ingredient-described', ingredient: clear, name: 'Clear', is: 'clear' },
    { kind: 'ingredient-described', ingredient: tint, name: 'Tint', is: 'tinter' },
    { kind: 'recipe-written', recipe, name: 'Mix', use: { as: 'clear' }, lines },
    {
      kind: 'weigh-up-begun',
      weighUp,
      recipe,
      plan: [clear, tint].map((ingredient) => ({ ingredient, massKg: 1 })),
      division: { text: '0.001', unit: 'g' },
      isTared: true,
    },
  ];
  const at = new Date(Date.now() - 3_600_000).toISOString();
  const entries = bodies.map((body) => ({ id: newId(), v: 1, at, zone: 'Europe/Berlin', ...body }) as Entry);
  return { backup: await writeBackup({ entries, setAside: [] }, Date.now()), recipe, weighUp };
}

/** Restores it on a page, and leaves the page where that is said. */
export async function bringCrashShop(page: Page): Promise<Shop> {
  const shop = await crashShop();
  await page.goto(`${inject('baseUrl')}#/more`, { waitUntil: 'domcontentloaded' });
  await page.locator('main input[type="file"]').setInputFiles({
    name: 'backup.json',
    mimeType: 'application/json',
    buffer: Buffer.from(shop.backup),
  });
  await page.getByText('5 entries restored.').waitFor();
  return shop;
}
