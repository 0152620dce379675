import { describe, expect, test } from 'vitest';
import type { EntryBody } from '../../../src/logbook/entry';
import { asItStands, layersLeft } from '../../../src/shop/stack/layers-left';
import { layCoat } from '../../logbook/entries';
import { aShop } from '../../parts/an-outlook';

/** Of a jar of 22 % thinned by half, 30 um wet leave 4.4 um. */
const usual = (dryUm: string): EntryBody =>
  ({ ...layCoat(), film: { by: 'usual', dryFilm: { text: dryUm, unit: 'um' } } }) as EntryBody;
const sanded = (um: string, more: object = {}): EntryBody =>
  ({
    kind: 'sanded',
    piece: (layCoat() as { piece: string }).piece,
    stage: 'level',
    removed: { text: um, unit: 'um' },
    ...more,
  }) as EntryBody;

const leftUm = (...done: readonly EntryBody[]): readonly number[] => {
  const { shop, piece } = aShop(...done.map((body, hour) => ({ hour, body })));
  return layersLeft(piece, shop).map(({ leftM }) => Math.round(leftM * 1e7) / 10);
};

describe('sanding takes from the top', () => {
  test.each([
    { name: 'nothing sanded', done: [usual('10'), usual('12')], left: [10, 12] },
    { name: 'part of the last coat', done: [usual('10'), usual('12'), sanded('5')], left: [10, 7] },
    { name: 'through it into the one below', done: [usual('10'), usual('12'), sanded('15')], left: [7, 0] },
    { name: 'through all of it', done: [usual('10'), usual('12'), sanded('30')], left: [0, 0] },
    { name: 'a coat after it is whole', done: [usual('10'), sanded('30'), usual('12')], left: [0, 12] },
    {
      name: 'what is usual leaves the last of a film',
      done: [usual('10'), sanded('15', { isUsual: true })],
      left: [1],
    },
  ])('$name', ({ done, left }) => {
    expect(leftUm(...done)).toEqual(left);
  });
});

test('of a coat and a sanding of one moment the one logged first came first', () => {
  const left = (...bodies: readonly EntryBody[]) => {
    const { shop, piece } = aShop(...bodies.map((body) => ({ hour: 1, body })));
    return layersLeft(piece, shop).map(({ leftM }) => Math.round(leftM * 1e7) / 10);
  };
  expect(left(usual('10'), sanded('4'), usual('12'))).toEqual([6, 12]);
  expect(left(sanded('4'), usual('10'), usual('12'))).toEqual([10, 12]);
  expect(left(usual('10'), usual('12'), sanded('4'))).toEqual([10, 8]);
});

test('a film that was sanded away is no coat of the piece any more', () => {
  const { shop, piece } = aShop({ hour: 0, body: usual('10') }, { hour: 1, body: sanded('30') });
  expect(asItStands(piece, shop).coats).toEqual([]);
  const again = aShop(
    { hour: 0, body: usual('10') },
    { hour: 1, body: sanded('30') },
    { hour: 2, body: usual('12') },
  );
  expect(asItStands(again.piece, again.shop).coats).toHaveLength(1);
});
