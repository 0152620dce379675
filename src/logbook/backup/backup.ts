import { fail, type Result, succeed } from '../../result';
import { crc32 } from '../crc32';
import { type Entry, type Issue, isFromNewerApp, isId, parseEntry } from '../entry';
import type { Loaded, SetAside } from '../storage/store';
import {
  type BackupFailure,
  type Content,
  checksum,
  FORMAT,
  isObject,
  marksIn,
  type PhotoMark,
  VERSION,
} from './content';

const MOST_ISSUES = 20;
/** More than a newer version could ever have left unread: such a file is none of ours, or needs the newest version. */
const MOST_UNREAD = 10_000;
const LONGEST_KEY = 200;
/** How many entries are read between two words of how far it is. */
const STRIDE = 500;

type Unread = Pick<SetAside, 'key' | 'raw'>;

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
 * The entries of a backup, each read alone. One that cannot be read is set aside and named; one that a wrong clock has dated later than now
 * is an entry like any other. The screen is let in between.
 */
export async function readEntries(
  content: Content,
  onProgress: OnProgress = unwatched,
): Promise<Result<BroughtLogbook, BackupFailure>> {
  const { entries, setAside } = content;
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
    if (index % STRIDE < STRIDE - 1) continue;
    onProgress(index, all.length);
    await new Promise((resolve) => setTimeout(resolve));
  }
  if (entries.length > 0 && good.length === 0 && issues.length > 0)
    return fail({ kind: 'faulty-entries', issues: issues.slice(0, MOST_ISSUES) });
  return succeed({
    entries: good,
    setAside: [...aside.values()],
    photos: marksIn(content).filter(({ id }) => isId(id)),
  });
}

/** What an entry that cannot be read is kept under: its own id, else a name made of what is in it, so that it comes once. */
function keyOf(raw: unknown): string {
  if (isObject(raw) && isId(raw['id'])) return raw['id'];
  return `unread-${crc32(new TextEncoder().encode(JSON.stringify(raw))).toString(16)}`;
}

const isUnread = (one: unknown): one is Unread =>
  isObject(one) && typeof one['key'] === 'string' && one['key'].length <= LONGEST_KEY;

/** The value if JSON can hold it, else its description: one broken row must not cost the whole backup. */
function asJson(raw: unknown): unknown {
  try {
    return JSON.parse(JSON.stringify(raw));
  } catch {
    return String(raw);
  }
}
