import { fail, type Result, succeed } from '../../result';
import { type Database, openDatabase } from './database';
import { type StorageFailure, toStorageFailure } from './storage-failure';

/*
 * A picture is kept as its bytes and its type: a Blob in a database is a reference that browsers have lost, and some refuse it.
 * The first version kept Blobs; they are read for ever.
 */

/** A picture as it is kept. */
interface Kept {
  readonly type: string;
  readonly bytes: ArrayBuffer;
}

/** Pictures by id, on this device; they go into a backup file and are never sent by the app. */
export interface Photos {
  keep(id: string, picture: Blob): Promise<Result<void, StorageFailure>>;
  /** Undefined where the picture is not on this device. */
  read(id: string): Promise<Blob | undefined>;
  /** Which pictures are on this device; none where that cannot be read. */
  ids(): Promise<ReadonlySet<string>>;
  /** Takes pictures away again whose entries were not kept. */
  drop(ids: readonly string[]): Promise<void>;
}

/** The pictures kept beside the logbook. */
export function openPhotos(database: Database = openDatabase('coatwait-photos', 'photos')): Photos {
  return {
    async keep(id, picture) {
      try {
        const kept: Kept = { type: picture.type, bytes: await picture.arrayBuffer() };
        await database.write([[id, kept]]);
        return succeed(undefined);
      } catch (error) {
        return fail(toStorageFailure(error));
      }
    },
    async read(id) {
      try {
        const [row] = await database.read([id]);
        return pictureOf(row?.[1]);
      } catch {
        return undefined; // shown as not being on this device
      }
    },
    ids: async () => new Set(await database.keys().catch(() => [])),
    drop: (ids) => database.remove(ids).catch(() => undefined), // left over they take room, and harm nothing
  };
}

function pictureOf(kept: unknown): Blob | undefined {
  if (kept instanceof Blob) return kept;
  const { type, bytes } = { ...(kept as Partial<Kept> | undefined) };
  return typeof type === 'string' && bytes instanceof ArrayBuffer ? new Blob([bytes], { type }) : undefined;
}
