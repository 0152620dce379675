import { fail, type Result, succeed } from '../../result';
import { MOST_PHOTO_BYTES } from '../picture/outline';
import type { OnProgress } from './backup';
import { type BackupFailure, type Content, marksIn, readContent, sha256 } from './content';
import { readZip, type ZipFiles } from './zip';

/*
 * A backup file is a ZIP with
 *   logbook.json   the logbook, as content.ts describes it
 *   photos/<id>    each photo as it was kept, by its id; its type and SHA-256 stand in the logbook
 * A logbook.json alone, without photos, is a backup too.
 */
export const LOGBOOK = 'logbook.json';
const MOST_LOGBOOK_BYTES = 400_000_000;
const ZIP_BEGINS = 0x504b0304;

/** A photo with its id. */
export interface Photo {
  readonly id: string;
  readonly picture: Blob;
}

/** A backup file taken apart and found whole; its entries are yet to be read. */
export interface Unpacked {
  readonly content: Content;
  readonly photos: readonly Photo[];
}

/** What a worker that takes one apart says: how far it is, and in the end what came of it. */
export type Unpacking =
  | { readonly done: number; readonly of: number }
  | { readonly unpacked: Result<Unpacked, BackupFailure> };

export const placeOf = (id: string): string => `photos/${id}`;

/** Takes a backup file apart, or says why nothing of it can be taken; meanwhile, how many of its photos are looked at. */
export const unpack = (file: Blob, onProgress?: OnProgress): Promise<Result<Unpacked, BackupFailure>> =>
  // The file may be taken away while it is read, or be larger than the memory.
  unpackWhole(file, onProgress).catch(() => fail({ kind: 'unreadable' }));

async function unpackWhole(file: Blob, onProgress?: OnProgress): Promise<Result<Unpacked, BackupFailure>> {
  const files = await filesOf(file);
  if (!files.ok) return files;
  const logbook = await files.value.get(LOGBOOK)?.();
  if (!logbook) return fail({ kind: 'not-a-backup' });
  if (logbook.size > MOST_LOGBOOK_BYTES) return fail({ kind: 'too-large' });
  const content = await readContent(await logbook.text());
  if (!content.ok) return content;
  const photos: Photo[] = [];
  const marks = marksIn(content.value);
  for (const mark of marks) {
    onProgress?.(photos.length, marks.length);
    const picture = await files.value.get(placeOf(mark.id))?.();
    if (!picture || picture.size > MOST_PHOTO_BYTES) return fail({ kind: 'damaged' });
    if ((await sha256(new Uint8Array(await picture.arrayBuffer()))) !== mark.sha256)
      return fail({ kind: 'damaged' });
    photos.push({ id: mark.id, picture: picture.slice(0, picture.size, mark.type) });
  }
  return succeed({ content: content.value, photos });
}

async function filesOf(file: Blob): Promise<Result<ZipFiles, BackupFailure>> {
  const head = new DataView(await file.slice(0, 4).arrayBuffer());
  if (head.byteLength < 4 || head.getUint32(0) !== ZIP_BEGINS)
    return succeed(new Map([[LOGBOOK, async () => file]]));
  const zip = await readZip(file);
  if (zip.ok) return zip;
  return fail({ kind: zip.failure === 'packed' ? 'packed' : 'damaged' });
}
