import { describe, expect, test } from 'vitest';
import { writeBackup } from '../../src/logbook/backup/backup';
import { type Entry, inItsVersion, KINDS, type Kind, parseEntry } from '../../src/logbook/entry';
import later from '../reference/logbook-entries-v2.json';
import * as released from '../reference/released/logbook-1.mjs';
import { readBackup } from './backup/read-backup';
import { A_YEAR_ON_MS, SHIPPED } from './entries';

const LATER: readonly Record<string, unknown>[] = later.entries;
const ALL = [...SHIPPED, ...LATER] as unknown as Entry[];
const kindsOf = (entries: readonly Record<string, unknown>[]) => new Set(entries.map(({ kind }) => kind));
const withVersions = Object.entries(KINDS).filter(([, { versions }]) => versions.length > 1);

describe('a second version of a kind', () => {
  test('has an entry kept here for every kind that has one', () => {
    expect(kindsOf(LATER)).toEqual(new Set(withVersions.map(([kind]) => kind)));
  });

  test.each(LATER.map((entry) => ({ kind: entry['kind'], entry })))(
    'of $kind is read unchanged',
    ({ entry }) => {
      expect(parseEntry(entry, A_YEAR_ON_MS)).toEqual({ ok: true, value: entry });
    },
  );

  test.each(SHIPPED.map((entry) => ({ kind: entry['kind'] as Kind, entry })))(
    'of $kind says whatever version 1 said, and is not written for it',
    ({ kind, entry }) => {
      const { versions } = KINDS[kind];
      const { ok, value } = {
        value: undefined,
        ...parseEntry({ ...entry, v: versions.length }, A_YEAR_ON_MS),
      };
      expect({ ok, value }).toEqual({ ok: true, value: { ...entry, v: versions.length } });
      expect(inItsVersion(entry as unknown as Entry).v).toBe(1);
    },
  );

  test.each(LATER.map((entry) => ({ kind: entry['kind'], entry })))(
    'of $kind is written where it is needed',
    ({ entry }) => {
      expect(inItsVersion(entry as unknown as Entry).v).toBe(2);
    },
  );
});

// The app that phones ran before there were second versions: it must lose nothing, and tear nothing down.
describe('the released app', () => {
  const readByReleased = async () => {
    const text = await writeBackup({ entries: ALL, setAside: [] }, A_YEAR_ON_MS);
    const read = await released.readBackup(text, A_YEAR_ON_MS);
    if (!read.ok) throw new Error(JSON.stringify(read.failure));
    return read.value;
  };

  test('reads all of version 1 that it knows and sets the rest aside', async () => {
    const { entries, setAside } = await readByReleased();
    const known = ALL.filter((entry) => entry.v === 1 && !isUnknownToReleased(entry));
    expect(entries).toEqual(known);
    expect(setAside.map(({ key }) => key)).toEqual(
      ALL.filter((one) => !known.includes(one)).map(({ id }) => id),
    );
  });

  test('gives everything back to this app, the same to the letter', async () => {
    const { entries, setAside } = await readByReleased();
    const again = await readBackup(await released.writeBackup({ entries, setAside }, A_YEAR_ON_MS));
    if (!again.ok) throw new Error(JSON.stringify(again.failure));
    const byId = (one: Entry, other: Entry) => (one.id < other.id ? -1 : 1);
    expect(again.value.setAside).toEqual([]);
    expect([...again.value.entries].sort(byId)).toEqual([...ALL].sort(byId));
  });

  test('folds what it can read', async () => {
    const { entries } = await readByReleased();
    expect(released.fold(entries).entries.size).toBe(entries.length);
  });
});

const isUnknownToReleased = (entry: Entry): boolean => !released.parseEntry(entry, A_YEAR_ON_MS).ok;
