/**
 * The table of a database on this device, for one transaction at a time. It is opened when it is first needed and again
 * after it was lost: the browser may close it, and another tab may have to change it.
 */
export function connect(
  name: string,
  table: string,
  onLost: () => void = () => undefined,
): () => Promise<IDBDatabase> {
  let opened: Promise<IDBDatabase> | undefined;
  const forget = (): void => {
    opened = undefined;
  };
  const lose = (): void => {
    forget();
    onLost();
  };
  return () => {
    opened ??= open(name, table, lose);
    opened.catch(forget);
    return opened;
  };
}

async function open(name: string, table: string, onLost: () => void): Promise<IDBDatabase> {
  let database = await request(name, table);
  // An upgrade that was broken off by a crash leaves a database without its table.
  if (!database.objectStoreNames.contains(table)) {
    const next = database.version + 1;
    database.close();
    database = await request(name, table, next);
  }
  database.onclose = onLost;
  database.onversionchange = () => {
    database.close();
    onLost();
  };
  return database;
}

const request = (name: string, table: string, version?: number): Promise<IDBDatabase> =>
  new Promise((resolve, reject) => {
    const opening = indexedDB.open(name, version);
    opening.onupgradeneeded = () => {
      if (!opening.result.objectStoreNames.contains(table)) opening.result.createObjectStore(table);
    };
    opening.onsuccess = () => resolve(opening.result);
    opening.onerror = () => reject(opening.error);
  });
