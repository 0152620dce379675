import { fail, type Result, succeed } from '../../result';
import { crc32 } from '../crc32';
import { type Entry, type Issue, isFromNewerApp, isId, parseEntry } from '../entry';
import type { Loaded, SetAside } from '../storage/store';

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
const FORMAT = 'coatwait-logbook';
const VERSION = 2;
const PHOTO_TYPES = ['image/jpeg', 'image/png', 'image/webp'];
const MOST_CHARACTERS = 200_000_000;
const MOST_ISSUES = 20;
/** More than a newer version could ever have left unread: such a file is none of ours, or needs the newest version. */
const MOST_UNREAD = 10_000;
const LONGEST_KEY = 200;
/** How many entries are read between two words of how far it is. */
const STRIDE = 1_000;

/** Why a backup was not taken in; nothing of it is. */
export type BackupFailure =
  | { readonly kind: 'too-large' | 'unreadable' | 'not-json' | 'not-a-backup' | 'damaged' | 'packed' }
  | { readonly kind: 'too-many-unread' | 'stopped' }
  | { readonly kind: 'newer-backup'; readonly version: number }
  | { readonly kind: 'faulty-entries'; readonly issues: readonly Issue[] };

type Unread = Pick<SetAside, 'key' | 'raw'>;
interface Content {
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

/** What a backup of the logbook brings, and which photos belong to it. */
export interface BroughtLogbook extends Loaded {
  readonly photos: readonly PhotoMark[];
}

/** The text of a backup of everything kept. */
export async function writeBackup(
  { entries, setAside }: Loaded,
  nowMs: number,
  photos: readonly PhotoMark[] = [],
): Promise<string> {
  const unread: Unread[] = setAside.map(({ key, raw }) => ({ key, raw: asJson(raw) }));
  return JSON.stringify({
    format: FORMAT,
    version: VERSION,
    writtenAt: new Date(nowMs).toISOString(),
    sha256: await checksum([entries, unread, photos]),
    entries,
    setAside: unread,
    photos,
  });
}

/** Called with how much of a backup is read, and how much there is. */
export type OnProgress = (done: number, of: number) => void;
const unwatched: OnProgress = () => undefined;

/**
 * What a backup holds, checked entry by entry, or why nothing of it can be taken. An entry that cannot be read is set aside and named;
 * one that a wrong clock has dated later than now is an entry like any other.
 */
export async function readBackup(
  text: string,
  onProgress: OnProgress = unwatched,
): Promise<Result<BroughtLogbook, BackupFailure>> {
  if (text.length > MOST_CHARACTERS) return fail({ kind: 'too-large' });
  const content = contentOf(text);
  if (!content.ok) return content;
  const { entries, setAside, photos, sha256 } = content.value;
  const summed = photos ? [entries, setAside, photos] : [entries, setAside];
  if ((await checksum(summed).catch(() => '')) !== sha256) return fail({ kind: 'damaged' });
  return parseContent(content.value, onProgress);
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

function parseContent(
  { entries, setAside, photos = [] }: Content,
  onProgress: OnProgress,
): Result<BroughtLogbook, BackupFailure> {
  const good: Entry[] = [];
  const aside = new Map<string, SetAside>();
  const issues: Issue[] = [];
  const read = (raw: unknown, key: string, path: string): void => {
    const parsed = parseEntry(raw, Number.POSITIVE_INFINITY);
    if (parsed.ok) good.push(parsed.value);
    else aside.set(key, { key, issues: parsed.failure, raw });
    if (parsed.ok || issues.length >= MOST_ISSUES || isFromNewerApp(raw)) return;
    issues.push(...parsed.failure.map((issue) => ({ ...issue, path: `${path}.${issue.path}` })));
  };
  const all: (readonly [raw: unknown, key: string, path: string])[] = [
    ...entries.map((raw, index) => [raw, keyOf(raw), `entries.${index}`] as const),
    ...setAside.flatMap((one, index) =>
      isUnread(one) ? [[one.raw, one.key, `setAside.${index}`] as const] : [],
    ),
  ];
  for (const [index, one] of all.entries()) {
    read(...one);
    if (aside.size > MOST_UNREAD) return fail({ kind: 'too-many-unread' });
    if (index % STRIDE === 0) onProgress(index, all.length);
  }
  if (entries.length > 0 && good.length === 0 && issues.length > 0)
    return fail({ kind: 'faulty-entries', issues: issues.slice(0, MOST_ISSUES) });
  return succeed({ entries: good, setAside: [...aside.values()], photos: photos.filter(isPhotoMark) });
}

/** What an entry that cannot be read is kept under: its own id, else a name made of what is in it, so that it comes once. */
function keyOf(raw: unknown): string {
  if (isObject(raw) && isId(raw['id'])) return raw['id'];
  return `unread-${crc32(new TextEncoder().encode(JSON.stringify(raw))).toString(16)}`;
}

const isUnread = (one: unknown): one is Unread =>
  isObject(one) && typeof one['key'] === 'string' && one['key'].length <= LONGEST_KEY;
const isPhotoMark = (one: unknown): one is PhotoMark =>
  isObject(one) &&
  isId(one['id']) &&
  typeof one['sha256'] === 'string' &&
  PHOTO_TYPES.some((type) => type === one['type']);
const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The value if JSON can hold it, else its description: one broken row must not cost the whole backup. */
function asJson(raw: unknown): unknown {
  try {
    return JSON.parse(JSON.stringify(raw));
  } catch {
    return String(raw);
  }
}

// async, so that what is nested beyond reason rejects as everything else does
async function checksum(content: readonly unknown[]): Promise<string> {
  return sha256(new TextEncoder().encode(JSON.stringify(content)));
}

/** SHA-256 in hex (FIPS 180-4). A page that was served without encryption has no `crypto.subtle`: then it is worked out here. */
export async function sha256(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const digest = globalThis.crypto?.subtle
    ? new Uint8Array(await crypto.subtle.digest('SHA-256', bytes))
    : (await import('@noble/hashes/sha2.js')).sha256(bytes);
  return Array.from(digest, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
