import { describe, expect, test } from 'vitest';
import { binderOf } from '../../../src/estimator/laws/binders';
import { filmSolvent } from '../../../src/estimator/laws/film-solvents';
import type { Entry, EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import type { SolventId } from '../../../src/science/solvents/solvents';
import { stackHistory } from '../../../src/shop/stack/history';
import { DAY_1_MS, entry, fillJar, id, layCoat, PIECE, strike } from '../../logbook/entries';

const HOUR_MS = 3_600_000;
const DAY_S = 86_400;
const um = (amount: number) => ({ text: String(amount), unit: 'um' }) as const;
const celsius = (amount: number) => ({ text: String(amount), unit: 'C' }) as const;
const atHour = (hours: number): number => DAY_1_MS + hours * HOUR_MS;

const start = (more: Partial<Extract<EntryBody, { kind: 'piece-started' }>> = {}): EntryBody => ({
  kind: 'piece-started',
  piece: PIECE,
  name: 'Box',
  base: 'sealed',
  ...more,
});
const wet = (amount: number, how: 'spray' | 'flash' = 'spray', more: { air?: string } = {}): EntryBody => ({
  ...(layCoat() as Extract<EntryBody, { kind: 'coat-laid' }>),
  how,
  film: { by: 'wet', wetFilm: um(amount) },
  ...more,
});
const sanded = (amount: number): EntryBody => ({
  kind: 'sanded',
  piece: PIECE,
  removed: um(amount),
  stage: 'level',
});
const airRead = (amount: number): EntryBody => ({
  kind: 'air-read',
  temperature: celsius(amount),
  humidity: { text: '50', unit: '%' },
  movement: 'strong',
});
const bench = (base = start()): Entry[] => [entry(1, base, atHour(0)), entry(2, fillJar(), atHour(0))];

function told(entries: Entry[]) {
  const shop = fold(entries);
  const piece = shop.pieces.get(PIECE);
  if (!piece) throw new Error('no piece');
  return stackHistory(piece, shop);
}
function historyOf(entries: Entry[]) {
  const history = told(entries);
  if (!history.ok) throw new Error(history.failure.kind);
  return history.value;
}
const eventsOf = (entries: Entry[]) =>
  historyOf(entries).history.events.map((event) => {
    const hours = event.atS / 3600;
    if (event.kind === 'coat') return [event.kind, hours, Number((event.dryM * 1e6).toFixed(2))];
    if (event.kind === 'sand') return [event.kind, hours, Number((event.removedM * 1e6).toFixed(2))];
    return [event.kind, hours, Number((event.solventM.reduce((sum, m) => sum + m, 0) * 1e6).toFixed(2))];
  });

// The jar of these entries is 22 % volume solids thinned one to a half, so a wet film leaves 22/150 of itself.
describe('what was done', () => {
  test('is told in seconds from the first coat, solvent by solvent', () => {
    const { history, startMs } = historyOf([
      ...bench(),
      entry(3, wet(150), atHour(1)),
      entry(4, wet(75), atHour(3)),
    ]);
    expect(startMs).toBe(atHour(1));
    expect(history.binder).toBe(binderOf('nitrocellulose'));
    // By hand, per volume of solids: 78/22 of the usual blend from the lacquer and 50/22 of toluene from the thinner.
    const usual = 78 / 22;
    const expected = {
      acetone: 0.25 * usual,
      mek: 0.1 * usual,
      toluene: 0.3 * usual + 50 / 22,
      'isobutyl-acetate': 0.2 * usual,
      'n-butyl-acetate': 0.1 * usual,
      '2-butoxyethanol': 0.05 * usual,
    };
    const [first, second] = history.events;
    if (first?.kind !== 'coat' || second?.kind !== 'coat') throw new Error('two coats expected');
    expect(history.solvents).toEqual((Object.keys(expected) as SolventId[]).map(filmSolvent));
    expect(first.wetness).toEqual(Object.values(expected).map((u) => expect.closeTo(u, 9)));
    expect([first.dryM, first.passage, first.pigment]).toEqual([expect.closeTo(22e-6, 12), 1, 0]);
    expect([second.dryM, second.atS]).toEqual([expect.closeTo(11e-6, 12), 7200]);
  });

  test('comes in the order in which it happened, whenever it was logged', () => {
    const entries = [
      ...bench(),
      entry(3, wet(150), atHour(5)),
      entry(4, wet(75), atHour(2)),
      entry(5, sanded(4), atHour(4)),
    ];
    expect(eventsOf(entries)).toEqual([
      ['coat', 0, 11],
      ['sand', 2, 4],
      ['coat', 3, 22],
    ]);
  });

  test('loses a struck coat, and has it again when the strike is undone', () => {
    const laid = [...bench(), entry(3, wet(150), atHour(1)), entry(4, wet(75), atHour(2))];
    const struck = [...laid, entry(5, strike(id(3)), atHour(3))];
    expect(eventsOf(struck)).toEqual([['coat', 0, 11]]);
    expect(eventsOf([...struck, entry(6, strike(id(5)), atHour(4))])).toEqual(eventsOf(laid));
  });

  test('never sands away more than lies there but for a trace, and nothing before there is a film', () => {
    const entries = [
      ...bench(),
      entry(3, sanded(50), atHour(1)),
      entry(4, wet(150), atHour(2)),
      entry(5, sanded(50), atHour(3)),
    ];
    expect(eventsOf(entries)).toEqual([
      ['coat', 0, 22],
      ['sand', 1, 21.99],
    ]);
  });

  test('counts a flash coat as thinner alone, and only on an old finish where it is the first', () => {
    const flashed = [entry(3, wet(30, 'flash'), atHour(1)), entry(4, wet(150), atHour(2))];
    const old = start({ base: 'old-redissolves', oldFilm: um(45) });
    expect(eventsOf([...bench(old), ...flashed])).toEqual([
      ['flash', 0, 30],
      ['coat', 1, 22],
    ]);
    expect(eventsOf([...bench(), ...flashed])).toEqual([['coat', 1, 22]]);
  });

  test('counts pigment in the film and not in its solvent', () => {
    const white: EntryBody = {
      ...(fillJar() as Extract<EntryBody, { kind: 'jar-filled' }>),
      pigment: { shareOfSolids: { text: '20', unit: '%' }, shape: 'grains' },
    };
    const { history } = historyOf([
      entry(1, start(), atHour(0)),
      entry(2, white, atHour(0)),
      entry(3, wet(150), atHour(1)),
    ]);
    const [coat] = history.events;
    if (coat?.kind !== 'coat') throw new Error('a coat expected');
    // By hand: 128 of solvent to 22 of solids, four fifths of them binder.
    expect(coat.wetness.reduce((sum, u) => sum + u, 0)).toBeCloseTo(128 / (22 * 0.8), 9);
    expect([coat.dryM, coat.pigment]).toEqual([expect.closeTo(22e-6, 12), expect.closeTo(0.2, 12)]);
    expect(coat.passage).toBeCloseTo(0.7273, 4); // Maxwell by hand: 0.8/1.1
  });
});

describe('the floor', () => {
  test.each([
    { base: start({ base: 'old-redissolves', oldFilm: um(45) }), openUm: 45 },
    { base: start({ base: 'old-redissolves', oldFilm: um(200) }), openUm: 60 },
    { base: start({ base: 'old-redissolves' }), openUm: 60 },
    { base: start({ base: 'old-closed', oldFilm: um(45) }), openUm: 0 },
    { base: start({ base: 'bare-wood' }), openUm: 0 },
  ])('is open to $openUm um', ({ base, openUm }) => {
    const { history } = historyOf([...bench(base), entry(3, wet(85), atHour(1))]);
    expect(history.openBaseM * 1e6).toBeCloseTo(openUm, 9);
  });
});

describe('the air', () => {
  const forecast: EntryBody = {
    kind: 'forecast-set',
    dayTemperature: celsius(21),
    nightTemperature: celsius(16),
    dayFrom: '08:00',
    nightFrom: '18:00',
    movement: 'still',
  };

  test('is the reading first, then the forecast, for 400 days after the last thing done', () => {
    const entries = [
      ...bench(),
      entry(3, airRead(24), atHour(0)), // 09:00 in Berlin
      entry(4, wet(85), atHour(1)),
      entry(5, forecast, atHour(2)),
    ];
    const { air, sandingK } = historyOf(entries).history;
    expect(air.slice(0, 4)).toEqual([
      { fromS: 0, temperatureK: 297.15, transferMS: 2.8e-3 },
      { fromS: 7 * 3600, temperatureK: 294.15, transferMS: 0.7e-3 },
      { fromS: 8 * 3600, temperatureK: 289.15, transferMS: 0.7e-3 },
      { fromS: 22 * 3600, temperatureK: 294.15, transferMS: 0.7e-3 },
    ]);
    expect(air.at(-1)?.fromS).toBeGreaterThan(399 * DAY_S);
    expect(air.at(-1)?.fromS).toBeLessThanOrEqual(400 * DAY_S);
    expect(sandingK).toBe(297.15);
  });

  test('is read once more at a coat that was laid by an older reading', () => {
    const entries = [
      ...bench(),
      entry(3, airRead(24), atHour(0)),
      entry(4, wet(85, 'spray', { air: id(3) }), atHour(20)),
    ];
    expect(historyOf(entries).history.air).toEqual([
      { fromS: 0, temperatureK: 297.15, transferMS: 2.8e-3 },
      { fromS: 8 * 3600, temperatureK: 297.15, transferMS: 0.7e-3 },
    ]);
  });

  test.each([
    { more: [], sandingK: 297.15, by: 'the last reading' },
    {
      more: [entry(8, forecast, atHour(2))],
      sandingK: 297.15,
      by: 'the last reading, warmer than the day of the forecast',
    },
    {
      more: [
        entry(8, forecast, atHour(2)),
        entry(9, { kind: 'settings-changed', patch: { sandingTemperature: celsius(18) } }, atHour(2)),
      ],
      sandingK: 291.15,
      by: 'what the person chose',
    },
  ])('of the sanding room is that of $by', ({ more, sandingK }) => {
    const entries = [...bench(), entry(3, airRead(24), atHour(0)), entry(4, wet(85), atHour(1)), ...more];
    expect(historyOf(entries).history.sandingK).toBe(sandingK);
  });
});

describe('a piece without a history', () => {
  const allThinner: EntryBody = {
    ...(fillJar() as Extract<EntryBody, { kind: 'jar-filled' }>),
    thinning: { of: 'mix', percent: { text: '80', unit: '%' } },
    retarder: { of: 'mix', solvent: 'pma', percent: { text: '40', unit: '%' } },
  };
  test.each([
    { kind: 'no-coats', entries: bench() },
    { kind: 'no-coats', entries: [...bench(), entry(3, wet(30, 'flash'), atHour(1))] },
    { kind: 'unknown-jar', entries: [entry(1, start(), atHour(0)), entry(3, wet(85), atHour(1))] },
    {
      kind: 'no-room-for-lacquer',
      entries: [entry(1, start(), atHour(0)), entry(2, allThinner, atHour(0)), entry(3, wet(85), atHour(1))],
    },
  ])('says $kind', ({ kind, entries }) => {
    expect(told(entries)).toMatchObject({ ok: false, failure: { kind } });
  });
});
