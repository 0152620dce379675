import { fail, type Result, succeed } from '../../result';
import type { Issue } from '../entry';

/*
 * A backup is one JSON object, UTF-8:
 *   format    "coatwait-logbook"
 *   version   2; version 1 had no photos
 *   writtenAt the UTC instant at which it was written
 *   entries   every entry of the logbook, as entry.ts describes it
 *   setAside  what this phone could not read, as it was kept: [{ key, raw }]
 *   photos    the photos beside it: [{ id, type, sha256 }]
 *   sha256    SHA-256 in hex of the UTF-8 text of JSON.stringify([entries, setAside, photos]), so that a file that was
 *             cut short or changed is noticed, and one that was only re-indented is not; in version 1 without photos
 */
export const FORMAT = 'coatwait-logbook';
export const VERSION = 2;
const PHOTO_TYPES = ['image/jpeg', 'image/png', 'image/webp'];
const MOST_CHARACTERS = 200_000_000;

/** Why a backup was not taken in; nothing of it is. */
export type BackupFailure =
  | { readonly kind: 'too-large' | 'unreadable' | 'not-json' | 'not-a-backup' | 'damaged' | 'packed' }
  | { readonly kind: 'too-many-unread' | 'stopped' }
  | { readonly kind: 'newer-backup'; readonly version: number }
  | { readonly kind: 'faulty-entries'; readonly issues: readonly Issue[] };

/** What a backup holds, whole, its entries yet to be read. */
export interface Content {
  readonly entries: readonly unknown[];
  readonly setAside: readonly unknown[];
  /** Undefined in version 1. */
  readonly photos: readonly unknown[] | undefined;
  readonly sha256: string;
}

/** A photo that lies beside the logbook in the backup. */
export interface PhotoMark {
  readonly id: string;
  readonly type: string;
  readonly sha256: string;
}

/** What a backup holds, or why nothing of it can be taken. It knows no entry, so that a worker need not either. */
export async function readContent(text: string): Promise<Result<Content, BackupFailure>> {
  if (text.length > MOST_CHARACTERS) return fail({ kind: 'too-large' });
  const content = contentOf(text);
  if (!content.ok) return content;
  const { entries, setAside, photos, sha256 } = content.value;
  const summed = photos ? [entries, setAside, photos] : [entries, setAside];
  return (await checksum(summed).catch(() => '')) === sha256 ? content : fail({ kind: 'damaged' });
}

function contentOf(text: string): Result<Content, BackupFailure> {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return fail({ kind: 'not-json' });
  }
  if (!isObject(json) || json['format'] !== FORMAT) return fail({ kind: 'not-a-backup' });
  const { version, entries, setAside, photos, sha256 } = json;
  if (typeof version === 'number' && version > VERSION) return fail({ kind: 'newer-backup', version });
  if (!Array.isArray(entries) || !Array.isArray(setAside) || typeof sha256 !== 'string')
    return fail({ kind: 'not-a-backup' });
  if (version !== 1 && !Array.isArray(photos)) return fail({ kind: 'not-a-backup' });
  return succeed({ entries, setAside, photos: Array.isArray(photos) ? photos : undefined, sha256 });
}

/** The photos that a backup says are beside it. */
export const marksIn = ({ photos = [] }: Content): readonly PhotoMark[] => photos.filter(isPhotoMark);

const isPhotoMark = (one: unknown): one is PhotoMark =>
  isObject(one) &&
  typeof one['id'] === 'string' &&
  typeof one['sha256'] === 'string' &&
  PHOTO_TYPES.some((type) => type === one['type']);
export const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The checksum of what a backup holds. */
// async, so that what is nested beyond reason rejects as everything else does
export async function checksum(content: readonly unknown[]): Promise<string> {
  return sha256(new TextEncoder().encode(JSON.stringify(content)));
}

/** SHA-256 in hex (FIPS 180-4). A page that was served without encryption has no `crypto.subtle`: then it is worked out here. */
export async function sha256(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const digest = globalThis.crypto?.subtle
    ? new Uint8Array(await crypto.subtle.digest('SHA-256', bytes))
    : (await import('@noble/hashes/sha2.js')).sha256(bytes);
  return Array.from(digest, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
