import { fail, type Result, succeed } from '../../result';
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

/** Why a backup was not taken in; nothing of it is. */
export type BackupFailure =
  | { readonly kind: 'too-large' | 'unreadable' | 'not-json' | 'not-a-backup' | 'damaged' | 'packed' }
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

/** What a backup holds, checked entry by entry, or why nothing of it can be taken. */
export async function readBackup(
  text: string,
  nowMs: number,
): Promise<Result<BroughtLogbook, BackupFailure>> {
  if (text.length > MOST_CHARACTERS) return fail({ kind: 'too-large' });
  const content = contentOf(text);
  if (!content.ok) return content;
  const { entries, setAside, photos, sha256 } = content.value;
  const summed = photos ? [entries, setAside, photos] : [entries, setAside];
  if ((await checksum(summed).catch(() => '')) !== sha256) return fail({ kind: 'damaged' });
  return parseContent(content.value, nowMs);
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
  nowMs: number,
): Result<BroughtLogbook, BackupFailure> {
  const good: Entry[] = [];
  const aside: SetAside[] = [];
  const issues: Issue[] = [];
  const take = (raw: unknown, path: string): void => {
    const parsed = parseEntry(raw, nowMs);
    if (parsed.ok) good.push(parsed.value);
    else if (isFromNewerApp(raw)) aside.push({ key: raw.id, issues: parsed.failure, raw });
    else issues.push(...parsed.failure.map((issue) => ({ ...issue, path: `${path}.${issue.path}` })));
  };
  // What the other phone could not read is no fault of the file: read it if we can, else keep it as it is.
  const takeUnread = ({ key, raw }: Unread): void => {
    const parsed = parseEntry(raw, nowMs);
    if (parsed.ok) good.push(parsed.value);
    else aside.push({ key, issues: parsed.failure, raw });
  };
  for (const [index, raw] of entries.entries()) take(raw, `entries.${index}`);
  if (issues.length > 0) return fail({ kind: 'faulty-entries', issues: issues.slice(0, MOST_ISSUES) });
  for (const one of setAside) if (isUnread(one)) takeUnread(one);
  return succeed({ entries: good, setAside: aside, photos: photos.filter(isPhotoMark) });
}

const isUnread = (one: unknown): one is Unread => isObject(one) && isId(one['key']);
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

/** SHA-256 in hex (FIPS 180-4). */
export async function sha256(bytes: BufferSource): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return Array.from(digest, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
