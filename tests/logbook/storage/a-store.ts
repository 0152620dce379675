import 'fake-indexeddb/auto';
import { afterEach } from 'vitest';
import type { Database } from '../../../src/logbook/storage/database';
import { openStore, type Store } from '../../../src/logbook/storage/store';
import { entry, id, startPiece } from '../entries';

export const open: Store[] = [];
let databases = 0;

export function storeOn(database: Database): Store {
  const store = openStore('coatwait-demo', database);
  open.push(store);
  return store;
}
export const newName = (): string => `store-test-${databases++}`;
export const row = (n: number) => [id(n), entry(n, startPiece())] as const;
export const failing = (error: unknown): Database => {
  const refuse = () => Promise.reject(error);
  const looks = { readAfter: refuse, read: refuse, keys: refuse, count: refuse };
  return { ...looks, write: refuse, remove: refuse, empty: refuse };
};

afterEach(() => {
  for (const store of open.splice(0)) store.close();
});

/** Opens a database and holds its first upgrade, so that everyone else has to wait. */
export function holdUpgrade(name: string): Promise<{ release(): void }> {
  const request = indexedDB.open(name);
  return new Promise((resolve) => {
    request.onupgradeneeded = () => {
      const table = request.result.createObjectStore('entries');
      let held = true;
      const hold = (): void => {
        if (held) table.get('nothing').onsuccess = hold;
      };
      hold();
      resolve({
        release() {
          held = false;
        },
      });
    };
  });
}
