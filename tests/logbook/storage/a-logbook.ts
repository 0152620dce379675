import 'fake-indexeddb/auto';
import { afterEach } from 'vitest';
import { newId } from '../../../src/logbook/ids/new-id';
import { createLogbook, type Logbook } from '../../../src/logbook/logbook';
import { openDatabase } from '../../../src/logbook/storage/database';
import { openStore, type Store } from '../../../src/logbook/storage/store';
import { DAY_1_MS, fillJar, MINUTE_MS, PIECE, startPiece } from '../entries';

export const NOW_MS = DAY_1_MS + 60 * MINUTE_MS;
export const open: Store[] = [];
let databases = 0;

export const newName = (): string => `logbook-test-${databases++}`;
export function storeOn(name: string): Store {
  const store = openStore('coatwait-demo', openDatabase(name));
  open.push(store);
  return store;
}
export function logbookOn(store: Store, nowMs = NOW_MS): Logbook {
  return createLogbook({ store, now: () => nowMs, zone: () => 'Europe/Berlin', newId });
}
export const coatsIn = (logbook: Logbook) => logbook.shop.value.pieces.get(PIECE)?.coats ?? [];

export async function setUp(name = newName()) {
  const store = storeOn(name);
  const logbook = logbookOn(store);
  await logbook.append(startPiece(), DAY_1_MS);
  await logbook.append(fillJar(), DAY_1_MS);
  return { name, store, logbook };
}
export function logged<Value>(result: { ok: true; value: Value } | { ok: false; failure: unknown }): Value {
  if (!result.ok) throw new Error(JSON.stringify(result.failure));
  return result.value;
}

afterEach(() => {
  for (const store of open.splice(0)) store.close();
});
