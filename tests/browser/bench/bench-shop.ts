import type { Entry } from '../../../src/logbook/entry';
import { newId } from '../../../src/logbook/ids/new-id';
import { type Pen, takePen } from '../../../src/shop/demo/pen';
import { context, newPage, page } from '../app';

// A bench with many pieces on it, each at another stage; and it is evening: rags are due.
const um = (amount: number) => ({ text: String(amount), unit: 'um' }) as const;
const percent = (amount: number) => ({ text: String(amount), unit: '%' }) as const;
const MINUTE_MS = 60_000;

const NAMES = [
  'Ukulele, koa',
  'Violin scroll, touch-up',
  'Banjo rim, maple',
  'Radio cabinet, white',
  'Folding music stand',
  'Tea caddy, lid',
  'Mantel clock case',
  'Tenor ukulele, spruce',
  'Jewellery box, walnut',
  'Chair rail, repair',
  'Candle stand, cherry',
  'Picture frame, oak',
];

/** When the coats of each piece went on, as minutes before now. */
const DAY = 1440;
const COATS: readonly (readonly number[])[] = [
  [360, 240, 130],
  [200, 45],
  [180, 20],
  [9 * DAY, 9 * DAY - 180],
  [30 * DAY, 29 * DAY],
  [5 * DAY, 5 * DAY - 120],
  [4 * DAY, 3 * DAY],
  [8 * DAY, 8 * DAY - 90, 7 * DAY],
  [300, 7],
  [2 * DAY, 2 * DAY - 60],
  [],
  [40],
];

function fillJar(pen: Pen): string {
  const jar = newId();
  pen.write(
    {
      kind: 'jar-filled',
      jar,
      name: 'Clear gloss',
      product: { finish: 'nitrocellulose', volumeSolids: percent(22) },
      thinner: { name: 'Thinner', blend: [{ solvent: 'n-butyl-acetate', share: 1 }] },
      thinning: { of: 'lacquer', percent: percent(50) },
    },
    pen.daysAgo(40, 9),
  );
  return jar;
}

/** The entries of a bench with so many pieces, twelve of them coated as above, the others bare. */
export function manyPieces(count = NAMES.length, nowMs = Date.now()): readonly Entry[] {
  const pen = takePen({ nowMs, zone: 'UTC', newId });
  const jar = fillJar(pen);
  for (let n = 0; n < count; n++) {
    const piece = newId();
    const before = COATS[n] ?? [];
    const startMs = nowMs - ((before[0] ?? 60) + 30) * MINUTE_MS;
    pen.write({ kind: 'piece-started', piece, name: NAMES[n] ?? `Box ${n}`, base: 'sealed' }, startMs);
    for (const minutes of before)
      pen.write(
        { kind: 'coat-laid', piece, jar, how: 'spray', film: { by: 'wet', wetFilm: um(85) } },
        nowMs - minutes * MINUTE_MS,
      );
  }
  return pen.entries;
}

/** Puts entries on this phone, as if they had been logged there. */
export async function keepOnPhone(entries: readonly Entry[]): Promise<void> {
  await newPage();
  await page.goto(`${(await import('../app')).base}`);
  await page.getByRole('heading', { level: 1 }).waitFor();
  await page.evaluate(async (rows) => {
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      const opening = indexedDB.open('coatwait');
      opening.onsuccess = () => resolve(opening.result);
      opening.onerror = () => reject(opening.error);
    });
    const transaction = database.transaction('entries', 'readwrite');
    for (const row of JSON.parse(rows) as { id: string }[])
      transaction.objectStore('entries').put(row, row.id);
    await new Promise((resolve, reject) => {
      transaction.oncomplete = resolve;
      transaction.onabort = () => reject(transaction.error);
    });
    database.close();
  }, JSON.stringify(entries));
  await page.close();
  await context.pages()[0]?.close();
}

/** How many rows of the list can be seen whole: nothing that is fixed lies over them. */
export const rowsInView = (): Promise<number> =>
  page.evaluate(() => {
    const covered = [...document.querySelectorAll('.bar, .bar-disc, .due-card')].map((one) =>
      one.getBoundingClientRect(),
    );
    return [...document.querySelectorAll('.piece-row')].filter((row) => {
      const { top, bottom, left, right } = row.getBoundingClientRect();
      const isClear = covered.every(
        (over) => over.top >= bottom || over.bottom <= top || over.left >= right || over.right <= left,
      );
      return top >= 0 && bottom <= document.documentElement.clientHeight && isClear;
    }).length;
  });
