import { createStore, get, set } from 'idb-keyval';
import { fail, type Result, succeed } from '../result';
import { type StorageFailure, toStorageFailure } from './storage-failure';

/** Pictures by id, on this device; they go into a backup file and are never sent by the app. */
export interface Photos {
  keep(id: string, picture: Blob): Promise<Result<void, StorageFailure>>;
  /** Undefined where the picture is not on this device. */
  read(id: string): Promise<Blob | undefined>;
}

/** The pictures kept beside the logbook. */
export function openPhotos(name = 'coatwait-photos'): Photos {
  const use = createStore(name, 'photos');
  return {
    async keep(id, picture) {
      try {
        await set(id, picture, use);
        return succeed(undefined);
      } catch (error) {
        return fail(toStorageFailure(error));
      }
    },
    async read(id) {
      try {
        return await get<Blob>(id, use);
      } catch {
        return undefined; // shown as not being on this device
      }
    },
  };
}
