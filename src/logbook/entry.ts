import * as v from 'valibot';
import { fail, type Result, succeed } from '../result';
import { DAY_MS } from '../units';
import { LOGBOOK_WORDS } from '../words/frame/logbook';
import { CORRECTION_KINDS } from './kinds/correction';
import { Id } from './kinds/envelope';
import { DATA_SHEET_KINDS } from './kinds/mix/data-sheet';
import { INGREDIENT_KINDS } from './kinds/mix/ingredient';
import { JAR_KINDS } from './kinds/mix/jar';
import { POUR_KINDS } from './kinds/mix/pour';
import { RECIPE_KINDS } from './kinds/mix/recipe';
import { CARD_KINDS } from './kinds/piece/card';
import { CHECK_KINDS } from './kinds/piece/check';
import { COAT_KINDS } from './kinds/piece/coat';
import { GROUND_KINDS } from './kinds/piece/ground';
import { MATCH_KINDS } from './kinds/piece/match';
import { OVERRIDE_KINDS } from './kinds/piece/override';
import { PHOTO_KINDS } from './kinds/piece/photo';
import { PIECE_KINDS } from './kinds/piece/piece';
import { READING_KINDS } from './kinds/piece/reading';
import { RECORD_KINDS } from './kinds/piece/record';
import { SPOT_TEST_KINDS } from './kinds/piece/spot-test';
import { TONER_KINDS } from './kinds/piece/toner';
import { ZONE_KINDS } from './kinds/piece/zone';
import { AIR_KINDS } from './kinds/shop/air';
import { CARTRIDGE_KINDS } from './kinds/shop/cartridge';
import { CAUTION_KINDS } from './kinds/shop/caution';
import { PHONE_KINDS } from './kinds/shop/phone';
import { PLAN_KINDS } from './kinds/shop/plan';
import { REMINDER_ENTRY_KINDS } from './kinds/shop/reminder';
import { ROOM_KINDS } from './kinds/shop/room';
import { SETTINGS_KINDS } from './kinds/shop/settings';
import { STRIKE_KINDS } from './kinds/strike';

/** Every kind of entry that this version can read. A new area adds its file here, and its fold in fold/fold.ts. */
export const KINDS = {
  ...PIECE_KINDS,
  ...JAR_KINDS,
  ...INGREDIENT_KINDS,
  ...RECIPE_KINDS,
  ...POUR_KINDS,
  ...MATCH_KINDS,
  ...READING_KINDS,
  ...AIR_KINDS,
  ...ROOM_KINDS,
  ...CARTRIDGE_KINDS,
  ...CAUTION_KINDS,
  ...SPOT_TEST_KINDS,
  ...DATA_SHEET_KINDS,
  ...COAT_KINDS,
  ...CHECK_KINDS,
  ...OVERRIDE_KINDS,
  ...PLAN_KINDS,
  ...REMINDER_ENTRY_KINDS,
  ...SETTINGS_KINDS,
  ...STRIKE_KINDS,
  ...CORRECTION_KINDS,
  ...ZONE_KINDS,
  ...PHOTO_KINDS,
  ...PHONE_KINDS,
  ...TONER_KINDS,
  ...RECORD_KINDS,
  ...CARD_KINDS,
  ...GROUND_KINDS,
};

export type Kind = keyof typeof KINDS;
/** The same type, with nothing in it that can be changed. */
type DeepReadonly<T> = T extends object ? { readonly [Key in keyof T]: DeepReadonly<T[Key]> } : T;

export type EntryOf<K extends Kind> = DeepReadonly<v.InferOutput<(typeof KINDS)[K]['latest']>>;
/** One line of the logbook. `at` is when it happened; the id says when it was logged. */
export type Entry = { [K in Kind]: EntryOf<K> }[Kind];
/** What a person says when an entry is made; the logbook adds the rest. */
export type EntryBody = { [K in Kind]: Omit<EntryOf<K>, 'id' | 'v' | 'at' | 'zone'> }[Kind];

/** One thing wrong with an entry, and where: `film.wetFilm`. */
export interface Issue {
  readonly path: string;
  readonly problem: string;
}

const isAbove = (version: unknown, known: number): boolean => typeof version === 'number' && version > known;
const isKind = (kind: unknown): kind is Kind => typeof kind === 'string' && Object.hasOwn(KINDS, kind);

/**
 * An entry built afresh from anything, or everything that is wrong with it.
 * @param nowMs the clock now; what happened more than a day later is refused
 */
export function parseEntry(from: unknown, nowMs: number): Result<Entry, Issue[]> {
  if (typeof from !== 'object' || from === null) return refuse('', LOGBOOK_WORDS.notAnEntry);
  const { kind, v: version } = from as { kind?: unknown; v?: unknown };
  if (!isKind(kind)) return refuse('kind', LOGBOOK_WORDS.unknownKind);
  const { versions } = KINDS[kind];
  if (isAbove(version, versions.length)) return refuse('v', LOGBOOK_WORDS.newerVersion);
  const schema = versions[Number(version) - 1] ?? versions[0]; // what is no version at all fails on its literal
  const parsed = v.safeParse(schema, from, { message: wordsFor, abortPipeEarly: true });
  if (!parsed.success) return fail(parsed.issues.map(toIssue));
  const entry = parsed.output as Entry;
  if (Date.parse(entry.at) > nowMs + DAY_MS) return refuse('at', LOGBOOK_WORDS.inTheFuture);
  return succeed(entry);
}

/** The entry as it is written: in the lowest version of its kind that says all of it. */
export const inItsVersion = <E extends { readonly kind: Kind }>(entry: E): E & { readonly v: number } => ({
  ...entry,
  v: versionFor(entry),
});

function versionFor(entry: { readonly kind: Kind }): number {
  const { versions } = KINDS[entry.kind];
  const isSaidBy = (schema: v.GenericSchema, index: number): boolean => {
    const parsed = v.safeParse(schema, { ...entry, v: index + 1 });
    return parsed.success && !isLessThan(parsed.output, entry);
  };
  return versions.length === 1 ? 1 : versions.findIndex(isSaidBy) + 1 || versions.length;
}

/** Whether something that was said is missing from what was read of it. */
function isLessThan(read: unknown, said: unknown): boolean {
  if (typeof said !== 'object' || said === null) return said !== undefined && read === undefined;
  return Object.entries(said).some(([key, value]) =>
    isLessThan((read as Record<string, unknown> | undefined)?.[key], value),
  );
}

/** Whether this is the id of an entry, a piece or a jar. */
export const isId = (from: unknown): from is string => v.is(Id, from);

/** Whether this could be an entry that only a newer version can read: worth keeping until then. */
export const isFromNewerApp = (from: unknown): from is { readonly id: string } => {
  if (typeof from !== 'object' || from === null) return false;
  const { id, kind, v: version } = from as { id?: unknown; kind?: unknown; v?: unknown };
  const isNewer =
    typeof kind === 'string' && (!isKind(kind) || isAbove(version, KINDS[kind].versions.length));
  return isNewer && isId(id);
};

const refuse = (path: string, problem: string) => fail([{ path, problem }]);
const toIssue = (issue: v.BaseIssue<unknown>): Issue => ({
  path: v.getDotPath(issue) ?? '',
  problem: issue.message,
});
const wordsFor = ({ expected, input }: v.BaseIssue<unknown>): string =>
  input === undefined ? LOGBOOK_WORDS.missing : LOGBOOK_WORDS.expected(expected ?? '');
