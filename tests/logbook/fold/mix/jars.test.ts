import { describe, expect, test } from 'vitest';
import type { EntryBody } from '../../../../src/logbook/entry';
import { fold } from '../../../../src/logbook/fold/fold';
import { DAY_1_MS, fillJar, id, inTurn, JAR, MINUTE_MS } from '../../entries';

const [TINTER, OTHER_JAR, NOWHERE] = [id(0xe1), id(0xb2), id(0xff)];
const atMs = (n: number): number => DAY_1_MS + n * MINUTE_MS;
const mL = (text: string) => ({ text, unit: 'mL' }) as const;
const g = (text: string) => ({ text, unit: 'g' }) as const;
const shopOf = (...bodies: readonly EntryBody[]) => fold(bodies.map(inTurn));

describe('an ingredient', () => {
  const described = (lot?: string, more: object = {}): EntryBody => ({
    kind: 'ingredient-described',
    ingredient: TINTER,
    name: 'Ochre',
    is: 'tinter',
    ...(lot && { lot }),
    ...more,
  });
  const away: EntryBody = { kind: 'ingredient-put-away', ingredient: TINTER };
  const toldOf = (...bodies: EntryBody[]) => shopOf(...bodies).ingredients.get(TINTER);

  test('remembers when it first came from another lot than before', () => {
    expect(toldOf(described('A'))?.lotChangesMs).toEqual([]);
    expect(toldOf(described('A'), described('A'))?.lotChangesMs).toEqual([]);
    expect(toldOf(described(), described('A'))?.lotChangesMs).toEqual([]);
    expect(toldOf(described('A'), described())?.lotChangesMs).toEqual([]);
    expect(
      toldOf(described('A'), described('B'), described('B'), described('C'), described())?.lotChangesMs,
    ).toEqual([atMs(2), atMs(4)]);
  });

  test('is as it was described last, whole', () => {
    const before = described('A', { source: 'A friend', strength: 'weak' });
    const { id: name, describedMs, ...told } = toldOf(before, described('B')) ?? {};
    expect([name, describedMs]).toEqual([TINTER, atMs(2)]);
    expect(told).toEqual({
      name: 'Ochre',
      is: 'tinter',
      lot: 'B',
      lotChangesMs: [atMs(2)],
      putAwayMs: undefined,
    });
  });

  test('that was put away is back when it is described again', () => {
    expect(toldOf(described(), away)?.putAwayMs).toBe(atMs(2));
    expect(toldOf(described(), away, described())?.putAwayMs).toBeUndefined();
    expect(toldOf(away)).toBeUndefined();
    // Put away and described at one instant, on two phones: away.
    const [one, other] = [described(), away]
      .map(inTurn)
      .map((line) => ({ ...line, at: '2026-03-01T09:00:00.000Z' }));
    expect(fold([one, other].flatMap((line) => line ?? [])).ingredients.get(TINTER)?.putAwayMs).toBe(
      atMs(60),
    );
  });
});

describe('a jar', () => {
  test('holds what was filled in, and tells what was taken out, weighed and tried in the order it was', () => {
    const boxed = {
      ...fillJar(OTHER_JAR),
      boxedFrom: [
        { jar: JAR, volume: mL('30') },
        { jar: NOWHERE, volume: mL('5') },
      ],
    };
    const { jars } = shopOf(
      { ...fillJar(), amount: mL('250'), note: 'From the shelf.' } as EntryBody, // 1
      boxed as EntryBody, // 2
      { kind: 'jar-drawn', jar: JAR, volume: mL('20') }, // 3
      { kind: 'jar-weighed', jar: JAR, mass: g('90'), missing: 'used' }, // 4
      { kind: 'jar-weighed', jar: JAR, mass: g('80'), missing: 'evaporated' }, // 5
      { kind: 'jar-tested', jar: JAR, test: 'glass-plate', result: 'fails' }, // 6
      { kind: 'jar-tested', jar: JAR, test: 'glass-plate', result: 'passes' }, // 7
      { kind: 'jar-emptied', jar: OTHER_JAR }, // 8
    );
    const {
      product: _,
      thinner: __,
      thinning: ___,
      weighings,
      tests,
      ...jar
    } = jars.get(JAR) ?? expect.unreachable();
    expect(jar).toEqual({
      id: JAR,
      entry: id(1),
      name: 'Gloss',
      note: 'From the shelf.',
      amount: { si: 250e-6, typed: mL('250') },
      filledMs: atMs(1),
      emptiedMs: undefined,
      drawings: [
        { atMs: atMs(2), volumeM3: 30e-6, into: OTHER_JAR },
        { atMs: atMs(3), volumeM3: 20e-6 },
      ],
    });
    expect(weighings.map(({ mass, missing }) => [mass.typed.text, missing])).toEqual([
      ['90', 'used'],
      ['80', 'evaporated'],
    ]);
    expect(tests.map(({ result }) => result)).toEqual(['fails', 'passes']);
    expect([jars.size, jars.get(OTHER_JAR)?.emptiedMs]).toEqual([2, atMs(8)]);
  });

  test('that nobody filled is not there, whatever is said of it', () => {
    const { jars, sheets } = shopOf(
      { kind: 'jar-drawn', jar: JAR, volume: mL('20') },
      { kind: 'jar-weighed', jar: JAR, mass: g('90'), missing: 'used' },
      { kind: 'jar-tested', jar: JAR, test: 'glass-plate', result: 'fails' },
      { kind: 'jar-emptied', jar: JAR },
    );
    expect([jars.size, sheets.size]).toEqual([0, 0]);
  });
});

test('a data sheet replaces the one before it for the same jar alone', () => {
  const sheet = (jar: string, celsius: string): EntryBody => ({
    kind: 'sheet-entered',
    jar,
    temperature: { text: celsius, unit: 'C' },
    humidity: { text: '50', unit: '%' },
    times: {},
  });
  const { sheets } = shopOf(sheet(JAR, '20'), sheet(OTHER_JAR, '21'), sheet(JAR, '23'));
  expect([...sheets].map(([jar, { temperature }]) => [jar, temperature.typed.text])).toEqual([
    [JAR, '23'],
    [OTHER_JAR, '21'],
  ]);
});
