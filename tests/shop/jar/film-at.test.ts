import { describe, expect, test } from 'vitest';
import { inputsOf } from '../../../src/actions/outlook/inputs';
import type { Entry, EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { jarFilmAt } from '../../../src/shop/jar/film-at';
import { stackHistory } from '../../../src/shop/stack/history';
import { lawHistory } from '../../../src/shop/stack/law-history';
import { DAY_1_MS, entry, fillJar, id, JAR, PIECE, strike } from '../../logbook/entries';

// By hand, all volumes taken to add: 200 mL at 0.9 g/mL, 22 % solids thinned 1:0.5, hold 29.333 mL of solids; toluene is 0.867 g/mL, so
// 43.35 g of it are 50 mL, and leave 150 mL of which 29.333/150 = 19.556 % are solids.
const FRESH = 22 / 150;
const LOST_50_ML = 29.333 / 150;
const LOST_100_ML = 29.333 / 100;
const OTHER = id(0xa2);
const HOUR_MS = 3_600_000;
const typed = <Unit extends string>(text: string, unit: Unit) => ({ text, unit }) as const;

const filled = (finish: 'nitrocellulose' | 'conversion' = 'nitrocellulose'): EntryBody => ({
  ...(fillJar() as Extract<EntryBody, { kind: 'jar-filled' }>),
  product: { finish, volumeSolids: typed('22', '%'), solvents: [{ solvent: 'toluene', share: 1 }] },
  amount: typed('200', 'mL'),
  density: typed('0.9', 'g/mL'),
});
const started = (piece = PIECE): EntryBody => ({
  kind: 'piece-started',
  piece,
  name: 'Box',
  base: 'sealed',
  area: typed('0.5', 'm2'),
});
const weighed = (grams: string, missing: 'used' | 'evaporated' = 'evaporated'): EntryBody => ({
  kind: 'jar-weighed',
  jar: JAR,
  mass: typed(grams, 'g'),
  missing,
});
/** A tenth of a millimetre, brushed: on half a square metre 50 mL of the mix. */
const brushed = (piece = PIECE): EntryBody => ({
  kind: 'coat-laid',
  piece,
  jar: JAR,
  how: 'brush',
  film: { by: 'wet', wetFilm: typed('100', 'um') },
});

const hourly = (...bodies: EntryBody[]): Entry[] =>
  bodies.map((body, n) => entry(n + 1, body, DAY_1_MS + n * HOUR_MS));

function coatsOf(entries: readonly Entry[]) {
  const shop = fold(entries);
  const piece = shop.pieces.get(PIECE);
  const told = piece && stackHistory(piece, shop);
  if (!told?.ok) throw new Error('no history');
  return told.value.history.events.flatMap((event) => (event.kind === 'coat' ? [event] : []));
}
const drySharesOf = (entries: readonly Entry[]) => coatsOf(entries).map(({ dryM }) => dryM / 100e-6);

describe('a coat from a jar that has lost solvent', () => {
  test.each([
    { of: 'nothing lost', after: [], solids: FRESH },
    { of: '50 mL lost', after: [weighed('136.65')], solids: LOST_50_ML },
    { of: '50 mL lost twice', after: [weighed('136.65'), weighed('93.3')], solids: LOST_100_ML },
    { of: '43 g used, not lost', after: [weighed('136.65', 'used')], solids: FRESH },
    {
      of: '50 mL lost, then some used',
      after: [weighed('136.65'), weighed('80', 'used')],
      solids: LOST_50_ML,
    },
    { of: '50 mL lost and put back', after: [weighed('136.65'), weighed('180')], solids: FRESH },
    { of: '50 mL lost, half put back', after: [weighed('136.65'), weighed('158.325')], solids: 29.333 / 175 },
    { of: 'more missing than there was solvent', after: [weighed('10')], solids: FRESH },
  ])('leaves the solids that the jar then held: $of', ({ after, solids }) => {
    const [share = 0] = drySharesOf(hourly(started(), filled(), ...after, brushed()));
    expect(share / solids).toBeCloseTo(1, 2); // tables differ by 0.3 % in the density of toluene
  });

  test('brings as much less solvent for each part of binder', () => {
    const wetness = (after: EntryBody[]) =>
      coatsOf(hourly(started(), filled(), ...after, brushed()))[0]?.wetness[0];
    expect(wetness([])).toBeCloseTo((200 - 29.333) / 29.333, 2);
    expect(wetness([weighed('136.65')])).toBeCloseTo((150 - 29.333) / 29.333, 2);
  });

  test('takes the jar as it was at its own time, whenever it was logged', () => {
    const entries = hourly(started(), filled(), brushed(), weighed('91.65'), brushed());
    // The first coat takes 50 mL with 7.333 mL of solids: 150 mL or 135 g with 22 mL are left, of which 43.35 g or 50 mL go.
    const [before = 0, after = 0] = drySharesOf(entries);
    expect(before).toBeCloseTo(FRESH, 3);
    expect(after).toBeCloseTo(22 / 100, 3);
    expect(drySharesOf(entries.toReversed())).toEqual([before, after]);
  });

  test('takes the jar as it was between two weighings', () => {
    // 150 mL weigh 136.65 g; a coat of 50 mL leaves 100 mL, 91.1 g and 19.556 mL of solids, of which 43.35 g or 50 mL go.
    const entries = hourly(started(), filled(), weighed('136.65'), brushed(), weighed('47.75'), brushed());
    const [between = 0, after = 0] = drySharesOf(entries);
    expect(between / LOST_50_ML).toBeCloseTo(1, 2);
    expect(after / (19.556 / 50)).toBeCloseTo(1, 2);
  });

  test('reckons with what other pieces took out in between', () => {
    const bodies = [started(), started(OTHER), filled(), brushed(OTHER), weighed('91.65'), brushed()];
    expect(drySharesOf(hourly(...bodies))[0]).toBeCloseTo(22 / 100, 3);
  });

  test('is as it was once the weighing is struck', () => {
    const entries = hourly(started(), filled(), weighed('136.65'), brushed(), strike(id(3)));
    expect(drySharesOf(entries)[0]).toBeCloseTo(FRESH, 3);
  });

  test('does so for a finish that cures too', () => {
    const shop = fold(hourly(started(), filled('conversion'), weighed('136.65'), brushed()));
    const piece = shop.pieces.get(PIECE);
    const [coat] = (piece && lawHistory(piece, shop)?.history.coats) ?? [];
    expect(coat?.dryM).toBeCloseTo(100e-6 * LOST_50_ML, 7);
    expect(coat?.volatileM).toBeCloseTo(100e-6 * (1 - LOST_50_ML), 7);
  });

  test('keeps its film where nothing was ever said of the amount', () => {
    const { amount: _, ...unsaid } = filled() as Extract<EntryBody, { kind: 'jar-filled' }>;
    const shop = fold(hourly(started(), unsaid as EntryBody, weighed('136.65'), brushed()));
    const jar = shop.jars.get(JAR);
    expect(jar && jarFilmAt(jar, DAY_1_MS + 9 * HOUR_MS, shop).volumeSolids).toBeCloseTo(FRESH, 4);
  });
});

describe('the outlook of a piece', () => {
  const inputs = (...bodies: EntryBody[]) => {
    const shop = fold(hourly(...bodies));
    const piece = shop.pieces.get(PIECE);
    return piece && inputsOf(piece, shop, { diffusivity: undefined, law: undefined });
  };
  const laid = [started(), started(OTHER), filled()];

  test('is worked out anew when a weighing, or a coat elsewhere, changes what its coat was made of', () => {
    const weights = ['136.65', '93.3', '170'].map((grams) => inputs(...laid, weighed(grams), brushed()));
    const elsewhere = inputs(...laid, brushed(OTHER), weighed('91.65'), brushed());
    expect(new Set([...weights, elsewhere]).size).toBe(4);
  });
});
