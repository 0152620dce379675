import type { Page } from 'playwright-core';

const PHOTO_BYTES = 300_000;

/** Fills the databases as the app would have over the years. */
export async function fillDatabases(page: Page, entries: readonly unknown[], photos: number): Promise<void> {
  const rows = JSON.stringify(entries);
  await page.evaluate(
    async ({ rows, photos, bytes }) => {
      const open = (name: string, table: string): Promise<IDBDatabase> =>
        new Promise((resolve, reject) => {
          const opening = indexedDB.open(name);
          opening.onupgradeneeded = () => opening.result.createObjectStore(table);
          opening.onsuccess = () => resolve(opening.result);
          opening.onerror = () => reject(opening.error);
        });
      const put = async (name: string, table: string, some: [string, unknown][]): Promise<void> => {
        const database = await open(name, table);
        const transaction = database.transaction(table, 'readwrite');
        for (const [key, value] of some) transaction.objectStore(table).put(value, key);
        await new Promise((resolve, reject) => {
          transaction.oncomplete = resolve;
          transaction.onabort = () => reject(transaction.error);
        });
        database.close();
      };
      const all = JSON.parse(rows) as { id: string }[];
      await put(
        'coatwait',
        'entries',
        all.map((entry) => [entry.id, entry]),
      );
      for (let first = 0; first < photos; first += 100) {
        const some = Array.from({ length: Math.min(100, photos - first) }, (_, n): [string, unknown] => {
          const noise = new Uint8Array(bytes);
          for (let at = 0; at < bytes; at += 65_536)
            crypto.getRandomValues(noise.subarray(at, Math.min(bytes, at + 65_536)));
          return [`photo-${first + n}`, { type: 'image/jpeg', bytes: noise.buffer }];
        });
        await put('coatwait-photos', 'photos', some);
      }
    },
    { rows, photos, bytes: PHOTO_BYTES },
  );
}

/** Notes, in the page itself, when the bench can first be used. */
export const watchBench = (): void => {
  const seen = globalThis as unknown as { usableMs?: number };
  new MutationObserver((_, observer) => {
    if (!document.querySelector('main .piece-row')) return;
    observer.disconnect();
    requestAnimationFrame(() => {
      seen.usableMs ??= performance.now();
    });
  }).observe(document, { childList: true, subtree: true });
};
