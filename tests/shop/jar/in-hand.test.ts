import { expect, test } from 'vitest';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { coatBefore, jarInHand, lastTouched } from '../../../src/shop/jar/in-hand';
import { fillJar, id, inTurn, layCoat, startPiece } from '../../logbook/entries';

const [BOX, CHAIR, STOOL] = [id(0xa1), id(0xa2), id(0xa3)];
const [GLOSS, SATIN, MATT, FRESH] = [id(0xb1), id(0xb2), id(0xb3), id(0xb4)];
const empty = (jar: string): EntryBody => ({ kind: 'jar-emptied', jar });
const START = [fillJar(GLOSS), fillJar(SATIN), fillJar(MATT), startPiece(BOX), startPiece(CHAIR)];
const shopOf = (...more: readonly EntryBody[]) => fold([...START, ...more].map(inTurn));

test.each([
  { what: 'the one filled last, where nothing was laid', said: [], on: BOX, is: MATT },
  {
    what: 'that of its own last coat',
    said: [layCoat(BOX, GLOSS), layCoat(CHAIR, SATIN)],
    on: BOX,
    is: GLOSS,
  },
  {
    what: 'that of the last coat anywhere, before its first',
    said: [layCoat(BOX, GLOSS), layCoat(BOX, SATIN)],
    on: CHAIR,
    is: SATIN,
  },
  {
    what: 'that of the last coat anywhere, on a piece begun since',
    said: [layCoat(BOX, SATIN), startPiece(STOOL)],
    on: STOOL,
    is: SATIN,
  },
  {
    what: 'one filled since the last coat, on a piece without any',
    said: [layCoat(BOX, GLOSS), fillJar(FRESH), startPiece(STOOL)],
    on: STOOL,
    is: FRESH,
  },
  {
    what: 'none filled since, on a piece that has its coats from another',
    said: [layCoat(BOX, GLOSS), fillJar(FRESH)],
    on: BOX,
    is: GLOSS,
  },
  {
    what: 'no jar that is empty, but the one filled last',
    said: [layCoat(BOX, SATIN), empty(SATIN)],
    on: BOX,
    is: MATT,
  },
  { what: 'none, where all are empty', said: [GLOSS, SATIN, MATT].map(empty), on: BOX, is: undefined },
])('the jar in hand is $what', ({ said, on, is }) => {
  const shop = shopOf(...said);
  expect(jarInHand(shop.pieces.get(on), shop)?.id).toBe(is);
});

test('the piece worked on last is the one coated last; before its first coat, the one begun last', () => {
  const lastOf = (...said: readonly EntryBody[]) => lastTouched([...shopOf(...said).pieces.values()])?.id;
  expect(lastOf()).toBe(CHAIR);
  expect(lastOf(layCoat(BOX, GLOSS))).toBe(BOX);
  expect(lastOf(layCoat(BOX, GLOSS), layCoat(CHAIR, SATIN))).toBe(CHAIR);
  expect(lastTouched([])).toBeUndefined();
});

test('the coat before a first coat is that of the piece worked on last', () => {
  const shop = shopOf(layCoat(BOX, GLOSS), layCoat(BOX, SATIN));
  expect(coatBefore(shop.pieces.get(CHAIR), shop)?.jar).toBe(SATIN);
  expect(coatBefore(undefined, shop)?.jar).toBe(SATIN);
  expect(coatBefore(undefined, shopOf())).toBeUndefined();
});
