import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { writeBackup } from '../../../src/logbook/backup/backup';
import type { Entry } from '../../../src/logbook/entry';
import { union } from '../../../src/logbook/union';
import { A_YEAR_ON_MS, check, entry, fillJar, id, layCoat, SHIPPED, startPiece } from '../entries';
import { readBackup } from './read-backup';

const entries = SHIPPED as unknown as Entry[];
const newer = { key: id(7), issues: [], raw: { id: id(7), v: 3, kind: 'coat-laid', film: 'of the future' } };
const good = await writeBackup({ entries, setAside: [newer] }, A_YEAR_ON_MS);
const read = (text: string) => readBackup(text);
const backupOf = (...some: unknown[]) =>
  writeBackup({ entries: some as Entry[], setAside: [] }, A_YEAR_ON_MS);

describe('a backup', () => {
  test('brings back every entry, and what this phone could not read', async () => {
    expect(await read(good)).toMatchObject({
      ok: true,
      value: { entries, setAside: [{ key: id(7), raw: newer.raw }] },
    });
  });

  test('says what it is, in which version, and when it was written', () => {
    const { format, version, writtenAt } = JSON.parse(good);
    expect({ format, version, writtenAt }).toEqual({
      format: 'coatwait-logbook',
      version: 2,
      writtenAt: '2027-03-01T00:00:00.000Z',
    });
  });

  test('is the same backup when it was re-indented on its way', async () => {
    expect(await read(JSON.stringify(JSON.parse(good), null, 2))).toEqual(await read(good));
  });

  test('reads what another phone had set aside, when it can', async () => {
    const setAside = [{ key: id(1), issues: [], raw: entry(1, startPiece()) }];
    const text = await writeBackup({ entries: [], setAside }, A_YEAR_ON_MS);
    expect(await read(text)).toEqual({
      ok: true,
      value: { entries: [entry(1, startPiece())], setAside: [], photos: [] },
    });
  });

  test('keeps an entry of a newer version aside rather than losing it', async () => {
    expect(await read(await backupOf(newer.raw))).toMatchObject({
      ok: true,
      value: { entries: [], setAside: [{ key: id(7), raw: newer.raw, issues: [{ path: 'v' }] }] },
    });
  });

  test('with one faulty entry among good ones brings the good ones, and sets that one aside by its name', async () => {
    const faulty = { ...entry(2, layCoat()), film: { by: 'wet', wetFilm: { text: '0', unit: 'um' } } };
    expect(await read(await backupOf(entry(1, startPiece()), faulty))).toMatchObject({
      ok: true,
      value: {
        entries: [{ id: id(1) }],
        setAside: [{ key: id(2), raw: faulty, issues: [{ path: 'film.wetFilm' }] }],
      },
    });
  });

  test('brings what a wrong clock has dated a year ahead: an own backup always comes back', async () => {
    const ahead = entry(2, startPiece(id(0xa2)), A_YEAR_ON_MS + 365 * 24 * 3_600_000);
    expect(await read(await backupOf(entry(1, startPiece()), ahead))).toMatchObject({
      ok: true,
      value: { entries: [{ id: id(1) }, ahead], setAside: [] },
    });
  });

  test('brings rows without an id under a name of their own, the same each time', async () => {
    const text = await backupOf(entry(1, startPiece()), 'torn', { kind: 'coat-laid' });
    const setAside = [{ key: 'torn-0', issues: [], raw: 'half an ent' }];
    const again = await writeBackup({ entries: [entry(1, startPiece())], setAside }, A_YEAR_ON_MS);
    const keys = async (some: string) => {
      const back = await read(some);
      return back.ok && back.value.setAside.map(({ key }) => key);
    };
    expect(await keys(text)).toEqual([expect.stringMatching(/^unread-/), expect.stringMatching(/^unread-/)]);
    expect(await keys(text)).toEqual(await keys(text));
    expect(await keys(again)).toEqual(['torn-0']);
  });

  test('is summed the same where the page has no cryptography of the browser', async () => {
    const { subtle } = crypto;
    Object.defineProperty(crypto, 'subtle', { value: undefined, configurable: true });
    try {
      expect(await read(good)).toMatchObject({ ok: true });
      expect(await writeBackup({ entries, setAside: [newer] }, A_YEAR_ON_MS)).toBe(good);
    } finally {
      Object.defineProperty(crypto, 'subtle', { value: subtle, configurable: true });
    }
  });

  test('is written even when a row set aside is beyond JSON', async () => {
    const ring: Record<string, unknown> = {};
    ring['itself'] = ring;
    const setAside = [{ key: id(7), issues: [], raw: ring }];
    const text = await writeBackup({ entries, setAside }, A_YEAR_ON_MS);
    expect(await read(text)).toMatchObject({ ok: true, value: { entries, setAside: [{ key: id(7) }] } });
  });
});

describe('a file that is no good backup is refused whole', () => {
  const changed = (change: Record<string, unknown>) => JSON.stringify({ ...JSON.parse(good), ...change });
  test.each([
    { why: 'empty', text: '', kind: 'not-json' },
    { why: 'cut short', text: good.slice(0, -20), kind: 'not-json' },
    { why: 'a list', text: '[]', kind: 'not-a-backup' },
    { why: 'a number', text: '1', kind: 'not-a-backup' },
    { why: 'null', text: 'null', kind: 'not-a-backup' },
    { why: 'of another format', text: changed({ format: 'other' }), kind: 'not-a-backup' },
    { why: 'without entries', text: changed({ entries: undefined }), kind: 'not-a-backup' },
    {
      why: 'with entries of the wrong type',
      text: changed({ entries: { length: 3 } }),
      kind: 'not-a-backup',
    },
    { why: 'without a checksum', text: changed({ sha256: undefined }), kind: 'not-a-backup' },
    { why: 'with an entry changed', text: good.replace('"text":"60"', '"text":"61"'), kind: 'damaged' },
    { why: 'with an entry missing', text: changed({ entries: SHIPPED.slice(1) }), kind: 'damaged' },
    {
      why: 'nested beyond reason',
      text: changed({ entries: ['@'] }).replace('"@"', '['.repeat(9e4) + ']'.repeat(9e4)),
      kind: 'damaged',
    },
    { why: 'of a newer format', text: changed({ version: 3 }), kind: 'newer-backup' },
  ])('$why: $kind', async ({ text, kind }) => {
    expect(await read(text)).toMatchObject({ ok: false, failure: { kind } });
  });

  test('with nothing in it that can be read, of which the first faults are named', async () => {
    const refused = await read(await backupOf(...Array.from({ length: 5000 }, (_, n) => `x${n}`)));
    expect(refused).toMatchObject({ ok: false, failure: { kind: 'faulty-entries' } });
    expect(refused.ok ? [] : 'issues' in refused.failure && refused.failure.issues).toHaveLength(20);
  });

  test('with more that cannot be read than any app could have left so', async () => {
    const text = await backupOf(entry(1, startPiece()), ...Array.from({ length: 10_001 }, (_, n) => `x${n}`));
    expect(await read(text)).toEqual({ ok: false, failure: { kind: 'too-many-unread' } });
  });

  test('whatever the file says', async () => {
    const anything = fc.oneof(
      fc.string(),
      fc.json({ maxDepth: 5 }),
      fc.jsonValue().map((value) => changed({ entries: [value] })),
    );
    await fc.assert(
      fc.asyncProperty(anything, async (text) => {
        expect((await read(text)).ok).toBe(false);
      }),
    );
  });
});

// Few ids, so that lists overlap; one id may come with two contents, as only a forged file can bring it.
const lists = fc.array(
  fc
    .tuple(fc.integer({ min: 1, max: 6 }), fc.constantFrom(startPiece(), fillJar(), layCoat(), check()))
    .map(([n, body]) => entry(n, body)),
  { maxLength: 8 },
);
const sorted = (some: Iterable<Entry>) => [...some].sort((one, other) => (one.id < other.id ? -1 : 1));
const merge = (...some: (readonly Entry[])[]) => sorted(union(some.flat()).values());

describe('merging', () => {
  test('is commutative', () => {
    fc.assert(fc.property(lists, lists, (a, b) => void expect(merge(a, b)).toEqual(merge(b, a))));
  });
  test('is associative', () => {
    fc.assert(
      fc.property(lists, lists, lists, (a, b, c) => {
        expect(merge(merge(a, b), c)).toEqual(merge(a, merge(b, c)));
      }),
    );
  });
  test('is idempotent', () => {
    fc.assert(
      fc.property(lists, lists, (a, b) => {
        expect(merge(merge(a, b), structuredClone(b))).toEqual(merge(a, b));
      }),
    );
  });
  test('loses no id and makes none', () => {
    fc.assert(
      fc.property(lists, lists, (a, b) => {
        const ids = new Set([...a, ...b].map((one) => one.id));
        expect(merge(a, b).map((one) => one.id)).toEqual([...ids].sort());
      }),
    );
  });
});
