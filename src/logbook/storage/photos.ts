import { fail, type Result, succeed } from '../../result';
import { type Database, openDatabase } from './database';
import { type StorageFailure, toStorageFailure } from './storage-failure';

/** Pictures by id, on this device; they go into a backup file and are never sent by the app. */
export interface Photos {
  keep(id: string, picture: Blob): Promise<Result<void, StorageFailure>>;
  /** Undefined where the picture is not on this device. */
  read(id: string): Promise<Blob | undefined>;
  /** Takes pictures away again whose entries were not kept. */
  drop(ids: readonly string[]): Promise<void>;
}

/** The pictures kept beside the logbook. */
export function openPhotos(database: Database = openDatabase('coatwait-photos', 'photos')): Photos {
  return {
    async keep(id, picture) {
      try {
        await database.write([[id, picture]]);
        return succeed(undefined);
      } catch (error) {
        return fail(toStorageFailure(error));
      }
    },
    async read(id) {
      try {
        const [row] = await database.read([id]);
        return row?.[1] instanceof Blob ? row[1] : undefined;
      } catch {
        return undefined; // shown as not being on this device
      }
    },
    drop: (ids) => database.remove(ids).catch(() => undefined), // left over they take room, and harm nothing
  };
}
