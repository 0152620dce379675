import { describe, expect, test } from 'vitest';
import { lawOutlook } from '../../../src/actions/outlook/law-outlook';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import type { Piece } from '../../../src/logbook/fold/piece/pieces';
import { DAY_1_MS, entry, fillJar, id, JAR, layCoat, PIECE, startPiece } from '../../logbook/entries';

const HOUR_MS = 3_600_000;
const LACQUER = id(0xb2);
type Timed = readonly [hour: number, body: EntryBody];
const cured = {
  ...fillJar(),
  product: { finish: 'conversion', volumeSolids: { text: '28', unit: '%' } },
} as EntryBody;
const air = (celsius: string): EntryBody => ({
  kind: 'air-read',
  temperature: { text: celsius, unit: 'C' },
  humidity: { text: '50', unit: '%' },
  movement: 'gentle',
});
const gum = (result: 'passes' | 'fails'): EntryBody => ({
  kind: 'checked',
  piece: PIECE,
  test: 'gum',
  result,
});
const coat = (jar = JAR, how: 'spray' | 'flash' = 'spray'): EntryBody =>
  ({ ...layCoat(PIECE, jar), how }) as EntryBody;

function at(hour: number, ...timed: readonly Timed[]) {
  const all: readonly Timed[] = [[0, startPiece()], [0, cured], [0, fillJar(LACQUER)], ...timed];
  const shop = fold(all.map(([when, body], n) => entry(n + 1, body, DAY_1_MS + when * HOUR_MS)));
  const outlook = lawOutlook(shop.pieces.get(PIECE) as Piece, shop, DAY_1_MS + hour * HOUR_MS);
  if (outlook?.state !== 'ready') throw new Error('It was not worked out.');
  const { milestones, whatIf, oneMoreCoat } = outlook.estimate;
  const later = Object.fromEntries(whatIf.map(({ name, levelS }) => [name, levelS / 3600]));
  return { levelH: milestones.level.likelyS / 3600, later, oneMoreCoat };
}

describe('what if it were otherwise', () => {
  const air18: Timed = [0, air('18')];

  test('a warmer shop and a thinner coat harden sooner, a cooler shop and one more coat later', () => {
    const { later, oneMoreCoat } = at(2, air18, [1, coat()]);
    expect(Object.keys(later)).toEqual(['warmer', 'cooler', 'thinner-coats']);
    expect(later['warmer']).toBeLessThan(-1);
    expect(later['cooler']).toBeGreaterThan(1);
    expect(later['thinner-coats']).toBeLessThanOrEqual(0);
    expect(oneMoreCoat?.levelS).toBeGreaterThan(1);
  });

  test('only what is still to come is otherwise: the later it is asked, the less is won', () => {
    const won = [2, 20, 60].map((hour) => at(hour, air18, [1, coat()]).later['warmer'] ?? 0);
    expect(won[0]).toBeLessThan((won[1] ?? 0) - 0.5);
    expect(won[1]).toBeLessThan((won[2] ?? 0) - 0.5);
    // Hard already, by more than the band: no warmth of now brings it back.
    expect(at(2000, air18, [1, coat()]).later['warmer']).toBeCloseTo(0, 6);
    expect(at(2000, air18, [1, coat()]).later['cooler']).toBeCloseTo(0, 6);
  });

  test('a reading that was over before now stays as it was, one to come is warmer too', () => {
    const cold: readonly Timed[] = [
      [0, air('12')],
      [1, coat()],
      [7, air('18')],
    ];
    const plain = at(6, ...cold.slice(0, 2)).later['warmer'] ?? 0;
    expect(at(8, ...cold).later['warmer']).toBeGreaterThan(plain);
    expect(at(8, ...cold).later['warmer']).toBeLessThan(-1);
  });

  test('the last coat alone is laid thinner', () => {
    const thin = (hours: number) =>
      at(hours + 1, air18, [1, coat()], [hours, coat()]).later['thinner-coats'] ?? 0;
    expect(thin(30)).toBeLessThanOrEqual(0);
    const one = at(31, air18, [30, coat()]).later['thinner-coats'] ?? 0;
    expect(Math.abs(thin(30))).toBeLessThan(Math.abs(one) + 24);
  });
});

describe('what was tried', () => {
  const level = (...timed: readonly Timed[]) => at(400, ...timed).levelH;

  test('on the film that is there moves its times; a flash of thinner begins no other film', () => {
    const plain = level([1, coat()]);
    expect(level([1, coat()], [200, gum('fails')])).toBeGreaterThan(plain * 1.02);
    expect(level([1, coat()], [2, coat(JAR, 'flash')], [200, gum('fails')])).toBeGreaterThan(plain * 1.02);
  });

  test('on the lacquer below, before this finish went on, says nothing of it', () => {
    const below: readonly Timed[] = [
      [1, coat(LACQUER)],
      [300, coat()],
    ];
    expect(level(...below, [200, gum('fails')])).toBe(level(...below));
    expect(level(...below, [390, gum('fails')])).not.toBe(level(...below));
    // Of two coats of this finish on it, what was tried between them counts.
    const two: readonly Timed[] = [...below, [310, coat()]];
    expect(level(...two, [305, gum('passes')])).not.toBe(level(...two));
  });
});
