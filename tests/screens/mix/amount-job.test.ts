import { expect, test } from 'vitest';
import type { EntryBody } from '../../../src/logbook/entry';
import type { Recipe } from '../../../src/logbook/fold/mix/recipes';
import { draftOfJob, keepJob, pieceOfJob } from '../../../src/screens/mix/amount/amount-job';
import type { Source } from '../../../src/screens/mix/amount/source';
import { id, JAR, layCoat, PIECE, startPiece } from '../../logbook/entries';
import { aShop } from '../../parts/an-outlook';

const OTHER = id(0xa2);
const NITRO: Source = { from: 'finish', finish: 'nitrocellulose' };
const BY_RECIPE: Source = { from: 'recipe', id: 'r' };

const withArea = (text: string): EntryBody =>
  ({ ...startPiece(OTHER), area: { text, unit: 'm2' } }) as EntryBody;

/** A shop whose recipe hides in two coats and was matched for the second piece. */
function matchedShop() {
  const { shop } = aShop({ hour: 1, body: layCoat() }, { hour: 2, body: withArea('0.46') });
  return {
    ...shop,
    recipes: new Map([
      ['r', { id: 'r', lines: [], use: { as: 'opaque', coatsToHide: 2 } } as unknown as Recipe],
    ]),
    matches: new Map([['m', { id: 'm', piece: OTHER, accepted: { trial: 't', recipe: 'r' } }]]),
  } as unknown as typeof shop;
}

test('a job is for the piece asked for, else for that of the match, else for the only one on the bench', () => {
  const shop = matchedShop();
  expect(pieceOfJob(PIECE, BY_RECIPE, shop)?.id).toBe(PIECE);
  expect(pieceOfJob(null, BY_RECIPE, shop)?.id).toBe(OTHER);
  expect(pieceOfJob(null, NITRO, shop)).toBeUndefined(); // two are open: none is guessed
  expect(pieceOfJob(null, NITRO, aShop().shop)?.id).toBe(PIECE);
  const { shop: closed } = aShop({ hour: 1, body: { kind: 'piece-closed', piece: PIECE } });
  expect(pieceOfJob(PIECE, { from: 'jar', id: JAR }, closed)).toBeUndefined();
});

test('a job begins with its own area, wet film and coats, and not with what another was left at', () => {
  const shop = matchedShop();
  const first = { piece: shop.pieces.get(PIECE), source: NITRO };
  const second = { piece: shop.pieces.get(OTHER), source: BY_RECIPE };
  expect(draftOfJob(first, shop, false)).toMatchObject({
    area: { text: '' },
    coats: '3',
    wetFilm: { text: '85', unit: 'um' }, // as its last coat was logged
  });
  expect(draftOfJob(second, shop, false)).toMatchObject({
    area: { text: '0.46', unit: 'm2' },
    coats: '2',
    wetFilm: { text: '100', unit: 'um' },
  });
  keepJob(first, { ...draftOfJob(first, shop, false), coats: '7' });
  expect(draftOfJob(first, shop, false).coats).toBe('7');
  expect(draftOfJob(second, shop, false).coats).toBe('2');
});

test('a job goes on as its piece’s last coat of this finish did; else shellac by pad, the rest by spray', () => {
  const byJar: Source = { from: 'jar', id: JAR };
  const shellac: Source = { from: 'finish', finish: 'shellac' };
  const wayOf = (how: 'spray' | 'brush' | 'brush-fill' | 'flash', source: Source) => {
    const { shop } = aShop({ hour: 1, body: { ...layCoat(), how } as EntryBody });
    return draftOfJob({ piece: shop.pieces.get(PIECE), source }, shop, false).way;
  };
  expect(wayOf('spray', byJar)).toBe('spray');
  expect(wayOf('brush', byJar)).toBe('hand');
  expect(wayOf('brush-fill', byJar)).toBe('spray'); // a drop fill covers nothing
  expect(wayOf('spray', shellac)).toBe('hand'); // the coat was of another finish
  // 2 um dry of a cut of 17.2 % are 12 um wet (common practice, no source)
  expect(draftOfJob({ piece: undefined, source: shellac }, aShop().shop, false).wetFilm.text).toBe('12');
});
